package counterpull.engine.profile;

import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.load.FixedPointLoads;
import counterpull.engine.load.Pull;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StretchLine;
import counterpull.engine.load.StretchSeries;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.WorkingRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one exercise asks of one person, over phases and positions (bottom first), beside what they have. A pure function of its task;
 * read-only.
 *
 * <p>Refuses a posture past a joint's own range, and a setup in which a line goes slack, a pad loses
 * contact or a foot tips anywhere: also between the positions, where these are few.
 */
public final class ExerciseProfile extends Profile {
    /** So many positions at the least are looked at for what must not happen anywhere; ours. */
    private static final int LOOKED_AT = 101;

    private final ExerciseTask task;
    private final WorkingRange range;
    private final Course course;
    private final List<ExerciseLimb> limbs;

    private ExerciseProfile(ExerciseTask task) {
        this.task = task;
        range = task.range();
        course = Course.even(Math.abs(range.top() - range.bottom()), task.positions(), task.tempo());
        List<ChainPath> paths = new ArrayList<>();
        for (Limb limb : task.person().limbs()) {
            paths.add(path(limb));
        }
        Grid grid = new Grid(task.positions(), task.exercise().motion().joints());
        Capacity capacity = Capacity.of(task.person().limbs(), paths, grid);
        List<ExerciseLimb> found = new ArrayList<>();
        for (int k = 0; k < paths.size(); k++) {
            found.add(limb(k, paths.get(k), capacity));
        }
        limbs = List.copyOf(found);
    }

    /** The profile of a task. */
    public static ExerciseProfile of(ExerciseTask task) {
        if (task.positions() < LOOKED_AT) {
            atPositionsAlone(task.lookedAtFrom(finer(task.positions())));
        }
        return atPositionsAlone(task);
    }

    /** The same without a look between its positions: beside something else that has only these. */
    public static ExerciseProfile atPositionsAlone(ExerciseTask task) {
        return new ExerciseProfile(task).held();
    }

    // as many as are looked at, its own among them
    private static int finer(int positions) {
        int steps = positions - 1;
        return (LOOKED_AT - 1 + steps - 1) / steps * steps + 1;
    }

    private double share(Limb limb) {
        return limb.share() * task.exercise().borne();
    }

    private ChainPath path(Limb limb) {
        List<Motion.Carried> carried = new ArrayList<>();
        for (Resistance resistance : task.exercise().resists()) {
            carried.addAll(resistance.carried(task.plates()));
        }
        Motion motion = task.exercise().motion();
        ChainPath path = motion.path(new Motion.Moving(limb.body(), share(limb), range, course, carried));
        for (int i = 0; i < path.positions(); i++) {
            for (Joint joint : motion.joints()) {
                String at = where(i) + " (" + limb.side().words() + ")";
                limb.ranges().checkPosture(joint, path.angle(joint, i), at);
            }
        }
        return path;
    }

    private String where(int position) {
        if (position == 0) {
            return "at the bottom";
        }
        return position == course.positions() - 1
                ? "at the top"
                : "at " + Math.round(100 * course.fraction(position)) + " % of the range";
    }

    private ExerciseLimb limb(int index, ChainPath path, Capacity capacity) {
        double gravity = task.exercise().motion().gravity();
        List<Pull> pulls = new ArrayList<>();
        for (Resistance resistance : task.exercise().resists()) {
            pulls.addAll(pulls(resistance, path, gravity));
        }
        Limb limb = task.person().limbs().get(index);
        ChainTerms terms = ChainTerms.of(path, capacity.grid(), pulls, gravity);
        Optional<StandOnGround> stand = task.exercise().motion() instanceof BalancedStand
                ? Optional.of(new StandOnGround(limb.leg().foot(), gravity))
                : Optional.empty();
        return new ExerciseLimb(limb, capacity, index, new ExerciseLimb.Load(terms, share(limb), task.plates(), stand));
    }

    private static List<Pull> pulls(Resistance resistance, ChainPath path, double gravity) {
        try {
            return resistance.on(path, gravity);
        } catch (Refusal refusal) {
            throw refusal.of(resistance.words());
        }
    }

    private ExerciseProfile held() {
        for (ExerciseLimb limb : limbs) {
            new Contacts(limb, positions()).hold(this::where);
            limb.ground().ifPresent(ground -> ground.standing(this::where));
            hooks(limb.path());
        }
        return this;
    }

    private void hooks(ChainPath path) {
        List<StretchSeries> lines = new ArrayList<>();
        for (Resistance resistance : task.exercise().resists()) {
            if (resistance instanceof StretchLine line) {
                lines.add(line.over(path));
            }
        }
        for (FixedPointLoads loads : FixedPointLoads.of(lines, positions())) {
            loads.withinRating(this::where);
        }
    }

    /** What it was computed from. */
    public ExerciseTask task() {
        return task;
    }

    /** The stroke in its coordinate and in time. */
    public Course course() {
        return course;
    }

    /** The range that was worked over, which all limbs share. */
    public WorkingRange range() {
        return range;
    }

    @Override
    public int positions() {
        return course.positions();
    }

    @Override
    public List<ExerciseLimb> limbs() {
        return limbs;
    }

    @Override
    public Optional<Joint> driver() {
        return task.exercise().motion().driver();
    }

    @Override
    public double driving(int position) {
        return range.bottom() + (range.top() - range.bottom()) * course.fraction(position);
    }

    @Override
    public ExerciseReasons why() {
        return new ExerciseReasons(this);
    }
}
