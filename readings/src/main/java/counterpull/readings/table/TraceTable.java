package counterpull.readings.table;

import counterpull.bench.trace.Trace;
import counterpull.scenario.fields.Measure;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.QuantityText;
import counterpull.scenario.units.Reading;
import java.util.List;

/** Force over time, a sample a row. */
public final class TraceTable implements TableKind {
    private static final Measure TIME = Measure.between(Dimension.TIME, "-1e7 s", "1e10 s");
    private static final Measure FORCE = Measure.between(Dimension.FORCE, "-1e9 N", "1e9 N");

    /** Whether the limb's own weight is in the forces: as the device showed them, or with the weight taken off. */
    public static final String GRAVITY = "gravity";

    private static final String AS_SHOWN = "as shown";
    /** The weight has been taken off. */
    public static final String TAKEN_OFF = "taken off";

    private static final List<Wanted> COLUMNS = List.of(
            Wanted.must("time", new Due.Amount(TIME), "t", "elapsed", "elapsed time", "zeit", "timestamp"),
            Wanted.must("force", new Due.Amount(FORCE), "f", "load", "pull", "push", "kraft", "reading"),
            Wanted.must(GRAVITY, new Due.OneOf(List.of(AS_SHOWN, TAKEN_OFF)))
                    .asking("is the limb's own weight still in these forces, as the device showed them (gravity: "
                            + AS_SHOWN + "), or was it taken off already (gravity: " + TAKEN_OFF + ")?"));

    @Override
    public String word() {
        return "trace";
    }

    @Override
    public List<Wanted> columns() {
        return COLUMNS;
    }

    /** The trace of rows that can be used; empty rows give an empty trace. */
    public static Trace trace(List<Conversion.Taken> rows) {
        double[] times = new double[rows.size()];
        double[] forces = new double[rows.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = si(rows.get(i), "time", Dimension.TIME);
            forces[i] = si(rows.get(i), "force", Dimension.FORCE);
        }
        return Trace.of(times, forces);
    }

    private static double si(Conversion.Taken row, String key, Dimension dimension) {
        Reading reading = QuantityText.read(row.value(key).orElse(""), dimension);
        return reading instanceof Reading.Read read ? read.quantity().si() : Double.NaN;
    }
}
