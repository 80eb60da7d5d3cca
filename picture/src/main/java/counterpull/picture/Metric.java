package counterpull.picture;

/** Centimetres, degrees, newtons, kilograms, newton metres, megapascals. */
record Metric() implements Wording {
    @Override
    public Unit length() {
        return new Unit("cm", 0.01, 1);
    }

    @Override
    public Unit angle() {
        return new Unit("°", Math.PI / 180, 0);
    }

    @Override
    public Unit force() {
        return new Unit("N", 1, 0);
    }

    @Override
    public Unit mass() {
        return new Unit("kg", 1, 1);
    }

    @Override
    public Unit torque() {
        return new Unit("N·m", 1, 0);
    }

    @Override
    public Unit stress() {
        return new Unit("MPa", 1e6, 1);
    }
}
