package counterpull.report.words;

import counterpull.engine.motion.Tempo;
import counterpull.report.Exact;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Units;

/**
 * A tempo in one line.
 *
 * @param units what the reader reads
 */
public record TempoWords(Units units) {
    /** "down 2 s, wait 0 s, up 2 s, wait 0 s; full stop at both ends", for a stroke of this travel, m or rad. */
    public String of(Tempo tempo, double travel) {
        Tempo.Seconds seconds = tempo.seconds(travel);
        return "down " + time(seconds.lowering()) + ", wait " + time(seconds.lowPause()) + ", up "
                + time(seconds.lifting()) + ", wait " + time(seconds.highPause()) + "; " + tempo.words();
    }

    private String time(double seconds) {
        return Exact.words(seconds, Dimension.TIME, units);
    }
}
