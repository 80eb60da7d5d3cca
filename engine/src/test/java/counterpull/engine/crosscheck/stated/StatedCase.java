package counterpull.engine.crosscheck.stated;

import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.BodyLength;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.load.Resistance;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.strength.LimbStrength;
import java.util.ArrayList;
import java.util.List;

/**
 * One exercise of one person, and what the reference has for it.
 *
 * @param name what the case is called
 * @param task the input
 * @param columns names of columns: limb, phase, position, then numbers; empty where the reference refuses
 * @param rows their cells
 */
public record StatedCase(String name, ExerciseTask task, String[] columns, List<String[]> rows) {

    /** Reads one case: its input line by line, then {@code table}, then the rows or {@code refused} and why. */
    public static StatedCase read(List<String> lines) {
        int table = lines.indexOf("table");
        Reading reading = new Reading();
        lines.subList(0, table).forEach(reading::take);
        List<String[]> cells =
                lines.stream().skip(table + 1).map(line -> line.split(",")).toList();
        boolean none = lines.get(table + 1).startsWith("refused");
        return new StatedCase(
                reading.name,
                reading.task(),
                none ? new String[0] : cells.get(0),
                none ? List.of() : cells.subList(1, cells.size()));
    }

    /** Whether the reference says that this cannot be done. */
    public boolean refused() {
        return rows.isEmpty();
    }

    /** The largest magnitude in a column of numbers, at least 1e-3. */
    public double largest(int column) {
        return rows.stream()
                .mapToDouble(row -> Math.abs(Double.parseDouble(row[column])))
                .reduce(1e-3, Math::max);
    }

    @Override
    public String toString() {
        return name;
    }

    private static final class Reading {
        private final List<Limb> limbs = new ArrayList<>();
        private final List<Resistance> resists = new ArrayList<>();
        private String name;
        private double stature;
        private double mass;
        private double borne;
        private double plates;
        private int positions;
        private Tempo tempo;
        private Motion motion;

        void take(String line) {
            Words in = new Words(line);
            String what = in.word();
            switch (what) {
                case "case" -> name = in.word();
                case "body" -> body(in);
                case "limb" -> limbs.add(limb(in));
                case "tempo" -> tempo = StatedMotion.tempo(in);
                case "hinge" -> motion = StatedMotion.hinge(in);
                case "straight" -> motion = StatedMotion.straight(in);
                case "stand" -> motion = StatedMotion.stand(in);
                default -> resists.add(StatedThings.of(what, in));
            }
        }

        private void body(Words in) {
            stature = in.number();
            mass = in.number();
            borne = in.number();
            plates = in.number();
            positions = in.whole();
        }

        private Limb limb(Words in) {
            Side side = Side.valueOf(in.word());
            double share = in.number();
            double bottom = in.number();
            WorkingRange range = new WorkingRange(bottom, in.number(), bottom);
            MeasuredLengths lengths = MeasuredLengths.none();
            for (int left = in.whole(); left > 0; left--) {
                lengths = lengths.with(BodyLength.valueOf(in.word()), in.number());
            }
            Anthropometry body = new Anthropometry(new DempsterWinter(), Sex.MALE, stature, mass, lengths);
            return new Limb(side, body.side(), share, range, JointRanges.anyPosture(), LimbStrength.none());
        }

        ExerciseTask task() {
            boolean none = resists.stream().noneMatch(Resistance::takesPlates);
            Exercise exercise = new Exercise(motion, resists, borne);
            return new ExerciseTask(new Person(mass, limbs), exercise, none ? 0 : plates, tempo, positions);
        }
    }
}
