package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.Refusal;
import counterpull.engine.crosscheck.RandomSled;
import counterpull.engine.motion.Stops;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Trials;
import java.util.Random;

/** Seeded random sleds, and levers and carriages of exercises. */
final class RandomMachines {
    private final Random random;
    private final RandomSled sleds;
    private final RandomParts parts;

    RandomMachines(long seed) {
        random = new Random(seed);
        sleds = new RandomSled(seed);
        parts = new RandomParts(random);
    }

    /** Both kinds of ride, counterweights, up to three lines above and below, loss; every other one with a stop. */
    PressTask task() {
        PressTask task = usable();
        if (random.nextBoolean()) {
            return task;
        }
        double mark = task.stance()
                .seat()
                .markAt(task.ownStroke().bottom(), task.sled().rail());
        return Trials.with(task, new Stops(mark));
    }

    /** The next that the engine takes: legs that reach the row, a range, lines that have a direction. */
    private PressTask usable() {
        while (true) {
            PressTask task = sleds.next();
            try {
                Groundwork.of(task);
                return task;
            } catch (Refusal refused) {
                assertThat(refused.fault()).isNotNull();
            }
        }
    }

    /** A sled of {@link #task} or a lever or carriage of an exercise. */
    LoneMachine machine() {
        return random.nextInt(3) == 0 ? parts.next() : FreeSled.of(task());
    }

    /** Somewhere between its ends, held or moving either way. */
    Release release(LoneMachine machine) {
        Ends ends = machine.ends();
        double place = ends.low() + (ends.high() - ends.low()) * random.nextDouble();
        int kind = random.nextInt(3);
        return new Release(place, kind == 0 ? 0 : (kind == 1 ? -1 : 1) * random.nextDouble());
    }

    /** A lever or carriage of an exercise. */
    FreePart part() {
        return parts.next();
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
