package counterpull.scenario.resist;

import counterpull.engine.load.Loaded;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Measures;
import counterpull.scenario.format.Out;
import counterpull.scenario.units.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A mass that is always there under the key "mass", and what a person chooses on top of it under the key "chosen".
 *
 * @param loaded as the engine takes it
 * @param chosen kg; empty where nothing is chosen
 */
record Weight(Loaded loaded, Optional<Double> chosen) {
    /** One of the two keys, or both. */
    static Weight read(Fields fields) {
        fields.oneOrBoth("mass", "chosen");
        double own = fields.orElse("mass", Measures.LOAD, 0);
        OptionalDouble chosen = fields.optional("chosen", Measures.LOAD);
        return chosen.isPresent()
                ? new Weight(Loaded.with(own), Optional.of(chosen.getAsDouble()))
                : new Weight(Loaded.always(own), Optional.empty());
    }

    /** The keys again. */
    static Out write(Out out, Loaded loaded, Resisting resisting) {
        out.put("mass", loaded.own(), Dimension.MASS);
        return loaded.plates() == Loaded.Plates.HERE
                ? out.put("chosen", resisting.chosen().orElse(0.0), Dimension.MASS)
                : out;
    }
}
