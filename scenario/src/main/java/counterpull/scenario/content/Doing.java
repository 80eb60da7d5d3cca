package counterpull.scenario.content;

import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.profile.Exercise;
import java.util.List;
import java.util.Optional;

/**
 * What the person does, against what.
 *
 * @param sides which limbs do it
 * @param motion the engine's movement
 * @param stroke which way the lift goes, and over which range
 * @param resists everything that resists, in the file's order
 * @param borne fraction of the whole load that the limbs bear together
 */
public record Doing(Sides sides, Motion motion, Stroke stroke, List<Resisting> resists, double borne) {
    public Doing {
        resists = List.copyOf(resists);
    }

    /**
     * A stroke as a file describes it.
     *
     * @param lift which way the lift goes
     * @param range the exercise's own range, in place of the limbs'; rad, or m along a path
     */
    public record Stroke(Lift lift, Optional<WorkingRange> range) {
        /** The range that a limb works over: the exercise's own, else the limb's own for the joint that drives. */
        public Optional<WorkingRange> of(ClientLimb limb, Optional<Joint> driver) {
            return range.or(() -> driver.flatMap(joint -> limb.ranges().lifting(joint, lift.sense())));
        }
    }

    /** The movement and what resists along it, as the engine takes them. */
    public Exercise exercise() {
        return new Exercise(motion, resists.stream().map(Resisting::resistance).toList(), borne);
    }

    /** The weight that the person chooses, kg; 0 where nothing takes any. */
    public double chosen() {
        return resists.stream()
                .map(Resisting::chosen)
                .flatMap(Optional::stream)
                .findFirst()
                .orElse(0.0);
    }

    /** The joint whose angle drives the movement; empty where travel along a path does. */
    public Optional<Joint> driver() {
        return motion.driver();
    }

    /** Whether a limb takes part. */
    public boolean uses(Side side) {
        return sides.using().uses(side);
    }

    /** The range that a limb works over, rad or m; a reader has seen to it that there is one. */
    public WorkingRange range(ClientLimb limb) {
        return stroke.of(limb, driver())
                .orElseThrow(() -> new IllegalStateException(
                        "no range of the " + limb.side().words() + " limb"));
    }
}
