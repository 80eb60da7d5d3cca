package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Leg;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;

/**
 * Where one leg's ankle is for a hip-to-plate distance, and which distance a knee angle needs: the two-link triangle hip,
 * knee, ankle with the knee on the counter-clockwise side of hip → ankle, in the rail's axes (<b>u</b>, <b>n</b>) from the
 * hip. All lengths m, angles rad.
 *
 * <p>Ankle = d·<b>u</b> + h·<b>n</b>; with the plate tilted by δ, its surface passes through (p, 0) of the sled's reference
 * line, the heel stands {@code row} along it and the ankle is ankle-height in front of the sole. h does not change with p.
 */
public final class LegOnPlate {
    private static final double TOUCH = 1e-12;
    private final double thigh;
    private final double shank;
    private final double across;
    private final double ahead;

    /** For one leg in one stance on one rail. */
    public LegOnPlate(Leg leg, Rail rail, Stance stance) {
        thigh = leg.thigh().length();
        shank = leg.shank().length();
        double sin = Math.sin(rail.plateTilt());
        double cos = Math.cos(rail.plateTilt());
        double row = stance.row().heel() + leg.foot().ankleFromHeel();
        double sole = leg.foot().ankleHeight();
        ahead = row * sin + sole * cos + stance.hipShift().x();
        across = row * cos
                - sole * sin
                - stance.seat().hipAcross()
                - stance.hipShift().y();
    }

    /** h, the ankle's place along <b>n</b>, m. */
    public double ankleAcross() {
        return across;
    }

    /** d, the ankle's place along <b>u</b> at a hip-to-plate distance, m. */
    public double ankleAlong(double plate) {
        return plate - ahead;
    }

    /** Hip-to-plate distance that bends the knee by this much, m. Refuses a knee that cannot reach the row. */
    public double plateAt(double kneeFlexion) {
        double square = thigh * thigh + shank * shank + 2 * thigh * shank * Math.cos(kneeFlexion) - across * across;
        if (square <= 0) {
            throw new Refusal(
                    Fault.OUT_OF_REACH,
                    "foot row (ankle's distance from the hip's line)",
                    Math.abs(across),
                    Math.sqrt(across * across + square),
                    "m",
                    "with the knee bent to " + Math.round(Angles.degrees(kneeFlexion))
                            + "° this leg cannot reach the foot row: choose a row nearer the hip's line");
        }
        return Math.sqrt(square) + ahead;
    }

    /** Knee flexion at a hip-to-plate distance, rad. Refuses a plate farther than the straight leg or too near to fold. */
    public double kneeAt(double plate) {
        return Math.acos(cosineOfKnee(plate));
    }

    /** Cosine of the knee's flexion at a hip-to-plate distance; refuses as {@link #kneeAt} does. */
    double cosineOfKnee(double plate) {
        double d = ankleAlong(plate);
        double cos = (d * d + across * across - thigh * thigh - shank * shank) / (2 * thigh * shank);
        if (cos > 1 + TOUCH) {
            double reach = Math.sqrt(Math.max(0, (thigh + shank) * (thigh + shank) - across * across));
            throw new Refusal(
                    Fault.PAST_STRAIGHT,
                    "hip-to-ankle distance along the rail",
                    d,
                    reach,
                    "m",
                    "the plate is farther than this leg reaches when straight");
        }
        if (cos <= -1 + TOUCH || d <= 0) {
            throw new Refusal(
                    Fault.OUT_OF_REACH,
                    "hip-to-ankle distance along the rail",
                    d,
                    Math.abs(thigh - shank),
                    "m",
                    "the plate is nearer than this leg folds");
        }
        return Math.min(1, cos);
    }

    /**
     * Hip-to-plate distances at which a segment stands square to the rail, m: where the thigh does the ankle's angle turns
     * back, where the shank does the hip's. Between two neighbours of them every joint angle runs one way only; the knee's
     * always does. NaN where there is none.
     */
    public double[] turningPlaces() {
        double byThigh = shank * shank - (across - thigh) * (across - thigh);
        double byShank = thigh * thigh - (across + shank) * (across + shank);
        return new double[] {Math.sqrt(byThigh) + ahead, Math.sqrt(byShank) + ahead};
    }

    /**
     * The unit vector of hip → knee: hip → ankle, turned counter-clockwise by the angle at the hip. It is a product of two complex
     * numbers over the square of their size, because the leg seen from the thigh is as long as hip → ankle.
     *
     * @param plate hip-to-plate distance, m
     * @param knee cosine and sine of the knee's flexion there
     */
    Vec alongThigh(double plate, Vec knee) {
        double x = ankleAlong(plate);
        double p = thigh + shank * knee.x();
        double q = shank * knee.y();
        double square = p * p + q * q;
        return new Vec((x * p - across * q) / square, (x * q + across * p) / square);
    }

    double thigh() {
        return thigh;
    }

    double shank() {
        return shank;
    }
}
