package counterpull.engine.profile;

import counterpull.engine.body.Foot;
import counterpull.engine.load.Pull;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Ground;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;

/**
 * A foot on the ground under everything that pulls at its limb.
 *
 * @param foot the foot
 * @param gravity m/s², downward
 */
record StandOnGround(Foot foot, double gravity) {
    /** What the ground does to it. */
    Ground under(ExerciseLimb limb) {
        return Ground.of(limb.path(), foot, gravity, (loads, motion, phase, i) -> {
            for (int p = 0; p < limb.pulls().size(); p++) {
                add(limb, p, new Instant(loads, motion, phase, i));
            }
        });
    }

    private record Instant(PointLoads loads, ChainMotion motion, Phase phase, int position) {}

    private static void add(ExerciseLimb limb, int p, Instant now) {
        Pull pull = limb.pulls().get(p);
        BodyPoint at = pull.at();
        double size = limb.share() * limb.size(p, now.phase, now.position);
        if (pull.isCouple()) {
            // two opposite forces one metre apart: a couple of that size
            now.loads.add(at.segment(), 1, 0, 0, size);
            now.loads.add(at.segment(), 0, 0, 0, -size);
            return;
        }
        Vec force = pull.direction(now.position).times(size);
        double armX = now.motion.armX(at.segment(), at.at().x(), at.at().y());
        double armY = now.motion.armY(at.segment(), at.at().x(), at.at().y());
        now.loads.add(at.segment(), armX, armY, force.x(), force.y());
    }
}
