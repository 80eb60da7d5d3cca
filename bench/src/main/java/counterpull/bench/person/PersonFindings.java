package counterpull.bench.person;

import counterpull.bench.Answer;
import counterpull.bench.Estimate;
import counterpull.bench.Remark;
import counterpull.bench.person.PersonBench.Taped;
import counterpull.bench.person.PersonBench.Visit;
import counterpull.engine.body.Action;
import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Side;
import counterpull.engine.strength.BentCurve;
import counterpull.engine.strength.Prior;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a person's readings say. Everything that was refused is missing in the lists and named in the remarks.
 *
 * @param of the readings
 * @param lengths with a tape, the latest of each
 * @param ranges ends of ranges, the latest of each
 * @param tests strength tests of all visits, the earliest first
 * @param curves one for each action and side that was ever tested and has a published average
 * @param comparisons left beside right, and now beside before
 * @param remarks everything to say
 */
public record PersonFindings(
        PersonBench of,
        List<Length> lengths,
        List<Range> ranges,
        List<Tested> tests,
        List<Curve> curves,
        Comparisons comparisons,
        List<Remark> remarks) {
    public PersonFindings {
        lengths = List.copyOf(lengths);
        ranges = List.copyOf(ranges);
        tests = List.copyOf(tests);
        curves = List.copyOf(curves);
        remarks = List.copyOf(remarks);
    }

    /**
     * A taped length.
     *
     * @param of its readings
     * @param estimate m
     */
    public record Length(Taped of, Estimate estimate) {}

    /**
     * An end of a range.
     *
     * @param date of the readings
     * @param result what they say
     * @param before the same end at the visit before; empty where there was none
     */
    public record Range(LocalDate date, RangeResult result, Optional<RangeResult> before) {
        /** Now less before, rad. */
        public Optional<Estimate> change() {
            return before.map(earlier -> {
                double sd = Math.hypot(
                        result.angle().standardError(), earlier.angle().standardError());
                return Estimate.normal(result.angle().value() - earlier.angle().value(), sd);
            });
        }
    }

    /**
     * A strength test.
     *
     * @param date of the efforts
     * @param result what they say
     */
    public record Tested(LocalDate date, StrengthResult result) {}

    /**
     * A curve of one action of one limb.
     *
     * @param action which action
     * @param side left or right
     * @param curve bent by the tests of the latest visit that had any
     * @param tests those tests
     */
    public record Curve(Action action, Side side, BentCurve curve, List<StrengthResult> tests) {
        public Curve {
            tests = List.copyOf(tests);
        }
    }

    /**
     * One torque beside another.
     *
     * @param sides left over right, of the latest tests
     * @param changes now over before, of each action and side tested twice
     */
    public record Comparisons(List<Beside> sides, List<Beside> changes) {
        public Comparisons {
            sides = List.copyOf(sides);
            changes = List.copyOf(changes);
        }
    }

    /**
     * What was laid beside what.
     *
     * @param one the left, or the test of now
     * @param other the right, or the test of before
     * @param comparison how they differ
     */
    public record Beside(Tested one, Tested other, Comparison comparison) {}

    static PersonFindings of(PersonBench bench) {
        return new Finder(bench).find();
    }

    /** One side's lengths and masses, measured lengths among them. */
    public Anthropometry body(Side side) {
        return body(of, lengths, side);
    }

    private static Anthropometry body(PersonBench bench, List<Length> lengths, Side side) {
        Anthropometry bare = bench.bare();
        MeasuredLengths measured = bare.measured();
        for (Length length : lengths) {
            if (length.of().side() == side && length.of().which().isPresent()) {
                measured = measured.with(
                        length.of().which().get(), length.estimate().value());
            }
        }
        return new Anthropometry(bare.table(), bare.sex(), bare.stature(), bare.mass(), measured);
    }

    /** Works through the visits in their order. */
    private static final class Finder {
        private final PersonBench bench;
        private final List<Remark> remarks = new ArrayList<>();
        private final List<Length> lengths = new ArrayList<>();
        private final List<Range> ranges = new ArrayList<>();
        private final List<Tested> tests = new ArrayList<>();
        private final Map<Action, Optional<Prior>> published = new EnumMap<>(Action.class);

        Finder(PersonBench bench) {
            this.bench = bench;
        }

        PersonFindings find() {
            remarks.addAll(bench.build().size().remarks());
            bench.visits().forEach(visit -> visit.lengths().forEach(this::length));
            bench.visits().forEach(this::visit);
            ends();
            Latest latest = new Latest(tests);
            List<Curve> curves = new ArrayList<>();
            latest.tested().forEach((subject, found) -> curve(subject, found).ifPresent(curves::add));
            return new PersonFindings(bench, lengths, ranges, tests, curves, comparisons(latest), remarks);
        }

        private void length(Taped taped) {
            OptionalDouble usual = taped.which().isPresent()
                    ? OptionalDouble.of(
                            taped.which().get().of(bench.build().size().stature()))
                    : OptionalDouble.empty();
            take(new LengthBench(taped.words(), taped.readings(), usual).answer())
                    .ifPresent(found -> {
                        lengths.removeIf(earlier -> earlier.of().words().equals(taped.words()));
                        lengths.add(new Length(taped, found));
                    });
        }

        private void visit(Visit visit) {
            for (RangeBench range : visit.ranges()) {
                take(range.answer()).ifPresent(found -> range(visit.date(), found));
            }
            for (StrengthBench strength : visit.strength()) {
                Action action = strength.subject().action();
                take(strength.answer(body(bench, lengths, strength.subject().side()), published(action)))
                        .ifPresent(found -> tests.add(new Tested(visit.date(), found)));
            }
        }

        private void range(LocalDate date, RangeResult found) {
            Optional<Range> before = ranges.stream()
                    .filter(earlier ->
                            earlier.result().of().which().equals(found.of().which()))
                    .findFirst();
            before.ifPresent(ranges::remove);
            ranges.add(new Range(date, found, before.map(Range::result)));
        }

        private void ends() {
            for (Range one : ranges) {
                for (Range other : ranges) {
                    if (RangeEnds.exchanged(one.result(), other.result())) {
                        remarks.add(RangeEnds.remark(one.result(), other.result()));
                    }
                }
            }
        }

        private <T> Optional<T> take(Answer<T> answer) {
            remarks.addAll(answer.remarks());
            return answer.result();
        }

        private Optional<Prior> published(Action action) {
            return published.computeIfAbsent(
                    action, which -> bench.build().physique().flatMap(person -> Prior.of(which, person)));
        }

        private Optional<Curve> curve(Latest.Limb limb, List<Tested> found) {
            List<StrengthResult> results = found.stream().map(Tested::result).toList();
            return published(limb.action())
                    .map(prior ->
                            new Curve(limb.action(), limb.side(), PersonCurve.of(prior, results, List.of()), results));
        }

        private Comparisons comparisons(Latest latest) {
            List<Beside> sides = new ArrayList<>();
            List<Beside> changes = new ArrayList<>();
            latest.sides()
                    .forEach(pair -> lay(
                            pair,
                            comparing(pair)
                                    .sides(pair.one().result(), pair.other().result()),
                            sides));
            latest.changes()
                    .forEach(pair -> lay(
                            pair,
                            comparing(pair)
                                    .visits(pair.other().result(), pair.one().result()),
                            changes));
            remarks.addAll(latest.exchanged());
            return new Comparisons(sides, changes);
        }

        private Comparing comparing(Latest.Pair pair) {
            return new Comparing(published(pair.one().result().of().subject().action()));
        }

        private void lay(Latest.Pair pair, Answer<Comparison> answer, List<Beside> into) {
            // a comparison that cannot be is no fault of the readings: its reason is told as a note
            answer.remarks().stream()
                    .filter(remark -> !remark.code().startsWith("change-"))
                    .map(remark -> new Remark(
                            remark.refuses() ? Remark.Weight.NOTE : remark.weight(), remark.code(), remark.sentence()))
                    .forEach(remarks::add);
            answer.result().ifPresent(found -> into.add(new Beside(pair.one(), pair.other(), found)));
        }
    }
}
