package counterpull.scenario.content;

import counterpull.engine.load.Resistance;
import java.util.Optional;

/**
 * Something that resists, as a file describes it.
 *
 * @param resistance as the engine takes it
 * @param chosen the weight that a person chooses, kg; empty where it takes none
 * @param rubber the piece of rubber that it is made of; empty where it is none
 */
public record Resisting(Resistance resistance, Optional<Double> chosen, Optional<Piece> rubber) {
    /** Something without rubber. */
    public static Resisting weighing(Resistance resistance, Optional<Double> chosen) {
        return new Resisting(resistance, chosen, Optional.empty());
    }

    /** Something that is always the same. */
    public static Resisting always(Resistance resistance) {
        return weighing(resistance, Optional.empty());
    }
}
