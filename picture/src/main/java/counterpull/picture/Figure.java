package counterpull.picture;

import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import java.util.Optional;

/**
 * The person on the sled at one position, drawn from the result's own posture: body, rail with its tape and stops, plates,
 * rubber, push, and the moment arm of a chosen joint; the lowest and the highest position as ghosts.
 *
 * @param profile the result
 * @param build how big the rest of the person is drawn
 * @param position which position
 * @param phase which phase's push and torque are written
 * @param limb index of the limb in front
 * @param joint whose moment arm is drawn, or empty
 */
public record Figure(PressProfile profile, Build build, int position, Phase phase, int limb, Optional<Joint> joint) {
    public Figure {
        Require.within(position, new Require.Limits(0, profile.positions() - 1), "position of the figure", "");
        Require.within(limb, new Require.Limits(0, profile.limbs().size() - 1), "limb of the figure", "");
    }

    /** Held at the bottom, no joint chosen, proportions of the rest of the body from the first leg. */
    public static Figure of(PressProfile profile) {
        Build build = Build.of(profile.limbs().get(0).limb().leg());
        return new Figure(profile, build, 0, Phase.HELD, 0, Optional.empty());
    }

    /** With the person's own proportions. */
    public Figure built(Build other) {
        return new Figure(profile, other, position, phase, limb, joint);
    }

    /** At another position. */
    public Figure at(int other) {
        return new Figure(profile, build, other, phase, limb, joint);
    }

    /** In another phase. */
    public Figure during(Phase other) {
        return new Figure(profile, build, position, other, limb, joint);
    }

    /** With another limb in front. */
    public Figure front(int other) {
        return new Figure(profile, build, position, phase, other, joint);
    }

    /** With the moment arm of a joint. */
    public Figure showing(Joint chosen) {
        return new Figure(profile, build, position, phase, limb, Optional.of(chosen));
    }

    /** The posture that is drawn. */
    public Posture posture() {
        return Posture.of(profile, limb, position);
    }

    /** The figure as an SVG picture. */
    public String svg(View view) {
        return new FigureDrawing(this, view).draw();
    }
}
