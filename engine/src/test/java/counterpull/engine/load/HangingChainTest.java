package counterpull.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class HangingChainTest {
    private static final double G = Constants.STANDARD_GRAVITY;
    // forces of some ten newtons, rounded a few times
    private static final double ROUNDING = 1e-9;

    @Test
    void balancesPower() {
        RandomLimb random = new RandomLimb(23);
        int partly = 0;
        int wholly = 0;
        for (int trial = 0; trial < 60; trial++) {
            ChainPath path = random.next();
            BodyPoint top = random.point(path);
            double floor = lowest(path, top) - random.between(0, 0.6);
            HangingChain chain = new HangingChain("chain", top, random.between(1, 15), random.between(0.1, 1.5), floor);
            PowerBalance.check(chain, new PowerBalance.Setting(path, G, 0), kinks(chain, path));
            double[] clear = chain.clear(path);
            wholly += clear[200] == chain.length() ? 1 : 0;
            partly += clear[200] < chain.length() ? 1 : 0;
        }
        assertThat(partly).isGreaterThan(10);
        assertThat(wholly).isGreaterThan(10);
    }

    private static double lowest(ChainPath path, BodyPoint top) {
        PointTrack track = path.track(top);
        double lowest = track.at(0).y();
        for (int i = 1; i < path.positions(); i++) {
            lowest = Math.min(lowest, track.at(i).y());
        }
        return lowest;
    }

    /** Where the last link leaves the floor, and where the top turns back. */
    private static List<Integer> kinks(HangingChain chain, ChainPath path) {
        PointTrack track = path.track(chain.top());
        double[] clear = chain.clear(path);
        List<Integer> kinks = new ArrayList<>();
        for (int i = 1; i < clear.length; i++) {
            boolean leaves = (clear[i] == chain.length()) != (clear[i - 1] == chain.length());
            boolean turns = track.slope(i).y() * track.slope(i - 1).y() <= 0;
            if (leaves || turns) {
                kinks.add(i);
            }
        }
        return kinks;
    }

    /**
     * Worked example K, two independent derivations: 5 kg/m, 1 m, top 0.50 m above the floor, 0.4 m/s, 0.5 m/s². The movement here has other
     * speeds, so they enter as it has them.
     */
    @Test
    void halfAMetreClear() {
        ChainPath path = HeldLimb.elbow(60, 120, 3);
        BodyPoint hand = new BodyPoint("hand", 0, new Vec(0.4, 0));
        PointTrack track = path.track(hand);
        HangingChain chain = new HangingChain("chain", hand, 5, 1, track.at(1).y() - 0.5);
        int cell = path.course().cell(Phase.LIFTING, 1);
        double speed = track.velocity(path.course(), Phase.LIFTING, 1).y();
        double acceleration =
                track.acceleration(path.course(), Phase.LIFTING, 1).y();
        assertThat(chain.clear(path)[1]).isCloseTo(0.5, within(1e-12));
        assertThat(5 * 0.5 * (G + 0.5)).isCloseTo(25.7666, within(5e-5));
        assertThat(chain.on(path, G).get(0).size(cell, 0))
                .isCloseTo(25.7666 + 5 * 0.5 * (acceleration - 0.5), within(5e-5));
        assertThat(speed).isGreaterThan(0.2);
        assertThat(chain.pickedUp(path)[cell]).isCloseTo(0.8 * speed * speed / (0.4 * 0.4), within(ROUNDING));
        assertThat(chain.pickedUp(path)[path.course().cell(Phase.LOWERING, 1)]).isZero();
        assertThat(chain.pickedUp(path)[path.course().cell(Phase.HELD, 1)]).isZero();
    }

    /** Clear of the floor all the time it is a dead weight, but for its swing. */
    @Test
    void allOfItClearIsAMassThatOnlyGoesUpAndDown() {
        ChainPath path = HeldLimb.elbow(60, 120, 9);
        BodyPoint hand = new BodyPoint("hand", 0, new Vec(0.35, 0));
        Pull chain = new HangingChain("chain", hand, 4, 0.5, -2).on(path, G).get(0);
        Pull mass = new DeadWeight("mass", hand, Loaded.always(2)).on(path, G).get(0);
        for (int cell = 0; cell < path.course().cells(); cell++) {
            assertThat(chain.size(cell, 0)).isCloseTo(-mass.size(cell, 0), within(ROUNDING));
        }
        assertThat(new HangingChain("chain", hand, 4, 0.5, -2).pickedUp(path)).containsOnly(0.0);
    }

    @Test
    void aFloorAboveTheHandOrALevelPlaneIsRefused() {
        ChainPath path = HeldLimb.elbow(60, 120, 3);
        BodyPoint hand = new BodyPoint("hand", 0, new Vec(0.35, 0));
        assertThatThrownBy(() -> new HangingChain("chain", hand, 4, 1, 1).on(path, G))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS);
                    assertThat(refusal.limit()).isEqualTo(1);
                });
        Hinge level = new Hinge(Joint.ELBOW, 0, Map.of(), Hinge.Lie.LEVEL);
        ChainPath turning = HeldLimb.path(level, 60, 120, 3);
        assertThatThrownBy(() -> new HangingChain("chain", hand, 4, 1, -2).on(turning, level.gravity()))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.MUST_BE_POSITIVE));
    }
}
