package counterpull.readings.machines;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.machine.CamTorqueBench;
import counterpull.bench.machine.MachineBench;
import counterpull.bench.machine.Seen;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import java.util.List;

/** A cam by the torque that a known mass asks for. */
final class CamTorqueGroup implements MachineGroup {
    private static final Shape SHAPE =
            Shape.of("cam by torque", "readings", "mass", "mass sure to", "ratio", "ratio sure to", "scale sure to");

    /** A pin as printed, and a ratio that was measured; our choice, no source. */
    private static final double PIN = 0.03;

    private static final double RATIO = 0.01;

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public MachineBench read(String name, Fields fields) {
        List<Seen> readings = ProfileGroup.sweep(fields, "readings", Kind.ANGLE, MachineMeasures.TORQUE);
        double mass = Math.max(1e-3, fields.required("mass", MachineMeasures.MASS));
        double massSd = fields.orElse("mass sure to", MachineMeasures.SURE_MASS, PIN * mass);
        double ratio = fields.required("ratio", MachineMeasures.RATIO);
        double share = fields.orElse("ratio sure to", MachineMeasures.SURE_SHARE, RATIO);
        return new CamTorqueBench(
                name,
                readings,
                Estimate.normal(mass, massSd),
                Estimate.normal(ratio, share * ratio),
                MachineMeasures.noise(fields, "scale sure to", MachineMeasures.SURE_TORQUE));
    }
}
