package counterpull.letgo;

/**
 * A bead that slides without friction in a bowl of the height a x²: its inertia along x grows with the slope. A machine of the
 * tests alone, because no member has such an inertia yet.
 *
 * @param mass kg
 * @param bend a, 1/m
 */
record Bead(double mass, double bend) implements LoneMachine {
    private static final double G = counterpull.engine.Constants.STANDARD_GRAVITY;

    @Override
    public double inertia(double x) {
        return mass * (1 + 4 * bend * bend * x * x);
    }

    @Override
    public double inertiaSlope(double x) {
        return 8 * mass * bend * bend * x;
    }

    @Override
    public double weight(double x) {
        return -2 * mass * G * bend * x;
    }

    @Override
    public double weightEnergy(double x) {
        return mass * G * bend * x * x;
    }

    @Override
    public double rubber(double x, Sense sense) {
        return 0;
    }

    @Override
    public double storing(double x) {
        return 0;
    }

    @Override
    public double rubberEnergy(double x) {
        return 0;
    }

    @Override
    public double friction(double x) {
        return 0;
    }

    @Override
    public double holding(double x) {
        return 0;
    }

    @Override
    public double testedRoom(double x) {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public Ends ends() {
        return new Ends(0, Ends.Bottom.STOP, 10);
    }
}
