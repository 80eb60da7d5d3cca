package counterpull.engine.uncertainty;

import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.motion.Tempo;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A press with the mark of its bottom stop held.
 *
 * <p>The stop is a mark on the frame. With another leg, seat or rail the mark stays and the knee's angle at the bottom is another one;
 * at the top the person stops at the knee's own angle. Without a stop both ends are the knee's own angles. The limb that counts the
 * positions stays the same one, so that a position means the same share of its range in every draw.
 *
 * @param task the task, its joints' own limits taken off
 * @param bottom tape reading of the stop, m; empty where the sled has none
 * @param reference which limb counts the positions
 * @param limits the joints' own limits of each limb
 */
public record PressTrial(PressTask task, OptionalDouble bottom, int reference, List<JointRanges> limits)
        implements Trial<PressTrial> {
    /** As the task has it; refuses what its profile refuses. */
    public static PressTrial of(PressTask task) {
        return of(PressProfile.of(task));
    }

    /** As a setup of a search has it: its own stop and its own number of positions. */
    public static PressTrial of(PressProfile profile) {
        PressTask task = profile.task();
        PressTask seen = new PressTask(
                open(task.person()),
                task.sled(),
                task.stance(),
                task.pushing(),
                task.tempo(),
                task.loading(),
                profile.positions());
        OptionalDouble mark = task.sled().stops().any() ? OptionalDouble.of(profile.mark(0)) : OptionalDouble.empty();
        int reference = profile.ground().motion().stroke().reference();
        return new PressTrial(seen, mark, reference, limits(task.person()));
    }

    static List<JointRanges> limits(Person person) {
        List<JointRanges> limits = new ArrayList<>();
        for (Limb limb : person.limbs()) {
            limits.add(limb.ranges());
        }
        return limits;
    }

    static Person open(Person person) {
        List<Limb> limbs = new ArrayList<>();
        for (Limb limb : person.limbs()) {
            limbs.add(limb.with(JointRanges.open()));
        }
        return new Person(person.mass(), limbs);
    }

    /** The same with another task. */
    public PressTrial with(PressTask other) {
        return new PressTrial(other, bottom, reference, limits);
    }

    @Override
    public Person person() {
        return task.person();
    }

    @Override
    public Tempo tempo() {
        return task.tempo();
    }

    @Override
    public PressTrial with(Person other) {
        return with(task.with(other));
    }

    @Override
    public PressTrial with(Tempo other) {
        return with(task.with(other));
    }

    @Override
    public PressProfile profile() {
        RailStroke stroke = stroke();
        double[] plate = stroke.equalAngles(task.legs().get(reference), task.positions());
        return PressProfile.of(Groundwork.of(task, stroke, plate));
    }

    private RailStroke stroke() {
        RailStroke own = task.ownStroke();
        double start = bottom.isPresent()
                ? task.stance().seat().plateAt(bottom.getAsDouble(), task.sled().rail())
                : own.bottom();
        return new RailStroke(start, own.top(), reference);
    }
}
