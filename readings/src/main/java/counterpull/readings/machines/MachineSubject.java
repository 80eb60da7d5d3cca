package counterpull.readings.machines;

import counterpull.bench.Answer;
import counterpull.bench.machine.MachineBench;
import counterpull.bench.machine.MachineFound;
import counterpull.readings.Subject;

/**
 * A machine that was measured.
 *
 * @param bench the readings
 * @param answer what they say
 */
public record MachineSubject(MachineBench bench, Answer<? extends MachineFound> answer) implements Subject {
    MachineSubject(MachineBench bench) {
        this(bench, bench.answer());
    }

    @Override
    public String name() {
        return bench.name();
    }

    @Override
    public String forScenario() {
        return answer.result().map(found -> MachineText.of(bench.name(), found)).orElse("");
    }
}
