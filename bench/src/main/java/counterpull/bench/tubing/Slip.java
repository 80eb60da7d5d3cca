package counterpull.bench.tubing;

/** What a factor between a reading and its neighbours looks like. */
record Slip(String code, String guess) {
    private static final double TENTH = Math.log(10);
    private static final double POUND_IN_NEWTON = Math.log(4.448);
    private static final double POUNDS_IN_KILOGRAM = Math.log(2.2046);

    static Slip of(double factor) {
        double size = Math.abs(Math.log(factor));
        boolean above = factor > 1;
        if (Math.abs(size - TENTH) < Math.log(1.45)) {
            String where = above ? "newtons noted among kilograms" : "kilograms noted among newtons";
            return new Slip("decimal-slip", "a decimal slip, or " + where + "?");
        }
        if (Math.abs(size - 2 * TENTH) < Math.log(1.45)) {
            return new Slip("decimal-slip", "a decimal slip by two places?");
        }
        if (Math.abs(size - POUND_IN_NEWTON) < Math.log(1.25)) {
            String where = above ? "newtons noted among pounds" : "pounds noted among newtons";
            return new Slip("unit-mixed", where + "?");
        }
        if (Math.abs(size - POUNDS_IN_KILOGRAM) < Math.log(1.25)) {
            String where = above ? "pounds noted among kilograms" : "kilograms noted among pounds";
            return new Slip("unit-mixed", where + "?");
        }
        return new Slip("off-the-curve", "take it again, or leave it out");
    }
}
