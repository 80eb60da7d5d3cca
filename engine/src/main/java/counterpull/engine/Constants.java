package counterpull.engine;

/** Physical constants, SI. */
public final class Constants {
    /** Standard acceleration of gravity, m/s² (3rd CGPM, 1901). */
    public static final double STANDARD_GRAVITY = 9.80665;

    private Constants() {}
}
