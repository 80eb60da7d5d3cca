package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.load.Part;
import counterpull.engine.motion.Phase;
import java.util.List;

/**
 * What one number is made of: what went into it, the summands that add up to it where it is a sum, the formula, the sources.
 *
 * @param value the number, SI; NaN where it is not known
 * @param unit its SI unit; "share" for an effort, 1 = all that this person has
 * @param formula how it is computed, in one line
 * @param inputs what goes into the formula
 * @param summands term by term; empty where the number is not a sum
 * @param source where formula and inputs come from
 */
public record Why(
        double value, String unit, String formula, List<Input> inputs, List<Summand> summands, String source) {
    public Why {
        inputs = List.copyOf(inputs);
        summands = List.copyOf(summands);
    }

    /**
     * A number that goes into the formula, before anything is done with it.
     *
     * @param label what it is, in words
     * @param value the number, SI; NaN where it is not known
     * @param unit its SI unit; empty for a pure number
     */
    public record Input(String label, double value, String unit) {}

    /**
     * A share of the number: so many units of something, each adding so much.
     *
     * @param part what kind it is
     * @param label what it is, in words
     * @param amount how much of it there is (1, kg of plates, strands)
     * @param perUnit what one unit of it adds, SI
     * @param value amount × perUnit, SI
     */
    public record Summand(Part part, String label, double amount, double perUnit, double value) {}

    /**
     * Which number is asked about.
     *
     * @param limb index of the limb
     * @param joint the joint
     * @param phase the phase
     * @param position index of the position, bottom first
     */
    public record Place(int limb, Joint joint, Phase phase, int position) {}
}
