package counterpull.readings.machines;

import counterpull.bench.Answer;
import counterpull.bench.sled.SledBench;
import counterpull.bench.sled.SledFound;
import counterpull.readings.Subject;

/**
 * A sled that was measured.
 *
 * @param bench the readings
 * @param answer what they say
 */
public record SledSubject(SledBench bench, Answer<SledFound> answer) implements Subject {
    SledSubject(SledBench bench) {
        this(bench, bench.answer());
    }

    @Override
    public String name() {
        return bench.name();
    }

    @Override
    public String forScenario() {
        return answer.result().map(SledText::of).orElse("");
    }
}
