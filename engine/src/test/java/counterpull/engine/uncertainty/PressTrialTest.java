package counterpull.engine.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.BodyLength;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What stays put while a press is drawn again and again. */
class PressTrialTest {
    private static PressTask longer(PressTask task, double by) {
        List<Limb> limbs = new ArrayList<>();
        for (Limb limb : task.person().limbs()) {
            double thigh = limb.body().length(BodyLength.THIGH);
            limbs.add(limb.with(limb.body().with(BodyLength.THIGH, thigh + by)));
        }
        return task.with(new Person(task.person().mass(), limbs));
    }

    /** The mark of the stop is on the frame: a longer thigh folds more there, by the two-link triangle. */
    @Test
    void theStopsMarkStaysAndTheKneeAngleDoesNot() {
        PressTask task = UnsureTasks.onAStop();
        PressTrial trial = PressTrial.of(task);
        PressProfile nominal = trial.profile();
        PressProfile longer = trial.with(longer(trial.task(), 0.02)).profile();
        assertThat(nominal.mark(0)).isCloseTo(0.70, within(1e-12));
        assertThat(longer.mark(0)).isCloseTo(0.70, within(1e-12));
        double thigh = task.person().limbs().get(0).leg().thigh().length() + 0.02;
        double shank = task.person().limbs().get(0).leg().shank().length();
        double along = task.legs().get(0).ankleAlong(nominal.plate(0));
        double across = task.legs().get(0).ankleAcross();
        double cos = (along * along + across * across - thigh * thigh - shank * shank) / (2 * thigh * shank);
        assertThat(longer.driving(0)).isCloseTo(Math.acos(cos), within(1e-9)).isGreaterThan(nominal.driving(0) + 0.02);
    }

    @Test
    void withoutAStopTheKneesOwnAnglesStay() {
        PressTrial trial = PressTrial.of(UnsureTasks.press());
        PressProfile longer = trial.with(longer(trial.task(), 0.02)).profile();
        assertThat(longer.driving(0)).isCloseTo(Math.toRadians(90), within(1e-9));
        assertThat(longer.driving(20)).isCloseTo(Math.toRadians(10), within(1e-9));
        assertThat(longer.plate(0)).isGreaterThan(trial.profile().plate(0));
    }

    @Test
    void theTopIsTheKneesOwnAngleAlsoAboveAStop() {
        PressTrial trial = PressTrial.of(UnsureTasks.onAStop());
        PressProfile shorter = trial.with(longer(trial.task(), -0.01)).profile();
        assertThat(shorter.limbs().get(0).angle(Joint.KNEE, 20)).isCloseTo(Math.toRadians(10), within(1e-9));
    }

    /** A setup that a search put on another stop is drawn from that stop, and from as many positions. */
    @Test
    void aSetupOnAFurtherStopStaysOnIt() {
        PressTask task = UnsureTasks.onAStop();
        RailStroke further = task.stroke().from(0.75);
        double[] plate = further.equalAngles(task.legs().get(further.reference()), 11);
        PressProfile setup = PressProfile.of(Groundwork.of(task, further, plate));
        PressProfile drawn = PressTrial.of(setup).profile();
        assertThat(drawn.mark(0)).isCloseTo(0.75, within(1e-12));
        assertThat(drawn.positions()).isEqualTo(11);
        for (int i = 0; i < 11; i++) {
            assertThat(drawn.effort(Joint.KNEE, Phase.LIFTING, i))
                    .isCloseTo(setup.effort(Joint.KNEE, Phase.LIFTING, i), within(1e-12));
        }
    }
}
