package counterpull.picture;

/** The units a person reads. Decided outside; values come in SI. */
public interface Wording {
    /** Lengths and tape readings. */
    Unit length();

    /** Angles. */
    Unit angle();

    /** Forces. */
    Unit force();

    /** Masses. */
    Unit mass();

    /** Torques. */
    Unit torque();

    /** Contact stress. */
    Unit stress();

    /** Times. */
    default Unit time() {
        return new Unit("s", 1, 2);
    }

    /** Effort, whose SI value is a share of 1. */
    default Unit effort() {
        return new Unit("%", 0.01, 0);
    }

    /** Centimetres, newtons, kilograms. */
    static Wording metric() {
        return new Metric();
    }

    /** Inches, pounds and pounds-force. */
    static Wording inchPound() {
        return new InchPound();
    }
}
