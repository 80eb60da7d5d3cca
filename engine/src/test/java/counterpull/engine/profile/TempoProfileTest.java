package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.BenchReading;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.elastic.UnloadingCurve;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Part;
import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.Flowing;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tempos and what belongs to a phase, inside a whole profile: 100 kg on 45°, friction 28.8687 N (worked example B). */
class TempoProfileTest {
    // sums of some hundred newtons, rounded a few times
    private static final double ROUNDING = 1e-9;
    private static final int TOP = 20;

    @Test
    void aFullStopEndsWithoutAccelerationButWithItsPhasesFriction() {
        PressProfile profile = PressProfile.of(Trials.task());
        for (int end : new int[] {0, TOP}) {
            double held = profile.force(Phase.HELD, end);
            assertThat(profile.ground().motion().speed(Phase.LIFTING, end)).isZero();
            assertThat(profile.force(Part.INERTIA, Phase.LIFTING, end)).isZero();
            // 15 N + 0.02 × 100 kg × 9.80665 × cos 45°, printed to four decimals in worked example B
            assertThat(profile.force(Phase.LIFTING, end) - held).isCloseTo(28.8687, within(5.1e-5));
            assertThat(held - profile.force(Phase.LOWERING, end)).isCloseTo(28.8687, within(5.1e-5));
        }
    }

    @Test
    void aFlowingTurnAddsItsAccelerationWhereTheSpeedIsZero() {
        Flowing flowing = new Flowing(2, 2, Flowing.Turn.BOTTOM);
        PressProfile profile = PressProfile.of(Trials.with(Trials.task(), flowing));
        double travel = profile.ground().motion().stroke().travel();
        // (20/3) D/T² for equal strokes of two seconds, 100 kg
        double push = 100 * 20.0 / 3 * travel / 4;
        for (Phase phase : List.of(Phase.LIFTING, Phase.LOWERING)) {
            assertThat(profile.ground().motion().speed(phase, 0)).isZero();
            assertThat(profile.force(Part.INERTIA, phase, 0)).isCloseTo(push, within(ROUNDING));
            assertThat(profile.force(Part.INERTIA, phase, TOP)).isCloseTo(0, within(ROUNDING));
        }
        assertThat(profile.turnaround().inertialForce()).isGreaterThanOrEqualTo(push - ROUNDING);
    }

    @Test
    void flowingAtBothEndsPullsBackAtTheTop() {
        PressProfile profile = PressProfile.of(Trials.with(Trials.task(), new Flowing(2, 2, Flowing.Turn.BOTH)));
        double travel = profile.ground().motion().stroke().travel();
        // 5 D/T², 100 kg
        double push = 100 * 5 * travel / 4;
        for (Phase phase : List.of(Phase.LIFTING, Phase.LOWERING)) {
            assertThat(profile.force(Part.INERTIA, phase, 0)).isCloseTo(push, within(ROUNDING));
            assertThat(profile.force(Part.INERTIA, phase, TOP)).isCloseTo(-push, within(ROUNDING));
        }
    }

    @Test
    void aBounceAddsItsConstantAccelerationInsideTheTurnOnly() {
        Bounce bounce = new Bounce(0.40, 0.30, 0.20);
        PressProfile profile = PressProfile.of(Trials.with(Trials.task(), bounce));
        double travel = profile.ground().motion().stroke().travel();
        int inside = 0;
        for (int i = 0; i <= TOP; i++) {
            double above = profile.ground().motion().fraction(i) * travel;
            // worked example J: 3.5 m/s², 22.857 mm down, 12.857 mm up
            check(profile, Phase.LOWERING, i, above < 0.022857);
            check(profile, Phase.LIFTING, i, above < 0.012857);
            inside += above < 0.022857 ? 1 : 0;
        }
        assertThat(inside).isBetween(2, TOP - 2);
        assertThat(profile.ground().motion().speed(Phase.LOWERING, TOP)).isEqualTo(-0.40);
        assertThat(profile.turnaround().inertialForce()).isCloseTo(350, within(ROUNDING));
        assertThat(profile.task().tempo().wholeStroke()).isFalse();
    }

    private static void check(PressProfile profile, Phase phase, int i, boolean turning) {
        assertThat(profile.force(Part.INERTIA, phase, i)).isCloseTo(turning ? 350 : 0, within(ROUNDING));
    }

