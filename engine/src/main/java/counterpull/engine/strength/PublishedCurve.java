package counterpull.engine.strength;

import counterpull.engine.body.Action;

/**
 * A published curve for a person of this sex, age, mass and stature: what is believed before any test.
 *
 * <p>{@link Anderson2007}, held still and shortening. Between 21.5, 60 and 72 years torque is interpolated linearly
 * and the band widened (at most by 10 %, halfway); past 72 the oldest group's torque with 1 % more for each year.
 * Passive torque is left out.
 *
 * <p>How people differ in scale is the published standard deviation of C1 over its mean, but never less than
 * {@link Prior#LEAST_SPREAD}: some groups are a few people, and one printed spread is 2 %. Mass, stature and age
 * explain less than a third of it (Harbo 2012, abstract looked up), so the number is wide on purpose. The published
 * mean is taken as the middle of the band.
 *
 * <p>Of older people it is a hopeful average: its group over 65 is six people, and their knee extension lies 18 %
 * (men) and 28 % (women) above the mean of all studies (Sarabon 2021; the validation page has the rows). Test them.
 */
public final class PublishedCurve implements Prior, SpeedLaw {
    private static final String HOPEFUL =
            "; hopeful at this age: its group over 65 is six people, and their knee extension"
                    + " lies 18 % (men) and 28 % (women) above the mean of all studies (Sarabon 2021)";

    /**
     * Our assumption: the published curve is one cosine arch whose half is 65° to 95° wide, and a person whose best
     * angle lies elsewhere departs from it one way on one side and the other way on the other; 0.7 rad (40°) is about
     * half of that half.
     */
    private static final double REACH = 0.7;

    private final Anderson2007 younger;
    private final Anderson2007 older;
    private final AgeMix ages;
    private final double weightTimesStature;
    private final AngleRange angles;
    private final BendAssumptions assumptions;
    private final Spread spread;
    private final double peak;

    private PublishedCurve(Action action, Physique person) {
        ages = AgeMix.of(person.age());
        younger = Anderson2007.row(action, person.sex(), ages.younger());
        older = Anderson2007.row(action, person.sex(), ages.older());
        weightTimesStature = person.weightTimesStature();
        angles = SourceAngles.of(action);
        assumptions = assumptionsFor(action);
        spread = new Spread(this, assumptions);
        peak = Peak.of(this::held, angles);
    }

    /** The curve of one action; a refusal where nothing is published for it. */
    public static PublishedCurve of(Action action, Physique person) {
        return new PublishedCurve(action, person);
    }

    @Override
    public double held(double angle) {
        return ages.mix(younger.held(angle, weightTimesStature), older.held(angle, weightTimesStature));
    }

    /**
     * Torque is interpolated at the speed too, so this is the interpolated torque over the interpolated held torque.
     */
    @Override
    public double factor(double angle, double speed) {
        double ofYounger = younger.held(angle, weightTimesStature);
        double ofOlder = older.held(angle, weightTimesStature);
        double still = ages.mix(ofYounger, ofOlder);
        if (still <= 0) {
            return 0;
        }
        return moving(ofYounger, ofOlder, speed) / still;
    }

    @Override
    public void fill(double[] at, double[][] shorteningSpeeds, double[][] out) {
        double least = KNOWN_SHARE_OF_PEAK * peak;
        for (int i = 0; i < at.length; i++) {
            boolean measured = angles.contains(at[i]);
            double ofYounger = measured ? younger.held(at[i], weightTimesStature) : Double.NaN;
            double ofOlder = measured ? older.held(at[i], weightTimesStature) : Double.NaN;
            for (int row = 0; row < out.length; row++) {
                double torque = moving(ofYounger, ofOlder, shorteningSpeeds[row][i]);
                out[row][i] = torque >= least ? torque : Double.NaN;
            }
        }
    }

    private double moving(double ofYounger, double ofOlder, double speed) {
        return speed > 0
                ? ages.mix(ofYounger * younger.shorteningFactor(speed), ofOlder * older.shorteningFactor(speed))
                : ages.mix(ofYounger, ofOlder);
    }

    @Override
    public AngleRange angles() {
        return angles;
    }

    @Override
    public double peak() {
        return peak;
    }

    @Override
    public SpeedLaw speedLaw() {
        return this;
    }

    @Override
    public double logCovariance(double angle, double other) {
        return spread.covariance(angle, other);
    }

    /**
     * How one person may differ from this curve. The spread of shape at the peak is our assumption: 0.20 at the hip,
     * 0.10 at the knee, 0.15 at the ankle, which at half of the peak comes to about what the published standard
     * deviations of C2 and C3 give there.
     */
    @Override
    public BendAssumptions assumptions() {
        return assumptions;
    }

    private BendAssumptions assumptionsFor(Action action) {
        double ofC1 = Math.max(LEAST_SPREAD, ages.mix(younger.spread(), older.spread()));
        double scale = Math.sqrt(Math.log(1 + ofC1 * ofC1) + ages.logSd() * ages.logSd());
        return new BendAssumptions(scale, spreadOfShape(action), REACH);
    }

    private static double spreadOfShape(Action action) {
        return switch (action) {
            case HIP_EXTENSION, HIP_FLEXION -> 0.20;
            case KNEE_EXTENSION, KNEE_FLEXION -> 0.10;
            case ANKLE_PLANTARFLEXION, ANKLE_DORSIFLEXION -> 0.15;
            default -> throw Anderson2007.notPublished(action);
        };
    }

    @Override
    public String source() {
        return "published average of people of this sex, age, mass and stature (Anderson, Madigan and Nussbaum 2007,"
                + " 34 people), not this person" + (ages.older() == AgeGroup.SENIOR ? HOPEFUL : "");
    }
}
