package counterpull.readings.machines;

import counterpull.bench.fit.Noise;
import counterpull.bench.sled.Breakaway;
import counterpull.bench.sled.Inclination;
import counterpull.bench.sled.Pull;
import counterpull.bench.sled.RailGauge;
import counterpull.bench.sled.Riding;
import counterpull.bench.sled.Riding.PlateEnd;
import counterpull.bench.sled.SledBench;
import counterpull.engine.load.Counterweight;
import counterpull.readings.Subject;
import counterpull.readings.SubjectKind;
import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Measures;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the {@code sleds} list of a file of readings. */
public final class SledKind implements SubjectKind {
    private static final Shape SHAPE = Shape.of(
            "sled on the bench",
            "name",
            "rail angle",
            "gauge",
            "foot plate",
            "plates sure to",
            "counterweight",
            "scale sure to",
            "pulls",
            "breakaway");
    private static final Shape ANGLE = Shape.of("reading of the rail's angle", "laid", "turned");
    private static final Shape GAUGE = Shape.of("angle gauge", "zero sure to", "sure to");
    private static final Shape PULLS = MachineMeasures.bothWays("pulls with some plates", "plates");
    private static final Shape BREAKAWAY = Shape.of("breakaway readings with some plates", "plates", "readings");
    private static final Choices<PlateEnd> END =
            Choices.of(end -> end == PlateEnd.UPPER ? "upper end" : "lower end", PlateEnd.values());

    /** A phone or a small gauge: its zero, and what remains when it is turned; our choice, no source. */
    private static final double ZERO = Math.toRadians(0.6);

    private static final double OTHER = Math.toRadians(0.3);

    /** Gym plates as printed; our choice, no source. */
    private static final double PLATES = 0.02;

    @Override
    public String key() {
        return "sleds";
    }

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public Optional<Subject> read(Fields fields) {
        String name = fields.text("name");
        RailGauge gauge = gauge(fields);
        Riding riding = new Riding(
                fields.orElse("plates sure to", MachineMeasures.SURE_SHARE, PLATES),
                fields.optionalGroup("counterweight", Shapes.COUNTERWEIGHT)
                        .flatMap(SledKind::counterweight)
                        .orElse(Counterweight.none()),
                fields.optionalChoice("foot plate", END).orElse(PlateEnd.UPPER));
        List<Pull> pulls = pulls(fields);
        List<Breakaway> breakaways = breakaways(fields);
        Noise scale = MachineMeasures.noise(fields, "scale sure to", MachineMeasures.SURE_FORCE);
        return fields.built(() -> new SledSubject(new SledBench(name, gauge, riding, pulls, breakaways, scale)));
    }

    private static RailGauge gauge(Fields fields) {
        List<Inclination> readings = new ArrayList<>();
        for (Fields reading : fields.groups("rail angle", ANGLE, MachineMeasures.READINGS)) {
            readings.add(new Inclination(
                    reading.required("laid", MachineMeasures.ANGLE),
                    reading.optional("turned", MachineMeasures.ANGLE)));
        }
        Optional<Fields> gauge = fields.optionalGroup("gauge", GAUGE);
        double zero = gauge.map(found -> found.orElse("zero sure to", MachineMeasures.SURE_ANGLE, ZERO))
                .orElse(ZERO);
        double other = gauge.map(found -> found.orElse("sure to", MachineMeasures.SURE_ANGLE, OTHER))
                .orElse(OTHER);
        return new RailGauge(readings, zero, other);
    }

    private static Optional<Counterweight> counterweight(Fields fields) {
        double mass = fields.required("mass", Measures.COUNTERWEIGHT);
        Counterweight.Run run = fields.choice("runs", Words.RUN);
        return fields.built(() -> new Counterweight(mass, run));
    }

    private static List<Pull> pulls(Fields fields) {
        List<Pull> pulls = new ArrayList<>();
        for (Fields group : fields.groups("pulls", PULLS, MachineMeasures.READINGS)) {
            double plates = group.required("plates", MachineMeasures.MASS);
            MachineMeasures.bothWays(
                    group, MachineMeasures.FORCE, (way, force) -> pulls.add(new Pull(way, plates, force)));
        }
        return pulls;
    }

    private static List<Breakaway> breakaways(Fields fields) {
        List<Breakaway> readings = new ArrayList<>();
        for (Fields group : fields.optionalGroups("breakaway", BREAKAWAY, MachineMeasures.READINGS)) {
            double plates = group.required("plates", MachineMeasures.MASS);
            group.quantities("readings", MachineMeasures.FORCE, MachineMeasures.READINGS)
                    .forEach(force -> readings.add(new Breakaway(plates, force)));
        }
        return readings;
    }
}
