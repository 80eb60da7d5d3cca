package counterpull.engine.motion;

import counterpull.engine.Constants;
import counterpull.engine.Require;
import counterpull.engine.body.Foot;
import counterpull.engine.body.Joint;
import counterpull.engine.planar.Chain;
import java.util.List;
import java.util.Optional;

/**
 * A stand on a flat foot that does not move: squat, split squat, step, hip hinge, deadlift. The chain runs from the ankle upward:
 * segment 0 the shank, 1 the thigh, 2 the trunk, whose length ends at the shoulder; the person faces +x. What this limb bears (the leg
 * itself, its share of trunk and of what is carried, its foot) is held with its static centre of mass over a stated point of the foot;
 * of two postures the more upright one. Moving, force and pressure point of the ground follow from momentum ({@link Ground}).
 *
 * <p>A bar on the back is a point of the trunk segment, across positive = behind. A load that hangs from straight arms acts at the
 * shoulder: a hanging weight does not turn, so it moves as the shoulder does; the arms' own mass stays in the trunk's row. The other
 * leg of a stand with unequal shares presses straight up on the pelvis at the hip; a free leg is left out (both stated
 * simplifications).
 *
 * @param drive which joint drives and how the others follow
 * @param over where the centre of mass stays, as a fraction of foot length from the heel, 0.1 to 0.9
 */
public record BalancedStand(StandDrive drive, double over) implements Motion {
    private static final Require.Limits ON_THE_SOLE = new Require.Limits(0.1, 0.9);

    public BalancedStand {
        Require.within(over, ON_THE_SOLE, "point of balance (fraction of foot length from the heel)", "");
    }

    @Override
    public Optional<Joint> driver() {
        return Optional.of(drive.joint());
    }

    @Override
    public List<Joint> joints() {
        return Joint.LEG;
    }

    @Override
    public ChainPath path(Moving limb) {
        String flexion = drive.joint().words() + " flexion at the ";
        Require.within(limb.range().bottom(), drive.angles(), flexion + "bottom", "rad");
        Require.within(limb.range().top(), drive.angles(), flexion + "top", "rad");
        Chain chain = StandingChain.of(limb);
        Balance balance = balance(chain, limb);
        ChainPath.Bends bends = new ChainPath.Bends(limb.course().positions(), chain.size());
        for (int i = 0; i < limb.course().positions(); i++) {
            List<Jet> directions = balance.directions(limb.driving(i));
            for (int k = 0; k < directions.size(); k++) {
                Jet jet = directions.get(k);
                bends.set(i, k, jet.value(), jet.first() * limb.sense(), jet.second());
            }
        }
        return new ChainPath(chain, limb.course(), StandingChain.SENSES, bends);
    }

    // the mass above the ankle must have a first moment about it so that with the foot's own all lies over the stated
    // point
    private Balance balance(Chain chain, Moving limb) {
        Foot foot = limb.body().leg().foot();
        double mass = StandingChain.mass(chain, limb) + foot.mass();
        double target =
                mass * foot.pressureAlong(over) - foot.mass() * foot.asSegment().comAlong();
        return new Balance(drive, StandingChain.moments(chain, limb), mass, target);
    }

    @Override
    public double gravity() {
        return Constants.STANDARD_GRAVITY;
    }

    @Override
    public String words() {
        return drive.words();
    }
}
