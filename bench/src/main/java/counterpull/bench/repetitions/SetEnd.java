package counterpull.bench.repetitions;

/** How a set of repetitions ended, and so how many more there would have been. */
public sealed interface SetEnd permits SetEnd.Called, SetEnd.Failed, SetEnd.Pain {
    /**
     * Repetitions to failure as far as this tells.
     *
     * @param done whole repetitions done
     */
    ToFailure toFailure(int done);

    /** Whether failure would have come only after these, nobody knows how long after. */
    boolean onlyAtLeast();

    /**
     * Repetitions to failure.
     *
     * @param mean the most likely number
     * @param sd one standard deviation of it
     */
    record ToFailure(double mean, double sd) {}

    /**
     * The person said how many more there were.
     *
     * <p>True reserve = called + bias + error, never below 0. Called up to 3 in sets of up to 12: bias 0.2, standard deviation 1.0 (Refalo
     * 2024, bench press, −0.17 ± 1.00; looked up). Called 4 or 5: 0.5 and 1.5; 6: 1 and 2.5 (Hackett 2017 and Halperin 2022, looked up; the numbers
     * are our reading of them). Longer sets: 0.3 more bias for each repetition past 12, at most 3, and 1.5 times the error (Halperin 2022:
     * people under-predict more in long sets).
     *
     * @param left repetitions said to be left, 0 to 6
     */
    record Called(int left) implements SetEnd {
        private static final int LONG_SET = 12;

        @Override
        public ToFailure toFailure(int done) {
            double bias = left <= 3 ? 0.2 : left <= 5 ? 0.5 : 1;
            double sd = left <= 3 ? 1.0 : left <= 5 ? 1.5 : 2.5;
            int more = Math.max(0, done + left - LONG_SET);
            return notBelow(done, left + bias + Math.min(3, 0.3 * more), more > 0 ? 1.5 * sd : sd);
        }

        /** Moments of a normal reserve cut off at 0. */
        private static ToFailure notBelow(int done, double middle, double sd) {
            double from = -middle / sd;
            double lambda = Normal.density(from) / Normal.below(-from);
            return new ToFailure(done + middle + sd * lambda, sd * Math.sqrt(1 + from * lambda - lambda * lambda));
        }

        @Override
        public boolean onlyAtLeast() {
            return false;
        }
    }

    /**
     * A repetition failed. One person's number moves by 0.7 to 1.1 from week to week (Mitter 2022, bench press; looked up): 0.9 is taken.
     */
    record Failed() implements SetEnd {
        @Override
        public ToFailure toFailure(int done) {
            return new ToFailure(done, 0.9);
        }

        @Override
        public boolean onlyAtLeast() {
            return false;
        }
    }

    /** Pain, or anything else than the muscles, ended it: they can do at least this. */
    record Pain() implements SetEnd {
        @Override
        public ToFailure toFailure(int done) {
            return new ToFailure(done, 0);
        }

        @Override
        public boolean onlyAtLeast() {
            return true;
        }
    }
}
