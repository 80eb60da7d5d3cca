package counterpull.engine.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The joints' torques in their named senses, times the speeds at which these actions shorten, add up to the rate of mechanical
 * energy: senses of torque and angle belong together in every chain, whether it hangs or stands.
 */
class MovementPowerCrosscheckTest {
    private static final int POSITIONS = 11;

    private static void compare(RandomMovement.Drawn drawn) {
        Motion.Moving limb = drawn.moving(drawn.range(), POSITIONS);
        ChainPath path = drawn.motion().path(limb);
        for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
            for (int i = 1; i < POSITIONS - 1; i++) {
                double[] torque = torques(drawn, limb, path, phase, i);
                double put = 0;
                double size = 1;
                for (Joint joint : path.joints()) {
                    int k = path.index(joint);
                    double power = path.senses().get(k).torqueSign() * torque[k] * path.actionSpeed(joint, phase, i);
                    put += power;
                    size += Math.abs(power);
                }
                // rounding of sums of a dozen terms
                assertThat(put)
                        .as("%s %s at %d", drawn.motion(), phase, i)
                        .isCloseTo(energyRate(drawn, limb, path, phase, i), within(1e-11 * size));
            }
        }
    }

    private static double[] torques(
            RandomMovement.Drawn drawn, Motion.Moving limb, ChainPath path, Phase phase, int i) {
        double g = drawn.motion().gravity();
        ChainMotion state = new ChainMotion(path.segments());
        path.put(state, phase, i);
        PointLoads loads = new PointLoads(path.segments());
        for (Motion.Carried carried : limb.carried()) {
            PointTrack track = path.track(carried.at());
            Vec a = track.acceleration(path.course(), phase, i);
            Vec arm = track.at(i).minus(path.joint(carried.at().segment(), i));
            double mass = limb.share() * carried.mass();
            loads.add(carried.at().segment(), arm.x(), arm.y(), -mass * a.x(), -mass * (g + a.y()));
        }
        double[] torque = new double[path.segments()];
        new NewtonEuler(path.chain()).gravity(0, -g).torques(state, loads, torque);
        return torque;
    }

    private static double energyRate(
            RandomMovement.Drawn drawn, Motion.Moving limb, ChainPath path, Phase phase, int i) {
        double g = drawn.motion().gravity();
        double rate = 0;
        for (Motion.Carried carried : limb.carried()) {
            rate += limb.share() * carried.mass() * perMass(path, carried.at(), phase, i, g);
        }
        for (int k = 0; k < path.segments(); k++) {
            Vec com = new Vec(path.chain().comAlong(k), path.chain().comAcross(k));
            double v = path.course().speed(phase, i);
            double turning = path.slope(k, i) * v;
            double faster = path.slope(k, i) * path.course().acceleration(phase, i) + path.curve(k, i) * v * v;
            rate += path.chain().mass(k) * perMass(path, new BodyPoint("com", k, com), phase, i, g)
                    + path.chain().inertia(k) * turning * faster;
        }
        return rate;
    }

    private static double perMass(ChainPath path, BodyPoint at, Phase phase, int i, double g) {
        PointTrack track = path.track(at);
        Vec v = track.velocity(path.course(), phase, i);
        return v.dot(track.acceleration(path.course(), phase, i)) + g * v.y();
    }

    @Test
    void straightPaths() {
        RandomMovement random = new RandomMovement(2011);
        for (int trial = 0; trial < 100; trial++) {
            compare(random.straight());
        }
    }

    @Test
    void balancedStands() {
        RandomMovement random = new RandomMovement(2012);
        for (int trial = 0; trial < 100; trial++) {
            compare(random.stand());
        }
    }

    @ParameterizedTest
    @EnumSource(Joint.class)
    void hinges(Joint joint) {
        RandomMovement random = new RandomMovement(2013);
        for (int trial = 0; trial < 20; trial++) {
            compare(random.hinge(joint));
        }
    }
}
