package counterpull.picture;

/**
 * Inches, degrees, pounds-force, pounds, pound-force feet; stress stays in MPa, as the literature has it. One pound is
 * 0.45359237 kg, one inch 0.0254 m exactly (international yard and pound, 1959), one pound-force that pound at 9.80665 m/s².
 */
record InchPound() implements Wording {
    private static final double POUND = 0.45359237;
    private static final double POUND_FORCE = POUND * 9.80665;

    @Override
    public Unit length() {
        return new Unit("in", 0.0254, 1);
    }

    @Override
    public Unit angle() {
        return new Unit("°", Math.PI / 180, 0);
    }

    @Override
    public Unit force() {
        return new Unit("lbf", POUND_FORCE, 0);
    }

    @Override
    public Unit mass() {
        return new Unit("lb", POUND, 1);
    }

    @Override
    public Unit torque() {
        return new Unit("lbf·ft", POUND_FORCE * 0.3048, 0);
    }

    @Override
    public Unit stress() {
        return new Unit("MPa", 1e6, 1);
    }
}
