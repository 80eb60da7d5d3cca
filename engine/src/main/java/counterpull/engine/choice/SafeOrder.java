package counterpull.engine.choice;

import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.LineSeries;
import counterpull.engine.load.SledFrame;
import counterpull.engine.motion.LegOnPlate;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressTask;
import java.util.ArrayList;
import java.util.List;

/**
 * A safe order to load a setup, all at one resting place (a racking position within the legs' reach, or the bottom stop), the
 * one where the lines are loosest:
 * plates alternately left and right, heaviest first, then the lines, then unrack; unloading is the same backwards. At every step with rubber on, and at every racking and stop position, the
 * carriage must stay down by itself: its weight along the rail (with a stack's pull) at least 1.2 times what the lines pull it up with, friction not
 * counted and nobody on the sled. And the stop must catch before the pain-free depth if the person lets go.
 */
public final class SafeOrder {
    /** Weight over pull that counts as staying down by itself; common practice, no source. */
    public static final double MARGIN = 1.2;

    private static final double TOUCH = 1e-9;
    private final PressTask task;
    private final Racking racking;
    private final Kit kit;
    private final double bottom;
    private final List<Step> steps = new ArrayList<>();
    private final double[] marks;

    private SafeOrder(PressTask task, Racking racking, Kit kit, double bottom) {
        this.task = task;
        this.racking = racking;
        this.kit = kit;
        this.bottom = bottom;
        marks = marks();
    }

    /**
     * The order for a setup.
     *
     * @param candidate the setup
     * @param racking the sled's racking positions
     * @param kit names and masses of the plates
     */
    public static SafeOrder of(Candidate candidate, Racking racking, Kit kit) {
        PressTask task = candidate.place().ground().task().with(candidate.loading());
        SafeOrder order =
                new SafeOrder(task, racking, kit, candidate.place().stroke().bottom());
        order.build(candidate);
        return order;
    }

    /** What is done in a step. */
    public enum Kind {
        RACK,
        SET_STOP,
        REST_ON_STOP,
        PLATE_LEFT,
        PLATE_RIGHT,
        PLATE_MIDDLE,
        HANG_LINE,
        UNRACK
    }

    /**
     * One step of the order.
     *
     * @param kind what is done
     * @param label plate or line it is done with; empty where none
     * @param mark tape reading it is done at, m; NaN where it does not matter
     * @param check how the carriage stays down once it is done
     */
    public record Step(Kind kind, String label, double mark, Check check) {}

    /**
     * How the carriage stays down by itself after a step: the worst of all racking and stop positions.
     *
     * @param weight weight along the rail toward the bottom, N
     * @param pull what the lines pull toward the top there, N; 0 or below where they do not
     * @param mark tape reading of that position, m
     * @param imbalance left against right, kg
     */
    public record Check(double weight, double pull, double mark, double imbalance) {
        /** Whether weight is at least {@link #MARGIN} times the pull. */
        public boolean staysDown() {
            return pull <= 0 ? weight > 0 : weight >= MARGIN * pull;
        }
    }

    private double[] marks() {
        List<Double> found = new ArrayList<>(racking.racks());
        found.add(task.stance().seat().markAt(bottom, task.sled().rail()));
        double[] marks = new double[found.size()];
        for (int i = 0; i < marks.length; i++) {
            marks[i] = found.get(i);
        }
        return marks;
    }

    private void build(Candidate candidate) {
        double rack = rack(candidate.lines());
        OnSled bare = new OnSled(0, 0, List.of());
        if (!onStop(rack)) {
            step(Kind.RACK, "", rack, bare);
        }
        if (stopped()) {
            step(Kind.SET_STOP, "", stopMark(), bare);
        }
        if (onStop(rack)) {
            step(Kind.REST_ON_STOP, "", rack, bare);
        }
        loadPlates(candidate.plates(), rack);
        double total = candidate.plates().total();
        List<ElasticLine> hung = new ArrayList<>();
        for (ElasticLine line : candidate.lines()) {
            hung.add(line);
            step(Kind.HANG_LINE, line.words(), rack, new OnSled(total, 0, hung));
        }
        step(Kind.UNRACK, "", Double.NaN, new OnSled(total, 0, hung));
    }

    /** Plates, left-right difference and lines at one moment of the loading. */
    private record OnSled(double plates, double imbalance, List<ElasticLine> lines) {}

    private void loadPlates(PlateSet plates, double rack) {
        double total = 0;
        for (int k : heaviestFirst(plates)) {
            PlateKind kind = kit.plates().get(k);
            for (int i = 0; i < plates.counts().get(k); i++) {
                total += kind.mass();
                boolean left = i % 2 == 0;
                double imbalance = kit.platesAtOnce() == 2 && left ? kind.mass() : 0;
                Kind what = kit.platesAtOnce() == 1 ? Kind.PLATE_MIDDLE : left ? Kind.PLATE_LEFT : Kind.PLATE_RIGHT;
                step(what, kind.name(), rack, new OnSled(total, imbalance, List.of()));
            }
        }
    }

