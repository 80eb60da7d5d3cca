package counterpull.engine.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Require;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Profile;
import counterpull.engine.profile.Trials;
import counterpull.engine.strength.StrengthCurve;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Bands of effort against closed forms, against a plain loop, and against what must not change them. */
class EffortBandsTest {
    private static final double SIGMA = StrengthCurve.NINETY_PERCENT;

    private static <T extends Trial<T>> EffortBands bands(Doubts<T> doubts, Looked looked, int draws) {
        return new Sampling<>(doubts, looked, 1, draws).bands();
    }

    /** Nothing is unsure: every draw is the nominal profile, to the last rounding of mark ↔ distance. */
    @Test
    void withoutDoubtsTheBandIsTheProfile() {
        for (PressTask task : List.of(
                UnsureTasks.certain(),
                Trials.with(UnsureTasks.certain(), UnsureTasks.onAStop().sled().stops()))) {
            EffortBands bands = bands(Doubts.of(task, Stated.certain()), Looked.at(Joint.LEG), 20);
            PressProfile profile = PressProfile.of(task);
            assertThat(bands.setUp()).isEqualTo(20);
            for (Joint joint : Joint.LEG) {
                for (Phase phase : Phase.values()) {
                    for (int i = 0; i < profile.positions(); i++) {
                        Band band = bands.effort(joint, phase, i);
                        double effort = profile.effort(joint, phase, i);
                        assertThat(band.low()).isCloseTo(effort, within(1e-12));
                        assertThat(band.middle()).isCloseTo(effort, within(1e-12));
                        assertThat(band.high()).isCloseTo(effort, within(1e-12));
                    }
                }
            }
        }
    }

    /**
     * Effort is a reading over a strength: ln e is normal with the sum of both variances. 20,000 draws miss a 5 % quantile by 1.5 % of
     * the standard deviation of ln e (0.0018), the reading's own curvature moves it by 0.0009; 0.008 allows four of them.
     */
    @Test
    void aProductHasTheSumOfItsVariances() {
        Stated stated = Stated.certain().with(Input.READINGS, 0.06);
        EffortBands bands = bands(Doubts.of(UnsureTasks.product(0.1), stated), UnsureTasks.KNEE, 20_000);
        double sd = Math.hypot(0.06, 0.1);
        double[] nominal = {bands.effort(Joint.KNEE, Phase.HELD, 0).middle(), 60 / 200.0};
        Band top = bands.effort(Joint.KNEE, Phase.HELD, 4);
        assertThat(Math.log(top.middle())).isCloseTo(Math.log(nominal[1]), within(0.006));
        assertThat(Math.log(top.high() / nominal[1])).isCloseTo(SIGMA * sd, within(0.008));
        assertThat(Math.log(top.low() / nominal[1])).isCloseTo(-SIGMA * sd, within(0.008));
        // the largest effort is at the bottom, 0.4981: the chance of passing 0.6 is that of ln(0.6/0.4981)/0.1166 =
        // 1.596
        assertThat(bands.ceilingPassed().value())
                .as("Φ(−1.596) = 5.5 %, give or take 0.16 % and the curvature")
                .isCloseTo(0.055, within(0.007));
        assertThat(bands.ceilingPassed().error()).isCloseTo(0.0016, within(0.0002));
    }

    /** The control: with half the strength's spread the same check fails. */
    @Test
    void anotherSpreadGivesAnotherBand() {
        Stated stated = Stated.certain().with(Input.READINGS, 0.06);
        EffortBands bands = bands(Doubts.of(UnsureTasks.product(0.05), stated), UnsureTasks.KNEE, 5_000);
        double high = bands.effort(Joint.KNEE, Phase.HELD, 4).high();
        assertThat(Math.log(high / 0.3)).isLessThan(SIGMA * Math.hypot(0.06, 0.1) - 0.03);
    }

    /** Only strength is unsure: the band is what the curve's own 90 % band makes of the effort, within 4 % of its logarithm. */
    @Test
    void strengthAloneGivesTheCurvesOwnBand() {
        PressTask one = oneLimb(UnsureTasks.press());
        PressProfile profile = PressProfile.of(one);
        EffortBands bands = bands(Doubts.of(one, Stated.certain()), Looked.at(Joint.LEG), 10_000);
        for (int i = 0; i < profile.positions(); i += 4) {
            Require.Limits own = profile.limbs().get(0).effortBand(Joint.KNEE, Phase.LIFTING, i);
            Band band = bands.effort(Joint.KNEE, Phase.LIFTING, i);
            double width = Math.log(own.high() / own.low());
            assertThat(Math.log(band.high() / own.high())).isCloseTo(0, within(0.04 * width));
            assertThat(Math.log(band.low() / own.low())).isCloseTo(0, within(0.04 * width));
        }
    }

    private static PressTask oneLimb(PressTask task) {
        Limb left = task.person().limbs().get(0);
        Limb alone = Trials.limb(left.side(), left.leg(), 1, left.strength());
        return task.with(new Person(80, List.of(alone)));
    }

