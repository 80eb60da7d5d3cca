package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Segment;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * A standing limb from the ankle upward: shank (ankle → knee), thigh (knee → hip), and of the trunk what this limb bears. Every sense
 * is the reverse of a hanging limb's.
 */
final class StandingChain {
    static final int SEGMENTS = 3;

    /** Foot flat: dorsiflexion = 90° − shank, knee flexion = thigh − shank, hip flexion = thigh − trunk. */
    static final List<JointSense> SENSES = List.of(
            new JointSense(Joint.ANKLE, -1, Math.PI / 2, -Joint.ANKLE.senseOfAction()),
            new JointSense(Joint.KNEE, 1, 0, -Joint.KNEE.senseOfAction()),
            new JointSense(Joint.HIP, -1, 0, -Joint.HIP.senseOfAction()));

    private static final Require.Limits PLACES = new Require.Limits(0, SEGMENTS - 1);

    private StandingChain() {}

    /** Masses and lengths. */
    static Chain of(Motion.Moving limb) {
        Segment trunk = limb.body().trunk().orElseThrow(StandingChain::noTrunk);
        Chain.Builder builder = Chain.build();
        add(builder, turned(limb.body().leg().shank()), 1);
        add(builder, turned(limb.body().leg().thigh()), 1);
        add(builder, trunk, limb.share());
        return builder.done();
    }

    private static void add(Chain.Builder builder, Segment part, double share) {
        Vec com = new Vec(part.comAlong(), part.comAcross());
        builder.segment(part.length(), share * part.mass(), com, share * part.inertia());
    }

    /** The same segment seen from its far end. */
    private static Segment turned(Segment part) {
        return new Segment(
                part.length(), part.mass(), part.length() - part.comAlong(), -part.comAcross(), part.inertia());
    }

    private static Refusal noTrunk() {
        return new Refusal(
                Fault.OUTSIDE_PUBLISHED_RANGE,
                "head, arms and trunk",
                Double.NaN,
                Double.NaN,
                "",
                "a stand needs head, arms and trunk as one segment: name a table that has this row");
    }

    /**
     * First moments of what rides on each segment and beyond it, kg·m along and across the segment: the centre of mass of all is
     * their sum, each turned by its segment's direction, over the whole mass.
     */
    static Vec[] moments(Chain chain, Motion.Moving limb) {
        Vec[] moments = {new Vec(0, 0), new Vec(0, 0), new Vec(0, 0)};
        for (int k = 0; k < SEGMENTS; k++) {
            add(moments, chain, k, new Vec(chain.comAlong(k), chain.comAcross(k)).times(chain.mass(k)), chain.mass(k));
        }
        for (Motion.Carried carried : limb.carried()) {
            BodyPoint at = carried.at();
            Require.within(at.segment(), PLACES, "segment of " + at.name(), "");
            double mass = limb.share() * carried.mass();
            add(moments, chain, at.segment(), at.at().times(mass), mass);
        }
        return moments;
    }

    private static void add(Vec[] moments, Chain chain, int segment, Vec own, double mass) {
        for (int k = 0; k < segment; k++) {
            moments[k] = moments[k].plus(new Vec(mass * chain.length(k), 0));
        }
        moments[segment] = moments[segment].plus(own);
    }

    /** All mass above the ankle that this limb bears, kg. */
    static double mass(Chain chain, Motion.Moving limb) {
        double sum = 0;
        for (int k = 0; k < SEGMENTS; k++) {
            sum += chain.mass(k);
        }
        for (Motion.Carried carried : limb.carried()) {
            sum += limb.share() * carried.mass();
        }
        return sum;
    }
}
