package counterpull.readings.rubber;

import counterpull.bench.Answer;
import counterpull.bench.tubing.TubingBench;
import counterpull.bench.tubing.TubingResult;
import counterpull.bench.tubing.Wear;
import counterpull.readings.Subject;
import java.util.Optional;

/**
 * One piece of rubber that was measured.
 *
 * @param bench its readings, SI
 * @param answer what they say
 * @param life the piece's record and how it stands; empty where the file has no record
 */
public record RubberSubject(TubingBench bench, Answer<TubingResult> answer, Optional<Life> life) implements Subject {
    /** A record of a piece judged on a day. */
    static RubberSubject of(TubingBench bench, Optional<LifeLines> lines) {
        Answer<TubingResult> answer = bench.answer();
        Optional<Life> life = lines.map(line -> line.life(bench.piece().tag(), answer.result()));
        return new RubberSubject(bench, answer, life);
    }

    @Override
    public String name() {
        return "rubber " + bench.piece().tag();
    }

    @Override
    public String forScenario() {
        return answer.result().map(result -> RubberText.of(bench, result)).orElse("");
    }

    /**
     * How it stands.
     *
     * @param day judged on
     * @param cycles stretches since its last test
     * @param tests how many tests its record has
     * @param wear what is due, and why
     */
    public record Life(java.time.LocalDate day, int cycles, int tests, Wear wear) {}
}