    @Test
    void aBounceThatDoesNotFitIsRefused() {
        // 1 m/s down and 0.1 up in 1 s: 1.1 m/s², 0.4545 m of turn in about 0.25 m of travel
        PressTask task = Trials.with(Trials.task(), new Bounce(1, 0.1, 1));
        assertThatThrownBy(() -> PressProfile.of(task)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.fault()).isEqualTo(Fault.OUT_OF_REACH);
            assertThat(refusal.value()).isCloseTo(1 / 2.2, within(ROUNDING));
            assertThat(refusal.limit()).isBetween(0.2, 0.3);
        });
    }

    private static ElasticLine relieving(Rubber rubber) {
        return Trials.line(rubber, new Vec(1.6, 0), new Vec(0, 0));
    }

    @Test
    void aLossFractionActsWhereTheRubberShortensAlsoAtZeroSpeed() {
        // hung above it shortens while lifting: 20 % less there, at both ends of the stroke, too
        PressProfile profile = PressProfile.of(Trials.task()
                .with(new Loading(60, List.of(relieving(Trials.rubber("r", 0.5, 100, 0.2))))));
        for (int i = 0; i <= TOP; i++) {
            double pull = 100 * (1.6 - profile.plate(i) - 0.5);
            assertThat(profile.force(Part.ELASTIC, Phase.HELD, i)).isCloseTo(-pull, within(ROUNDING));
            assertThat(profile.force(Part.ELASTIC, Phase.LOWERING, i)).isCloseTo(-pull, within(ROUNDING));
            assertThat(profile.force(Part.ELASTIC, Phase.LIFTING, i)).isCloseTo(-0.8 * pull, within(ROUNDING));
        }
    }

    @Test
    void anUnloadingCurveActsWhereTheRubberShortensAlsoAtZeroSpeed() {
        // while shortening, straight from (0.5 m, 0 N) through half the loading force of 100 N/m, as read on a bench
        List<BenchReading> readings = new java.util.ArrayList<>();
        for (int i = 1; i <= 20; i++) {
            readings.add(new BenchReading(0.5 + 0.05 * i, 2.5 * i));
        }
        Rubber rubber =
                new Rubber("r", 0.5, LinearLaw.ofStiffness(100, 0.5), new UnloadingCurve(0.5, readings), 1.5, 0, 0);
        PressProfile profile = PressProfile.of(Trials.task().with(new Loading(60, List.of(relieving(rubber)))));
        for (int i = 0; i <= TOP; i++) {
            double pull = 100 * (1.6 - profile.plate(i) - 0.5);
            assertThat(profile.force(Part.ELASTIC, Phase.LOWERING, i)).isCloseTo(-pull, within(ROUNDING));
            assertThat(profile.force(Part.ELASTIC, Phase.HELD, i)).isCloseTo(-pull, within(ROUNDING));
            // a monotone cubic through points of a straight line is that line
            assertThat(profile.force(Part.ELASTIC, Phase.LIFTING, i)).isCloseTo(-pull / 2, within(ROUNDING));
        }
    }

    @Test
    void anAddingLineShortensWhileLowering() {
        // anchored at the seat's end it lengthens while lifting
        ElasticLine line = Trials.line(Trials.rubber("r", 0.5, 100, 0.2), new Vec(0, 0), new Vec(0, 0));
        PressProfile profile = PressProfile.of(Trials.task().with(new Loading(60, List.of(line))));
        for (int i = 0; i <= TOP; i++) {
            double pull = 100 * (profile.plate(i) - 0.5);
            assertThat(profile.force(Part.ELASTIC, Phase.LIFTING, i)).isCloseTo(pull, within(ROUNDING));
            assertThat(profile.force(Part.ELASTIC, Phase.LOWERING, i)).isCloseTo(0.8 * pull, within(ROUNDING));
        }
    }

    @Test
    void aLinePastItsTestedLengthAndOneWithoutDirectionAreRefused() {
        ElasticLine far = Trials.line(Trials.rubber("r", 0.2, 100), new Vec(1.6, 0), new Vec(0, 0));
        assertThatThrownBy(() -> PressProfile.of(Trials.task().with(new Loading(60, List.of(far)))))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.fault()).isEqualTo(Fault.PAST_TESTED_LENGTH);
                    // longest at the bottom, where the plate is 0.605522 m (worked example B) and 0.06825 m of sole
                    // away
                    assertThat(refusal.value()).isCloseTo(1.6 - 0.605522 - 0.06825, within(6e-7));
                    assertThat(refusal.limit()).isCloseTo(0.6, within(ROUNDING));
                });
        double bottom = PressProfile.of(Trials.task()).plate(0);
        ElasticLine meeting = Trials.line(Trials.rubber("r", 0.5, 100), new Vec(bottom, 0), new Vec(0, 0));
        assertThatThrownBy(() -> PressProfile.of(Trials.task().with(new Loading(60, List.of(meeting)))))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.COINCIDENT_POINTS));
    }
}
