package counterpull.engine.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.BodySide;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Segment;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Every joint as a hinge: where its segments point, which way each named action pulls, and what the segments weigh. */
class HingeTest {
    private static final double G = 9.80665;
    private static final BodySide BODY = LimbTorques.body();

    private static LimbTorques hinge(
            Joint joint, double attitude, Map<Joint, Double> held, Hinge.Lie lie, double angle) {
        Hinge hinge = new Hinge(joint, Angles.radians(attitude), held, lie);
        return LimbTorques.of(hinge, LimbTorques.degrees(angle, angle + 10), 3, LimbTorques.Load.none());
    }

    // read off a drawing of a person who faces +x: attitude, anatomical angle, direction of the first segment, degrees
    @ParameterizedTest
    @CsvSource({
        "HIP,               90,   0,  -90", // standing
        "HIP,               90,  90,    0", // thigh level in front
        "HIP,              180,  30,   30", // lying on the back, head at −x, foot end +x: leg raised
        "KNEE,               0,   0,    0", // sitting, leg straight
        "KNEE,               0,  90,  -90", // sitting, shank hanging
        "KNEE,             180,  90,   90", // prone with the head at +x: the shank stands up
        "ANKLE,            -90,   0,    0", // standing, sole level
        "ANKLE,            -90, -30,  -30", // toes down
        "ANKLE,              0,   0,   90", // leg straight out in front, toes up
        "HIP_SIDEWAYS,      90,   0,  -90",
        "HIP_SIDEWAYS,      90,  40,  -50", // out to the side
        "HIP_SIDEWAYS,     180,   0,    0", // lying on the other side, head at −x
        "HIP_SIDEWAYS,     180,  30,   30", // raised from there
        "SHOULDER,          90,   0,  -90",
        "SHOULDER,          90,  90,    0", // straight ahead
        "SHOULDER,          90, 180,   90", // overhead
        "SHOULDER,         180,  90,   90", // lying on the back, arm straight up
        "SHOULDER_SIDEWAYS, 90,  90,    0",
        "SHOULDER_TURNING,   0,   0,    0",
        "SHOULDER_TURNING,   0,  60,   60",
        "SHOULDER_TURNING, -90,  90,    0", // side-lying, forearm level
        "ELBOW,            -90,   0,  -90", // arm hanging
        "ELBOW,            -90,  90,    0", // forearm level in front
        "ELBOW,             90,  90,  180" // arm overhead, hand behind the head
    })
    void segmentsPointAsDrawn(Joint joint, double attitude, double angle, double direction) {
        ChainPath path =
                hinge(joint, attitude, Map.of(), Hinge.Lie.UPRIGHT, angle).path();
        assertThat(Angles.degrees(Angles.wrap(path.direction(0, 0) - Angles.radians(direction))))
                .isCloseTo(0, within(1e-9));
        assertThat(Angles.degrees(Angles.wrap(path.angle(joint, 0) - Angles.radians(angle))))
                .isCloseTo(0, within(1e-9));
    }

    /** A positive torque lifts by the named action where that action lifts, and asks for the opposite where it lowers. */
    @ParameterizedTest
    @CsvSource({
        "HIP,               90,  90, -1", // flexion holds the thigh up
        "HIP,                0,  90, -1", // prone on a bench, leg hanging down: nothing asked but at the sides of it
        "KNEE,               0,  20,  1", // extension holds the shank up
        "KNEE,             180,  20, -1", // prone: flexion lifts the heel
        "ANKLE,            -90,   0, -1", // dorsiflexion holds a free foot up
        "HIP_SIDEWAYS,      90,  40,  1",
        "SHOULDER,          90,  60,  1",
        "SHOULDER_SIDEWAYS, 90,  60,  1",
        "SHOULDER_TURNING, -90,  60,  1",
        "ELBOW,            -90,  60,  1",
        "ELBOW,             90,  60, -1" // overhead: extension
    })
    void gravityAsksForTheActionThatLifts(Joint joint, double attitude, double angle, int sign) {
        LimbTorques limb = hinge(joint, attitude, Map.of(), Hinge.Lie.UPRIGHT, angle);
        double rising = potential(limb.path(), 2) - potential(limb.path(), 0);
        double torque = limb.at(joint, Phase.HELD, 1);
        // by the definition of work: in the sense of the named action, torque × angle = height gained
        double work = joint.angleSenseOfAction() * torque * Angles.radians(10);
        assertThat(work).isCloseTo(rising, within(0.02 * Math.abs(torque)));
        if (Math.abs(torque) > 1) {
            assertThat(Math.signum(torque)).as("%s", joint).isEqualTo(sign);
        }
    }

