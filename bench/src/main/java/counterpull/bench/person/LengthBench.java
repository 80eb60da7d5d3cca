package counterpull.bench.person;

import counterpull.bench.Answer;
import counterpull.bench.Budget;
import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A length or a girth of the body, taken with a tape once or more.
 *
 * <p>Standard uncertainty: scatter/√readings, or 5 mm where it was taken once, and 1 % for where the landmarks are felt, which repeating
 * does not show (technical error below 1 % for lengths, Ulijaszek and Kerr 1999; from memory).
 *
 * @param words what was measured, as a person says it, with its side
 * @param readings m, in their order, one or more
 * @param usual what a person of that stature has, m; empty where nothing is published for it
 */
public record LengthBench(String words, List<Double> readings, OptionalDouble usual) {
    private static final double ONCE = 0.005;
    private static final double LANDMARKS = 0.01;

    /** Past three technical errors of two people. */
    private static final double APART = 0.05;

    /** Proportions spread by 4 to 6 % (from memory): four times that is another length. */
    private static final double UNLIKE = 0.25;

    private static final double LONGEST = 3;

    public LengthBench {
        readings = List.copyOf(readings);
    }

    /** What the readings say, m. */
    public Answer<Estimate> answer() {
        List<Remark> remarks = refusals();
        if (!remarks.isEmpty()) {
            return Answer.refused(remarks);
        }
        Scatter scatter = Scatter.of(readings);
        Budget budget = Budget.none().with(LANDMARKS * scatter.mean());
        budget = scatter.repeated() ? scatter.into(budget) : budget.with(ONCE);
        return Answer.of(
                Estimate.student(scatter.mean(), budget.standardError(), budget.degreesOfFreedom()),
                doubts(scatter.mean()));
    }

    /** Technical error of measurement of pairs, √(Σd²/2N), in the readings' unit (Dahlberg; Ulijaszek and Kerr 1999). */
    public static double technicalError(double[] first, double[] second) {
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            sum += (first[i] - second[i]) * (first[i] - second[i]);
        }
        return Math.sqrt(sum / (2 * first.length));
    }

    private String reading(int index) {
        return "reading " + (index + 1) + " of " + words;
    }

    private List<Remark> refusals() {
        List<Remark> remarks = new ArrayList<>();
        if (readings.isEmpty()) {
            remarks.add(Remark.refuses("no-readings", words + ": there is no reading"));
        }
        for (int i = 0; i < readings.size(); i++) {
            double length = readings.get(i);
            if (!(length > 0) || !(length < LONGEST)) {
                remarks.add(Remark.refuses("length-impossible", reading(i) + " is ")
                        .then(length, Kind.LENGTH)
                        .then("; a length of the body lies above zero and below ")
                        .then(LONGEST, Kind.LENGTH));
            }
        }
        return remarks.isEmpty() ? new Slips(Kind.LENGTH, this::reading).in(readings) : remarks;
    }

    private List<Remark> doubts(double mean) {
        List<Remark> remarks = new ArrayList<>();
        for (int i = 1; i < readings.size(); i++) {
            if (Math.abs(readings.get(i) / readings.get(0) - 1) > APART) {
                remarks.add(Remark.doubts("readings-apart", reading(i) + " is ")
                        .then(readings.get(i), Kind.LENGTH)
                        .then(" and the first ")
                        .then(readings.get(0), Kind.LENGTH)
                        .then(": more apart than ")
                        .then(APART, Kind.SHARE)
                        .then(". Feel for both ends again"));
            }
        }
        usual.ifPresent(expected -> {
            if (Math.abs(mean / expected - 1) > UNLIKE) {
                remarks.add(Remark.doubts("length-unlike-stature", words + " is ")
                        .then(mean, Kind.LENGTH)
                        .then(", and a person of this stature has about ")
                        .then(expected, Kind.LENGTH)
                        .then(": from which point to which was it taken?"));
            }
        });
        return remarks;
    }
}
