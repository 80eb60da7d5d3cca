package counterpull.bench.trace;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a force–time trace says: rest, efforts told apart, and of each its peak, best second, onset and rate of rise.
 *
 * <p>Windows of the rate of rise from the onset: 50, 100, 150 and 200 ms (Maffiuletti et al. 2016, Eur J Appl Physiol 116:1091-1116; the set
 * of windows from memory). No interval is given for a single effort's plateau: how far one effort lies from the next says more about a
 * person than the noise inside one, and repeated efforts are for the strength bench.
 */
public final class TraceBench {
    /** The window of the steepest rise, s. */
    public static final double STEEPEST = 0.020;

    private static final double[] WINDOWS = {0.050, 0.100, 0.150, 0.200};

    private TraceBench() {}

    /** What a trace says, or why it says nothing; all remarks at once. */
    public static Answer<TraceFindings> of(Trace trace) {
        List<Remark> refusals = TraceRefusals.of(trace);
        if (!refusals.isEmpty()) {
            return Answer.refused(refusals);
        }
        TraceFindings findings = found(trace, EffortsApart.of(trace));
        return Answer.of(findings, TraceDoubts.of(trace, findings));
    }

    private static TraceFindings found(Trace trace, List<Effort.Stretch> stretches) {
        Optional<Rest> rest = rest(trace, stretches.get(0).from());
        List<Effort> efforts = new ArrayList<>();
        for (Effort.Stretch stretch : stretches) {
            efforts.add(effort(trace, rest, efforts.size() + 1, stretch));
        }
        return new TraceFindings(rest, efforts, Sampling.interval(trace));
    }

    private static Optional<Rest> rest(Trace trace, double underWay) {
        return underWay > trace.begin()
                ? Optional.of(Rest.before(trace, underWay)).filter(rest -> rest.samples() >= Rest.FEWEST)
                : Optional.empty();
    }

    private static Effort effort(Trace trace, Optional<Rest> rest, int number, Effort.Stretch stretch) {
        Effort.Peak peak = peak(trace, stretch);
        Optional<Plateau> plateau = stretch.length() >= Plateau.WINDOW
                ? Optional.of(BestSecond.in(trace, stretch.from(), stretch.to()))
                : Optional.empty();
        Optional<Onset> onset =
                rest.map(known -> Onset.backFrom(trace, stretch.from(), Onset.threshold(known, peak.force())));
        double from = onset.map(Onset::time).orElse(stretch.from());
        return new Effort(
                number,
                stretch,
                peak,
                plateau,
                onset,
                onset.map(known -> rises(trace, known.time())).orElse(List.of()),
                Rise.steepest(trace, from, peak.time(), STEEPEST));
    }

    private static Effort.Peak peak(Trace trace, Effort.Stretch stretch) {
        int highest = -1;
        for (int i = 0; i < trace.size(); i++) {
            boolean inside = trace.time(i) >= stretch.from() && trace.time(i) <= stretch.to();
            highest = inside && (highest < 0 || trace.force(i) > trace.force(highest)) ? i : highest;
        }
        return new Effort.Peak(highest, trace.time(highest), trace.force(highest));
    }

    private static List<Rise> rises(Trace trace, double onset) {
        List<Rise> rises = new ArrayList<>();
        for (double window : WINDOWS) {
            rises.add(Rise.over(trace, onset, window));
        }
        return rises;
    }
}
