package counterpull.engine.profile;

import counterpull.engine.Require;
import counterpull.engine.motion.LegOnPlate;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.motion.Stance;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import java.util.ArrayList;
import java.util.List;

/**
 * One person on one sled with one setup: the input of a profile.
 *
 * @param person who
 * @param sled on what
 * @param stance how they sit and stand
 * @param pushing which way they push
 * @param tempo how fast
 * @param loading what is on the sled
 * @param positions how many positions of the range to look at, 3 or more
 */
public record PressTask(
        Person person, Sled sled, Stance stance, Pushing pushing, Tempo tempo, Loading loading, int positions) {
    /** How many positions a profile has unless stated. */
    public static final int USUAL_POSITIONS = 101;

    public PressTask {
        for (Limb limb : person.limbs()) {
            limb.range().asKneeOfPress();
        }
        Require.within(positions, new Require.Limits(3, 10001), "positions of the range", "");
    }

    /** The legs on the plate, in the person's order. */
    public List<LegOnPlate> legs() {
        List<LegOnPlate> legs = new ArrayList<>();
        for (Limb limb : person.limbs()) {
            legs.add(new LegOnPlate(limb.leg(), sled.rail(), stance));
        }
        return legs;
    }

    /** The person's own range here, its bottom at the next stop on the shallower side where the sled has stops. */
    public RailStroke stroke() {
        RailStroke own = ownStroke();
        if (!sled.stops().any()) {
            return own;
        }
        return own.from(sled.stops().nextShallower(own.bottom(), stance.seat(), sled.rail()));
    }

    /** The person's own range here, without stops. */
    public RailStroke ownStroke() {
        List<WorkingRange> ranges = new ArrayList<>();
        for (Limb limb : person.limbs()) {
            ranges.add(limb.range().asKneeOfPress());
        }
        return RailStroke.own(legs(), ranges);
    }

    /** The same task with another loading. */
    public PressTask with(Loading other) {
        return new PressTask(person, sled, stance, pushing, tempo, other, positions);
    }

    /** The same task in another stance. */
    public PressTask with(Stance other) {
        return new PressTask(person, sled, other, pushing, tempo, loading, positions);
    }

    /** The same task with another person. */
    public PressTask with(Person other) {
        return new PressTask(other, sled, stance, pushing, tempo, loading, positions);
    }

    /** The same task on another sled. */
    public PressTask with(Sled other) {
        return new PressTask(person, other, stance, pushing, tempo, loading, positions);
    }

    /** The same task pushed in another way. */
    public PressTask with(Pushing other) {
        return new PressTask(person, sled, stance, other, tempo, loading, positions);
    }

    /** The same task at another tempo. */
    public PressTask with(Tempo other) {
        return new PressTask(person, sled, stance, pushing, other, loading, positions);
    }
}
