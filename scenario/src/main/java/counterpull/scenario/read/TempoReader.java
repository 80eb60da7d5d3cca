package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.PAUSE;
import static counterpull.scenario.format.Measures.STROKE_SPEED;
import static counterpull.scenario.format.Measures.STROKE_TIME;
import static counterpull.scenario.format.Measures.TURN_TIME;

import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.Flowing;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Tempo;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import java.util.Optional;

/** Reads the tempo. */
final class TempoReader {
    private TempoReader() {}

    static Optional<Tempo> read(Fields top) {
        return top.group("tempo", Shapes.TEMPO)
                .flatMap(fields ->
                        fields.oneOf("full stop", "flowing", "bounce").flatMap(given -> tempo(fields, given)));
    }

    private static Optional<Tempo> tempo(Fields fields, String given) {
        return switch (given) {
            case "full stop" -> fields.group(given, Shapes.FULL_STOP).flatMap(TempoReader::fullStop);
            case "flowing" -> fields.group(given, Shapes.FLOWING).flatMap(TempoReader::flowing);
            default -> fields.group(given, Shapes.BOUNCE).flatMap(TempoReader::bounce);
        };
    }

    private static Optional<Tempo> fullStop(Fields fields) {
        double lowering = fields.required("lowering", STROKE_TIME);
        double lowPause = fields.orElse("low pause", PAUSE, 0);
        double lifting = fields.required("lifting", STROKE_TIME);
        double highPause = fields.orElse("high pause", PAUSE, 0);
        return fields.built(() -> new FullStop(new Tempo.Seconds(lowering, lowPause, lifting, highPause)));
    }

    private static Optional<Tempo> flowing(Fields fields) {
        Flowing.Turn turn = fields.choice("at", Words.TURN);
        double lowering = fields.required("lowering", STROKE_TIME);
        double lifting = fields.required("lifting", STROKE_TIME);
        return fields.built(() -> new Flowing(lowering, lifting, turn));
    }

    private static Optional<Tempo> bounce(Fields fields) {
        double down = fields.required("lowering speed", STROKE_SPEED);
        double up = fields.required("lifting speed", STROKE_SPEED);
        double turn = fields.required("turn time", TURN_TIME);
        return fields.built(() -> new Bounce(down, up, turn));
    }
}
