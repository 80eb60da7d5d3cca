package counterpull.report.bench;

import counterpull.readings.Readings;
import counterpull.readings.Subject;
import counterpull.readings.machines.MachineSubject;
import counterpull.readings.machines.SledSubject;
import counterpull.readings.people.PersonSubject;
import counterpull.readings.rubber.RubberSubject;
import counterpull.scenario.units.Units;
import java.util.List;

/** The sections of a file of readings. */
public final class BenchSections {
    private BenchSections() {}

    /** One section for each thing that was measured, in the file's order. */
    public static List<BenchSection> of(Readings readings, Units units) {
        return readings.subjects().stream().map(subject -> of(subject, units)).toList();
    }

    private static BenchSection of(Subject subject, Units units) {
        if (subject instanceof PersonSubject person) {
            return new PersonSection(person, new BenchWords(units)).section();
        }
        if (subject instanceof RubberSubject rubber) {
            return RubberSection.of(rubber, units);
        }
        if (subject instanceof SledSubject sled) {
            return new SledSection(sled, new BenchWords(units)).section();
        }
        if (subject instanceof MachineSubject machine) {
            return new MachineSection(machine, new BenchWords(units)).section();
        }
        throw new IllegalStateException("no words for " + subject.name() + " in " + units);
    }
}
