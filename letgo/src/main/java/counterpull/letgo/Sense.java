package counterpull.letgo;

/** Which way a machine moves along its own coordinate. */
public enum Sense {
    /** Toward larger values, the way it is lifted. */
    UP(1),
    /** Toward smaller values, the way it is lowered. */
    DOWN(-1);

    private final int sign;

    Sense(int sign) {
        this.sign = sign;
    }

    /** +1 up, −1 down. */
    public int sign() {
        return sign;
    }
}
