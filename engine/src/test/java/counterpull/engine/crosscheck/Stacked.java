package counterpull.engine.crosscheck;

import counterpull.engine.load.Loaded;
import counterpull.engine.load.StackLine;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Sled;
import java.util.Optional;
import java.util.Random;

/** The same task on a sled that a weight stack drives, with a seeded random line. */
final class Stacked {
    private Stacked() {}

    static PressTask on(PressTask task, long seed) {
        // neighbouring seeds begin alike
        Random random = new Random(seed * 7919);
        random.nextDouble();
        Loaded stack = new Loaded(
                20 * random.nextDouble(), Loaded.Plates.values()[random.nextInt(Loaded.Plates.values().length)]);
        // 2 and more, so that no stroke of the random tempos is too quick for the stack
        StackLine line =
                new StackLine(2 + 2 * random.nextDouble(), 0.2 * random.nextDouble(), stack, 3 * random.nextDouble());
        Sled sled = task.sled();
        return new PressTask(
                task.person(),
                new Sled(sled.rail(), sled.carriage(), sled.stops(), Optional.of(line)),
                task.stance(),
                task.pushing(),
                task.tempo(),
                task.loading(),
                task.positions());
    }
}
