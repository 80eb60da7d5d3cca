package counterpull.report.bench;

import counterpull.bench.machine.CamFound;
import counterpull.bench.machine.LeverFound;
import counterpull.bench.machine.MachineFound;
import counterpull.bench.machine.ProfileFound;
import counterpull.bench.machine.StackFound;
import counterpull.readings.machines.MachineSubject;

/** A machine that was measured, for people. */
final class MachineSection {
    private final MachineSubject subject;
    private final BenchWords words;

    MachineSection(MachineSubject subject, BenchWords words) {
        this.subject = subject;
        this.words = words;
    }

    BenchSection section() {
        return subject.answer()
                .result()
                .map(found -> section(parts(found)))
                .orElseGet(() ->
                        BenchSection.refused(subject.name(), subject.answer().remarks()));
    }

    private BenchSection section(MachineParts parts) {
        return new BenchSection(
                subject.name(),
                parts.headline(),
                parts.sentences(),
                parts.tables(),
                parts.charts(),
                subject.answer().remarks(),
                subject.forScenario());
    }

    private MachineParts parts(MachineFound found) {
        if (found instanceof ProfileFound profile) {
            return new ProfileParts(profile, words);
        }
        if (found instanceof StackFound stack) {
            return new StackParts(stack, words);
        }
        if (found instanceof LeverFound lever) {
            return new LeverParts(lever, words);
        }
        return new CamParts((CamFound) found, words);
    }
}
