package counterpull.readings.machines;

import counterpull.bench.machine.MachineBench;
import counterpull.readings.Subject;
import counterpull.readings.SubjectKind;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the {@code machines} list of a file of readings: a name, and one group that says what was read. */
public final class MachineKind implements SubjectKind {
    private static final List<MachineGroup> GROUPS =
            List.of(new ProfileGroup(), new StackGroup(), new LeverGroup(), new CamTravelGroup(), new CamTorqueGroup());

    @Override
    public String key() {
        return "machines";
    }

    @Override
    public Shape shape() {
        List<String> keys = new ArrayList<>(List.of("name"));
        keys.addAll(keys());
        return new Shape("machine on the bench", keys);
    }

    private static List<String> keys() {
        return GROUPS.stream().map(group -> group.shape().name()).toList();
    }

    @Override
    public Optional<Subject> read(Fields fields) {
        String name = fields.text("name");
        Optional<String> given = fields.oneOf(keys().toArray(new String[0]));
        for (MachineGroup group : GROUPS) {
            if (given.filter(group.shape().name()::equals).isPresent()) {
                Optional<MachineBench> bench = fields.group(given.get(), group.shape())
                        .flatMap(inner -> inner.sound(() -> group.read(name, inner)));
                return fields.built(() -> new MachineSubject(bench.orElseThrow()));
            }
        }
        return Optional.empty();
    }
}
