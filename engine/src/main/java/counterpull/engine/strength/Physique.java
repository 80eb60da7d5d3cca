package counterpull.engine.strength;

import counterpull.engine.Constants;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.body.Sex;

/**
 * What selects and scales a published strength curve.
 *
 * @param sex which half of the published sample
 * @param age years, from 18 (younger people are outside the published range) to 110
 * @param mass body mass, kg
 * @param stature m
 */
public record Physique(Sex sex, double age, double mass, double stature) {
    private static final double YOUNGEST = 18;
    private static final double OLDEST = 110;

    public Physique {
        Require.finite(age, "age", "years");
        if (age < YOUNGEST || age > OLDEST) {
            double limit = age < YOUNGEST ? YOUNGEST : OLDEST;
            String sentence = "the published strength curves hold from 18 to 110 years, not at " + age
                    + ": give the person's own strength curve";
            throw new Refusal(Fault.OUTSIDE_PUBLISHED_RANGE, "age", age, limit, "years", sentence);
        }
        Require.positive(mass, "body mass", "kg");
        Require.positive(stature, "stature", "m");
    }

    /** Body weight at standard gravity × stature, N·m: what the published curves scale with. */
    public double weightTimesStature() {
        return mass * Constants.STANDARD_GRAVITY * stature;
    }
}
