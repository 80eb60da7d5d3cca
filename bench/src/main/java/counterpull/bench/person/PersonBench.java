package counterpull.bench.person;

import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.BodyLength;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.SegmentTable;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.strength.Physique;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Everything that was measured on one person, visit after visit.
 *
 * @param name what the person is called
 * @param build what the published tables go by
 * @param visits the earliest first, one or more
 */
public record PersonBench(String name, Build build, List<Visit> visits) {
    private static final double YOUNGEST = 18;
    private static final double OLDEST = 110;

    /**
     * What the published tables go by.
     *
     * @param sex selects rows
     * @param age years
     * @param size stature and mass
     * @param table of body segments
     */
    public record Build(Sex sex, double age, Size size, SegmentTable table) {
        /** What selects the published strength; empty outside the ages that are published. */
        public Optional<Physique> physique() {
            boolean published = age >= YOUNGEST && age <= OLDEST;
            return published ? Optional.of(new Physique(sex, age, size.mass(), size.stature())) : Optional.empty();
        }
    }

    /**
     * What was measured on one day.
     *
     * @param date the day
     * @param strength tests held still
     * @param ranges ends of ranges
     * @param lengths with a tape
     */
    public record Visit(LocalDate date, List<StrengthBench> strength, List<RangeBench> ranges, List<Taped> lengths) {
        public Visit {
            strength = List.copyOf(strength);
            ranges = List.copyOf(ranges);
            lengths = List.copyOf(lengths);
        }
    }

    /**
     * A length or girth taken with a tape.
     *
     * @param which a length that the body is made of; empty for any other
     * @param side left or right
     * @param what in words
     * @param readings m
     */
    public record Taped(Optional<BodyLength> which, Side side, String what, List<Double> readings) {
        public Taped {
            readings = List.copyOf(readings);
        }

        /** What and side. */
        public String words() {
            return what + " " + side.words();
        }
    }

    public PersonBench {
        visits = List.copyOf(visits);
    }

    /** The last visit. */
    public Visit last() {
        return visits.get(visits.size() - 1);
    }

    /** What all of it says. */
    public PersonFindings findings() {
        return PersonFindings.of(this);
    }

    /** One side without any length measured. */
    Anthropometry bare() {
        return new Anthropometry(
                build.table, build.sex, build.size.stature(), build.size.mass(), MeasuredLengths.none());
    }
}
