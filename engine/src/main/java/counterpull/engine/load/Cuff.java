package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.planar.Vec;

/**
 * A cuff that is fixed on the limb and slides on the lever; its force is square to the lever, either way.
 *
 * <p>Formula: with D from pivot to the segment's joint, θ the segment's direction, c the cuff's distance on the limb:
 * V = D + c e(θ), the lever points along V, ρ = |V|: φ′ = V × V′/ρ², φ″ = V × V″/ρ² − 2 (V·V′)(V × V′)/ρ⁴; arm about the
 * pivot ρ.
 *
 * <p>Range: ρ at least 0.02 m, and the lever within 80° of the limb, or what turns the lever hardly turns the limb: refused
 * ({@link Fault#OUT_OF_REACH}) with value and limit. Source: own derivation.
 *
 * @param segment index of the segment that carries it
 * @param onLimb c, from the segment's joint to the cuff, m, above zero
 */
public record Cuff(int segment, double onLimb) implements Contact {
    private static final double SHORTEST = 0.02;
    private static final double STEEPEST = 80 * Math.PI / 180;

    public Cuff {
        Require.within(segment, new Require.Limits(0, 15), "segment that carries the cuff", "");
        Require.within(onLimb, new Require.Limits(SHORTEST, 3), "distance of the cuff on the limb", "m");
    }

    @Override
    public Pull.Holds holds() {
        return Pull.Holds.BOTH_WAYS;
    }

    @Override
    public int sense() {
        return 1;
    }

    @Override
    public String words() {
        return "cuff";
    }

    @Override
    public LeverPosture meet(LimbLine limb) {
        Vec e = Vec.unit(limb.turn().angle());
        double first = limb.turn().first();
        Vec v = limb.from().plus(e.times(onLimb));
        Vec vFirst = limb.slope().plus(e.left().times(onLimb * first));
        Vec vSecond =
                limb.curve().plus(e.left().times(onLimb * limb.turn().second())).minus(e.times(onLimb * first * first));
        double square = v.dot(v);
        double out = Math.sqrt(square);
        double off = requireReach(out, Math.atan2(e.cross(v), e.dot(v)));
        double slope = v.cross(vFirst) / square;
        double curve = v.cross(vSecond) / square - 2 * v.dot(vFirst) * slope / square;
        return new LeverPosture(new LimbLine.Turn(limb.turn().angle() + off, slope, curve), onLimb, out);
    }

    private static double requireReach(double out, double off) {
        if (out < SHORTEST) {
            throw refusal("distance from the lever's pivot to the cuff", out, SHORTEST, "m");
        }
        if (Math.abs(off) > STEEPEST) {
            throw refusal("angle between lever and limb", Math.abs(off), STEEPEST, "rad");
        }
        return off;
    }

    private static Refusal refusal(String quantity, double value, double limit, String unit) {
        return new Refusal(
                Fault.OUT_OF_REACH,
                quantity,
                value,
                limit,
                unit,
                "the lever's pivot lies too near the cuff, or too far beside the limb, for the lever to be turned by it: measure "
                        + "the pivot again, or set the cuff farther out");
    }

    @Override
    public double squareTo(double limbDirection, double leverDirection) {
        return leverDirection;
    }

    @Override
    public boolean staysOnLimb() {
        return true;
    }
}
