package counterpull.engine.strength;

/**
 * The two age groups between which an age lies, and how far along. Torque is interpolated, not coefficients: these
 * are correlated and a mean of two fits is not a fit.
 *
 * @param younger group at or below the age, or the youngest
 * @param older group at or above the age, or the oldest
 * @param share share of the older group, 0 to 1
 * @param logSd extra standard deviation of log torque, because nobody of this age was measured
 */
record AgeMix(AgeGroup younger, AgeGroup older, double share, double logSd) {
    /**
     * Halfway between two groups, in log torque; our assumption, about a third of how much people of one group
     * differ.
     */
    private static final double HALFWAY = 0.10;

    /**
     * Past the oldest group's age, per year; our assumption: about the yearly loss of strength at that age (from
     * memory).
     */
    private static final double PER_YEAR = 0.01;

    static AgeMix of(double age) {
        if (age <= AgeGroup.YOUNG.years()) {
            return new AgeMix(AgeGroup.YOUNG, AgeGroup.YOUNG, 0, 0);
        }
        if (age <= AgeGroup.MIDDLE.years()) {
            return between(AgeGroup.YOUNG, AgeGroup.MIDDLE, age);
        }
        if (age <= AgeGroup.SENIOR.years()) {
            return between(AgeGroup.MIDDLE, AgeGroup.SENIOR, age);
        }
        return new AgeMix(AgeGroup.SENIOR, AgeGroup.SENIOR, 0, PER_YEAR * (age - AgeGroup.SENIOR.years()));
    }

    private static AgeMix between(AgeGroup younger, AgeGroup older, double age) {
        double share = (age - younger.years()) / (older.years() - younger.years());
        return new AgeMix(younger, older, share, HALFWAY * 4 * share * (1 - share));
    }

    double mix(double ofYounger, double ofOlder) {
        return ofYounger + share * (ofOlder - ofYounger);
    }
}
