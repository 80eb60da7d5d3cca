package counterpull.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import org.junit.jupiter.api.Test;

class GuidedMassTest {
    private static final double G = Constants.STANDARD_GRAVITY;
    private static final BodyPoint HAND = new BodyPoint("hand", 0, new Vec(0.33, 0));
    private static final double UPRIGHT = Math.PI / 2;
    // forces of some hundred newtons, rounded a few times
    private static final double ROUNDING = 1e-9;

    private static Carriage bare(double mass) {
        return new Carriage(mass, Counterweight.none(), Friction.none(), 200);
    }

    @Test
    void balancesPower() {
        RandomLimb random = new RandomLimb(47);
        int checked = 0;
        for (int trial = 0; trial < 200 && checked < 60; trial++) {
            ChainPath path = random.next();
            Counterweight.Run run = trial % 2 == 0 ? Counterweight.Run.HANGING : Counterweight.Run.ALONG_RAIL;
            Friction friction = new Friction(random.between(0, 20), random.between(0, 0.1), 0);
            Carriage carriage =
                    new Carriage(random.between(5, 40), new Counterweight(random.between(0, 10), run), friction, 200);
            GuidedMass mass =
                    new GuidedMass("bar", random.point(path), random.between(-3, 3), carriage, Loaded.Plates.HERE);
            double gravity = trial % 5 == 0 ? 0 : G;
            PowerBalance.Setting setting = new PowerBalance.Setting(path, gravity, random.between(0, 60));
            if (goesOneWay(mass, path)) {
                PowerBalance.check(mass, setting);
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(20);
    }

    private static boolean goesOneWay(GuidedMass mass, ChainPath path) {
        try {
            return !mass.on(path, G).isEmpty();
        } catch (Refusal turnsBack) {
            assertThat(turnsBack.quantity()).contains("along the rail");
            return false;
        }
    }

    /** A bar on upright rails moved straight up is a dead weight: the same up and down, and nothing to and fro. */
    @Test
    void onUprightRailsItIsTheUprightPartOfADeadWeight() {
        ChainPath path = HeldLimb.elbow(40, 130, 9);
        Pull bar = new GuidedMass("bar", HAND, UPRIGHT, bare(12), Loaded.Plates.ELSEWHERE)
                .on(path, G)
                .get(0);
        Pull weight =
                new DeadWeight("weight", HAND, Loaded.always(12)).on(path, G).get(0);
        for (int cell = 0; cell < path.course().cells(); cell++) {
            assertThat(bar.size(cell, 0)).isCloseTo(-weight.size(cell, 0), within(ROUNDING));
        }
        assertThat(bar.direction(4).y()).isCloseTo(-1, within(ROUNDING));
        assertThat(bar.direction(4).x()).isCloseTo(0, within(ROUNDING));
    }

    /** Worked example A: 100 kg on a rail of 45°, held, half a unit of the last printed digit. */
    @Test
    void aHundredKilogramsOnASlope() {
        ChainPath path = HeldLimb.elbow(40, 130, 3);
        Pull sled = new GuidedMass("sled", HAND, Math.PI / 4, bare(40), Loaded.Plates.HERE)
                .on(path, G)
                .get(0);
        assertThat(sled.size(path.course().cell(Phase.HELD, 1), 60)).isCloseTo(693.4349, within(5e-5));
    }

    @Test
    void eitherSenseOfTheRailIsTheSame() {
        ChainPath path = HeldLimb.elbow(40, 130, 9);
        Pull up = new GuidedMass("bar", HAND, 1.2, bare(12), Loaded.Plates.HERE)
                .on(path, G)
                .get(0);
        Pull down = new GuidedMass("bar", HAND, 1.2 - Math.PI, bare(12), Loaded.Plates.HERE)
                .on(path, G)
                .get(0);
        for (int cell = 0; cell < path.course().cells(); cell++) {
            assertThat(up.size(cell, 20)).isCloseTo(down.size(cell, 20), within(ROUNDING));
        }
        assertThat(up.direction(0).minus(down.direction(0)).norm()).isLessThan(ROUNDING);
    }

    /** By hand, 30° of rail, carriage 10 kg, plates 20 kg, counterweight 6 kg, f₀ 5 N, μ 0.04. */
    @Test
    void theLawOfTheCarriage() {
        ChainPath path = HeldLimb.elbow(20, 100, 3);
        double acceleration = acceleration(path, Math.PI / 6);
        // 30 × 9.80665 × sin 30° = 147.09975; 30 × 9.80665 × cos 30° × 0.04 = 10.191370
        double friction = 5 + 10.19137;
        double along = 147.09975 - 6 * 9.80665 * 0.5;
        double hanging = 147.09975 - 6 * 9.80665;
        assertThat(size(Counterweight.Run.ALONG_RAIL, path, Phase.HELD)).isCloseTo(along, within(1e-6));
        assertThat(size(Counterweight.Run.HANGING, path, Phase.HELD)).isCloseTo(hanging, within(1e-6));
        assertThat(size(Counterweight.Run.HANGING, path, Phase.LIFTING))
                .isCloseTo(hanging + 36 * acceleration + friction, within(1e-5));
        assertThat(size(Counterweight.Run.HANGING, path, Phase.LOWERING))
                .isCloseTo(hanging + 36 * acceleration - friction, within(1e-5));
    }

    private static double acceleration(ChainPath path, double rail) {
        PointTrack track = path.track(HAND);
        double found = Vec.unit(rail).dot(track.acceleration(path.course(), Phase.LIFTING, 1));
        assertThat(Math.abs(found)).isGreaterThan(0.01);
        return found;
    }

    private static double size(Counterweight.Run run, ChainPath path, Phase phase) {
        Carriage carriage = new Carriage(10, new Counterweight(6, run), new Friction(5, 0.04, 0), 200);
        GuidedMass mass = new GuidedMass("sled", HAND, Math.PI / 6, carriage, Loaded.Plates.HERE);
        return mass.on(path, G).get(0).size(path.course().cell(phase, 1), 20);
    }

    @Test
    void aPointThatTurnsBackAlongTheRailIsRefused() {
        // a level rail: the hand goes forward to 90° and back again
        ChainPath path = HeldLimb.elbow(40, 130, 9);
        assertThatThrownBy(() -> new GuidedMass("sled", HAND, 0, bare(10), Loaded.Plates.HERE).on(path, G))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS));
    }
}
