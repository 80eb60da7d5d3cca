package counterpull.bench.person;

import counterpull.engine.body.Action;
import counterpull.engine.strength.Tester;
import java.util.OptionalDouble;

/**
 * What held the scale, and how far the same person's torque moves from one day to the next when tested so.
 *
 * @param tester hand, belt or machine
 * @param own the person's own relative standard deviation between days on which nothing had changed; empty where not known, and then
 *     the published one counts ({@link BetweenDays})
 * @param same whether it was the same tester and instrument as on the days it is compared with
 */
public record Way(Tester tester, OptionalDouble own, Same same) {
    /** Who tests, and with what, from visit to visit. */
    public enum Same {
        /** The same person with the same instrument. */
        TESTER,
        /** Another person, or not known. */
        INSTRUMENT_ONLY
    }

    /** With the published uncertainty of one tester. */
    public static Way of(Tester tester) {
        return new Way(tester, OptionalDouble.empty(), Same.TESTER);
    }

    /** Relative standard deviation between days: the standard error of measurement as a share. */
    public double betweenDays(Action action) {
        return own.orElse(BetweenDays.sd(tester, action) * (same == Same.TESTER ? 1 : BetweenDays.OTHER_TESTER));
    }

    /** Relative standard deviation of one effort of a session where only one was made; 8 % by hand, else 5 %: our assumption. */
    double withinSession() {
        return tester == Tester.HAND_HELD ? 0.08 : 0.05;
    }

    /** Whose number the spread between days is, as a table says it. */
    public String source() {
        return own.isPresent() ? "this person's own repeats" : "published for this way of testing";
    }
}
