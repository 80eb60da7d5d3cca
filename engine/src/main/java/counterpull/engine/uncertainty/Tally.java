package counterpull.engine.uncertainty;

import counterpull.engine.Fault;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Profile;
import java.util.List;

/**
 * What a number of draws gave, counted. Whoever draws has one of their own; {@link #add(Tally)} puts them together, in any order, with
 * the same result.
 */
public final class Tally {
    private static final Phase[] PHASES = Phase.values();
    private static final double TOUCH = 1e-9;

    private final List<Joint> joints;
    private final List<JointRanges> limits;
    private final Looked looked;
    private final int positions;
    private final boolean[] named;
    private final Histogram cells;
    private final Histogram peak = new Histogram(1);
    private final int[] refused = new int[Fault.values().length];
    private final int[] beyond;
    private final int[] hardest;
    private int setUp;
    private int passed;

    Tally(Profile nominal, List<JointRanges> limits, Looked looked) {
        joints = nominal.joints();
        this.limits = limits;
        this.looked = looked;
        positions = nominal.positions();
        named = new boolean[joints.size()];
        for (int j = 0; j < named.length; j++) {
            named[j] = looked.joints().contains(joints.get(j));
        }
        cells = new Histogram(PHASES.length * positions * joints.size());
        beyond = new int[joints.size()];
        hardest = new int[Action.values().length];
    }

    int cell(Joint joint, Phase phase, int position) {
        return (phase.ordinal() * positions + position) * joints.size() + joints.indexOf(joint);
    }

    /** Counts a draw that could be set up. */
    void add(Profile profile) {
        setUp++;
        double[] efforts = profile.efforts();
        int largest = -1;
        for (int cell = 0; cell < efforts.length; cell++) {
            double effort = efforts[cell];
            if (effort >= 0) {
                cells.add(cell, effort);
                boolean larger = named[cell % named.length] && (largest < 0 || effort > efforts[largest]);
                largest = larger ? cell : largest;
            }
        }
        if (largest >= 0) {
            peak(profile, largest, efforts[largest]);
        }
        limits(profile);
    }

    private void peak(Profile profile, int cell, double largest) {
        peak.add(0, largest);
        passed += largest > looked.ceiling() ? 1 : 0;
        Joint joint = joints.get(cell % named.length);
        int position = cell / named.length % positions;
        Phase phase = PHASES[cell / named.length / positions];
        for (LimbProfile limb : profile.limbs()) {
            if (limb.effort(joint, phase, position) == largest) {
                hardest[limb.asked(joint, phase, position).ordinal()]++;
                return;
            }
        }
    }

    private void limits(Profile profile) {
        for (int j = 0; j < beyond.length; j++) {
            boolean anywhere = false;
            for (int k = 0; k < limits.size(); k++) {
                anywhere |= beyond(profile.limbs().get(k), limits.get(k), joints.get(j));
            }
            beyond[j] += anywhere ? 1 : 0;
        }
    }

    private boolean beyond(LimbProfile limb, JointRanges ranges, Joint joint) {
        double low = ranges.of(joint).low() - TOUCH;
        double high = ranges.of(joint).high() + TOUCH;
        if (low == Double.NEGATIVE_INFINITY && high == Double.POSITIVE_INFINITY) {
            return false;
        }
        for (int i = 0; i < positions; i++) {
            double angle = limb.angle(joint, i);
            if (angle < low || angle > high) {
                return true;
            }
        }
        return false;
    }

    /** Counts a draw that could not be set up. */
    void refused(Fault fault) {
        refused[fault.ordinal()]++;
    }

    /** Adds all that another one counted of the same trial. */
    public void add(Tally other) {
        cells.add(other.cells);
        peak.add(other.peak);
        add(refused, other.refused);
        add(beyond, other.beyond);
        add(hardest, other.hardest);
        setUp += other.setUp;
        passed += other.passed;
    }

    private static void add(int[] to, int[] from) {
        for (int at = 0; at < to.length; at++) {
            to[at] += from[at];
        }
    }

    List<Joint> joints() {
        return joints;
    }

    Looked looked() {
        return looked;
    }

    int positions() {
        return positions;
    }

    Histogram cells() {
        return cells;
    }

    Histogram peak() {
        return peak;
    }

    int setUp() {
        return setUp;
    }

    int refusedCount(Fault fault) {
        return refused[fault.ordinal()];
    }

    int beyond(int joint) {
        return beyond[joint];
    }

    int hardest(Action action) {
        return hardest[action.ordinal()];
    }

    int passed() {
        return passed;
    }
}
