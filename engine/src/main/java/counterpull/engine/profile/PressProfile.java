package counterpull.engine.profile;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.load.LineSeries;
import counterpull.engine.load.Part;
import counterpull.engine.motion.Phase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one setup asks of one person, over phases and positions (bottom first), beside what they have. A pure function of its
 * task; read-only. Forces N, torques N·m, angles rad, lengths m.
 *
 * <p>Refuses a setup in which foot and plate lose contact anywhere.
 */
public final class PressProfile extends Profile {
    private final Groundwork ground;
    private final Loading loading;
    private final PressTask task;
    private final Asked asked;
    private final double[] amounts;
    private final List<PressLimb> limbs;

    private PressProfile(Groundwork ground, Loading loading) {
        this.ground = ground;
        this.loading = loading;
        task = ground.task().with(loading);
        amounts = ground.terms().amounts(loading);
        double[] force = ground.terms().contact(amounts);
        asked = Asked.of(
                ground, force, new PushDirection(ground, ground.task().pushing().push()));
        List<PressLimb> found = new ArrayList<>();
        for (int k = 0; k < ground.terms().limbs(); k++) {
            found.add(new PressLimb(ground, asked, k));
        }
        limbs = List.copyOf(found);
    }

    /** The profile of a task. */
    public static PressProfile of(PressTask task) {
        return of(Groundwork.of(task));
    }

    /** The profile of a loading on ground already laid out; its lines are laid over that range. */
    public static PressProfile of(Groundwork ground, Loading loading) {
        List<LineSeries> lines = new ArrayList<>();
        for (var line : loading.lines()) {
            lines.add(ground.series(line));
        }
        return new PressProfile(ground.with(lines), loading).inContact();
    }

    /** The profile of ground with its own task's loading, whose lines are laid over it already. */
    public static PressProfile of(Groundwork ground) {
        return new PressProfile(ground, ground.task().loading()).inContact();
    }

    /**
     * The profile of a loading whose lines are already laid over the ground, in the same order, even where contact is lost:
     * for a search, which judges the contact force itself.
     */
    public static PressProfile onGround(Groundwork withLines, Loading loading) {
        return new PressProfile(withLines, loading);
    }

    private PressProfile inContact() {
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < positions(); i++) {
                double push = force(phase, i);
                if (push < 0) {
                    throw new Refusal(
                            Fault.CONTACT_LOST,
                            "contact force along the rail while " + phase.words(),
                            push,
                            0,
                            "N",
                            "the load would leave the foot: something pulls the carriage up harder than its weight "
                                    + "holds it down. Use more plates or less rubber");
                }
            }
        }
        return this;
    }

    /** What it was computed from, with its own loading. */
    public PressTask task() {
        return task;
    }

    /** What is on the sled. */
    public Loading loading() {
        return loading;
    }

    @Override
    public int positions() {
        return ground.motion().positions();
    }

    /** Movement, terms and strength behind it. */
    public Groundwork ground() {
        return ground;
    }

    @Override
    public List<PressLimb> limbs() {
        return limbs;
    }

    /** Hip-to-plate distance, m. */
    public double plate(int position) {
        return ground.motion().plate(position);
    }

    /** Tape reading, m. */
    public double mark(int position) {
        return task().stance().seat().markAt(plate(position), task().sled().rail());
    }

    @Override
    public Optional<Joint> driver() {
        return Optional.of(Joint.KNEE);
    }

    @Override
    public double driving(int position) {
        return limbs.get(ground.motion().stroke().reference()).angle(Joint.KNEE, position);
    }

    /** Contact force of both limbs along the rail, N. */
    public double force(Phase phase, int position) {
        return asked.force[ground.terms().grid().cell(phase, position)];
    }

    /** What one part (weight, rubber, friction, inertia) adds to that force, N. */
    public double force(Part part, Phase phase, int position) {
        double sum = 0;
        List<Term> all = ground.terms().all();
        for (int t = 0; t < amounts.length; t++) {
            if (all.get(t).part() == part) {
                sum += amounts[t] * all.get(t).contact(ground.terms().grid().cell(phase, position));
            }
        }
        return sum;
    }

    /** The elastic lines over this range. */
    public List<LineSeries> lines() {
        return ground.terms().lines();
    }

    /** What happens at the turn near the bottom. */
    public Turnaround turnaround() {
        return Turnaround.of(this);
    }

    @Override
    public PressReasons why() {
        return new PressReasons(this);
    }

    double[] amounts() {
        return amounts;
    }

    Asked asked() {
        return asked;
    }
}
