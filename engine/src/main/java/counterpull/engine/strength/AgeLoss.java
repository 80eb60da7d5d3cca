package counterpull.engine.strength;

/**
 * How a torque measured on young people falls with age: level up to an age, then by a share of the young torque each year.
 *
 * @param from last age without loss, years
 * @param perYear share of the young torque lost in a year
 */
record AgeLoss(double from, double perYear) {
    /**
     * Every action of the arm: the shoulder flexors of men aged 45 to 65 had 89 % of the torque of those aged 19 to 44 (Lannersten
     * 1993, abstract looked up). No other group of that study lost anything, so this errs on the weak side before 65. Carried on
     * at that rate, which is our assumption: 80 % at 75 years, inside the 54 to 89 % of men and 48 to 92 % of women that a population has
     * left of its muscle groups by then (Danneskiold-Samsøe 2009, abstract looked up).
     */
    static final AgeLoss OF_ARM = between(31.5, 55, 0.89);

    /** Our assumption, as for the leg: past 65 years the band widens by 1 % a year. */
    private static final double BAND_FROM = 65;

    private static final double BAND_PER_YEAR = 0.01;

    /** Our assumption: nobody is taken to be weaker than 40 % of the young by age alone. */
    private static final double LEAST = 0.4;

    static AgeLoss between(double young, double old, double left) {
        return new AgeLoss(young, (1 - left) / (old - young));
    }

    /** Share of the young torque left at an age, years. */
    double share(double age) {
        return Math.max(LEAST, 1 - perYear * Math.max(0, age - from));
    }

    /** Extra standard deviation of log torque at an age, years. */
    double logSd(double age) {
        return BAND_PER_YEAR * Math.max(0, age - BAND_FROM);
    }
}
