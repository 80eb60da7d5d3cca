package counterpull.engine.strength;

/**
 * The age groups of Anderson, Madigan and Nussbaum 2007. The age a group stands for is the middle of its published
 * span; 72 years for the open group is our choice (the paper's mean age for it was not at hand).
 */
public enum AgeGroup {
    /** 18 to 25 years, 14 people. */
    YOUNG(21.5),
    /** 55 to 65 years, 14 people. */
    MIDDLE(60),
    /** Over 65 years, 6 people. */
    SENIOR(72);

    private final double years;

    AgeGroup(double years) {
        this.years = years;
    }

    /** The age the group stands for when torque is interpolated, years. */
    public double years() {
        return years;
    }
}
