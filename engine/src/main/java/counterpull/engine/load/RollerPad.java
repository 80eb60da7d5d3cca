package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.planar.Vec;

/**
 * A pad at a fixed place of the lever that rolls along the limb; its force is square to the limb.
 *
 * <p>Formula: with D from pivot to the segment's joint, θ the segment's direction, ρ the pad's distance on the lever and
 * ψ = θ − φ: ρ sin ψ = q, q = D × e(θ); φ = θ − asin(q/ρ), of the two answers the one along the limb; contact at
 * ρ cos ψ − D·e(θ) from the segment's joint; arm about the pivot ρ cos ψ. Derivatives by the stroke's coordinate:
 * ψ′ = q′/(ρ cos ψ), ψ″ = (q″/ρ + sin ψ ψ′²)/cos ψ, with q′ = D′ × e + θ′ D·e and
 * q″ = D″ × e + 2θ′ D′·e + θ″ D·e − θ′² q.
 *
 * <p>Range: |q| at most ρ sin 80°; farther the pad would run along its own force, and past ρ there is no answer: refused
 * ({@link Fault#OUT_OF_REACH}) with q and that limit. Source: own derivation.
 *
 * @param segment index of the segment that it touches
 * @param onLever ρ, from the pivot to the pad, m, above zero
 * @param pushes which side of the limb it is on
 */
public record RollerPad(int segment, double onLever, Pushes pushes) implements Contact {
    private static final double STEEPEST = Math.sin(80 * Math.PI / 180);

    /** Which side of the limb a pad is on; it can push only away from there. */
    public enum Pushes {
        /** In front of the movement: it pushes against the lift, as a machine that resists does. */
        AGAINST_THE_LIFT(1),
        /** Behind the movement: it pushes along with the lift, as a machine that helps does. */
        WITH_THE_LIFT(-1);

        private final int sense;

        Pushes(int sense) {
            this.sense = sense;
        }
    }

    public RollerPad {
        Require.within(segment, new Require.Limits(0, 15), "segment that the pad touches", "");
        Require.within(onLever, new Require.Limits(0.02, 3), "distance of the pad on the lever", "m");
    }

    /** A pad that resists. */
    public static RollerPad against(int segment, double onLever) {
        return new RollerPad(segment, onLever, Pushes.AGAINST_THE_LIFT);
    }

    @Override
    public Pull.Holds holds() {
        return Pull.Holds.ONE_WAY;
    }

    @Override
    public int sense() {
        return pushes.sense;
    }

    @Override
    public String words() {
        return "roller pad";
    }

    @Override
    public LeverPosture meet(LimbLine limb) {
        Vec e = Vec.unit(limb.turn().angle());
        double first = limb.turn().first();
        double second = limb.turn().second();
        double ahead = limb.from().dot(e);
        double q = limb.from().cross(e);
        requireReach(q);
        double qFirst = limb.slope().cross(e) + first * ahead;
        double qSecond = limb.curve().cross(e) + 2 * first * limb.slope().dot(e) + second * ahead - first * first * q;
        double sin = q / onLever;
        double cos = Math.sqrt(1 - sin * sin);
        double psiFirst = qFirst / (onLever * cos);
        double psiSecond = (qSecond / onLever + sin * psiFirst * psiFirst) / cos;
        LimbLine.Turn turn =
                new LimbLine.Turn(limb.turn().angle() - Math.asin(sin), first - psiFirst, second - psiSecond);
        return new LeverPosture(turn, onLever * cos - ahead, onLever * cos);
    }

    private void requireReach(double q) {
        double limit = onLever * STEEPEST;
        if (Math.abs(q) > limit) {
            throw new Refusal(
                    Fault.OUT_OF_REACH,
                    "distance from the lever's pivot to the limb's line",
                    Math.abs(q),
                    limit,
                    "m",
                    "the lever's pivot lies too far beside the limb for a pad this far out on the lever: measure the pivot "
                            + "again, or set the pad farther out");
        }
    }

    @Override
    public double squareTo(double limbDirection, double leverDirection) {
        return limbDirection;
    }

    @Override
    public boolean staysOnLimb() {
        return false;
    }
}
