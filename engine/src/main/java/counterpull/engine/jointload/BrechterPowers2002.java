package counterpull.engine.jointload;

/**
 * The kneecap joint after Brechter and Powers, in the form used since in squats and leg work. With x the knee flexion
 * in degrees:
 *
 * <ul>
 *   <li>lever arm = 8.0e−8 x³ − 1.3e−5 x² + 2.8e−4 x + 0.046 m
 *   <li>ratio = (0.462 + 0.00147 x − 3.84e−5 x²) / (1 − 0.0162 x + 1.55e−4 x² − 6.98e−7 x³)
 *   <li>area = 0.0781 x² + 0.6763 x + 151.75 mm²
 * </ul>
 *
 * <p>Valid: lever arm and ratio 0° to 100°, absent outside (the ratio has a pole at 128.19°); area 0° to 60°, held at
 * its 60° value from there on and marked, because measured area falls after about 60° where the quadratic keeps
 * rising. Held constant it may still be too large past 60°, so the stress too low.
 *
 * <p>Sources: lever arm and ratio fitted to van Eijden TMGJ, Kouwenhoven E, Verburg J, Weijs WA 1986, J Biomech
 * 19:219–229, by Brechter JH, Powers CM 2002, Med Sci Sports Exerc 34:1582–1593 (from memory, looked up digit for
 * digit in a public analysis script); area as used in running studies, for instance Willson 2014, Clin Biomech
 * 29:243–247 (from memory).
 *
 * <p>Ours differs: many papers print the lever arm with the first three terms in mm and the constant in m; here all
 * are in m. The ranges are enforced.
 */
public record BrechterPowers2002() implements Kneecap {
    private static final double LEVER_ARM_TO = 100;
    private static final double AREA_TO = 60;

    /** Degrees; an end given in degrees must still count as inside after its conversion from radians. */
    private static final double ROUNDING = 1e-9;

    @Override
    public double leverArm(double kneeFlexion) {
        double x = inRange(kneeFlexion);
        return ((8.0e-8 * x - 1.3e-5) * x + 2.8e-4) * x + 0.046;
    }

    @Override
    public double reactionRatio(double kneeFlexion) {
        double x = inRange(kneeFlexion);
        double above = 0.462 + (0.00147 - 3.84e-5 * x) * x;
        double below = 1 + (-0.0162 + (1.55e-4 - 6.98e-7 * x) * x) * x;
        return above / below;
    }

    @Override
    public double contactArea(double kneeFlexion) {
        double x = Math.min(AREA_TO, inRange(kneeFlexion));
        double squareMillimetres = (0.0781 * x + 0.6763) * x + 151.75;
        return squareMillimetres * 1e-6;
    }

    @Override
    public Reach reach(double kneeFlexion) {
        double x = inRange(kneeFlexion);
        if (Double.isNaN(x)) {
            return Reach.ABSENT;
        }
        return x > AREA_TO + ROUNDING ? Reach.AREA_HELD : Reach.PUBLISHED;
    }

    private static double inRange(double kneeFlexion) {
        double degrees = Math.toDegrees(kneeFlexion);
        return degrees >= -ROUNDING && degrees <= LEVER_ARM_TO + ROUNDING ? degrees : Double.NaN;
    }

    @Override
    public String source() {
        return "kneecap joint after Brechter and Powers 2002, lever arm and ratio from 0° to 100° of knee flexion,"
                + " contact area to 60° and held from there; net torque only, co-contraction would add to it";
    }
}