    private List<Integer> heaviestFirst(PlateSet plates) {
        List<Integer> order = new ArrayList<>();
        for (int k = 0; k < plates.counts().size(); k++) {
            order.add(k);
        }
        order.sort((a, b) ->
                Double.compare(kit.plates().get(b).mass(), kit.plates().get(a).mass()));
        return order;
    }

    /**
     * Where all of it is done: of the racking positions from which the legs can take over (else of all) the one at which the
     * tightest of the lines is loosest; resting on the stop where that is looser still, or where there is no rack; without
     * lines the first rack.
     */
    private double rack(List<ElasticLine> lines) {
        List<Double> inReach = racksInReach();
        List<Double> racks = new ArrayList<>(inReach.isEmpty() ? racking.racks() : inReach);
        if (racks.isEmpty() || stopped() && !lines.isEmpty()) {
            racks.add(stopMark());
        }
        double best = racks.get(0);
        double most = Double.NEGATIVE_INFINITY;
        for (double mark : racks) {
            double tightest = tightest(lines, mark);
            if (tightest > most) {
                most = tightest;
                best = mark;
            }
        }
        return best;
    }

    /** Looseness of the tightest line at a mark, m. */
    private double tightest(List<ElasticLine> lines, double mark) {
        double least = Double.POSITIVE_INFINITY;
        for (ElasticLine line : lines) {
            least = Math.min(least, series(line, mark).looseness(0));
        }
        return least;
    }

    private double stopMark() {
        return marks[marks.length - 1];
    }

    private boolean onStop(double mark) {
        return stopped() && Math.abs(mark - stopMark()) < TOUCH;
    }

    private List<Double> racksInReach() {
        List<Double> found = new ArrayList<>();
        for (double mark : racking.racks()) {
            double plate = task.stance().seat().plateAt(mark, task.sled().rail());
            if (plate >= bottom - TOUCH && plate <= straight() + TOUCH) {
                found.add(mark);
            }
        }
        return found;
    }

    /** The farthest that every leg reaches, as hip-to-plate distance, m. */
    private double straight() {
        double nearest = Double.POSITIVE_INFINITY;
        for (LegOnPlate leg : task.legs()) {
            nearest = Math.min(nearest, leg.plateAt(0));
        }
        return nearest;
    }

    private LineSeries series(ElasticLine line, double mark) {
        double plate = task.stance().seat().plateAt(mark, task.sled().rail());
        SledFrame frame = new SledFrame(task.sled().rail(), task.stance().seat());
        return LineSeries.of(line, new double[] {plate}, frame);
    }

    private void step(Kind kind, String label, double mark, OnSled on) {
        Check worst = null;
        for (double at : marks) {
            Check check = new Check(task.sled().restingForce(on.plates), pull(on.lines, at), at, on.imbalance);
            if (worst == null || worse(check.pull, worst.pull)) {
                worst = check;
            }
        }
        steps.add(new Step(kind, label, mark, worst));
    }

    // a rubber past its tested length has no known pull: NaN wins over every number, and does not stay down
    private static boolean worse(double pull, double than) {
        return !Double.isNaN(than) && !(pull <= than);
    }

    private double pull(List<ElasticLine> lines, double mark) {
        double sum = 0;
        for (ElasticLine line : lines) {
            sum -= line.strands() * series(line, mark).push(Phase.HELD, 0);
        }
        return sum;
    }

    /** The steps of loading, in order; unloading is the same list backwards. */
    public List<Step> steps() {
        return List.copyOf(steps);
    }

    /** Whether the carriage stays down by itself after every step, at every racking and stop position. */
    public boolean staysDown() {
        for (Step step : steps) {
            if (!step.check.staysDown()) {
                return false;
            }
        }
        return true;
    }

    /** Whether there is a racking position between the stop and straight legs, from which the legs can take over. */
    public boolean rackInReach() {
        return !racksInReach().isEmpty();
    }

    /** Whether left and right never differ by more than the machine allows. */
    public boolean balanced() {
        for (Step step : steps) {
            if (step.check.imbalance > racking.mostImbalance()) {
                return false;
            }
        }
        return true;
    }

    /** Whether the sled has a stop at all. */
    public boolean stopped() {
        return task.sled().stops().any();
    }

    /** Whether the stop catches at or above every limb's pain-free depth; false where there is no stop. */
    public boolean catchesBeforePain() {
        List<LegOnPlate> legs = task.legs();
        for (int k = 0; k < legs.size(); k++) {
            double knee = legs.get(k).kneeAt(bottom);
            if (knee > task.person().limbs().get(k).range().painFree() + 1e-9) {
                return false;
            }
        }
        return stopped();
    }
}
