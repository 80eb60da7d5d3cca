package counterpull.bench.tubing;

/** Size of one strand across, unstretched, as written on the piece or measured; as taken, nothing is checked here. */
public sealed interface CrossSection permits CrossSection.Tube, CrossSection.Strip {
    /** Area of rubber, m². */
    double area();

    /**
     * A tube.
     *
     * @param bore inner diameter, m
     * @param wall thickness of the wall, m
     */
    record Tube(double bore, double wall) implements CrossSection {
        @Override
        public double area() {
            return Math.PI * wall * (bore + wall);
        }
    }

    /**
     * A flat strip.
     *
     * @param width m
     * @param thickness m
     */
    record Strip(double width, double thickness) implements CrossSection {
        @Override
        public double area() {
            return width * thickness;
        }
    }
}
