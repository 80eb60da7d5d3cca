package counterpull.readings.rubber;

import counterpull.bench.tubing.CrossSection;
import counterpull.bench.tubing.Instruments;
import counterpull.bench.tubing.Piece;
import counterpull.bench.tubing.Preparation;
import counterpull.bench.tubing.Pull;
import counterpull.bench.tubing.Pulls;
import counterpull.bench.tubing.TapeReadings;
import counterpull.bench.tubing.TubingBench;
import counterpull.readings.Subject;
import counterpull.readings.SubjectKind;
import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Measure;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.fields.Span;
import counterpull.scenario.format.Measures;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.problem.Code;
import counterpull.scenario.units.Dimension;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the {@code rubber} list of a file of readings. */
public final class RubberKind implements SubjectKind {
    private static final Shape SHAPE = Shape.of(
            "rubber on the bench",
            "tag",
            "size",
            "strands",
            "before",
            "natural length",
            "natural length sure to",
            "natural length after",
            "scale sure to",
            "tape sure to",
            "stretching",
            "letting go",
            "first stretch",
            "record");
    private static final Shape RECORD =
            Shape.of("record of a piece", "tested on", "today", "compare at", "stretches", "earlier tests", "damage");
    private static final Shape EARLIER = Shape.of("earlier test", "on", "natural length", "force");

    // wide on purpose: what looks like a slip is named by the bench, reading by reading, with a guess at what happened
    private static final Measure LENGTH = Measure.between(Dimension.LENGTH, "1 mm", "1000 m");
    private static final Measure FORCE = Measure.between(Dimension.FORCE, "0 N", "100 kN");
    private static final Measure SURE_LENGTH = Measure.between(Dimension.LENGTH, "0.01 mm", "20 cm");
    private static final Measure SURE_FORCE = Measure.between(Dimension.FORCE, "0.001 N", "500 N");
    private static final Span READINGS = new Span(0, 200);
    private static final Span SOME = new Span(1, 200);
    private static final Span STRANDS = new Span(1, 12);
    private static final Span STRETCHES = new Span(0, 1_000_000);
    private static final Choices<Preparation> BEFORE = Choices.of(Preparation::words, Preparation.values());

    private final Optional<LocalDate> day;

    /** Pieces whose record is judged on that day unless the file names one; without a day, on that of the readings. */
    public RubberKind(Optional<LocalDate> day) {
        this.day = day;
    }

    @Override
    public String key() {
        return "rubber";
    }

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public Optional<Subject> read(Fields fields) {
        Piece piece = new Piece(
                fields.text("tag"),
                fields.optionalGroup("size", Shapes.SIZE).flatMap(RubberKind::section),
                fields.optionalCount("strands", STRANDS).orElse(1),
                fields.optionalChoice("before", BEFORE).orElse(Preparation.NOT_NOTED));
        TapeReadings natural = new TapeReadings(
                fields.quantities("natural length", LENGTH, SOME),
                fields.optional("natural length sure to", SURE_LENGTH));
        List<Double> after = fields.optionalQuantities("natural length after", LENGTH, READINGS);
        Pulls pulls = new Pulls(
                pulls(fields.groups("stretching", Shapes.READING, SOME)),
                pulls(fields.optionalGroups("letting go", Shapes.READING, READINGS)),
                pulls(fields.optionalGroups("first stretch", Shapes.READING, READINGS)));
        Instruments instruments = new Instruments(
                fields.optional("scale sure to", SURE_FORCE), fields.optional("tape sure to", SURE_LENGTH));
        Optional<LifeLines> lines = fields.optionalGroup("record", RECORD).flatMap(this::lines);
        Optional<TapeReadings> then =
                after.isEmpty() ? Optional.empty() : Optional.of(new TapeReadings(after, OptionalDouble.empty()));
        return fields.built(() -> RubberSubject.of(new TubingBench(piece, natural, pulls, instruments, then), lines));
    }

    private static Optional<CrossSection> section(Fields fields) {
        return fields.oneOf("bore", "width")
                .map(given -> given.equals("bore")
                        ? new CrossSection.Tube(
                                fields.required("bore", Measures.BORE), fields.required("wall", Measures.THICKNESS))
                        : new CrossSection.Strip(
                                fields.required("width", Measures.THICKNESS),
                                fields.required("thickness", Measures.THICKNESS)));
    }

    private static List<Pull> pulls(List<Fields> readings) {
        return readings.stream()
                .map(reading -> new Pull(reading.required("length", LENGTH), reading.required("force", FORCE)))
                .toList();
    }

    private Optional<LifeLines> lines(Fields fields) {
        LocalDate tested = date(fields, "tested on");
        LocalDate today = fields.has("today") ? date(fields, "today") : day.orElse(tested);
        OptionalDouble compared = fields.optional("compare at", LENGTH);
        int stretches = fields.optionalCount("stretches", STRETCHES).orElse(0);
        List<LifeLines.Earlier> before = new ArrayList<>();
        for (Fields earlier : fields.optionalGroups("earlier tests", EARLIER, READINGS)) {
            before.add(new LifeLines.Earlier(
                    date(earlier, "on"), earlier.required("natural length", LENGTH), earlier.required("force", FORCE)));
        }
        List<String> damage = fields.optionalTexts("damage", READINGS);
        return fields.built(() -> new LifeLines(tested, today, compared, stretches, before, damage));
    }

    private static LocalDate date(Fields fields, String key) {
        String text = fields.text(key);
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException noDate) {
            if (!text.isEmpty()) {
                fields.report(Code.NOT_A_TEXT, key, "this is no date", "Write year-month-day, for instance 2026-03-01");
            }
            return LocalDate.EPOCH;
        }
    }
}
