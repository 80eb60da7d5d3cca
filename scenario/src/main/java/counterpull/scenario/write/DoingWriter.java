package counterpull.scenario.write;

import counterpull.engine.load.Resistance;
import counterpull.scenario.content.Doing;
import counterpull.scenario.content.Exercise.Using;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Words;
import counterpull.scenario.movement.Link;
import counterpull.scenario.movement.MovementKind;
import counterpull.scenario.movement.MovementKind.Movement;
import counterpull.scenario.movement.MovementKinds;
import counterpull.scenario.movement.MovingBody;
import counterpull.scenario.resist.ResistKind.Resisting;
import counterpull.scenario.resist.ResistKinds;
import counterpull.scenario.units.Dimension;
import java.util.List;
import java.util.Optional;

/** Writes what the person does, against what. */
final class DoingWriter {
    private DoingWriter() {}

    static void write(Doing doing, Out out) {
        MovingBody body = new MovingBody(Link.of(doing.exercise().motion()), List.of());
        out.put("exercise", exercise(doing))
                .putGroups(
                        "resists",
                        doing.exercise().resists(),
                        resistance -> ResistKinds.write(resisting(resistance, doing), body));
    }

    private static Resisting resisting(Resistance resistance, Doing doing) {
        return new Resisting(resistance, resistance.takesPlates() ? Optional.of(doing.chosen()) : Optional.empty());
    }

    private static Out exercise(Doing doing) {
        MovementKind kind = MovementKinds.of(doing.exercise().motion());
        Out out = new Out()
                .put("kind", kind.word())
                .put("limbs", Words.LIMBS.word(doing.sides().using()));
        if (doing.sides().using() == Using.BOTH) {
            out.put("left share", doing.sides().leftShare(), Dimension.RATIO);
        }
        out.put("borne", doing.exercise().borne(), Dimension.RATIO);
        doing.stroke().range().ifPresent(range -> out.put("range", kind.range(range)));
        kind.write(new Movement(doing.exercise().motion(), doing.stroke().lift()), out);
        return out;
    }
}
