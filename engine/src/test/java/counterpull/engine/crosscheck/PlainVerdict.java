package counterpull.engine.crosscheck;

import counterpull.engine.body.Joint;
import counterpull.engine.choice.Goal;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import java.util.List;

/** One profile against one goal, number by number: shortfall, peak effort, and whether every limit is kept. */
final class PlainVerdict {
    private static final double TOUCH = 1 + 1e-12;
    private final PressProfile profile;
    private final Goal goal;
    private final PlainSled sled;
    boolean kept = true;
    double peak = Double.NEGATIVE_INFINITY;
    private double squares;
    private int counted;

    PlainVerdict(PressProfile profile, PlainSled sled, Goal goal) {
        this.profile = profile;
        this.goal = goal;
        this.sled = sled;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < profile.positions(); i++) {
                look(phase, i);
            }
        }
        kept &= profile.turnaround().inertialForce() <= goal.caps().turnForce() * TOUCH;
        anchors();
    }

    double shortfall() {
        return counted == 0 ? Double.NaN : Math.sqrt(squares / counted);
    }

    private void look(Phase phase, int i) {
        kept &= profile.force(phase, i) * TOUCH >= goal.floor();
        double most = limiting(phase, i);
        peak = Math.max(peak, most);
        if (phase != Phase.HELD && most >= 0) {
            squares += squaredMiss(phase, i);
            counted++;
        }
        for (PressLimb limb : profile.limbs()) {
            double told = limb.pushAngle(phase, i);
            double spread = profile.task().pushing().spread();
            boolean strays = goal.straying() == Goal.Straying.WHOLE_INTERVAL;
            double[] angles = strays ? new double[] {told - spread, told + spread} : new double[] {told};
            for (double angle : angles) {
                limits(limb, phase, i, Math.tan(angle));
            }
        }
    }

    /** The largest known effort of the named joints, −∞ where none is known. */
    private double limiting(Phase phase, int i) {
        double most = Double.NEGATIVE_INFINITY;
        for (PressLimb limb : profile.limbs()) {
            for (Joint joint : goal.joints()) {
                double effort = limb.effort(joint, phase, i);
                most = effort > most ? effort : most;
            }
        }
        return most;
    }

    /** Squared shortfall of one position and phase; infinite where nothing is known. */
    double squaredMiss(Phase phase, int i) {
        double most = limiting(phase, i);
        double miss = Math.max(0, goal.target().at(profile.driving(i)) - most);
        return most >= 0 ? miss * miss : Double.POSITIVE_INFINITY;
    }

    private void limits(PressLimb limb, Phase phase, int i, double tangent) {
        for (Joint joint : Joint.LEG) {
            double torque = limb.torquePushing(joint, phase, i, tangent);
            double cap = goal.caps().torque(torque >= 0 ? joint.action() : joint.opposite());
            boolean strong = torque >= 0;
            double strength = strong
                    ? profile.ground().capacity().named(index(limb), joint, phase, i)
                    : profile.ground().capacity().opposite(index(limb), joint, phase, i);
            // an unknown effort passes no ceiling
            boolean over = Math.abs(torque) / strength > goal.ceiling() * TOUCH;
            kept &= !(goal.joints().contains(joint) && over) && Math.abs(torque) <= cap * TOUCH;
        }
        double knee = limb.torquePushing(Joint.KNEE, phase, i, tangent);
        // an unknown stress passes no limit
        kept &= !(limb.kneecapStress(i, knee) > goal.caps().kneecapStress() * TOUCH);
    }

    private int index(PressLimb limb) {
        return profile.limbs().indexOf(limb);
    }

    private void anchors() {
        List<ElasticLine> lines = profile.loading().lines();
        for (ElasticLine line : lines) {
            Anchor anchor = line.ends().anchor();
            for (int i = 0; i < profile.positions(); i++) {
                kept &= load(anchor, lines, profile.plate(i)) <= anchor.rating() * TOUCH;
            }
        }
    }

    private double load(Anchor anchor, List<ElasticLine> lines, double plate) {
        double[] sum = new double[3];
        for (int k = 0; k < lines.size(); k++) {
            if (lines.get(k).ends().anchor().equals(anchor)) {
                PlainLine line = sled.lines.get(k);
                double[] way = sled.lineWay(line, plate);
                double path = sled.linePath(line, plate);
                boolean side = anchor.lateral() != 0;
                double pull = line.tension(path) * (side ? 0.5 : 1) / path;
                sum[0] += pull * way[0];
                sum[1] += pull * way[1];
                sum[2] += side ? pull * way[2] : 0;
            }
        }
        return Math.sqrt(sum[0] * sum[0] + sum[1] * sum[1] + sum[2] * sum[2]);
    }

    /** Rubber of a set, for counting pieces. */
    static int used(List<ElasticLine> lines, Rubber rubber) {
        int used = 0;
        for (ElasticLine line : lines) {
            used += line.rubber().equals(rubber) ? line.pieces().count() : 0;
        }
        return used;
    }
}
