package counterpull.letgo;

/** A machine as it is, for controls that falsify one thing of it. */
class Wrapped implements LoneMachine {
    private final LoneMachine machine;

    Wrapped(LoneMachine machine) {
        this.machine = machine;
    }

    @Override
    public double inertia(double x) {
        return machine.inertia(x);
    }

    @Override
    public double inertiaSlope(double x) {
        return machine.inertiaSlope(x);
    }

    @Override
    public double rubbedInertia(double x) {
        return machine.rubbedInertia(x);
    }

    @Override
    public double rubbedInertiaSlope(double x) {
        return machine.rubbedInertiaSlope(x);
    }

    @Override
    public double weight(double x) {
        return machine.weight(x);
    }

    @Override
    public double rubber(double x, Sense sense) {
        return machine.rubber(x, sense);
    }

    @Override
    public double storing(double x) {
        return machine.storing(x);
    }

    @Override
    public double friction(double x) {
        return machine.friction(x);
    }

    @Override
    public double holding(double x) {
        return machine.holding(x);
    }

    @Override
    public double weightEnergy(double x) {
        return machine.weightEnergy(x);
    }

    @Override
    public double rubberEnergy(double x) {
        return machine.rubberEnergy(x);
    }

    @Override
    public double testedRoom(double x) {
        return machine.testedRoom(x);
    }

    @Override
    public Ends ends() {
        return machine.ends();
    }
}
