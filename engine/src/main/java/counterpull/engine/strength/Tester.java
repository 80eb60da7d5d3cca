package counterpull.engine.strength;

import counterpull.engine.body.Action;

/**
 * What a test was taken with, and the standard deviation of one reading to assume where nobody repeated it. A
 * person's own repeats are better.
 */
public enum Tester {
    /**
     * A dynamometer held by the tester's hand. Against an isokinetic dynamometer the 95 % limits of agreement are
     * ±33.6 % in knee extension and ±48.9 % in ankle plantarflexion (Chamorro 2017, Open Med 12:359, 17 studies;
     * looked up): over 1.96 √2 that is 12.1 % and 17.6 %. Every other action: 15 %, between the two, our assumption.
     */
    HAND_HELD {
        @Override
        public double relativeSd(Action action) {
            return switch (action) {
                case KNEE_EXTENSION -> 0.121;
                case ANKLE_PLANTARFLEXION -> 0.176;
                default -> 0.15;
            };
        }
    },
    /**
     * A dynamometer or scale held by a belt. Between two testers the limits of agreement are −14.0 to +11.1 %
     * (PMC6615264; looked up), which is 4.5 %; between two days older people's isometric knee extension varies by 7.1
     * to 9.3 % (2014, doi 10.1007/s11556-013-0131-y; looked up). A test is used on other days, so 8 %; other actions
     * the same, our assumption.
     */
    BELT_FIXED {
        @Override
        public double relativeSd(Action action) {
            return 0.08;
        }
    },
    /**
     * An isokinetic dynamometer: limits below ±15 % for most actions of the leg (Chamorro 2017; looked up), which is
     * 5.4 %.
     */
    ISOKINETIC {
        @Override
        public double relativeSd(Action action) {
            return 0.054;
        }
    },
    /**
     * No instrument: what a set of repetitions at a known setup says, written as a test. 22 % is that of a leg press for ten repetitions with
     * two left: mostly what people differ by (the bench says how that comes about); our assumption where no spread is stated.
     */
    REPETITIONS {
        @Override
        public double relativeSd(Action action) {
            return 0.22;
        }
    };

    /** Standard deviation of one reading over the reading. */
    public abstract double relativeSd(Action action);
}
