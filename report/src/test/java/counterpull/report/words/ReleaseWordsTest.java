package counterpull.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.Constants;
import counterpull.engine.body.Joint;
import counterpull.engine.load.Cable;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.Horn;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverBody;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.RollerPad;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.regression.Examples;
import counterpull.letgo.MachineReleases;
import counterpull.report.table.Decimals;
import counterpull.report.table.UnitSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The sentences say what the machines of a knee extension do; numbers by hand. */
class ReleaseWordsTest {
    private static final BodyPoint ANKLE = new BodyPoint("ankle", 0, new Vec(0.38, 0));

    private static ReleaseWords words(UnitSet units, Resistance... resists) {
        Hinge hinge = new Hinge(Joint.KNEE, 0, Map.of(), Hinge.Lie.UPRIGHT);
        WorkingRange range = new WorkingRange(Angles.radians(90), 0, Angles.radians(90));
        Exercise exercise = new Exercise(hinge, List.of(resists), 1);
        ExerciseTask task = new ExerciseTask(Examples.both(range), exercise, 0, Examples.tempo(), 41);
        return new ReleaseWords(ExerciseProfile.of(task), units);
    }

    private static String plain(List<String> words) {
        return String.join(" ", words).replace('\u00A0', ' ');
    }

    private static Lever lever(double weight) {
        LeverFrame axle = new LeverFrame(new Vec(0, 0), RollerPad.against(0, 0.32));
        Horn horn = new Horn("horn", 0.4, 0, Loaded.always(weight));
        return new Lever("leg lever", axle, new LeverBody(5, 0.22, 0, 0.40), List.of(horn), 0);
    }

    @Test
    void aLeverFallsToTheBottomAndNothingIsKnownToCatchIt() {
        ReleaseWords words = words(UnitSet.METRIC, lever(25));
        MachineReleases machine = words.machines().get(0);
        // 25 kg at 0.4 m and 5 kg at 0.22 m from level to straight down, pad at 0.32 m
        double given = (25 * 0.4 + 5 * 0.22) * Constants.STANDARD_GRAVITY;
        double speed = 0.32 * Math.sqrt(2 * given / (0.40 + 25 * 0.16));
        String said = plain(words.sentences(machine));
        assertThat(said)
                .contains("Let go at the top, it falls to the bottom of the range in ")
                .contains("the pad at " + Decimals.fixed(speed, 1) + " m/s; no stop is stated there")
                .contains("as from a free fall of "
                        + Decimals.fixed(100 * speed * speed / (2 * Constants.STANDARD_GRAVITY), 0) + " cm");
        assertThat(words.name(machine)).isEqualTo("Leg lever");
        assertThat(words.cautions(machine)).isEmpty();
        assertThat(words.how()).contains("pins or catches").doesNotContain("handle");
        ReleaseWords inches = words(UnitSet.IMPERIAL, lever(25));
        assertThat(plain(inches.sentences(inches.machines().get(0))))
                .contains(" ft/s")
                .doesNotContain(" m/s")
                .doesNotContain(" cm");
    }

    @Test
    void aHandleGoesToItsPulley() {
        ReleaseWords words = words(
                UnitSet.METRIC,
                new Cable("low cable", ANKLE, new Vec(-0.6, -0.4), new StackLine(1, 0, Loaded.always(30), 0)));
        double way = new Vec(0.98, 0.4).norm() - new Vec(0.6, 0.02).norm();
        // with nothing at its end the line comes in as the stack falls
        assertThat(plain(words.sentences(words.machines().get(0))))
                .contains("after " + Decimals.fixed(Math.sqrt(2 * way / Constants.STANDARD_GRAVITY), 2)
                        + " s the line is")
                .contains("the handle at " + Decimals.fixed(Math.sqrt(2 * way * Constants.STANDARD_GRAVITY), 1)
                        + " m/s and going on");
        assertThat(words.how()).contains("keep clear of its way to the pulley").doesNotContain("pins");
    }

    @Test
    void aLeverThatIsLiftedByItsCounterweightIsACaution() {
        LeverFrame strapped = new LeverFrame(new Vec(0, 0), new Cuff(0, 0.3));
        Horn counterweight = new Horn("counterweight", 0.4, Math.PI, Loaded.always(10));
        ReleaseWords words = words(
                UnitSet.METRIC, new Lever("lever", strapped, new LeverBody(2, 0.2, 0, 0.1), List.of(counterweight), 0));
        assertThat(plain(words.cautions(words.machines().get(0))))
                .contains("It can go up by itself: let go at knee flexion");
    }

    @Test
    void whatFrictionHoldsIsACaution() {
        LeverFrame axle = new LeverFrame(new Vec(0, 0), new Cuff(0, 0.32));
        Lever stiff = new Lever("stiff lever", axle, new LeverBody(5, 0.22, 0, 0.40), List.of(), 30);
        ReleaseWords words = words(UnitSet.METRIC, stiff);
        // 5 kg at 0.22 m weigh at most 10.8 N·m: it stays everywhere
        assertThat(plain(words.sentences(words.machines().get(0))))
                .isEqualTo(
                        "Let go at the top, it stays where it is, held by friction or balance alone: do not rely on it.");
        assertThat(plain(words.cautions(words.machines().get(0)))).contains("a touch can set it moving");
    }

    @Test
    void whatHangsOnTheBodyFalls() {
        ReleaseWords words = words(UnitSet.METRIC, new DeadWeight("ankle weight", ANKLE, Loaded.always(3)));
        assertThat(words.tells()).isFalse();
        assertThat(words.others()).containsExactly("Ankle weight: a free fall, unless strapped on.");
    }
}
