package counterpull.benchmarks;

import counterpull.engine.body.Joint;
import counterpull.engine.body.Leg;
import counterpull.engine.body.Segment;
import counterpull.engine.motion.LegPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressProfile;

/** Postures of one leg while it lifts, as plain arrays that every contestant reads. */
final class Postures {
    static final int COUNT = 101;
    static final int SEGMENTS = Joint.LEG.size();
    final Chain chain;
    final double[] direction = new double[COUNT * SEGMENTS];
    final double[] rate = new double[COUNT * SEGMENTS];
    final double[] acceleration = new double[COUNT * SEGMENTS];
    final double[] force = new double[COUNT];
    final double armX;
    final double armY;

    Postures() {
        PressProfile profile = PressProfile.of(BenchTask.task());
        Leg leg = profile.limbs().get(0).limb().leg();
        chain = chain(leg);
        // the sole square to the rail: along the foot is across the rail
        armX = leg.foot().ankleHeight();
        armY = leg.foot().pressureAlong(0.5);
        LegPath path = profile.limbs().get(0).path();
        for (int i = 0; i < COUNT; i++) {
            take(path, i);
            force[i] = profile.limbs().get(0).force(Phase.LIFTING, i);
        }
    }

    private static Chain chain(Leg leg) {
        Chain.Builder builder = Chain.build();
        for (Segment part : new Segment[] {leg.thigh(), leg.shank(), leg.foot().asSegment()}) {
            builder.segment(part.length(), part.mass(), new Vec(part.comAlong(), part.comAcross()), part.inertia());
        }
        return builder.done();
    }

    private void take(LegPath path, int i) {
        int at = i * SEGMENTS;
        direction[at] = path.thigh(i);
        direction[at + 1] = path.shank(i);
        direction[at + 2] = path.foot();
        rate[at] = path.thighRate(Phase.LIFTING, i);
        rate[at + 1] = path.shankRate(Phase.LIFTING, i);
        acceleration[at] = path.thighAcceleration(Phase.LIFTING, i);
        acceleration[at + 1] = path.shankAcceleration(Phase.LIFTING, i);
    }
}
