package counterpull.scenario.resist;

import static counterpull.scenario.format.Measures.RADIUS;

import counterpull.engine.load.Contact;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.RollerPad;
import counterpull.engine.load.RollerPad.Pushes;
import counterpull.engine.planar.Vec;
import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.movement.MovingBody;
import counterpull.scenario.units.Dimension;
import java.util.List;
import java.util.Optional;

/** Reads and writes where a lever turns and how it touches the limb: the keys pivot and pad or cuff. */
final class LeverFrames {
    static final Choices<Pushes> PUSHES =
            Choices.of(way -> way == Pushes.AGAINST_THE_LIFT ? "against the lift" : "with the lift", Pushes.values());

    private static final Shape PAD = Shape.of("pad", "on", "on lever", "pushes");
    private static final Shape CUFF = Shape.of("cuff", "on", "along");

    /** The groups that every machine with a lever has. */
    static final List<Shape> SHAPES = List.of(PAD, CUFF);

    private LeverFrames() {}

    static Optional<LeverFrame> read(Fields fields, MovingBody body) {
        Vec pivot = Places.read(fields, "pivot");
        Optional<Contact> contact = fields.oneOf("pad", "cuff")
                .flatMap(given -> given.equals("pad")
                        ? fields.group("pad", PAD).flatMap(group -> pad(group, body))
                        : fields.group("cuff", CUFF).flatMap(group -> cuff(group, body)));
        return fields.built(() -> new LeverFrame(pivot, contact.orElseThrow()));
    }

    private static Optional<Contact> pad(Fields fields, MovingBody body) {
        Optional<Integer> segment = body.index(fields);
        double onLever = fields.required("on lever", RADIUS);
        Pushes pushes = fields.optionalChoice("pushes", PUSHES).orElse(Pushes.AGAINST_THE_LIFT);
        return fields.built(() -> new RollerPad(segment.orElseThrow(), onLever, pushes));
    }

    private static Optional<Contact> cuff(Fields fields, MovingBody body) {
        Optional<Integer> segment = body.index(fields);
        double along = fields.required("along", RADIUS);
        return fields.built(() -> new Cuff(segment.orElseThrow(), along));
    }

    static Out write(Out out, LeverFrame frame, MovingBody body) {
        out.put("pivot", Places.written(frame.pivot()));
        if (frame.contact() instanceof RollerPad pad) {
            out.put(
                    "pad",
                    new Out()
                            .put("on", body.word(pad.segment()))
                            .put("on lever", pad.onLever(), Dimension.LENGTH)
                            .put("pushes", PUSHES.word(pad.pushes())));
        } else if (frame.contact() instanceof Cuff cuff) {
            out.put(
                    "cuff",
                    new Out().put("on", body.word(cuff.segment())).put("along", cuff.onLimb(), Dimension.LENGTH));
        }
        return out;
    }
}
