package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.Loaded;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Vec;
import counterpull.engine.regression.Examples;
import counterpull.engine.strength.AngleRange;
import counterpull.engine.strength.DrawnCurve;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.SpeedLaw;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LoadForEffortTest {
    private static final double HAS = 100;

    private static ExerciseTask cuff(LimbStrength strength, Loaded mass, double chosen) {
        WorkingRange range = new WorkingRange(1.5, 0.1, 1.5);
        Limb limb = new Limb(Side.LEFT, Examples.body().side(), 1, range, JointRanges.open(), strength);
        DeadWeight cuff = new DeadWeight("cuff", new BodyPoint("shank", 0, new Vec(0.35, 0)), mass);
        Exercise exercise = new Exercise(new Hinge(Joint.KNEE, 0, Map.of(), Hinge.Lie.UPRIGHT), List.of(cuff), 1);
        return new ExerciseTask(new Person(80, List.of(limb)), exercise, chosen, Examples.tempo(), 41);
    }

    private static LimbStrength known() {
        DrawnCurve flat = DrawnCurve.flat(HAS, new AngleRange(-1, 3), 0.1, new SpeedLaw.AnySpeed());
        return LimbStrength.none().with(Action.KNEE_EXTENSION, flat);
    }

    /** Torque is affine in the cuff's mass, so the mass follows from two profiles. */
    @Test
    void bringsTheHardestPlaceToTheEffort() {
        double bare = peak(cuff(known(), Loaded.with(0), 0));
        double perKilogram = peak(cuff(known(), Loaded.with(0), 1000)) / 1000 - bare / 1000;
        double mass = LoadForEffort.most(cuff(known(), Loaded.with(0), 5), 0.6).orElseThrow();
        double largest = peak(cuff(known(), Loaded.with(0), mass)) / HAS;
        // to a gram
        assertThat(largest).isLessThanOrEqualTo(0.6).isCloseTo(0.6, within(2e-3 * perKilogram / HAS + 1e-9));
    }

    private static double peak(ExerciseTask task) {
        double peak = 0;
        LimbProfile limb = ExerciseProfile.of(task).limbs().get(0);
        for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
            for (int i = 0; i < task.positions(); i++) {
                peak = Math.max(peak, limb.torque(Joint.KNEE, phase, i));
            }
        }
        return peak;
    }

    @Test
    void saysNothingWhereItCannotBeSaid() {
        assertThat(LoadForEffort.most(cuff(LimbStrength.none(), Loaded.with(0), 5), 0.6))
                .isEmpty();
        assertThat(LoadForEffort.most(cuff(known(), Loaded.always(5), 0), 0.6)).isEmpty();
        // the limb alone asks more than that
        assertThat(LoadForEffort.most(cuff(known(), Loaded.with(0), 5), 0.01)).isEmpty();
    }
}
