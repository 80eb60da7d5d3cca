package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * Solves the common angle z that segments of a standing chain lean by so that Σ xᵢ = X, xᵢ = moment i turned by its direction θᵢ = cᵢ (+ z
 * from the first leaning segment on). It has the form A cos z − B sin z = R; of the two solutions the more upright one, z = ±acos(R/H) −
 * atan2(B, A), H² = A² + B². With yᵢ the turned moments' heights and Y their sum over the leaning segments,
 *
 * <p>z′ = −Σ yᵢ cᵢ′ / Y; z″ = −(Σ yᵢ cᵢ″ + Σ xᵢ θᵢ′²) / Y.
 *
 * <p>Refused where what leans would lie within 2° of level or no angle balances: there z′ grows without bound.
 */
final class Balance {
    private static final double STEEPEST = Math.cos(Angles.radians(2));
    private final StandDrive drive;
    private final Vec[] moments;
    private final int from;
    private final double mass;
    private final double target;

    /**
     * @param drive where the segments point before they lean, and which do
     * @param moments of each segment, kg·m
     * @param mass of all that is balanced, the foot included, kg
     * @param target X, kg·m
     */
    Balance(StandDrive drive, Vec[] moments, double mass, double target) {
        this.drive = drive;
        this.moments = moments;
        from = drive.leansFrom();
        this.mass = mass;
        this.target = target;
    }

    /** The segments' directions in balance at a driving angle, with derivatives by it. */
    List<Jet> directions(double driving) {
        List<Jet> before = drive.directions(driving);
        double angle = angle(before, driving);
        double heightOfLeaning = 0;
        double turned = 0;
        for (int k = 0; k < moments.length; k++) {
            double height = turn(moments[k], direction(before, k, angle)).y();
            heightOfLeaning += k < from ? 0 : height;
            turned += height * before.get(k).first();
        }
        double first = -turned / heightOfLeaning;
        double sum = 0;
        for (int k = 0; k < moments.length; k++) {
            Vec at = turn(moments[k], direction(before, k, angle));
            double rate = before.get(k).first() + (k < from ? 0 : first);
            sum += at.y() * before.get(k).second() + at.x() * rate * rate;
        }
        return leaned(before, new Jet(angle, first, -sum / heightOfLeaning));
    }

    private List<Jet> leaned(List<Jet> before, Jet lean) {
        List<Jet> after = new ArrayList<>();
        for (int k = 0; k < moments.length; k++) {
            after.add(k < from ? before.get(k) : before.get(k).plus(lean));
        }
        return after;
    }

    private double direction(List<Jet> before, int k, double angle) {
        return before.get(k).value() + (k < from ? 0 : angle);
    }

    private double angle(List<Jet> before, double driving) {
        double rest = target;
        Vec leaning = new Vec(0, 0);
        for (int k = 0; k < moments.length; k++) {
            Vec at = turn(moments[k], before.get(k).value());
            rest -= k < from ? at.x() : 0;
            leaning = k < from ? leaning : leaning.plus(at);
        }
        double cos = rest / leaning.norm();
        if (!(Math.abs(cos) <= STEEPEST)) {
            throw cannot(rest, leaning.norm(), driving);
        }
        double side = leaning.x() >= 0 ? 1 : -1;
        return side * Math.acos(cos) - Math.atan2(leaning.y(), leaning.x());
    }

    private Refusal cannot(double needed, double most, double driving) {
        String missed = needed > 0 ? "behind" : "in front of";
        String posture = "with the " + drive.joint().words() + " at " + Math.round(Angles.degrees(driving)) + "°";
        return new Refusal(
                Fault.OUT_OF_REACH,
                "how far the centre of mass stays " + missed + " the point of balance " + posture,
                (Math.abs(needed) - STEEPEST * most) / mass,
                0,
                "m",
                "cannot balance: " + posture + " even the farthest lean leaves the centre of mass " + missed
                        + " the point of balance: bend less, let the ankle give more, or carry the load elsewhere");
    }

    private static Vec turn(Vec moment, double direction) {
        Vec along = Vec.unit(direction);
        return along.times(moment.x()).plus(along.left().times(moment.y()));
    }
}
