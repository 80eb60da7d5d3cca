package counterpull.engine.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Foot;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Ground;
import counterpull.engine.motion.GroundContact;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A balanced stand against mass points and momentum: a route that knows nothing of moments by segment or of the recursion. */
class StandCrosscheckTest {
    private static final int POSITIONS = 9;

    private record Point(PointTrack track, double mass, int segment, double inertia) {}

    private static List<Point> points(Motion.Moving limb, ChainPath path) {
        List<Point> points = new ArrayList<>();
        for (int k = 0; k < path.segments(); k++) {
            Vec com = new Vec(path.chain().comAlong(k), path.chain().comAcross(k));
            PointTrack track = path.track(new BodyPoint("com", k, com));
            points.add(new Point(track, path.chain().mass(k), k, path.chain().inertia(k)));
        }
        for (Motion.Carried carried : limb.carried()) {
            points.add(new Point(path.track(carried.at()), limb.share() * carried.mass(), 0, 0));
        }
        return points;
    }

    @Test
    void theStaticCentreOfMassStaysOverTheStatedPoint() {
        RandomMovement random = new RandomMovement(2021);
        for (int trial = 0; trial < 200; trial++) {
            RandomMovement.Drawn drawn = random.stand();
            Motion.Moving limb = drawn.moving(drawn.range(), POSITIONS);
            ChainPath path = drawn.motion().path(limb);
            Foot foot = limb.body().leg().foot();
            double over = ((BalancedStand) drawn.motion()).over() * foot.length() - foot.ankleFromHeel();
            for (int i = 0; i < POSITIONS; i++) {
                double mass = foot.mass();
                double moment = foot.mass() * (foot.length() / 2 - foot.ankleFromHeel());
                double slope = 0;
                double curve = 0;
                for (Point point : points(limb, path)) {
                    mass += point.mass;
                    moment += point.mass * point.track.at(i).x();
                    slope += point.mass * point.track.slope(i).x();
                    curve += point.mass * point.track.curve(i).x();
                }
                // rounding alone; lengths of about 1 m
                assertThat(moment / mass).isCloseTo(over, within(1e-13));
                assertThat(slope / mass).isCloseTo(0, within(1e-12));
                assertThat(curve / mass).isCloseTo(0, within(1e-11));
            }
        }
    }

    @Test
    void noOtherLeanBalancesMoreUpright() {
        RandomMovement random = new RandomMovement(2022);
        for (int trial = 0; trial < 100; trial++) {
            RandomMovement.Drawn drawn = random.stand();
            Motion.Moving limb = drawn.moving(drawn.range(), POSITIONS);
            ChainPath path = drawn.motion().path(limb);
            boolean trunkLeans = drawn.motion().driver().orElseThrow() == Joint.KNEE;
            int from = trunkLeans ? 2 : 0;
            double fromUpright = Math.abs(Math.PI / 2 - path.direction(from, 4));
            double balanced = moment(limb, path, from, 0);
            // every lean that is more upright by 0.001 rad or more has its centre of mass elsewhere, all on one side
            double side = 0;
            for (double lean = fromUpright - 1e-3; lean > -fromUpright; lean -= 1e-3) {
                double turn = Math.PI / 2
                        - lean * Math.signum(Math.PI / 2 - path.direction(from, 4))
                        - path.direction(from, 4);
                double off = moment(limb, path, from, turn) - balanced;
                assertThat(off).as("%s, %f", drawn.motion(), lean).isNotZero();
                side = side == 0 ? Math.signum(off) : side;
                assertThat(Math.signum(off)).as("%s, %f", drawn.motion(), lean).isEqualTo(side);
            }
        }
    }

    // with all from a segment on turned about its lowest joint
    private static double moment(Motion.Moving limb, ChainPath path, int from, double turn) {
        double sum = 0;
        Vec pivot = path.joint(from, 4);
        List<Point> points = points(limb, path);
        for (int p = 0; p < points.size(); p++) {
            boolean carried = p >= path.segments();
            int segment = carried ? limb.carried().get(p - path.segments()).at().segment() : points.get(p).segment;
            Vec at = points.get(p).track.at(4);
            if (segment >= from) {
                Vec arm = at.minus(pivot);
                at = pivot.plus(arm.times(Math.cos(turn))).plus(arm.left().times(Math.sin(turn)));
            }
            sum += points.get(p).mass * at.x();
        }
        return sum;
    }

    @Test
    void theGroundGivesWhatMomentumAsks() {
        RandomMovement random = new RandomMovement(2023);
        for (int trial = 0; trial < 100; trial++) {
            RandomMovement.Drawn drawn = random.stand();
            Motion.Moving limb = drawn.moving(drawn.range(), POSITIONS);
            ChainPath path = drawn.motion().path(limb);
            Ground ground = Ground.of(path, limb, drawn.motion().gravity());
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < POSITIONS; i++) {
                    compare(limb, path, ground.at(phase, i), new When(phase, i));
                }
            }
        }
    }

    private record When(Phase phase, int i) {}

    private static void compare(Motion.Moving limb, ChainPath path, GroundContact contact, When when) {
        double g = 9.80665;
        Foot foot = limb.body().leg().foot();
        double upward = foot.mass() * g;
        double forward = 0;
        double moment = foot.mass() * g * (foot.length() / 2 - foot.ankleFromHeel());
        double v = path.course().speed(when.phase, when.i);
        for (Point point : points(limb, path)) {
            Vec a = point.track.acceleration(path.course(), when.phase, when.i);
            Vec asked = new Vec(a.x(), a.y() + g).times(point.mass);
            upward += asked.y();
            forward += asked.x();
            moment += point.track.at(when.i).cross(asked);
            double faster = path.slope(point.segment, when.i) * path.course().acceleration(when.phase, when.i)
                    + path.curve(point.segment, when.i) * v * v;
            moment += point.inertia * faster;
        }
        // moment of the ground's force about the ankle: place × upward + ankle height × forward
        double place = (moment - foot.ankleHeight() * forward) / upward;
        assertThat(contact.upward()).isCloseTo(upward, within(1e-11 * upward));
        assertThat(contact.forward()).isCloseTo(forward, within(1e-11 * upward));
        assertThat(contact.fraction() * foot.length() - foot.ankleFromHeel()).isCloseTo(place, within(1e-12));
    }
}
