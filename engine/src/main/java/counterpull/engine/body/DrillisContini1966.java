package counterpull.engine.body;

import counterpull.engine.Require;

/**
 * Lengths and heights of a standing person as fractions of stature.
 *
 * <p>Source: Drillis R &amp; Contini R 1966, Body Segment Parameters, Tech. Rep. 1163.03, New York University, as Fig. 4.1 in
 * Winter; the heights of fingertip, wrist, elbow and chest are from memory. A sample of the 1960s in the United States: a
 * default only, since one person's segment is easily 4–6 % off (from memory). Measure instead where it matters.
 */
public enum DrillisContini1966 {
    ANKLE_HEIGHT(0.039),
    KNEE_HEIGHT(0.285),
    SHANK(0.246),
    THIGH(0.245),
    HIP_HEIGHT(0.530),
    HIP_TO_SHOULDER(0.288),
    FOOT_LENGTH(0.152),
    FOOT_BREADTH(0.055),
    HIP_BREADTH(0.191),
    SHOULDER_HEIGHT(0.818),
    CHIN_HEIGHT(0.870),
    EYE_HEIGHT(0.936),
    HEAD_HEIGHT(0.130),
    UPPER_ARM(0.186),
    FOREARM(0.146),
    HAND(0.108),
    SHOULDER_BREADTH(0.259),
    FINGERTIP_HEIGHT(0.377),
    WRIST_HEIGHT(0.485),
    ELBOW_HEIGHT(0.630),
    CHEST_HEIGHT(0.720);

    private final double fraction;

    DrillisContini1966(double fraction) {
        this.fraction = fraction;
    }

    /** The length over stature. */
    public double fraction() {
        return fraction;
    }

    /** The length, m, of a person of that stature, m. */
    public double of(double stature) {
        return fraction * Require.positive(stature, "stature", "m");
    }

    /**
     * Mean density of the whole body, kg/m³: 690 + 900 c with c = stature / mass^(1/3) in m and kg.
     *
     * @param stature m, above zero
     * @param mass kg, above zero
     */
    public static double wholeBodyDensity(double stature, double mass) {
        Require.positive(stature, "stature", "m");
        Require.positive(mass, "body mass", "kg");
        return 690 + 900 * stature / Math.cbrt(mass);
    }
}
