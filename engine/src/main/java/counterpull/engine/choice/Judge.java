package counterpull.engine.choice;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.load.AnchorLoads;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Limiting;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Holds a profile against a goal: shortfall, peak effort, and how near every stated limit is. The same judge looks at today's
 * setup, at every candidate of the search and at what it returns.
 *
 * <p>Where the limits must hold over the whole push interval, both ends of it are looked at: efforts and torques are convex in
 * the tangent of the push angle, so the largest value lies at an end.
 */
public final class Judge {
    private static final Phase[] PHASES = Phase.values();
    private final PressProfile profile;
    private final Goal goal;
    private final List<Breach> nearest = new ArrayList<>();
    private Verdict.Peak peak;
    private Breach ceiling;
    private Breach kneecap;
    private Breach floor;
    private final Breach[] torque = new Breach[Action.values().length];
    private double sum;
    private int counted;
    private int unknown;

    private Judge(PressProfile profile, Goal goal) {
        this.profile = profile;
        this.goal = goal;
    }

    /** The verdict on a profile. */
    public static Verdict of(PressProfile profile, Goal goal) {
        return new Judge(profile, goal).verdict();
    }

    private Verdict verdict() {
        for (Phase phase : PHASES) {
            for (int i = 0; i < profile.positions(); i++) {
                look(phase, i);
            }
        }
        keep(ceiling);
        keep(floor);
        keep(kneecap);
        for (Breach breach : torque) {
            keep(breach);
        }
        turn();
        anchors();
        double shortfall = counted == 0 ? Double.NaN : Math.sqrt(sum / counted);
        return new Verdict(shortfall, Optional.ofNullable(peak), unknown, nearest);
    }

    private void keep(Breach breach) {
        if (breach != null) {
            nearest.add(breach);
        }
    }

    private void look(Phase phase, int i) {
        double force = profile.force(phase, i);
        if (floor == null || force < floor.value()) {
            floor = new Breach(LimitKind.FLOOR, force, goal.floor(), Breach.Where.at(phase, i));
        }
        Optional<Limiting> limiting = profile.limiting(goal.joints(), phase, i);
        limiting.ifPresent(found -> effort(found, phase, i));
        if (phase != Phase.HELD) {
            count(limiting, i);
        }
        for (int k = 0; k < profile.limbs().size(); k++) {
            limits(profile.limbs().get(k), phase, i);
        }
    }

    private void effort(Limiting found, Phase phase, int i) {
        if (peak == null || found.effort() > peak.limiting().effort()) {
            peak = new Verdict.Peak(found, phase, i);
        }
    }

    private void count(Optional<Limiting> limiting, int i) {
        if (limiting.isEmpty()) {
            unknown++;
            return;
        }
        double miss = goal.target().at(profile.driving(i)) - limiting.get().effort();
        sum += miss > 0 ? miss * miss : 0;
        counted++;
    }

    private void limits(PressLimb limb, Phase phase, int i) {
        if (goal.straying() == Goal.Straying.AS_TOLD) {
            for (Joint joint : Joint.LEG) {
                Place place = new Place(limb, joint, phase, i);
                ceiling(place, limb.effort(joint, phase, i), limb.torque(joint, phase, i));
                torque(place, limb.torque(joint, phase, i));
            }
            kneecap(limb, phase, i, limb.torque(Joint.KNEE, phase, i));
            return;
        }
        double angle = limb.pushAngle(phase, i);
        double spread = profile.task().pushing().spread();
        for (double tangent : new double[] {Math.tan(angle - spread), Math.tan(angle + spread)}) {
            for (Joint joint : Joint.LEG) {
                Place place = new Place(limb, joint, phase, i);
                double asked = limb.torquePushing(joint, phase, i, tangent);
                ceiling(place, limb.effortPushing(joint, phase, i, tangent), asked);
                torque(place, asked);
            }
            kneecap(limb, phase, i, limb.torquePushing(Joint.KNEE, phase, i, tangent));
        }
    }

    private record Place(PressLimb limb, Joint joint, Phase phase, int position) {
        Breach.Where where(double torque) {
            Action action = torque >= 0 ? joint.action() : joint.opposite();
            return new Breach.Where(phase, position, Optional.of(limb.side()), Optional.of(action), "");
        }
    }

    private void ceiling(Place place, double effort, double asked) {
        if (effort >= 0 && goal.joints().contains(place.joint) && (ceiling == null || effort > ceiling.value())) {
            ceiling = new Breach(LimitKind.CEILING, effort, goal.ceiling(), place.where(asked));
        }
    }

    private void torque(Place place, double asked) {
        Action action = asked >= 0 ? place.joint.action() : place.joint.opposite();
        double most = goal.caps().torque(action);
        double size = Math.abs(asked);
        Breach before = torque[action.ordinal()];
        if (most < Double.POSITIVE_INFINITY && (before == null || size > before.value())) {
            torque[action.ordinal()] = new Breach(LimitKind.JOINT_TORQUE, size, most, place.where(asked));
        }
    }

    private void kneecap(PressLimb limb, Phase phase, int i, double kneeTorque) {
        double most = goal.caps().kneecapStress();
        if (most == Double.POSITIVE_INFINITY) {
            return;
        }
        double stress = limb.kneecapStress(i, kneeTorque);
        if (stress >= 0 && (kneecap == null || stress > kneecap.value())) {
            Breach.Where where = new Place(limb, Joint.KNEE, phase, i).where(kneeTorque);
            kneecap = new Breach(LimitKind.KNEECAP_STRESS, stress, most, where);
        }
    }

    private void turn() {
        double most = goal.caps().turnForce();
        if (most < Double.POSITIVE_INFINITY) {
            double force = profile.turnaround().inertialForce();
            nearest.add(new Breach(LimitKind.TURN_FORCE, force, most, Breach.Where.stroke("")));
        }
    }

    private void anchors() {
        for (AnchorLoads load : AnchorLoads.of(profile.lines(), profile.positions())) {
            double rating = load.anchor().rating();
            if (rating < Double.POSITIVE_INFINITY) {
                Breach.Where where = new Breach.Where(
                        Phase.HELD,
                        load.position(),
                        Optional.empty(),
                        Optional.empty(),
                        load.anchor().name());
                nearest.add(new Breach(LimitKind.ANCHOR_LOAD, load.most(), rating, where));
            }
        }
    }
}
