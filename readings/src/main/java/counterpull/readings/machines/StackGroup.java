package counterpull.readings.machines;

import counterpull.bench.machine.Alone;
import counterpull.bench.machine.LineRun;
import counterpull.bench.machine.MachineBench;
import counterpull.bench.machine.StackBench;
import counterpull.bench.machine.StackPull;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import java.util.ArrayList;
import java.util.List;

/** A weight stack and its line. */
final class StackGroup implements MachineGroup {
    private static final Shape SHAPE =
            Shape.of("stack", "runs", "tape sure to", "pulls", "alone", "moving mass", "scale sure to");
    private static final Shape RUN = Shape.of("run of the line", "way", "rise");
    private static final Shape PULLS = MachineMeasures.bothWays("pulls at a pin", "pin", "laid on");
    private static final Shape ALONE = MachineMeasures.bothWays("handle or carriage alone");

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public MachineBench read(String name, Fields fields) {
        List<LineRun> runs = new ArrayList<>();
        for (Fields run : fields.optionalGroups("runs", RUN, MachineMeasures.READINGS)) {
            runs.add(new LineRun(
                    run.required("way", MachineMeasures.LENGTH), run.required("rise", MachineMeasures.LENGTH)));
        }
        List<StackPull> pulls = new ArrayList<>();
        for (Fields group : fields.groups("pulls", PULLS, MachineMeasures.READINGS)) {
            double pin = group.required("pin", MachineMeasures.MASS);
            double laid = group.orElse("laid on", MachineMeasures.MASS, 0);
            MachineMeasures.bothWays(
                    group, MachineMeasures.FORCE, (way, force) -> pulls.add(new StackPull(way, pin, laid, force)));
        }
        List<Alone> alone = new ArrayList<>();
        fields.optionalGroup("alone", ALONE)
                .ifPresent(group -> MachineMeasures.bothWays(
                        group, MachineMeasures.FORCE, (way, force) -> alone.add(new Alone(way, force))));
        return new StackBench(
                name,
                runs,
                MachineMeasures.noise(fields, "tape sure to", MachineMeasures.SURE_LENGTH),
                pulls,
                alone,
                fields.optionalQuantities("moving mass", MachineMeasures.MASS, MachineMeasures.READINGS),
                MachineMeasures.noise(fields, "scale sure to", MachineMeasures.SURE_FORCE));
    }
}
