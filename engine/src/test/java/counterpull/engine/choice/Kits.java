package counterpull.engine.choice;

import counterpull.engine.body.Joint;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.Hang;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Trials;
import java.util.ArrayList;
import java.util.List;

/** Small kits and goals. On example B's sled the tape reads the hip-to-plate distance. */
final class Kits {
    static final Anchor UPPER = anchor("upper", 1.6, 0);
    static final Anchor LOWER = anchor("lower", 0.05, 0);
    static final List<Joint> ALL = Joint.LEG;

    private Kits() {}

    static Anchor anchor(String name, double along, double lateral) {
        return new Anchor(name, new Vec(along, 0.1), lateral, Double.POSITIVE_INFINITY);
    }

    static List<PlateKind> plates() {
        return List.of(new PlateKind("20 kg", 20, 6), new PlateKind("10 kg", 10, 2), new PlateKind("5 kg", 5, 2));
    }

    static RubberStock rubber(int count) {
        return new RubberStock(Trials.rubber("r", 0.5, 60), count);
    }

    static Kit of(List<PlateKind> plates, List<RubberStock> rubber, int mostLines, Anchor... anchors) {
        Kit.Hooks hooks = new Kit.Hooks(List.of(anchors), List.of(new Attachment("plate", new Vec(0, 0.1), 0)));
        LineRules rules = new LineRules(List.of(Hang.SINGLE, Hang.DOUBLED), List.of(0.0, 0.3), 4, mostLines);
        return new Kit(plates, 2, rubber, hooks, rules, places(0));
    }

    static Kit.Places places(int shallower, FootRow... more) {
        PressTask task = Trials.task();
        SeatSetting seat = task.stance().seat();
        List<FootRow> rows = new ArrayList<>(List.of(task.stance().row()));
        rows.addAll(List.of(more));
        return new Kit.Places(List.of(seat), rows, shallower);
    }

    static Kit with(Kit kit, Kit.Places places) {
        return new Kit(kit.plates(), kit.platesAtOnce(), kit.rubber(), kit.hooks(), kit.rules(), places);
    }

    /** Plates, two pieces, one hook above and one below, up to two lines. */
    static Kit full() {
        return of(plates(), List.of(rubber(2)), 2, UPPER, LOWER);
    }

    static Goal goal(double target, double ceiling) {
        return new Goal(EffortTarget.flat(target), ceiling, 0, ALL, Caps.none(), Goal.Straying.AS_TOLD);
    }

    static Goal goal(double target, double ceiling, Caps caps) {
        return new Goal(EffortTarget.flat(target), ceiling, 0, ALL, caps, Goal.Straying.AS_TOLD);
    }

    static Question question(PressTask task, Goal goal, Kit kit, Strategy... strategies) {
        return new Question(task, goal, kit, List.of(strategies));
    }

    static Question question(Goal goal, Kit kit) {
        return question(
                Trials.with(Trials.task(), 11),
                goal,
                kit,
                Strategy.LOAD_ALONE,
                Strategy.RELIEVE_LOW,
                Strategy.ADD_HIGH,
                Strategy.BOTH);
    }

    static Choice found(Question question) {
        Search search = new Search(question);
        while (search.advance(100_000)) {
            continue;
        }
        return search.result();
    }

    static Rubber piece() {
        return rubber(1).rubber();
    }
}
