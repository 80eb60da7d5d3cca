package counterpull.bench.person;

/**
 * How the limb beyond the joint lay during a test, in the view that the notation uses: the person faces right, or is seen from their
 * own side where they move sideways; lying down turns the whole picture.
 *
 * @param direction from the joint outward along the limb (heel to toe for the foot), rad, counter-clockwise from level and straight
 *     ahead: −π/2 hanging, 0 level, π/2 pointing up, π level behind the joint
 * @param beyond how the rest of the limb lay beyond the next joint
 */
public record Attitude(double direction, Beyond beyond) {
    /** How what follows the next joint lies. */
    public enum Beyond {
        /** In one line with the limb. */
        STRAIGHT,
        /** Straight down. */
        HANGING,
        /** Held up by somebody or something else. */
        BORNE
    }

    /** The whole limb straight down: its weight turns nothing. */
    public static Attitude hanging() {
        return straight(-Math.PI / 2);
    }

    /** Level and straight, in front of the joint. */
    public static Attitude level() {
        return straight(0);
    }

    /** Straight in a direction, rad. */
    public static Attitude straight(double direction) {
        return new Attitude(direction, Beyond.STRAIGHT);
    }

    /**
     * An attitude as it is said on the floor.
     *
     * @param aboveLevel how far the limb points above level, rad; −π/2 hanging, beyond it the limb points back under the joint
     * @param lying how the person was
     * @param beyond how the rest of the limb lay
     */
    public static Attitude of(double aboveLevel, Lying lying, Beyond beyond) {
        return new Attitude(lying == Lying.FACE_DOWN ? Math.PI - aboveLevel : aboveLevel, beyond);
    }

    /** How the person was, as far as it decides which way a level limb points. */
    public enum Lying {
        /** Upright. */
        SITTING,
        /** Upright. */
        STANDING,
        /** Face up. */
        ON_THE_BACK,
        /** Face down: what points ahead when standing points behind. */
        FACE_DOWN,
        /** On the other side; the limb that moves is on top. */
        ON_THE_SIDE
    }
}
