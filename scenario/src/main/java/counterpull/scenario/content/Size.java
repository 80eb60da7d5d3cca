package counterpull.scenario.content;

/** Cross-section of a piece of rubber, unstretched. */
public sealed interface Size {

    /** Area, m². */
    double area();

    /**
     * A tube.
     *
     * @param bore inner diameter, m
     * @param wall wall thickness, m
     */
    record Tube(double bore, double wall) implements Size {
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
    record Strip(double width, double thickness) implements Size {
        @Override
        public double area() {
            return width * thickness;
        }
    }
}
