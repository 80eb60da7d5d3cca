package counterpull.picture;

/**
 * Where the parts of a body lie that a result does not hold, chosen as people usually sit, lie or stand: they carry no number. Directions
 * in rad, hip → shoulder for the trunk.
 */
final class Rest {
    private static final double SITTING = Math.toRadians(98);
    private static final double MOST_FLEXION = Math.toRadians(100);

    private Rest() {}

    /** The trunk over a thigh (hip → knee) that is held: upright as far as the hip bends. */
    static double trunkOver(double thigh) {
        double flexion = wrap(thigh - SITTING + Math.PI);
        return thigh + Math.PI - Math.max(0, Math.min(MOST_FLEXION, flexion));
    }

    private static double wrap(double angle) {
        double turned = angle % (2 * Math.PI);
        if (turned > Math.PI) {
            return turned - 2 * Math.PI;
        }
        return turned < -Math.PI ? turned + 2 * Math.PI : turned;
    }

    /** Whether something that points this way needs no support under it. */
    static boolean upright(double direction) {
        return Math.abs(Math.cos(direction)) < 0.43;
    }
}