    /** The same draws one by one, sorted: a histogram's quantile misses by no more than its bin, 1.6 %. */
    @Test
    void aPlainLoopOverFullProfilesGivesTheSame() {
        Doubts<PressTrial> doubts = Doubts.of(UnsureTasks.press(), Stated.nothing());
        int draws = 400;
        EffortBands bands = bands(doubts, Looked.at(Joint.LEG), draws);
        List<Profile> all = new ArrayList<>();
        for (int part = 0; part < draws / Sampling.PART; part++) {
            Generator generator = new Generator(1, part);
            for (int k = 0; k < Sampling.PART; k++) {
                double[] z = new double[doubts.dimensions()];
                generator.normals(z);
                all.add(doubts.drawn(z).profile());
            }
        }
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < 21; i += 5) {
                int at = i;
                double[] efforts = all.stream()
                        .mapToDouble(profile -> profile.effort(Joint.KNEE, phase, at))
                        .sorted()
                        .toArray();
                Band band = bands.effort(Joint.KNEE, phase, i);
                assertThat(band.middle()).isBetween(efforts[197] * 0.984, efforts[202] * 1.016);
                assertThat(band.low()).isBetween(efforts[18] * 0.984, efforts[21] * 1.016);
                assertThat(band.high()).isBetween(efforts[378] * 0.984, efforts[381] * 1.016);
            }
        }
        double[] peaks = all.stream()
                .mapToDouble(
                        profile -> Hardest.of(profile, Joint.LEG).orElseThrow().effort())
                .toArray();
        long passed = Arrays.stream(peaks).filter(peak -> peak > 0.6).count();
        assertThat(bands(doubts, new Looked(Joint.LEG, 0.6), draws)
                        .ceilingPassed()
                        .times())
                .isEqualTo((int) passed);
    }

    @Test
    void whoeverDrawsWhichPartAndInWhichOrderGetsTheSame() {
        Sampling<PressTrial> sampling =
                new Sampling<>(Doubts.of(UnsureTasks.press(), Stated.nothing()), UnsureTasks.KNEE, 4, 550);
        Tally one = sampling.tally();
        Tally other = sampling.tally();
        for (int part = sampling.parts() - 1; part >= 0; part--) {
            sampling.draw(part, part % 3 == 0 ? one : other);
        }
        one.add(other);
        EffortBands shared = sampling.bands(one);
        EffortBands alone = sampling.bands();
        assertThat(shared.setUp()).isEqualTo(550).isEqualTo(alone.setUp());
        assertThat(shared.peak()).isEqualTo(alone.peak());
        assertThat(shared.ceilingPassed()).isEqualTo(alone.ceilingPassed());
        for (int i = 0; i < 21; i++) {
            assertThat(shared.effort(Joint.KNEE, Phase.LIFTING, i))
                    .isEqualTo(alone.effort(Joint.KNEE, Phase.LIFTING, i));
        }
        EffortBands seeded =
                new Sampling<>(Doubts.of(UnsureTasks.press(), Stated.nothing()), UnsureTasks.KNEE, 5, 550).bands();
        assertThat(seeded.peak()).as("another seed").isNotEqualTo(alone.peak());
    }

    /** A tube that holds the carriage up all but entirely: many draws lose contact, and they are counted apart. */
    @Test
    void drawsThatCannotBeSetUpAreCountedApart() {
        PressTask task = UnsureTasks.press();
        double soft = leastForce(task.with(held(10)));
        double perStiffness = (soft - leastForce(task.with(held(20)))) / 10;
        Loading light = held(10 + (soft - 8) / perStiffness);
        EffortBands bands = bands(Doubts.of(task.with(light), Stated.nothing()), UnsureTasks.KNEE, 400);
        assertThat(bands.contactLost().times()).isBetween(20, 380).isEqualTo(bands.refused(Fault.CONTACT_LOST));
        int refused = 0;
        for (Fault fault : Fault.values()) {
            refused += bands.refused(fault);
        }
        assertThat(bands.setUp() + refused).isEqualTo(400);
    }

    private static Loading held(double stiffness) {
        return new Loading(
                0,
                List.of(Trials.line(Trials.rubber("strong", 0.4, stiffness), new Vec(1.60, 0.30), new Vec(0, 0.20))));
    }

    private static double leastForce(PressTask task) {
        return PressProfile.of(task).force(Phase.LOWERING, 0);
    }

    /** A hip limit in the middle of what the draws give is passed in some of them; none is refused for it. */
    @Test
    void aJointsOwnLimitIsAChanceAndNoRefusal() {
        PressTask task = UnsureTasks.onAStop();
        PressProfile profile = PressProfile.of(task);
        List<Limb> limbs = new ArrayList<>();
        for (int k = 0; k < 2; k++) {
            double deepest = profile.limbs().get(k).angle(Joint.HIP, 0);
            limbs.add(task.person()
                    .limbs()
                    .get(k)
                    .with(JointRanges.open()
                            .with(Joint.HIP, new Require.Limits(Double.NEGATIVE_INFINITY, deepest + 0.02))));
        }
        EffortBands bands = bands(Doubts.of(task.with(new Person(80, limbs)), Stated.nothing()), UnsureTasks.KNEE, 300);
        assertThat(bands.setUp()).isEqualTo(300);
        assertThat(bands.limitPassed(Joint.HIP).value()).isBetween(0.05, 0.95);
        assertThat(bands.limitPassed(Joint.KNEE).never()).isTrue();
        assertThat(bands.limitPassed(Joint.KNEE).most()).isEqualTo(0.01);
    }

    @Test
    void saysWhichActionLimits() {
        EffortBands bands = bands(Doubts.of(UnsureTasks.product(0.1), Stated.nothing()), UnsureTasks.KNEE, 200);
        assertThat(bands.hardest(Action.KNEE_EXTENSION).value()).isEqualTo(1);
        assertThat(bands.hardest(Action.KNEE_FLEXION).never()).isTrue();
    }
}
