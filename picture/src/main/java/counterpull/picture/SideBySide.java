package counterpull.picture;

import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Several exercises or setups of one person for one joint, over that joint's own angle: where in its range each challenges it.
 * Read-only.
 */
public final class SideBySide {
    private static final Ink[] INKS = {Ink.HIP, Ink.KNEE, Ink.ANKLE, Ink.RUBBER};
    private static final Stroke[] STROKES = {Stroke.ASKED, Stroke.SECOND, Stroke.THIRD, Stroke.FOURTH};
    private static final Marker[] MARKERS = {Marker.CIRCLE, Marker.SQUARE, Marker.TRIANGLE, Marker.DIAMOND};
    private final Joint joint;
    private final Quantity quantity;
    private final Phase phase;
    private final List<Compared> compared;

    /** What is compared. */
    public enum Quantity {
        /** Torque asked of the joint, N·m. */
        TORQUE(Chart.Measure.TORQUE, "torque asked"),
        /** Share of what this person has. */
        EFFORT(Chart.Measure.EFFORT, "effort"),
        /** Mean contact stress of the kneecap joint. */
        KNEECAP_STRESS(Chart.Measure.STRESS, "kneecap joint stress");

        private final Chart.Measure measure;
        private final String words;

        Quantity(Chart.Measure measure, String words) {
            this.measure = measure;
            this.words = words;
        }

        double of(LimbProfile limb, Asked asked) {
            return switch (this) {
                case TORQUE -> limb.torque(asked.joint, asked.phase, asked.position);
                case EFFORT -> limb.effort(asked.joint, asked.phase, asked.position);
                case KNEECAP_STRESS -> limb.kneecapStress(asked.phase, asked.position);
            };
        }
    }

    private record Asked(Joint joint, Phase phase, int position) {}

    private SideBySide(Joint joint, Quantity quantity, Phase phase, List<Compared> compared) {
        this.joint = joint;
        this.quantity = quantity;
        this.phase = phase;
        this.compared = List.copyOf(compared);
    }

    /**
     * A comparison.
     *
     * @param joint whose torque, effort or stress, and whose angle runs along it
     * @param quantity what is compared
     * @param phase held, lifting or lowering
     * @param compared one to four; those in which the joint is not computed get a word instead of a line
     */
    public static SideBySide of(Joint joint, Quantity quantity, Phase phase, List<Compared> compared) {
        Require.within(compared.size(), new Require.Limits(1, INKS.length), "exercises side by side", "");
        return new SideBySide(joint, quantity, phase, compared);
    }

    /** The chart. */
    public Chart chart() {
        List<Layer> layers = new ArrayList<>();
        for (int k = 0; k < compared.size(); k++) {
            layers.add(layer(k));
        }
        if (quantity == Quantity.KNEECAP_STRESS) {
            beyondPublished(layers);
        }
        for (Crossing crossing : crossings()) {
            String words = "equal at " + Wording.metric().angle().say(crossing.angle());
            layers.add(new Layer.Mark(crossing.angle(), crossing.value(), words));
        }
        return new Chart(title(), quantity.measure, range(), layers, OptionalInt.empty());
    }

    private String title() {
        String what = quantity == Quantity.KNEECAP_STRESS ? quantity.words : joint.words() + ": " + quantity.words;
        return Words.sentence(what) + ", " + phase.words();
    }

    private void beyondPublished(List<Layer> layers) {
        for (int k = 0; k < compared.size(); k++) {
            LimbProfile limb = compared.get(k).limb();
            if (computed(k) && StressChart.stretch(layers, limb, i -> limb.angle(Joint.KNEE, i))) {
                return;
            }
        }
    }

    private boolean computed(int k) {
        return compared.get(k).limb().joints().contains(joint);
    }

    private Layer layer(int k) {
        String name = compared.get(k).name();
        if (!computed(k) || !series(k).anyKnown()) {
            return new Layer.Note(name + ": not known for the " + joint.words(), Layer.Note.Place.MIDDLE);
        }
        Look look = Look.of(INKS[k], STROKES[k]).marked(MARKERS[k]).heading(Heading.of(phase));
        return new Layer.Curve(series(k), look, name, k == 0 ? "not known here" : "");
    }

    private Series series(int k) {
        LimbProfile limb = compared.get(k).limb();
        double[] angle = limb.path().angles(joint);
        double[] value = new double[angle.length];
        for (int i = 0; i < angle.length; i++) {
            value[i] = quantity.of(limb, new Asked(joint, phase, i));
        }
        return new Series(angle, value);
    }

    // from the largest angle of all to the smallest, unless the first exercise runs the other way
    private Range range() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double sense = 1;
        for (int k = compared.size() - 1; k >= 0; k--) {
            if (computed(k)) {
                double[] angles = compared.get(k).limb().path().angles(joint);
                for (double angle : angles) {
                    low = Math.min(low, angle);
                    high = Math.max(high, angle);
                }
                sense = angles[angles.length - 1] - angles[0];
            }
        }
        Coordinate angle = Coordinate.of(joint);
        if (low > high) {
            return Range.between(angle, 0, Math.PI / 2);
        }
        return sense < 0 ? Range.between(angle, high, low) : Range.between(angle, low, high);
    }

    /** Where two of them ask the same of the same action, by pair in the order given, larger angles of a pair first. */
    public List<Crossing> crossings() {
        List<Crossing> found = new ArrayList<>();
        for (int a = 0; a < compared.size(); a++) {
            for (int b = a + 1; b < compared.size(); b++) {
                if (computed(a) && computed(b)) {
                    found.addAll(crossings(a, b));
                }
            }
        }
        return found;
    }

    private List<Crossing> crossings(int a, int b) {
        List<Crossing> found = new ArrayList<>();
        for (int sense : new int[] {1, -1}) {
            Crossings crossings = new Crossings(asking(a, sense), asking(b, sense));
            found.addAll(
                    crossings.between(compared.get(a).name(), compared.get(b).name()));
        }
        return found;
    }

    // only where the joint's named action is asked for, or only where its opposite is: equal efforts of two actions say
    // nothing
    private Series asking(int k, int sense) {
        LimbProfile limb = compared.get(k).limb();
        Series all = series(k);
        double[] angle = new double[all.size()];
        double[] value = new double[all.size()];
        for (int i = 0; i < angle.length; i++) {
            angle[i] = all.x(i);
            value[i] = limb.torque(joint, phase, i) * sense > 0 ? all.y(i) : Double.NaN;
        }
        return new Series(angle, value);
    }
}
