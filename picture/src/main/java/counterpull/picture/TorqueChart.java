package counterpull.picture;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Profile;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Torque asked of one joint of one limb (held, lifting, lowering) against the torque had, with its 90\u2009% band, in the sense of the
 * action that is asked most, upward. A negative torque asks for the opposite of that action and is labelled so; there the strength of
 * that opposite is drawn below zero.
 */
public final class TorqueChart {
    private static final double SAME = 0.03;
    private final LimbProfile limb;
    private final Joint joint;
    private final Sampled sampled;
    private final boolean turned;
    private final List<Layer> layers = new ArrayList<>();

    private TorqueChart(Profile profile, int limb, Joint joint) {
        this.limb = profile.limbs().get(limb);
        this.joint = joint;
        sampled = new Sampled(profile);
        turned = asksOpposite();
    }

    // whether the largest torque of all phases asks for the opposite of the joint's named action
    private boolean asksOpposite() {
        double most = 0;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < sampled.profile().positions(); i++) {
                double torque = limb.torque(joint, phase, i);
                most = Math.abs(torque) > Math.abs(most) ? torque : most;
            }
        }
        return most < 0;
    }

    private Action action() {
        return turned ? joint.opposite() : joint.action();
    }

    private Action other() {
        return turned ? joint.action() : joint.opposite();
    }

    private double torque(Phase phase, int i) {
        return turned ? -limb.torque(joint, phase, i) : limb.torque(joint, phase, i);
    }

    private double strength(Phase phase, int i) {
        return turned ? limb.opposite(joint, phase, i) : limb.named(joint, phase, i);
    }

    private double band(int i) {
        return turned ? limb.oppositeBandFactor(joint, i) : limb.bandFactor(joint, i);
    }

    /**
     * The chart of one joint.
     *
     * @param profile the result
     * @param limb index of the limb in the profile
     * @param joint which joint
     */
    public static Chart of(Profile profile, int limb, Joint joint) {
        TorqueChart chart = new TorqueChart(profile, limb, joint);
        chart.had();
        chart.asked();
        chart.opposite();
        String side = chart.limb.side().words();
        String title = Words.sentence(side) + " " + chart.action().words() + ": asked and had";
        return new Chart(title, Chart.Measure.TORQUE, Range.of(profile), chart.layers, OptionalInt.empty());
    }

    private void had() {
        Series held = sampled.of(i -> strength(Phase.HELD, i));
        Series lifting = sampled.of(i -> strength(Phase.LIFTING, i));
        Series low = sampled.of(i -> held.y(i) / band(i));
        Series high = sampled.of(i -> held.y(i) * band(i));
        Ink ink = Marker.ink(joint);
        if (!held.anyKnown()) {
            layers.add(new Layer.Note("strength not known here", Layer.Note.Place.MIDDLE));
            return;
        }
        layers.add(new Layer.Band(low, high, ink));
        boolean same = same(held, lifting);
        String word = same ? "has (band: 90\u2009%)" : "has, held or lowering (band: 90\u2009%)";
        layers.add(new Layer.Curve(held, Look.of(ink, Stroke.HAD), word, "strength not known"));
        if (!same) {
            Look fine = Look.of(ink, Stroke.HAD_FINE).heading(Heading.TO_TOP);
            layers.add(new Layer.Curve(lifting, fine, "has, lifting"));
        }
    }

    private static boolean same(Series one, Series other) {
        for (int i = 0; i < one.size(); i++) {
            if (Math.abs(one.y(i) - other.y(i)) > SAME * one.y(i)) {
                return false;
            }
        }
        return true;
    }

    private void asked() {
        asked(Phase.LOWERING, Stroke.ASKED_FINE, "asked, lowering");
        asked(Phase.HELD, Stroke.ASKED_FINE, "asked, held");
        asked(Phase.LIFTING, Stroke.ASKED, "asked, lifting");
    }

    private void asked(Phase phase, Stroke stroke, String word) {
        Marker marker = phase == Phase.HELD ? Marker.of(joint) : Marker.NONE;
        Look look = Look.of(Marker.ink(joint), stroke).marked(marker).heading(Heading.of(phase));
        layers.add(new Layer.Curve(sampled.of(i -> torque(phase, i)), look, word));
    }

    private void opposite() {
        boolean reverses = false;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < sampled.profile().positions(); i++) {
                reverses |= torque(phase, i) < 0;
            }
        }
        if (!reverses) {
            return;
        }
        layers.add(new Layer.Note("below 0: " + other().words() + " is asked", Layer.Note.Place.BELOW_ZERO));
        Series strength = sampled.of(this::oppositeHad);
        if (strength.anyKnown()) {
            Look look = Look.of(Marker.ink(joint), Stroke.HAD);
            layers.add(new Layer.Curve(strength, look, "has, " + other().words()));
        }
    }

    private double oppositeHad(int i) {
        for (Phase phase : new Phase[] {Phase.LIFTING, Phase.HELD, Phase.LOWERING}) {
            if (torque(phase, i) < 0) {
                return -limb.had(joint, phase, i);
            }
        }
        return Double.NaN;
    }
}
