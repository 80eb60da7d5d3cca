package counterpull.picture;

import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import java.util.Optional;

/**
 * The person doing an exercise, at one position, drawn from the result's own posture: the whole body with what is held and what moves,
 * whatever resists, the forces on the limb to scale, where a tape is laid, and the moment arms of a chosen joint; the lowest and the
 * highest position as ghosts. What a result does not hold (how the rest of the body sits, lies or stands) carries no number.
 *
 * @param profile the result
 * @param build how big the rest of the person is drawn
 * @param position which position
 * @param phase which phase's forces and torque are written
 * @param limb index of the limb that is drawn
 * @param joint whose moment arms are drawn, or empty
 */
public record ExerciseFigure(
        ExerciseProfile profile, Build build, int position, Phase phase, int limb, Optional<Joint> joint) {
    public ExerciseFigure {
        Require.within(position, new Require.Limits(0, profile.positions() - 1), "position of the figure", "");
        Require.within(limb, new Require.Limits(0, profile.limbs().size() - 1), "limb of the figure", "");
    }

    /** Held at the bottom, no joint chosen, the person's own proportions as far as the profile has them. */
    public static ExerciseFigure of(ExerciseProfile profile) {
        Build build = Build.of(profile.limbs().get(0).limb().body());
        return new ExerciseFigure(profile, build, 0, Phase.HELD, 0, Optional.empty());
    }

    /** With the person's own proportions. */
    public ExerciseFigure built(Build other) {
        return new ExerciseFigure(profile, other, position, phase, limb, joint);
    }

    /** At another position. */
    public ExerciseFigure at(int other) {
        return new ExerciseFigure(profile, build, other, phase, limb, joint);
    }

    /** In another phase. */
    public ExerciseFigure during(Phase other) {
        return new ExerciseFigure(profile, build, position, other, limb, joint);
    }

    /** With another limb. */
    public ExerciseFigure front(int other) {
        return new ExerciseFigure(profile, build, position, phase, other, joint);
    }

    /** With the moment arms of a joint. */
    public ExerciseFigure showing(Joint chosen) {
        return new ExerciseFigure(profile, build, position, phase, limb, Optional.of(chosen));
    }

    /** The figure as an SVG picture. */
    public String svg(View view) {
        return new ExerciseDrawing(this, view).draw();
    }
}
