package counterpull.bench.repetitions;

/** What a set says of the largest log effort of all: likelihood up to a factor. */
sealed interface Sighting permits Sighting.Near, Sighting.AtMost {
    double likelihood(double largest);

    double middle();

    double sd();

    /** It is about this. */
    record Near(double middle, double sd) implements Sighting {
        @Override
        public double likelihood(double largest) {
            return Normal.density((largest - middle) / sd);
        }
    }

    /** It is about this or less. */
    record AtMost(double middle, double sd) implements Sighting {
        @Override
        public double likelihood(double largest) {
            return Normal.below((middle - largest) / sd);
        }
    }
}