    private static double potential(ChainPath path, int i) {
        double sum = 0;
        for (int k = 0; k < path.segments(); k++) {
            Vec com = new Vec(path.chain().comAlong(k), path.chain().comAcross(k));
            sum += G
                    * path.chain().mass(k)
                    * path.track(new BodyPoint("com", k, com)).at(i).y();
        }
        return sum;
    }

    @ParameterizedTest
    @EnumSource(Joint.class)
    void nothingWeighsInALevelPlane(Joint joint) {
        LimbTorques limb = hinge(joint, 17, Map.of(), Hinge.Lie.LEVEL, 25);
        assertThat(limb.at(joint, Phase.HELD, 1)).isZero();
        double speedingUp = limb.at(joint, Phase.LIFTING, 0);
        assertThat(speedingUp).as("at the very start of a minimum-jerk stroke").isCloseTo(0, within(1e-9));
    }

    @Test
    void aStraightLegToTheSideIsItsThreePartsInOne() {
        LimbTorques limb = hinge(Joint.HIP_SIDEWAYS, 90, Map.of(), Hinge.Lie.UPRIGHT, 85);
        Segment thigh = BODY.leg().thigh();
        Segment shank = BODY.leg().shank();
        double foot = thigh.length() + shank.length() + BODY.leg().foot().ankleHeight() / 2;
        double moment = thigh.mass() * thigh.comAlong()
                + shank.mass() * (thigh.length() + shank.comAlong())
                + BODY.leg().foot().mass() * foot;
        // at 90° of abduction the leg is level
        assertThat(limb.at(Joint.HIP_SIDEWAYS, Phase.HELD, 1)).isCloseTo(G * moment, within(1e-9));
        double inertia = about(thigh, thigh.comAlong())
                + about(shank, thigh.length() + shank.comAlong())
                + BODY.leg().foot().inertia()
                + BODY.leg().foot().mass() * foot * foot;
        double com = limb.path().chain().comAlong(0);
        assertThat(limb.path().chain().inertia(0) + limb.path().chain().mass(0) * com * com)
                .isCloseTo(inertia, within(1e-12));
    }

    private static double about(Segment part, double distance) {
        return part.inertia() + part.mass() * distance * distance;
    }

    @Test
    void heldJointsKeepTheirAnglesAndDoNotTurn() {
        LimbTorques limb = hinge(Joint.HIP, 90, Map.of(Joint.KNEE, 0.5, Joint.ANKLE, -0.2), Hinge.Lie.UPRIGHT, 30);
        for (int i = 0; i < 3; i++) {
            assertThat(limb.path().angle(Joint.KNEE, i)).isCloseTo(0.5, within(1e-12));
            assertThat(limb.path().angle(Joint.ANKLE, i)).isCloseTo(-0.2, within(1e-12));
            assertThat(limb.path().actionSpeed(Joint.KNEE, Phase.LIFTING, i)).isZero();
            assertThat(limb.path().actionSpeed(Joint.HIP, Phase.LIFTING, i))
                    .as("lifting raises hip flexion, so extension lengthens")
                    .isNotPositive();
        }
    }
}
