package counterpull.engine.uncertainty;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Profile;
import counterpull.engine.strength.CurveDraws;
import counterpull.engine.strength.StrengthCurve;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How sure each limb's strength in each action is: one draw is one whole curve, the same at every position and in every phase. Actions
 * and limbs are drawn apart, which is ours: a person who is strong in one is likelier strong in another.
 */
final class StrengthDoubts<T extends Trial<T>> {
    private final T trial;
    private final Profile profile;

    private StrengthDoubts(T trial, Profile profile) {
        this.trial = trial;
        this.profile = profile;
    }

    static <T extends Trial<T>> List<Doubt<T>> of(T trial, Profile profile) {
        StrengthDoubts<T> doubts = new StrengthDoubts<>(trial, profile);
        List<Doubt<T>> found = new ArrayList<>();
        for (int k = 0; k < trial.person().limbs().size(); k++) {
            for (Joint joint : profile.joints()) {
                for (Action action : new Action[] {joint.action(), joint.opposite()}) {
                    doubts.of(k, joint, action).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    private Optional<Doubt<T>> of(int index, Joint joint, Action action) {
        Limb limb = trial.person().limbs().get(index);
        Optional<CurveDraws> draws = limb.strength().of(action).map(CurveDraws::of);
        return draws.filter(found -> found.dimensions() > 0).map(found -> doubt(index, joint, action, found));
    }

    private Doubt<T> doubt(int index, Joint joint, Action action, CurveDraws draws) {
        Limb limb = trial.person().limbs().get(index);
        StrengthCurve curve = draws.given();
        return new Doubt<>(
                limb.side().words() + " " + action.words() + " strength",
                new Spread(Spread.Kind.SHARE, curve.logSd(looked(index, joint, action, curve))),
                curve.source(),
                draws.dimensions(),
                (before, z, from) -> drawn(before, index, action, draws.draw(z, from)),
                new Again.Test(limb.side(), action, draws));
    }

    private static <T extends Trial<T>> T drawn(T before, int index, Action action, StrengthCurve curve) {
        Limb limb = before.person().limbs().get(index);
        return PersonDoubts.limb(before, index, limb.with(limb.strength().with(action, curve)));
    }

    /** The angle at which its spread is told: where most of it is asked, else the middle of its angles. */
    private double looked(int index, Joint joint, Action action, StrengthCurve curve) {
        LimbProfile limb = profile.limbs().get(index);
        return Hardest.of(limb, joint, action, profile.positions())
                .map(Hardest::angle)
                .orElse((curve.angles().low() + curve.angles().high()) / 2);
    }
}
