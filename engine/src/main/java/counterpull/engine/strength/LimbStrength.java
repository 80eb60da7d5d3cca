package counterpull.engine.strength;

import counterpull.engine.body.Action;
import java.util.Optional;

/** The strength curves of one limb, one for each action or none. Immutable. */
public final class LimbStrength {
    private static final LimbStrength NONE = new LimbStrength(new StrengthCurve[Action.values().length]);

    private final StrengthCurve[] curves;

    private LimbStrength(StrengthCurve[] curves) {
        this.curves = curves;
    }

    /** A limb of which nothing is known. */
    public static LimbStrength none() {
        return NONE;
    }

    /** A limb with the published curve of every action that has one. */
    public static LimbStrength published(Physique person) {
        LimbStrength limb = NONE;
        for (Action action : Action.values()) {
            limb = limb.with(action, Prior.of(action, person).orElse(null));
        }
        return limb;
    }

    /** The same limb with this curve for this action, in place of any other. */
    public LimbStrength with(Action action, StrengthCurve curve) {
        StrengthCurve[] copy = curves.clone();
        copy[action.ordinal()] = curve;
        return new LimbStrength(copy);
    }

    /** The same limb with nothing known of this action. */
    public LimbStrength without(Action action) {
        return with(action, null);
    }

    /** The curve of an action, or empty where its strength is not known. */
    public Optional<StrengthCurve> of(Action action) {
        return Optional.ofNullable(curves[action.ordinal()]);
    }
}
