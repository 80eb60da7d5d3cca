package counterpull.scenario.write;

import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.Flowing;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Tempo;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Words;
import counterpull.scenario.units.Dimension;

/** Writes the tempo. */
final class TempoWriter {
    private TempoWriter() {}

    static Out tempo(Tempo tempo) {
        Out out = new Out();
        if (tempo instanceof FullStop stop) {
            out.put("full stop", fullStop(stop.seconds()));
        } else if (tempo instanceof Flowing flowing) {
            out.put("flowing", flowing(flowing));
        } else if (tempo instanceof Bounce bounce) {
            out.put("bounce", bounce(bounce));
        }
        return out;
    }

    private static Out fullStop(Tempo.Seconds seconds) {
        return new Out()
                .put("lowering", seconds.lowering(), Dimension.TIME)
                .put("low pause", seconds.lowPause(), Dimension.TIME)
                .put("lifting", seconds.lifting(), Dimension.TIME)
                .put("high pause", seconds.highPause(), Dimension.TIME);
    }

    private static Out flowing(Flowing flowing) {
        return new Out()
                .put("at", Words.TURN.word(flowing.turn()))
                .put("lowering", flowing.lowering(), Dimension.TIME)
                .put("lifting", flowing.lifting(), Dimension.TIME);
    }

    private static Out bounce(Bounce bounce) {
        return new Out()
                .put("lowering speed", bounce.speedDown(), Dimension.SPEED)
                .put("lifting speed", bounce.speedUp(), Dimension.SPEED)
                .put("turn time", bounce.turnTime(), Dimension.TIME);
    }
}
