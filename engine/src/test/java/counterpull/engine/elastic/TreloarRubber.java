package counterpull.engine.elastic;

/** Ogden's rubber in its two common sets, for one square metre, so that a tension in N is a stress in Pa. */
final class TreloarRubber {
    /** 1 kgf/cm² in Pa: standard gravity over 1e-4 m². */
    static final double KGF_PER_CM2 = 98066.5;

    static final double[] ALPHA = {1.3, 5.0, -2.0};

    /** The usual set, 0.63, 0.0012, −0.01 MPa. */
    static final Ogden ROUNDED = of(1);

    /** Ogden's own, 6.3, 0.012, −0.1 kgf/cm². */
    static final Ogden OWN =
            new Ogden(1, new double[] {6.3 * KGF_PER_CM2, 0.012 * KGF_PER_CM2, -0.1 * KGF_PER_CM2}, ALPHA);

    private TreloarRubber() {}

    static Ogden of(double area) {
        return new Ogden(area, new double[] {0.63e6, 0.0012e6, -0.01e6}, ALPHA);
    }
}
