package counterpull.engine.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Trials;
import counterpull.engine.strength.LimbStrength;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A profile against a goal, each number counted again here. */
class JudgeTest {
    // means of some dozen squares
    private static final double ROUNDING = 1e-12;
    private static final PressProfile PROFILE = PressProfile.of(Trials.task());

    private static Breach only(Verdict verdict, LimitKind kind) {
        List<Breach> found =
                verdict.nearest().stream().filter(b -> b.kind() == kind).toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    @Test
    void theShortfallIsTheRootOfTheMeanOverPositionsAndBothMovingPhases() {
        double sum = 0;
        for (Phase phase : List.of(Phase.LIFTING, Phase.LOWERING)) {
            for (int i = 0; i < PROFILE.positions(); i++) {
                double most = 0;
                for (Joint joint : Joint.LEG) {
                    for (PressLimb limb : PROFILE.limbs()) {
                        most = Math.max(most, limb.effort(joint, phase, i));
                    }
                }
                sum += Math.pow(Math.max(0, 0.4 - most), 2);
            }
        }
        Verdict verdict = Judge.of(PROFILE, Kits.goal(0.4, 2));
        assertThat(verdict.shortfall()).isCloseTo(Math.sqrt(sum / 42), within(ROUNDING));
        assertThat(verdict.shortfall()).isPositive();
        assertThat(verdict.unknown()).isZero();
    }

    @Test
    void eachLimitIsReportedWhereItIsNearest() {
        Caps caps = Caps.none()
                .withTorque(Action.KNEE_EXTENSION, 60)
                .withTorque(Action.KNEE_FLEXION, 50)
                .withKneecapStress(1e6)
                .withTurnForce(20);
        Verdict verdict = Judge.of(PROFILE, Kits.goal(0.4, 0.3, caps));
        double extension = 0;
        double flexion = 0;
        double stress = 0;
        double effort = 0;
        for (PressLimb limb : PROFILE.limbs()) {
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < PROFILE.positions(); i++) {
                    extension = Math.max(extension, limb.torque(Joint.KNEE, phase, i));
                    flexion = Math.max(flexion, -limb.torque(Joint.KNEE, phase, i));
                    stress = Math.max(stress, limb.kneecapStress(phase, i));
                    for (Joint joint : Joint.LEG) {
                        effort = Math.max(effort, limb.effort(joint, phase, i));
                    }
                }
            }
        }
        List<Breach> torques = verdict.nearest().stream()
                .filter(b -> b.kind() == LimitKind.JOINT_TORQUE)
                .toList();
        assertThat(torques).extracting(Breach::value).containsExactlyInAnyOrder(extension, flexion);
        assertThat(only(verdict, LimitKind.KNEECAP_STRESS).value()).isEqualTo(stress);
        assertThat(only(verdict, LimitKind.CEILING).value()).isEqualTo(effort);
        assertThat(verdict.peak().orElseThrow().limiting().effort()).isEqualTo(effort);
        assertThat(only(verdict, LimitKind.TURN_FORCE).value())
                .isEqualTo(PROFILE.turnaround().inertialForce());
        assertThat(verdict.feasible()).isFalse();
        double worst =
                verdict.nearest().stream().mapToDouble(Breach::excess).max().orElseThrow();
        assertThat(verdict.tightest().orElseThrow().excess()).isEqualTo(worst);
    }

    @Test
    void unknownEffortsAreSkippedByCeilingAndMeanAndReportedButTorqueLimitsHold() {
        // the knee alone, known from 40° to 70° only
        LimbStrength strength = LimbStrength.none().with(Action.KNEE_EXTENSION, Trials.between(100, 40, 70));
        PressProfile profile = PressProfile.of(Trials.task(strength));
        Goal knee = new Goal(
                EffortTarget.flat(0.9),
                0.78,
                0,
                List.of(Joint.KNEE),
                Caps.none().withTorque(Action.KNEE_EXTENSION, 80),
                Goal.Straying.AS_TOLD);
        Verdict verdict = Judge.of(profile, knee);
        int unknown = 0;
        double sum = 0;
        int known = 0;
        double most = 0;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < profile.positions(); i++) {
                double effort = profile.effort(Joint.KNEE, phase, i);
                most = effort > most ? effort : most;
                if (phase != Phase.HELD && Double.isNaN(effort)) {
                    unknown++;
                } else if (phase != Phase.HELD) {
                    sum += Math.pow(Math.max(0, 0.9 - effort), 2);
                    known++;
                }
            }
        }
        assertThat(unknown).isBetween(10, 30);
        assertThat(verdict.unknown()).isEqualTo(unknown);
        assertThat(verdict.shortfall()).isCloseTo(Math.sqrt(sum / known), within(ROUNDING));
        assertThat(only(verdict, LimitKind.CEILING).value()).isEqualTo(most);
        assertThat(only(verdict, LimitKind.CEILING).passed()).isFalse();
        // 87.6550 N·m at 90° while lifting (worked example B), where no effort is known
        assertThat(only(verdict, LimitKind.JOINT_TORQUE).value()).isCloseTo(87.6550, within(8.8e-5));
        assertThat(verdict.feasible()).isFalse();
    }

    @Test
    void nothingKnownIsNoNumberAndNoCeiling() {
        Verdict verdict = Judge.of(PressProfile.of(Trials.task(LimbStrength.none())), Kits.goal(0.7, 0.1));
        assertThat(verdict.shortfall()).isNaN();
        assertThat(verdict.peak()).isEmpty();
        assertThat(verdict.unknown()).isEqualTo(42);
        assertThat(verdict.nearest()).extracting(Breach::kind).containsExactly(LimitKind.FLOOR);
    }

    @Test
    void theFloorLooksAtEveryPhaseHeldToo() {
        double least = PROFILE.force(Phase.LOWERING, 0);
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < PROFILE.positions(); i++) {
                least = Math.min(least, PROFILE.force(phase, i));
            }
        }
        for (double floor : new double[] {least - 1, least, least + 1}) {
            Goal goal = new Goal(EffortTarget.flat(0.1), 2, floor, Kits.ALL, Caps.none(), Goal.Straying.AS_TOLD);
            assertThat(Judge.of(PROFILE, goal).feasible()).isEqualTo(floor <= least);
        }
    }

    @Test
    void anAnchorIsRatedForAllThatHangsOnIt() {
        Anchor anchor = new Anchor("post", new Vec(1.6, 0), 0, 100);
        ElasticLine one = new ElasticLine(
                Trials.rubber("a", 0.5, 120),
                ElasticLine.Pieces.one(),
                0,
                new ElasticLine.Ends(anchor, new Attachment("t", new Vec(0, 0), 0)));
        ElasticLine two = new ElasticLine(
                Trials.rubber("b", 0.5, 130),
                ElasticLine.Pieces.one(),
                0,
                new ElasticLine.Ends(anchor, new Attachment("t", new Vec(0, 0), 0)));
        Goal goal = Kits.goal(0.1, 2);
        PressProfile first = PressProfile.of(Trials.task().with(new Loading(100, List.of(one))));
        PressProfile both = PressProfile.of(Trials.task().with(new Loading(100, List.of(one, two))));
        // 1.6 − 0.673772 m of path at the bottom, 0.426228 m of stretch
        assertThat(only(Judge.of(first, goal), LimitKind.ANCHOR_LOAD).value())
                .isCloseTo(120 * 0.426228, within(120 * 6e-7));
        assertThat(only(Judge.of(both, goal), LimitKind.ANCHOR_LOAD).value())
                .isCloseTo(250 * 0.426228, within(250 * 6e-7));
        assertThat(Judge.of(first, goal).feasible()).isTrue();
        assertThat(Judge.of(both, goal).feasible()).isFalse();
        assertThat(only(Judge.of(both, goal), LimitKind.ANCHOR_LOAD).where().label())
                .isEqualTo("post");
    }

    @Test
    void jointsAreKeptProximalFirstWhateverOrderTheyAreNamedIn() {
        Goal goal = new Goal(
                EffortTarget.flat(0.5),
                1,
                0,
                List.of(Joint.ANKLE, Joint.HIP, Joint.ANKLE),
                Caps.none(),
                Goal.Straying.AS_TOLD);
        assertThat(goal.joints()).containsExactly(Joint.HIP, Joint.ANKLE);
    }
}
