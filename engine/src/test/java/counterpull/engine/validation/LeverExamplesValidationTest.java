package counterpull.engine.validation;

import counterpull.engine.planar.Chain;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import org.junit.jupiter.api.Test;

/**
 * Textbook levers: a forearm or a foot held still, all loads given. The muscle's force is the joint's torque over its lever
 * arm, and what the joint's surfaces carry is what holds the segment less the muscle.
 */
class LeverExamplesValidationTest {
    private static final double NO_GRAVITY = 0;

    /** A level segment that points along x, with loads at stated places along it. */
    private static final class Lever {
        private final Chain chain;
        private final PointLoads loads = new PointLoads(1);
        private final double gravity;
        private final double[] torque = new double[1];
        private double up;

        Lever(double mass, double com, double gravity) {
            chain = Chain.build().segment(0.4, mass, new Vec(com, 0), 0).done();
            this.gravity = gravity;
        }

        /** A force straight up at a place along the segment, N; negative pulls down. */
        Lever lift(double place, double force) {
            loads.add(0, place, 0, 0, force);
            return this;
        }

        Lever solve() {
            NewtonEuler pass = new NewtonEuler(chain).gravity(0, -gravity);
            pass.torques(new ChainMotion(1), loads, torque);
            up = pass.baseForceY();
            return this;
        }

        double muscle(double arm) {
            return torque[0] / arm;
        }

        double joint(double arm) {
            return muscle(arm) - up;
        }
    }

    @Test
    void forearmHoldsABook() {
        Lever forearm = new Lever(2.50, 0.160, 9.80).lift(0.380, -4.00 * 9.80).solve();
        String source = "OpenStax College Physics, section 9.6, example 1; looked up";
        Published.of("biceps force", "N")
                .source(source)
                .value(470)
                .ours(forearm.muscle(0.0400))
                .within(0.5, "printed to three digits");
        Published.of("force of the upper arm on the forearm", "N")
                .source(source)
                .value(407)
                .ours(forearm.joint(0.0400))
                .within(0.5, "printed to three digits");
        Published.of("biceps force over the weight held", "")
                .source(source)
                .value(7.38)
                .ours(forearm.muscle(0.0400) / (6.50 * 9.80))
                .within(0.0051, "printed to two decimals");
    }

    @Test
    void forearmWithAWeightInTheHand() {
        Lever forearm = new Lever(20, 0.15, 1).lift(0.35, -80).solve();
        String source =
                "Özkaya and Nordin, Fundamentals of Biomechanics, chapter 5, elbow; from memory, arithmetic exact";
        Published.of("muscle force at the elbow", "N")
                .source(source)
                .value(775)
                .ours(forearm.muscle(0.04))
                .within(1e-9, "exact");
        Published.of("joint force at the elbow", "N")
                .source(source)
                .value(675)
                .ours(forearm.joint(0.04))
                .within(1e-9, "exact");
    }

    @Test
    void standingOnTheToesWithTheHeelTendonPulling() {
        double tendon = 650 * Math.cos(Math.toRadians(5));
        Lever foot = new Lever(1, 0, NO_GRAVITY)
                .lift(-0.065, tendon)
                .lift(0.100, 400)
                .solve();
        Published.of("moment of heel tendon and ground about the ankle", "N·m")
                .source("Hibbeler, Statics, problem 4-15, clockwise; looked up")
                .value(2.09)
                .ours(foot.torque[0])
                .within(0.0051, "printed to two decimals; the joint's torque is its reverse, so counter-clockwise");
    }

    @Test
    void forearmWhoseWeightIsIgnored() {
        Lever forearm = new Lever(1, 0, NO_GRAVITY).lift(0.30, -15).solve();
        String source = "biomedical engineering text, example 2.4; inputs looked up, answer computed by hand";
        Published.of("elbow torque", "N·m")
                .source(source)
                .value(4.5)
                .ours(forearm.torque[0])
                .within(1e-9, "exact");
        Published.of("biceps force, forearm without weight", "N")
                .source(source)
                .value(128.6)
                .ours(forearm.muscle(0.035))
                .within(0.051, "printed to one decimal");
    }

