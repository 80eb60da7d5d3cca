package counterpull.engine.body;

/**
 * One row of de Leva's table with its three radii of gyration, fractions of length. His "sagittal" is about the sagittal
 * (antero-posterior) axis; turning in the sagittal plane is about the transverse one.
 */
record DeLevaRow(SegmentRow aboutSagittalAxis, SegmentRow aboutTransverseAxis, SegmentRow aboutLongitudinalAxis) {
    /** Mass and centre of mass fractions, then the radii about the sagittal, transverse and longitudinal axis. */
    static DeLevaRow of(String segment, String endpoints, double... numbers) {
        return new DeLevaRow(
                row(segment, endpoints, numbers, 2),
                row(segment, endpoints, numbers, 3),
                row(segment, endpoints, numbers, 4));
    }

    private static SegmentRow row(String segment, String endpoints, double[] numbers, int axis) {
        return new SegmentRow(segment, endpoints, numbers[0], numbers[1], numbers[axis]);
    }

    String segment() {
        return aboutTransverseAxis.segment();
    }
}
