package counterpull.readings.machines;

import counterpull.bench.machine.CamTravel;
import counterpull.bench.machine.CamTravelBench;
import counterpull.bench.machine.MachineBench;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import java.util.ArrayList;
import java.util.List;

/** A cam by how far its line runs. */
final class CamTravelGroup implements MachineGroup {
    private static final Shape SHAPE = Shape.of("cam by travel", "lifts", "readings", "tape sure to");
    private static final Shape READINGS = Shape.of("line drawn in at an angle", "angle", "line");

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public MachineBench read(String name, Fields fields) {
        List<CamTravel> travels = new ArrayList<>();
        for (Fields group : fields.groups("readings", READINGS, MachineMeasures.READINGS)) {
            double angle = group.required("angle", MachineMeasures.ANGLE);
            group.quantities("line", MachineMeasures.LENGTH, MachineMeasures.READINGS)
                    .forEach(line -> travels.add(new CamTravel(angle, line)));
        }
        return new CamTravelBench(
                name,
                travels,
                fields.choice("lifts", LeverGroup.TURN),
                MachineMeasures.noise(fields, "tape sure to", MachineMeasures.SURE_LENGTH));
    }
}
