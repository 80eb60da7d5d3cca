package counterpull.readings;

import counterpull.readings.machines.MachineKind;
import counterpull.readings.machines.SledKind;
import counterpull.readings.people.PeopleKind;
import counterpull.readings.rubber.RubberKind;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Every kind of thing that can be measured: a new one is a class and a line here. */
final class SubjectKinds {
    static final List<SubjectKind> ALL = judged(Optional.empty());

    private SubjectKinds() {}

    /** All of them; what comes due is judged on that day where the file names none, or else on the day of the readings. */
    static List<SubjectKind> judged(Optional<LocalDate> day) {
        return List.of(new RubberKind(day), new SledKind(), new MachineKind(), new PeopleKind());
    }
}
