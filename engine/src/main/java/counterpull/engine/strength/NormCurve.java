package counterpull.engine.strength;

import counterpull.engine.body.Action;

/**
 * A published mean torque at one or a few angles, scaled to a person: straight lines between the angles, level beyond them, where
 * it is not known.
 *
 * <p>T = published torque × (body mass / the sample's mass) × the share left at this age. Torque goes with body mass to the power
 * one (Jaric 2002, abstract looked up). Sources: one class for each, {@link Tsunoda1993} and its like; each says what it measured,
 * in which position, and what is ours. The samples are small and young and few publications have a shape, so the band is wide on
 * purpose; 0.7 rad is how far a test reaches, as for the leg.
 */
public final class NormCurve implements Prior {
    private static final double REACH = 0.7;

    private final Norm norm;
    private final Polyline torque;
    private final AngleRange angles;
    private final double peak;
    private final BendAssumptions assumptions;
    private final Spread spread;

    NormCurve(Norm norm, Physique person) {
        this.norm = norm;
        torque = norm.torque().times(person.mass() / norm.mass() * norm.ageing().share(person.age()));
        angles = torque.angles();
        peak = torque.peak();
        assumptions = new BendAssumptions(scaleSd(person.age()), norm.spread().shape(), REACH);
        spread = new Spread(this, assumptions);
    }

    /** The curve of one action; a refusal where no publication at hand has it. */
    public static NormCurve of(Action action, Physique person) {
        NormSource source = NormSource.of(action).orElseThrow(() -> Anderson2007.notPublished(action));
        return new NormCurve(source.norm(action, person.sex()), person);
    }

    private double scaleSd(double age) {
        double ofAge = norm.ageing().logSd(age);
        return Math.sqrt(norm.spread().variance() + ofAge * ofAge);
    }

    @Override
    public double held(double angle) {
        return torque.at(angle);
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
        return norm.speedLaw();
    }

    @Override
    public double logCovariance(double angle, double other) {
        return spread.covariance(angle, other);
    }

    @Override
    public BendAssumptions assumptions() {
        return assumptions;
    }

    @Override
    public String source() {
        return "published average, scaled to this sex, age and mass, not this person: " + norm.words();
    }
}
