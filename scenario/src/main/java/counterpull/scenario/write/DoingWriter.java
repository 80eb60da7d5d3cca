package counterpull.scenario.write;

import counterpull.scenario.content.Doing;
import counterpull.scenario.content.Exercise.Using;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Words;
import counterpull.scenario.movement.MovementKind;
import counterpull.scenario.movement.MovementKind.Movement;
import counterpull.scenario.movement.MovementKinds;
import counterpull.scenario.movement.MovingBody;
import counterpull.scenario.resist.ResistKinds;
import counterpull.scenario.resist.Setting;
import counterpull.scenario.units.Dimension;
import java.util.Optional;

/** Writes what the person does, against what. */
final class DoingWriter {
    private DoingWriter() {}

    static void write(Doing doing, Out out) {
        Setting setting = new Setting(MovingBody.of(doing.motion()), Optional.of(doing.resists()));
        out.put("exercise", exercise(doing))
                .putGroups("resists", doing.resists(), resisting -> ResistKinds.write(resisting, setting));
    }

    private static Out exercise(Doing doing) {
        MovementKind kind = MovementKinds.of(doing.motion());
        Out out = new Out()
                .put("kind", kind.word())
                .put("limbs", Words.LIMBS.word(doing.sides().using()));
        if (doing.sides().using() == Using.BOTH) {
            out.put("left share", doing.sides().leftShare(), Dimension.RATIO);
        }
        out.put("borne", doing.borne(), Dimension.RATIO);
        doing.stroke().range().ifPresent(range -> out.put("range", kind.range(range)));
        kind.write(new Movement(doing.motion(), doing.stroke().lift()), out);
        return out;
    }
}
