package counterpull.readings.machines;

import counterpull.bench.fit.Noise;
import counterpull.bench.machine.HornTape;
import counterpull.bench.machine.LeverBench;
import counterpull.bench.machine.LeverHold;
import counterpull.bench.machine.LeverHold.Turn;
import counterpull.bench.machine.LeverReading;
import counterpull.bench.machine.MachineBench;
import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Measure;
import counterpull.scenario.fields.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A lever, read by a scale at an arm or as torque. */
final class LeverGroup implements MachineGroup {
    static final Choices<Turn> TURN = Choices.of(Turn::words, Turn.values());

    private static final Shape SHAPE =
            Shape.of("lever", "lifts", "arm", "arm sure to", "readings", "horn", "scale sure to");
    private static final Shape READINGS = MachineMeasures.bothWays("readings of a lever", "angle", "plates");
    private static final Shape HORN = Shape.of("horn by tape", "radius", "sure to");

    /** A tape laid from a pivot that has no mark; our choice, no source. */
    private static final double TAPE = 0.005;

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public MachineBench read(String name, Fields fields) {
        Turn lifts = fields.choice("lifts", TURN);
        boolean force = fields.has("arm");
        LeverHold hold = force
                ? new LeverHold(
                        lifts,
                        fields.required("arm", MachineMeasures.LENGTH),
                        fields.orElse("arm sure to", MachineMeasures.SURE_LENGTH, TAPE))
                : LeverHold.torque(lifts);
        Measure size = force ? MachineMeasures.FORCE : MachineMeasures.TORQUE;
        List<LeverReading> readings = new ArrayList<>();
        for (Fields group : fields.groups("readings", READINGS, MachineMeasures.READINGS)) {
            double angle = group.required("angle", MachineMeasures.ANGLE);
            double plates = group.orElse("plates", MachineMeasures.MASS, 0);
            MachineMeasures.bothWays(
                    group, size, (way, read) -> readings.add(new LeverReading(way, angle, plates, read)));
        }
        Optional<HornTape> horn = fields.optionalGroup("horn", HORN)
                .map(group -> new HornTape(
                        group.required("radius", MachineMeasures.LENGTH),
                        group.orElse("sure to", MachineMeasures.SURE_LENGTH, TAPE)));
        Noise scale = MachineMeasures.noise(
                fields, "scale sure to", force ? MachineMeasures.SURE_FORCE : MachineMeasures.SURE_TORQUE);
        return new LeverBench(name, hold, readings, horn, scale);
    }
}
