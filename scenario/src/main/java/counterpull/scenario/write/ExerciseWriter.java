package counterpull.scenario.write;

import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.motion.Stance;
import counterpull.engine.profile.Push;
import counterpull.engine.profile.Pushing;
import counterpull.scenario.content.Exercise;
import counterpull.scenario.content.Exercise.Using;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Words;
import counterpull.scenario.units.Dimension;

/** Writes what the person does. */
final class ExerciseWriter {
    private ExerciseWriter() {}

    static Out exercise(Exercise exercise) {
        Stance stance = exercise.stance();
        Out out = new Out().put("kind", "rail press").put("limbs", Words.LIMBS.word(exercise.using()));
        if (exercise.using() == Using.BOTH) {
            out.put("left share", exercise.leftShare(), Dimension.RATIO);
        }
        return out.put("seat", stance.seat().name())
                .put("foot row", stance.row().name())
                .put("pressure point", stance.pressurePoint(), Dimension.RATIO)
                .put("hip shift", hipShift(stance))
                .put("push", push(exercise.pushing()))
                .put("seats to try", exercise.trying().seats(), SeatSetting::name)
                .put("foot rows to try", exercise.trying().rows(), FootRow::name)
                .put("further stops to try", exercise.trying().furtherStops());
    }

    private static Out hipShift(Stance stance) {
        return new Out()
                .put("along", stance.hipShift().x(), Dimension.LENGTH)
                .put("across", stance.hipShift().y(), Dimension.LENGTH);
    }

    private static Out push(Pushing pushing) {
        Out out = new Out();
        if (pushing.push() instanceof Push.Angled angled) {
            out.put("angle", angled.angle(), Dimension.ANGLE);
        } else if (pushing.push() instanceof Push.Through through) {
            out.put("through", Words.BODY_POINT.word(through.point()));
        } else if (pushing.push() instanceof Push.LeastEffort least) {
            out.put(
                    "least effort",
                    new Out().put("from", least.lowest(), Dimension.ANGLE).put("to", least.highest(), Dimension.ANGLE));
        }
        return out.put("interval", pushing.spread(), Dimension.ANGLE);
    }
}
