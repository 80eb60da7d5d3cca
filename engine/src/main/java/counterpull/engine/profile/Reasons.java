package counterpull.engine.profile;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.jointload.BrechterPowers2002;
import counterpull.engine.jointload.Kneecap;
import counterpull.engine.strength.StrengthCurve;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Answers "why" for the numbers of one profile: what every exercise has in common. */
public abstract sealed class Reasons permits PressReasons, ExerciseReasons {
    private final Profile profile;

    Reasons(Profile profile) {
        this.profile = profile;
    }

    /** A joint's torque in the sense of its named action, N·m, term by term. */
    public abstract Why torque(Why.Place at);

    /** A joint's anatomical angle, rad. */
    public abstract Why angle(Why.Place at);

    /** An effort: torque asked over strength in the action that it asks for. */
    public Why effort(Why.Place at) {
        LimbProfile limb = profile.limbs().get(at.limb());
        double torque = limb.torque(at.joint(), at.phase(), at.position());
        Joint joint = at.joint();
        Action action = torque >= 0 ? joint.action() : joint.opposite();
        double speed = limb.path().actionSpeed(joint, at.phase(), at.position()) * (torque >= 0 ? 1 : -1);
        Optional<StrengthCurve> curve = limb.limb().strength().of(action);
        double angle = limb.angle(joint, at.position());
        List<Why.Input> inputs = new ArrayList<>();
        inputs.add(new Why.Input(action.words() + " torque asked", Math.abs(torque), "N·m"));
        inputs.add(new Why.Input(joint.words() + " angle", angle, "rad"));
        inputs.add(new Why.Input("how fast the action shortens", speed, "rad/s"));
        curve.ifPresent(c -> {
            inputs.add(new Why.Input("strength held still there", c.held(angle), "N·m"));
            inputs.add(new Why.Input("strength at that speed", c.atSpeed(angle, speed), "N·m"));
            inputs.add(new Why.Input("its 90 % band, held: from", c.lower90(angle), "N·m"));
            inputs.add(new Why.Input("to", c.upper90(angle), "N·m"));
        });
        return new Why(
                limb.effort(joint, at.phase(), at.position()),
                "share",
                "effort = torque asked / strength of " + action.words() + " at this angle and speed",
                inputs,
                List.of(),
                curve.map(StrengthCurve::source).orElse("nothing is known of " + action.words()));
    }

    /** The kneecap joint's mean contact stress, Pa; only where the knee is among the joints. */
    public Why kneecap(Why.Place at) {
        LimbProfile limb = profile.limbs().get(at.limb());
        Kneecap kneecap = new BrechterPowers2002();
        double knee = limb.angle(Joint.KNEE, at.position());
        double torque = limb.torque(Joint.KNEE, at.phase(), at.position());
        List<Why.Input> inputs = List.of(
                new Why.Input("knee flexion", knee, "rad"),
                new Why.Input("knee extension torque", torque, "N·m"),
                new Why.Input("lever arm of the quadriceps", kneecap.leverArm(knee), "m"),
                new Why.Input("quadriceps force", kneecap.quadricepsForce(knee, torque), "N"),
                new Why.Input("reaction over quadriceps force", kneecap.reactionRatio(knee), ""),
                new Why.Input("reaction force", kneecap.reaction(knee, torque), "N"),
                new Why.Input("contact area", kneecap.contactArea(knee), "m²"));
        return new Why(
                kneecap.stress(knee, torque),
                "Pa",
                "stress = ratio × (extension torque / lever arm) / contact area; none for a flexion torque",
                inputs,
                List.of(),
                kneecap.source());
    }
}
