package counterpull.readings.machines;

import counterpull.bench.Kind;
import counterpull.bench.fit.Noise;
import counterpull.bench.machine.MachineBench;
import counterpull.bench.machine.ProfileBench;
import counterpull.bench.machine.Quantity;
import counterpull.bench.machine.Seen;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Measure;
import counterpull.scenario.fields.Shape;
import java.util.ArrayList;
import java.util.List;

/** A machine known by its readings alone. */
final class ProfileGroup implements MachineGroup {
    private static final Shape SHAPE = Shape.of(
            "measured profile",
            Quantity.FORCE_BY_TRAVEL.words(),
            Quantity.FORCE_BY_ANGLE.words(),
            Quantity.TORQUE_BY_ANGLE.words(),
            "scale sure to");
    private static final Shape BY_TRAVEL = MachineMeasures.bothWays("readings at a travel", "travel");
    private static final Shape BY_ANGLE = MachineMeasures.bothWays("readings at an angle", "angle");

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public MachineBench read(String name, Fields fields) {
        String given = fields.oneOf(
                        Quantity.FORCE_BY_TRAVEL.words(),
                        Quantity.FORCE_BY_ANGLE.words(),
                        Quantity.TORQUE_BY_ANGLE.words())
                .orElse(Quantity.FORCE_BY_TRAVEL.words());
        for (Quantity quantity : Quantity.values()) {
            if (quantity.words().equals(given)) {
                return read(name, fields, quantity);
            }
        }
        throw new IllegalStateException(given);
    }

    private static MachineBench read(String name, Fields fields, Quantity quantity) {
        boolean torque = quantity.size() == Kind.TORQUE;
        Measure size = torque ? MachineMeasures.TORQUE : MachineMeasures.FORCE;
        List<Seen> readings = fields.isSound() ? sweep(fields, quantity.words(), quantity.position(), size) : List.of();
        Noise scale = MachineMeasures.noise(
                fields, "scale sure to", torque ? MachineMeasures.SURE_TORQUE : MachineMeasures.SURE_FORCE);
        return new ProfileBench(name, quantity, readings, scale);
    }

    /** Readings up and down along travel or an angle. */
    static List<Seen> sweep(Fields fields, String key, Kind position, Measure size) {
        boolean travel = position == Kind.LENGTH;
        List<Seen> readings = new ArrayList<>();
        for (Fields group : fields.groups(key, travel ? BY_TRAVEL : BY_ANGLE, MachineMeasures.READINGS)) {
            double at = travel
                    ? group.required("travel", MachineMeasures.LENGTH)
                    : group.required("angle", MachineMeasures.ANGLE);
            MachineMeasures.bothWays(group, size, (way, read) -> readings.add(new Seen(way, at, read)));
        }
        return readings;
    }
}