    @Test
    void kneecapBetweenTwoTendonPulls() {
        Chain kneecap = Chain.build().segment(0.05, 1, new Vec(0, 0), 0).done();
        PointLoads pulls = new PointLoads(1);
        double above = Math.toRadians(55);
        double below = Math.toRadians(75);
        pulls.add(0, 0, 0, -1250 * Math.cos(above), 1250 * Math.sin(above));
        pulls.add(0, 0, 0, -1250 * Math.cos(below), -1250 * Math.sin(below));
        NewtonEuler pass = new NewtonEuler(kneecap);
        pass.torques(new ChainMotion(1), pulls, new double[1]);
        // the thigh bone holds the kneecap with the base force, so the kneecap pushes on it with the reverse
        Vec onThigh = new Vec(-pass.baseForceX(), -pass.baseForceY());
        String source = "OpenStax College Physics, section 9.6, kneecap; looked up";
        Published.of("force of the kneecap on the thigh bone", "N")
                .source(source)
                .value(1.1e3)
                .ours(onThigh.norm())
                .within(50, "printed to two digits");
        Published.of("its direction from the forward axis", "°")
                .source(source)
                .value(190)
                .ours(Math.toDegrees(Math.atan2(onThigh.y(), onThigh.x())) + 360)
                .within(0.5, "printed to whole degrees");
    }

    @Test
    void armHeldOutToTheSide() {
        Lever arm = new Lever(40, 0.30, 1).lift(0.60, -60).solve();
        double angle = Math.toRadians(15);
        double deltoid = arm.muscle(0.15 * Math.sin(angle));
        double along = deltoid * Math.cos(angle);
        double across = deltoid * Math.sin(angle) - arm.up;
        String source =
                "Özkaya and Nordin, Fundamentals of Biomechanics, chapter 5, shoulder; from memory, arithmetic checked";
        Published.of("deltoid force", "N")
                .source(source)
                .value(1236)
                .ours(deltoid)
                .within(0.5, "printed to whole newtons");
        Published.of("joint force at the shoulder", "N")
                .source(source)
                .value(1214)
                .ours(Math.sqrt(along * along + across * across))
                .within(0.5, "printed to whole newtons");
        Published.of("joint force at the shoulder, along the arm", "N")
                .source(source)
                .value(1194.3)
                .ours(along)
                .within(0.051, "printed to one decimal");
        Published.of("joint force at the shoulder, across the arm", "N")
                .source(source)
                .value(220.0)
                .ours(across)
                .within(0.051, "printed to one decimal");
        Published.of("direction of the joint force at the shoulder from the arm", "°")
                .source(source)
                .value(10.4)
                .ours(Math.toDegrees(Math.atan2(across, along)))
                .within(0.051, "printed to one decimal");
    }

    @Test
    void shankWithAnAnkleWeightAt45Degrees() {
        Chain shank = Chain.build().segment(0.5, 150, new Vec(0.22, 0), 0).done();
        ChainMotion motion = new ChainMotion(1);
        double slope = Math.toRadians(45);
        motion.direction(0, -slope);
        PointLoads boot = new PointLoads(1);
        boot.add(0, motion.armX(0, 0.50, 0), motion.armY(0, 0.50, 0), 0, -100);
        double[] torque = new double[1];
        NewtonEuler pass = new NewtonEuler(shank).gravity(0, -1);
        pass.torques(motion, boot, torque);
        double tendon = torque[0] / (0.12 * Math.sin(Math.toRadians(15)));
        double along = tendon * Math.cos(Math.toRadians(60));
        double up = tendon * Math.sin(Math.toRadians(60)) - pass.baseForceY();
        String source = "Özkaya and Nordin, Fundamentals of Biomechanics, chapter 5, knee; set-up from memory,"
                + " answer computed by hand";
        Published.of("force of the kneecap's tendon", "N")
                .source(source)
                .value(1889.7)
                .ours(tendon)
                .within(0.051, "given to one decimal");
        Published.of("joint force at the knee, level", "N")
                .source(source)
                .value(944.8)
                .ours(along)
                .within(0.051, "given to one decimal");
        Published.of("joint force at the knee, upward", "N")
                .source(source)
                .value(1386.5)
                .ours(up)
                .within(0.051, "given to one decimal");
        Published.of("joint force at the knee", "N")
                .source(source)
                .value(1677.9)
                .ours(Math.sqrt(along * along + up * up))
                .within(0.1, "given to one decimal, from rounded parts");
    }
}
