package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.SHARE;

import counterpull.engine.body.Side;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Exercise.Using;
import counterpull.scenario.content.Sides;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Words;
import counterpull.scenario.problem.Code;
import java.util.Optional;

/** Reads which limbs take part and how they share the load. */
final class SidesReader {
    private static final double HALF = 0.5;

    private SidesReader() {}

    static Sides read(Fields fields) {
        Using using = fields.choice("limbs", Words.LIMBS);
        double share = fields.orElse("left share", SHARE, HALF);
        if (using != Using.BOTH && fields.has("left share")) {
            fields.report(
                    Code.CONTRADICTION, "left share", "only one limb takes part, so nothing is shared", "Leave it out");
        }
        return new Sides(using, share);
    }

    /** The limbs that take part must be described. */
    static void present(Fields fields, Using using, Optional<Client> client) {
        if (client.isEmpty()) {
            return;
        }
        for (Side side : Side.values()) {
            boolean described = client.get().limbs().stream().anyMatch(limb -> limb.side() == side);
            if (using.uses(side) && !described) {
                fields.report(
                        Code.UNKNOWN_NAME,
                        "limbs",
                        "the " + side.words() + " limb takes part, but the person has no " + side.words()
                                + " limb here",
                        "Describe it under person, limbs, or let the other one work alone");
            }
        }
    }
}
