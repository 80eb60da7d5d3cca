package counterpull.scenario.resist;

import static counterpull.scenario.format.Measures.AT_LEAST_ONE;
import static counterpull.scenario.format.Measures.EXPONENT;
import static counterpull.scenario.format.Measures.MODULUS;
import static counterpull.scenario.format.Measures.READING_FORCE;
import static counterpull.scenario.format.Measures.RUBBER_LENGTH;
import static counterpull.scenario.format.Measures.SIGNED_MODULUS;
import static counterpull.scenario.format.Measures.STIFFNESS;

import counterpull.engine.elastic.BenchReading;
import counterpull.engine.elastic.OgdenTerm;
import counterpull.scenario.content.PieceLaw;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads how a piece of rubber pulls. */
final class LawReader {
    private LawReader() {}

    static Optional<PieceLaw> read(Fields fields) {
        return fields.oneOf("linear", "mooney-rivlin", "ogden", "bench").flatMap(given -> law(fields, given));
    }

    private static Optional<PieceLaw> law(Fields fields, String given) {
        return switch (given) {
            case "linear" ->
                fields.group(given, Shapes.LINEAR)
                        .map(found -> new PieceLaw.Linear(found.required("stiffness", STIFFNESS)));
            case "mooney-rivlin" ->
                fields.group(given, Shapes.MOONEY_RIVLIN)
                        .map(found -> new PieceLaw.TwoConstants(
                                found.required("c1", MODULUS), found.required("c2", MODULUS)));
            case "ogden" -> ogden(fields);
            default -> Optional.of(new PieceLaw.Bench(readings(fields.groups("bench", Shapes.READING, AT_LEAST_ONE))));
        };
    }

    private static Optional<PieceLaw> ogden(Fields fields) {
        List<OgdenTerm> terms = new ArrayList<>();
        for (Fields term : fields.groups("ogden", Shapes.OGDEN_TERM, AT_LEAST_ONE)) {
            double mu = term.required("mu", SIGNED_MODULUS);
            double alpha = term.required("alpha", EXPONENT);
            term.built(() -> new OgdenTerm(mu, alpha)).ifPresent(terms::add);
        }
        return fields.built(() -> new PieceLaw.Terms(terms));
    }

    static List<BenchReading> readings(List<Fields> readings) {
        return readings.stream()
                .map(reading -> new BenchReading(
                        reading.required("length", RUBBER_LENGTH), reading.required("force", READING_FORCE)))
                .toList();
    }
}
