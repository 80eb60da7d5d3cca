package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import java.util.ArrayList;
import java.util.List;

/**
 * What one number is made of: its summands, which add up to it, and the formula they come from.
 *
 * @param value the number, SI
 * @param unit its unit
 * @param formula how the summands are computed, in one line
 * @param summands term by term
 * @param source where formula and inputs come from
 */
public record Why(double value, String unit, String formula, List<Summand> summands, String source) {
    public Why {
        summands = List.copyOf(summands);
    }

    /**
     * What one term adds.
     *
     * @param part what kind it is
     * @param label what it is, in words
     * @param amount how much of it there is (1, kg of plates, strands)
     * @param perUnit what one unit of it adds, SI
     * @param value amount × perUnit, SI
     */
    public record Summand(Part part, String label, double amount, double perUnit, double value) {}

    record Place(Joint joint, Phase phase, int position) {}

    static Why force(Profile profile, Phase phase, int position) {
        int cell = profile.ground().terms().grid().cell(phase, position);
        List<Summand> summands = new ArrayList<>();
        List<Term> all = profile.ground().terms().all();
        for (int t = 0; t < all.size(); t++) {
            if (all.get(t).throughContact()) {
                summands.add(
                        summand(all.get(t), profile.amounts()[t], all.get(t).contact(cell)));
            }
        }
        return new Why(
                profile.force(phase, position),
                "N",
                "F = Σ amount × force per unit, along the rail",
                summands,
                "docs/notation.md, carriage on a rail");
    }

    static Why torque(Profile profile, int limb, Place place) {
        Terms terms = profile.ground().terms();
        int cell = terms.grid().cell(place.phase, place.position);
        double arm = arm(profile, limb, place);
        List<Summand> summands = new ArrayList<>();
        List<Term> all = terms.all();
        for (int t = 0; t < all.size(); t++) {
            Term term = all.get(t);
            double perUnit = term.throughContact()
                    ? term.contact(cell) * arm
                    : term.torque(limb, terms.grid().jointCell(place.joint, place.phase, place.position));
            summands.add(summand(term, profile.amounts()[t], perUnit));
        }
        return new Why(
                profile.limbs().get(limb).torque(place.joint, place.phase, place.position),
                "N·m",
                "τ = limb weight + limb inertia + F × " + Math.round(arm * 1e4) / 1e4
                        + " m (share of the load × moment arm about the " + place.joint.words() + ")",
                summands,
                "docs/notation.md, Newton–Euler");
    }

    private static double arm(Profile profile, int limb, Place place) {
        Terms terms = profile.ground().terms();
        double tangent = profile.asked().tangent[limb][terms.grid().cell(place.phase, place.position)];
        return terms.armAlong(limb, place.joint, place.position)
                + tangent * terms.armAcross(limb, place.joint, place.position);
    }

    private static Summand summand(Term term, double amount, double perUnit) {
        return new Summand(term.part(), term.label(), amount, perUnit, amount * perUnit);
    }
}
