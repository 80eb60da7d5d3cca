package counterpull.engine.uncertainty;

import counterpull.engine.profile.Profile;
import counterpull.engine.strength.Tester;
import java.util.List;
import java.util.Optional;

/**
 * How sure an answer is, all of it.
 *
 * @param profile what is asked with everything as measured, at the positions of the bands
 * @param bands what the draws gave
 * @param contributions what contributes; empty where no effort is known
 * @param next the readings worth taking next, the best first
 * @param tester what strength would be tested with
 * @param notVaried what no draw varies, in words
 */
public record HowSure(
        Profile profile,
        EffortBands bands,
        Optional<Contributions> contributions,
        List<NextReading> next,
        Tester tester,
        List<String> notVaried) {
    public HowSure {
        next = List.copyOf(next);
        notVaried = List.copyOf(notVaried);
    }

    /**
     * Puts the draws together with what contributes and what to read next.
     *
     * @param doubts what is known only so far
     * @param bands what draws of it gave
     * @param tester what strength would be tested with
     */
    public static <T extends Trial<T>> HowSure of(Doubts<T> doubts, EffortBands bands, Tester tester) {
        Optional<Contributions> contributions =
                Contributions.of(doubts, bands.looked().joints());
        List<NextReading> next = contributions
                .map(found -> NextReadings.of(doubts, found, tester))
                .orElse(List.of());
        return new HowSure(doubts.nominal().profile(), bands, contributions, next, tester, doubts.notVaried());
    }
}
