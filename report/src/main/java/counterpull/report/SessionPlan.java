package counterpull.report;

import counterpull.engine.Require;
import java.util.List;

/**
 * How much is done, and when it ends.
 *
 * @param dose sets, repetitions, rest
 * @param warmUp steps before it
 * @param whenToStop plain sentences
 * @param origin where dose and sentences come from
 */
public record SessionPlan(Dose dose, List<WarmUp> warmUp, List<String> whenToStop, Origin origin) {
    /** Plain reasons to stop; common practice, no source. */
    public static final List<String> USUAL_STOPS = List.of(
            "pain that is sharp, rising, or over the agreed limit",
            "the tempo, the foot or the pelvis cannot be held",
            "rubber, hook or plate is not as it was");

    public SessionPlan {
        warmUp = List.copyOf(warmUp);
        whenToStop = List.copyOf(whenToStop);
    }

    /** Where a plan comes from. */
    public enum Origin {
        /** A professional wrote it down. */
        STATED("as planned"),
        /** Nobody said; the program's own plain values. */
        USUAL("our plain values: change them");

        private final String words;

        Origin(String words) {
            this.words = words;
        }

        /** The origin in words. */
        public String words() {
            return words;
        }
    }

    /**
     * Sets, repetitions and rest.
     *
     * @param sets working sets
     * @param repetitions in each
     * @param repetitionsLeft how many to leave at the end of a set
     * @param rest between sets, s
     */
    public record Dose(int sets, int repetitions, int repetitionsLeft, double rest) {
        private static final Require.Limits COUNTS = new Require.Limits(1, 100);

        public Dose {
            Require.within(sets, COUNTS, "sets", "");
            Require.within(repetitions, COUNTS, "repetitions", "");
            Require.within(repetitionsLeft, new Require.Limits(0, 20), "repetitions to leave", "");
            Require.within(rest, new Require.Limits(0, 3600), "rest", "s");
        }

        /** Three sets of eight, three left, two minutes: common practice, no source. */
        public static Dose usual() {
            return new Dose(3, 8, 3, 120);
        }
    }

    /** Plain values for a setup nobody planned a dose for. */
    public static SessionPlan usual(List<WarmUp> warmUp) {
        return new SessionPlan(Dose.usual(), warmUp, USUAL_STOPS, Origin.USUAL);
    }

    /** A stated dose with the plain reasons to stop. */
    public static SessionPlan stated(Dose dose, List<WarmUp> warmUp) {
        return new SessionPlan(dose, warmUp, USUAL_STOPS, Origin.STATED);
    }
}
