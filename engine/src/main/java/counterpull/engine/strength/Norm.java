package counterpull.engine.strength;

import counterpull.engine.body.Sex;

/**
 * What one publication says of one action and one sex.
 *
 * @param torque mean torque held still against anatomical angle, of people of the sample's mass
 * @param mass mean body mass of the sample, kg; 1 where the torque is for each kg
 * @param spread how people of the sample differ, and how far the publication may be from what is wanted
 * @param ageing how it falls with age
 * @param speedLaw what shortening does
 * @param words authors, year, people and position, for a person to read
 */
record Norm(Polyline torque, double mass, Likeness spread, AgeLoss ageing, SpeedLaw speedLaw, String words) {
    /**
     * Coefficient of variation taken where a publication gives none: the largest of a meta-analysis of 46 studies, 20.1 % to 30 %
     * (Benfica 2018, abstract looked up).
     */
    static final double SPREAD_NOT_PRINTED = 0.30;

    /** Body mass taken where a publication gives none, kg; our assumption. */
    static double usualMass(Sex sex) {
        return sex == Sex.MALE ? 77 : 62;
    }

    /**
     * How far one person may lie from the mean.
     *
     * @param ofPeople standard deviation over mean in the sample
     * @param ofSource further standard deviation of log torque, because the publication measured something else; ours
     * @param shape standard deviation of the shape at the peak ({@link BendAssumptions}); ours
     */
    record Likeness(double ofPeople, double ofSource, double shape) {
        static Likeness of(double mean, double deviation, double shape) {
            return new Likeness(deviation / mean, 0, shape);
        }

        double variance() {
            double believed = Math.max(Prior.LEAST_SPREAD, ofPeople);
            return Math.log(1 + believed * believed) + ofSource * ofSource;
        }
    }
}
