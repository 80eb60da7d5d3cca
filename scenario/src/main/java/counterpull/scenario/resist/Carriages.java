package counterpull.scenario.resist;

import static counterpull.scenario.format.Measures.CARRIAGE;
import static counterpull.scenario.format.Measures.COUNTERWEIGHT;
import static counterpull.scenario.format.Measures.FRACTION;
import static counterpull.scenario.format.Measures.FRICTION;
import static counterpull.scenario.format.Measures.PLATES;

import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.Friction;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import counterpull.scenario.units.Dimension;
import java.util.Optional;

/** Reads and writes what rides on a rail: the keys carriage, counterweight, friction and plates at most. */
public final class Carriages {
    private Carriages() {}

    /** The carriage; a problem for everything that is wrong with it. */
    public static Optional<Carriage> read(Fields fields) {
        double mass = fields.required("carriage", CARRIAGE);
        Counterweight counterweight = fields.optionalGroup("counterweight", Shapes.COUNTERWEIGHT)
                .map(Carriages::counterweight)
                .orElse(Counterweight.none());
        Optional<Friction> friction = fields.group("friction", Shapes.FRICTION).map(Carriages::friction);
        double most = fields.orElse("plates at most", PLATES, Double.MAX_VALUE);
        return fields.built(() -> new Carriage(mass, counterweight, friction.orElseThrow(), most));
    }

    private static Counterweight counterweight(Fields fields) {
        return new Counterweight(fields.required("mass", COUNTERWEIGHT), fields.choice("runs", Words.RUN));
    }

    private static Friction friction(Fields fields) {
        double constant = fields.required("constant", FRICTION);
        double coefficient = fields.required("coefficient", FRACTION);
        return new Friction(constant, coefficient, fields.orElse("breakaway", FRICTION, 0));
    }

    /** The same keys. */
    public static Out write(Out out, Carriage carriage) {
        return out.put("carriage", carriage.mass(), Dimension.MASS)
                .put("counterweight", counterweight(carriage.counterweight()))
                .put("friction", friction(carriage.friction()))
                .putStated("plates at most", carriage.mostPlates(), Dimension.MASS);
    }

    private static Out counterweight(Counterweight counterweight) {
        return new Out()
                .put("mass", counterweight.mass(), Dimension.MASS)
                .put("runs", Words.RUN.word(counterweight.run()));
    }

    private static Out friction(Friction friction) {
        return new Out()
                .put("constant", friction.constant(), Dimension.FORCE)
                .put("coefficient", friction.coefficient(), Dimension.RATIO)
                .put("breakaway", friction.breakaway(), Dimension.FORCE);
    }
}
