package counterpull.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.Refusal;
import counterpull.engine.body.Foot;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Leg;
import counterpull.engine.body.Segment;
import counterpull.engine.crosscheck.RandomSled;
import counterpull.engine.motion.LegPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Ride;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import us.ihmc.euclid.tuple3D.Vector3D;

/**
 * The whole leg of random rail presses, its hip at rest or accelerating with the seat, against the multibody library: the engine
 * adds its torques from terms, the library gets posture, motion and the foot's whole load at once.
 */
class PressLegCrosscheckTest {
    private static final int SLEDS = 300;

    /** 1e-9 of foot load × 1 m: rounding leaves 1e-13, a wrong term far more. */
    private static final double CLOSE = 1e-9;

    @Test
    void torquesOfHipKneeAndAnkle() {
        RandomSled random = new RandomSled(77);
        int plates = 0;
        int seats = 0;
        for (int k = 0; k < SLEDS; k++) {
            Optional<PressProfile> profile = computed(random);
            if (profile.isPresent()) {
                check(profile.get());
                boolean seat = profile.get().task().sled().rail().ride() == Ride.SEAT;
                seats += seat ? 1 : 0;
                plates += seat ? 0 : 1;
            }
        }
        assertThat(plates).as("presses with a hip at rest").isGreaterThan(SLEDS / 6);
        assertThat(seats).as("presses with a hip that accelerates").isGreaterThan(SLEDS / 6);
    }

    /** Empty where this random sled cannot be pressed: contact lost, no range, a bounce that needs more travel. */
    private static Optional<PressProfile> computed(RandomSled random) {
        try {
            return Optional.of(PressProfile.of(random.next()));
        } catch (Refusal refusal) {
            return Optional.empty();
        }
    }

    private static void check(PressProfile profile) {
        double angle = profile.task().sled().rail().angle();
        for (PressLimb limb : profile.limbs()) {
            double g = Constants.STANDARD_GRAVITY;
            LibraryChain library =
                    new LibraryChain(chain(limb.limb().leg()), -g * Math.sin(angle), -g * Math.cos(angle));
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < profile.positions(); i++) {
                    compare(profile, limb, library, new Moment(phase, i));
                }
            }
        }
    }

    private record Moment(Phase phase, int position) {}

    private static Chain chain(Leg leg) {
        Chain.Builder builder = Chain.build();
        for (Segment part : new Segment[] {leg.thigh(), leg.shank(), leg.foot().asSegment()}) {
            builder.segment(part.length(), part.mass(), new Vec(part.comAlong(), part.comAcross()), part.inertia());
        }
        return builder.done();
    }

    private static void compare(PressProfile profile, PressLimb limb, LibraryChain library, Moment at) {
        boolean seat = profile.task().sled().rail().ride() == Ride.SEAT;
        double plate = profile.ground().motion().acceleration(at.phase, at.position);
        library.begin(seat ? -plate : 0, 0);
        LegPath path = limb.path();
        library.segment(
                0,
                path.thigh(at.position),
                path.thighRate(at.phase, at.position),
                path.thighAcceleration(at.phase, at.position));
        library.segment(
                1,
                path.shank(at.position),
                path.shankRate(at.phase, at.position),
                path.shankAcceleration(at.phase, at.position));
        library.segment(2, path.foot(), 0, 0);
        double force = limb.force(at.phase, at.position);
        double across = force * Math.tan(limb.pushAngle(at.phase, at.position));
        library.load(2, pressure(profile, limb), new Vector3D(-force, -across, 0));
        double[] torque = new double[3];
        library.torques(torque);
        for (Joint joint : Joint.LEG) {
            assertThat(limb.torque(joint, at.phase, at.position))
                    .as("%s, %s at %s", joint, at, profile.task())
                    .isCloseTo(joint.senseOfAction() * torque[joint.ordinal()], within(CLOSE * (1 + force)));
        }
    }

    /** Pressure point from the ankle, in the rail's axes. */
    private static Vector3D pressure(PressProfile profile, PressLimb limb) {
        Foot foot = limb.limb().leg().foot();
        double along = foot.pressureAlong(profile.task().stance().pressurePoint());
        double c = Math.cos(limb.path().foot());
        double s = Math.sin(limb.path().foot());
        return new Vector3D(c * along - s * foot.pressureAcross(), s * along + c * foot.pressureAcross(), 0);
    }
}
