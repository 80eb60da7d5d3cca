package counterpull.bench.tubing;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Benches that are wrong in one way each: the remark has its code and names the reading. */
class BadBenchTest {
    private static final double[] LENGTHS = {0.54, 0.63, 0.72, 0.81, 0.90, 1.08};
    private static final double[] UP = {13.5, 21.5, 27.5, 33, 38, 48.5};
    private static final double[] DOWN = {11.5, 19, 25, 30.5, 35.5, 47};
    private static final double NAN = Double.NaN;

    private static List<Pull> pulls(double[] lengths, double[] forces) {
        List<Pull> pulls = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            pulls.add(new Pull(lengths[i], forces[i]));
        }
        return pulls;
    }

    private static double[] with(double[] values, int at, double value) {
        double[] copy = values.clone();
        copy[at] = value;
        return copy;
    }

    private static double[] all(double[] values, double factor) {
        double[] copy = values.clone();
        for (int i = 0; i < copy.length; i++) {
            copy[i] *= factor;
        }
        return copy;
    }

    private static TapeReadings tape(double... readings) {
        List<Double> list = new ArrayList<>();
        for (double each : readings) {
            list.add(each);
        }
        return new TapeReadings(list, OptionalDouble.empty());
    }

    private static final TapeReadings NATURAL = tape(0.451, 0.449, 0.450);

    private static TubingBench bench(double[] lengths, double[] up) {
        return bench(NATURAL, lengths, up);
    }

    private static TubingBench bench(TapeReadings natural, double[] lengths, double[] up) {
        return new TubingBench(
                Piece.tagged("T1"),
                natural,
                Pulls.stretching(pulls(lengths, up)),
                Instruments.NOT_STATED,
                Optional.empty());
    }

    private static TubingBench both(double[] downLengths, double[] down) {
        Pulls pulls = new Pulls(pulls(LENGTHS, UP), pulls(downLengths, down), List.of());
        return new TubingBench(Piece.tagged("T1"), NATURAL, pulls, Instruments.NOT_STATED, Optional.empty());
    }

    private static TubingBench piece(Piece piece) {
        return new TubingBench(
                piece, NATURAL, Pulls.stretching(pulls(LENGTHS, UP)), Instruments.NOT_STATED, Optional.empty());
    }

    private static TubingBench instruments(double scale, double tape) {
        Instruments instruments = new Instruments(
                Double.isNaN(scale) ? OptionalDouble.empty() : OptionalDouble.of(scale),
                Double.isNaN(tape) ? OptionalDouble.empty() : OptionalDouble.of(tape));
        return new TubingBench(
                Piece.tagged("T1"), NATURAL, Pulls.stretching(pulls(LENGTHS, UP)), instruments, Optional.empty());
    }

    private static TubingBench after(double after) {
        return new TubingBench(
                Piece.tagged("T1"),
                NATURAL,
                Pulls.stretching(pulls(LENGTHS, UP)),
                Instruments.NOT_STATED,
                Optional.of(TapeReadings.once(after)));
    }

    private static Piece strands(double strands) {
        return new Piece("T1", Optional.empty(), strands, Preparation.CYCLED);
    }

    private static Piece section(CrossSection section) {
        return new Piece("T1", Optional.of(section), 1, Preparation.CYCLED);
    }

    static Stream<Arguments> benches() {
        double[] none = {};
        double[] one = {0.54};
        double[] same = {0.7, 0.7, 0.7};
        return Stream.of(
                bad("no reading at all", bench(none, none), "no-readings", "no reading"),
                bad("one reading", bench(one, new double[] {13.5}), "one-reading", "pull 1 at 0.54 m"),
                bad(
                        "all at one length",
                        bench(same, new double[] {20, 21, 20.5}),
                        "all-the-same-length",
                        "pull 1 to pull 3"),
                bad("only letting go", onlyDown(), "only-letting-go", "letting go"),
                bad("force falls with length", bench(LENGTHS, with(UP, 4, 27)), "force-falls", "pull 5 at 0.9 m"),
                bad(
                        "the whole way swapped",
                        bench(LENGTHS, new double[] {48, 38, 33, 27, 21, 13}),
                        "force-falls",
                        "pull 6"),
                bad(
                        "shorter than natural",
                        bench(with(LENGTHS, 0, 0.40), UP),
                        "shorter-than-natural",
                        "pull 1 at 0.4 m"),
                bad("a slip by ten up", bench(LENGTHS, with(UP, 2, 275)), "decimal-slip", "pull 3 (0.72 m, 275 N)"),
                bad("a slip by ten down", bench(LENGTHS, with(UP, 2, 2.75)), "decimal-slip", "pull 3 (0.72 m, 2.75 N)"),
                bad("a slip in the first", bench(LENGTHS, with(UP, 0, 135)), "decimal-slip", "pull 1 (0.54 m, 135 N)"),
                bad("a slip in the last", bench(LENGTHS, with(UP, 5, 4.85)), "decimal-slip", "pull 6 (1.08 m, 4.85 N)"),
                bad("pounds among kilograms", bench(LENGTHS, with(UP, 3, 33 * 2.2046)), "unit-mixed", "pull 4 (0.81 m"),
                bad("kilograms among pounds", bench(LENGTHS, with(UP, 3, 33 / 2.2046)), "unit-mixed", "pull 4 (0.81 m"),
                bad("pounds among newtons", bench(LENGTHS, with(UP, 2, 27.5 / 4.448)), "unit-mixed", "pull 3 (0.72 m"),
                bad(
                        "kilograms among newtons",
                        bench(LENGTHS, with(UP, 2, 27.5 / 9.80665)),
                        "decimal-slip",
                        "kilograms noted"),
                bad(
                        "one length in millimetres",
                        bench(with(LENGTHS, 2, 7.2), UP),
                        "farther-than-rubber",
                        "pull 3 at 7.2 m"),
                bad("one length a tenth", bench(with(LENGTHS, 2, 0.072), UP), "shorter-than-natural", "decimal slip"),
                bad("every length ten times", bench(all(LENGTHS, 10), UP), "length-unit", "pull 1 at 5.4 m"),
                bad("natural length in inches", bench(all(LENGTHS, 1 / 2.54), UP), "length-unit", "every length"),
                bad(
                        "letting go above",
                        both(LENGTHS, with(DOWN, 2, 31)),
                        "letting-go-above",
                        "pull 3 of those letting go"),
                bad(
                        "letting go slips",
                        both(LENGTHS, with(DOWN, 2, 250)),
                        "decimal-slip",
                        "pull 3 of those letting go"),
                bad("half a strand", piece(strands(1.5)), "strands-not-whole", "1.5"),
                bad("no strand", piece(strands(0)), "strands-not-whole", "0"),
                bad("strands are no number", piece(strands(NAN)), "strands-not-whole", "NaN"),
                bad("a length is no number", bench(with(LENGTHS, 1, NAN), UP), "not-a-number", "length of pull 2"),
                bad("a force is no number", bench(LENGTHS, with(UP, 1, NAN)), "not-a-number", "force of pull 2"),
                bad("a negative force", bench(LENGTHS, with(UP, 0, -13.5)), "force-negative", "force of pull 1"),
                bad("a length of nothing", bench(with(LENGTHS, 0, 0), UP), "length-not-positive", "length of pull 1"),
                bad("natural length of nothing", bench(tape(0), LENGTHS, UP), "length-not-positive", "natural length"),
                bad("no natural length", bench(tape(), LENGTHS, UP), "natural-missing", "natural length"),
                bad(
                        "natural repeats disagree",
                        bench(tape(.45, .54, .45), LENGTHS, UP),
                        "natural-repeats-disagree",
                        "reading 2"),
                bad("a scale without error", instruments(0, NAN), "uncertainty-not-positive", "scale"),
                bad("a tape below 0", instruments(0.3, -0.001), "uncertainty-not-positive", "tape"),
                bad("no tag", piece(Piece.tagged(" ")), "tag-missing", "tag"),
                bad(
                        "a wall of nothing",
                        piece(section(new CrossSection.Tube(0.006, 0))),
                        "length-not-positive",
                        "wall"),
                bad(
                        "a width below 0",
                        piece(section(new CrossSection.Strip(-0.1, 0.001))),
                        "length-not-positive",
                        "width"),
                bad("after does not fit", after(45), "after-does-not-fit", "after the test, 45 m"),
                bad(
                        "force at natural",
                        bench(with(LENGTHS, 0, 0.452), with(UP, 0, 9)),
                        "force-at-natural",
                        "pull 1 at 0.452 m"),
                bad("the scale hangs", bench(LENGTHS, new double[6]), "no-force", "pull 1 to pull 6"));
    }

    private static TubingBench onlyDown() {
        Pulls pulls = new Pulls(List.of(), pulls(LENGTHS, DOWN), List.of());
        return new TubingBench(Piece.tagged("T1"), NATURAL, pulls, Instruments.NOT_STATED, Optional.empty());
    }

    private static Arguments bad(String what, TubingBench bench, String code, String names) {
        return Arguments.of(what, bench, code, names);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("benches")
    void isRefusedByTheNameOfItsReading(String what, TubingBench bench, String code, String names) {
        Answer<TubingResult> answer = bench.answer();
        assertThat(answer.result()).as(what).isEmpty();
        List<Remark> said = answer.remarks().stream()
                .filter(each -> each.code().equals(code))
                .toList();
        assertThat(said).as("%s: %s", what, sentences(answer)).isNotEmpty();
        assertThat(said).as(what).anyMatch(each -> each.inSi().contains(names));
        assertThat(answer.remarks().stream().map(Remark::code).distinct())
                .as("one fault, one kind of remark: %s", sentences(answer))
                .containsExactly(code);
    }

    static Stream<Arguments> doubtful() {
        Piece fresh = new Piece("T1", Optional.empty(), 1, Preparation.FIRST_STRETCH);
        Piece unknown = new Piece("T1", Optional.empty(), 1, Preparation.NOT_NOTED);
        return Stream.of(
                bad("a first stretch", piece(fresh), "first-stretch", "three to five times"),
                bad("nobody noted cycles", piece(unknown), "first-stretch", "nobody noted"),
                bad("a tape that disagrees", late(), "natural-length-disagrees", "the tape said 0.45 m"),
                bad(
                        "letting go beyond",
                        both(with(LENGTHS, 5, 1.2), DOWN),
                        "letting-go-beyond",
                        "pull 6 of those letting go"),
                bad(
                        "a wall in centimetres",
                        piece(section(new CrossSection.Tube(0.06, 0.02))),
                        "stress-not-rubber",
                        "pull 6"),
                bad("shorter after", after(0.42), "set-negative", "shorter after"),
                bad("much lost", both(LENGTHS, all(DOWN, 0.4)), "loss-too-large", "of the work"),
                bad(
                        "a scale in steps of ten newtons",
                        bench(new double[] {0.5, 0.55, 0.6, 0.65, 0.7, 0.75}, new double[] {10, 20, 30, 40, 50, 60}),
                        "coarse-steps",
                        "steps of 10 N"),
                bad("a scale said far too good", instruments(0.01, NAN), "scatter-above-stated", "off the curve"));
    }

    /** In proportion from 50 cm on, and the tape said 45. */
    private static TubingBench late() {
        double[] lengths = {0.6, 0.8, 1};
        return new TubingBench(
                Piece.tagged("T1"),
                new TapeReadings(List.of(0.45), OptionalDouble.of(0.005)),
                Pulls.stretching(pulls(lengths, new double[] {8, 24, 40})),
                Instruments.scale(0.1),
                Optional.empty());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("doubtful")
    void isAnsweredWithADoubt(String what, TubingBench bench, String code, String names) {
        Answer<TubingResult> answer = bench.answer();
        assertThat(answer.result()).as("%s: %s", what, sentences(answer)).isPresent();
        assertThat(answer.remarks())
                .as("%s: %s", what, sentences(answer))
                .anyMatch(each -> each.code().equals(code) && each.inSi().contains(names));
    }

    /** The control: the bench that all of these spoil has nothing to be said against it. */
    @Test
    void theSoundBenchIsNotScolded() {
        Answer<TubingResult> answer = both(LENGTHS, DOWN).answer();
        assertThat(answer.result()).isPresent();
        assertThat(sentences(answer)).isEmpty();
    }

    @Test
    void everyFaultIsSaidAtOnce() {
        TubingBench bench = bench(tape(-1), with(LENGTHS, 1, NAN), with(UP, 3, -5));
        assertThat(bench.answer().remarks().stream().map(Remark::code))
                .containsExactly("length-not-positive", "not-a-number", "force-negative");
        TubingBench slips = bench(LENGTHS, with(with(UP, 1, 215), 4, 3.8));
        assertThat(slips.answer().remarks().stream().map(Remark::inSi))
                .anyMatch(each -> each.contains("pull 2"))
                .anyMatch(each -> each.contains("pull 5"));
    }

    private static List<String> sentences(Answer<TubingResult> answer) {
        return answer.remarks().stream()
                .map(each -> each.code() + ": " + each.inSi())
                .toList();
    }
}
