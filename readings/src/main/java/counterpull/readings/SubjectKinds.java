package counterpull.readings;

import counterpull.readings.machines.MachineKind;
import counterpull.readings.machines.SledKind;
import counterpull.readings.people.PeopleKind;
import counterpull.readings.rubber.RubberKind;
import java.util.List;

/** Every kind of thing that can be measured: a new one is a class and a line here. */
final class SubjectKinds {
    static final List<SubjectKind> ALL = List.of(new RubberKind(), new SledKind(), new MachineKind(), new PeopleKind());

    private SubjectKinds() {}
}
