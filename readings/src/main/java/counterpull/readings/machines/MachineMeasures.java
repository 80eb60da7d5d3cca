package counterpull.readings.machines;

import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Measure;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.fields.Span;
import counterpull.scenario.units.Dimension;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;

/** Limits of what can be written; wide, so that the bench names what looks like a slip, reading by reading. */
final class MachineMeasures {
    static final Measure FORCE = Measure.between(Dimension.FORCE, "-1000 kN", "1000 kN");
    static final Measure TORQUE = Measure.between(Dimension.TORQUE, "-100000 N·m", "100000 N·m");
    static final Measure MASS = Measure.between(Dimension.MASS, "-10000 kg", "10000 kg");
    static final Measure ANGLE = Measure.between(Dimension.ANGLE, "-3600 deg", "3600 deg");
    static final Measure LENGTH = Measure.between(Dimension.LENGTH, "-1000 m", "1000 m");
    static final Measure RATIO = Measure.between(Dimension.RATIO, "0.01", "20");
    static final Measure SURE_FORCE = Measure.between(Dimension.FORCE, "0.001 N", "500 N");
    static final Measure SURE_TORQUE = Measure.between(Dimension.TORQUE, "0.001 N·m", "500 N·m");
    static final Measure SURE_LENGTH = Measure.between(Dimension.LENGTH, "0.01 mm", "20 cm");
    static final Measure SURE_ANGLE = Measure.between(Dimension.ANGLE, "0 deg", "10 deg");
    static final Measure SURE_MASS = Measure.between(Dimension.MASS, "0.001 kg", "50 kg");
    static final Measure SURE_SHARE = Measure.between(Dimension.RATIO, "0 %", "50 %");
    static final Span READINGS = new Span(0, 200);

    private MachineMeasures() {}

    /** What was stated of an instrument, or the readings' own scatter. */
    static Noise noise(Fields fields, String key, Measure measure) {
        OptionalDouble stated = fields.optional(key, measure);
        return stated.isPresent() ? new Noise.Stated(stated.getAsDouble()) : new Noise.FromScatter();
    }

    /** Readings up, then down, of a group with both keys. */
    static void bothWays(Fields fields, Measure measure, BiConsumer<Way, Double> reading) {
        for (Way way : Way.values()) {
            List<Double> read = fields.optionalQuantities(way.words(), measure, READINGS);
            read.forEach(each -> reading.accept(way, each));
        }
    }

    /** A group that only has a key up and a key down. */
    static Shape bothWays(String name, String... before) {
        List<String> keys = new java.util.ArrayList<>(List.of(before));
        keys.add(Way.UP.words());
        keys.add(Way.DOWN.words());
        return new Shape(name, keys);
    }
}
