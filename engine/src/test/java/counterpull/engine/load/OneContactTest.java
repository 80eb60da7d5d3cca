package counterpull.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Reach;
import counterpull.engine.motion.StraightPath;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.regression.Examples;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Several things that reach the body through one contact of a machine. */
class OneContactTest {
    private static final StraightPath PRESS =
            new StraightPath(new Reach.Hand(Optional.empty()), Math.PI / 2, new Vec(0.2, 0.05), new Vec(0.2, 0.4));
    private static final double WRIST =
            Examples.body().side().arm().orElseThrow().forearm().length();

    private static BodyPoint grip(String name) {
        return new BodyPoint(name, 1, new Vec(WRIST, 0));
    }

    private static GuidedMass bar(double railAngle, Counterweight counter) {
        Carriage carriage = new Carriage(30, counter, Friction.none(), 100);
        return new GuidedMass("bar", grip("hand"), Angles.radians(railAngle), carriage, Loaded.Plates.ELSEWHERE);
    }

    private static ExerciseProfile press(WorkingRange range, Resistance... resists) {
        Exercise exercise = new Exercise(PRESS, List.of(resists), 1);
        return ExerciseProfile.of(new ExerciseTask(Examples.both(range), exercise, 0, Examples.tempo(), 101));
    }

    private static WorkingRange up() {
        return new WorkingRange(0, 0.35, 0);
    }

    /** Rubber that helps is held against the bar by the bar's weight, whichever sense of its rail or name of its grip is stated. */
    @ParameterizedTest
    @ValueSource(doubles = {90, -90, 270})
    void rubberThatHelpsABarIsCarriedByTheBar(double railOfRubber) {
        Rubber rubber = new Rubber("strip", 0.5, new LinearLaw(100), new LossFraction(0), 4, 0, 0);
        RailFrame rail = new RailFrame(grip("grip"), Angles.radians(railOfRubber));
        StretchLine helps = new StretchLine(
                "helping strip",
                rubber,
                new ElasticLine.Pieces(1, Hang.SINGLE, Placement.CENTRED),
                0,
                new FixedPoint("beam", new Vec(0.2, 1.2), 0, Double.POSITIVE_INFINITY),
                new OnGuidedMass("peg", rail, new Vec(0, 0), 0),
                List.of());
        ExerciseProfile profile = press(up(), bar(90, Counterweight.none()), helps);
        assertThat(profile.limbs().get(0).force("helping strip", Phase.HELD, 0).y())
                .as("rubber lifts")
                .isPositive();
    }

    /** A hanging counterweight draws its carriage up the rail; a bar that is drawn down has to be pulled against it. */
    @Test
    void aHangingCounterweightResistsABarThatIsDrawnDown() {
        Counterweight counter = new Counterweight(40, Counterweight.Run.HANGING);
        ExerciseProfile down = press(new WorkingRange(0.35, 0, 0.35), bar(90, counter));
        double g = 9.80665;
        assertThat(down.limbs().get(0).force("bar", Phase.HELD, 50).y()).isCloseTo((40 - 30) * g, within(1e-9));
        Counterweight along = new Counterweight(40, Counterweight.Run.ALONG_RAIL);
        assertThat(press(new WorkingRange(0.35, 0, 0.35), bar(90, along))
                        .limbs()
                        .get(0)
                        .force("bar", Phase.HELD, 50)
                        .y())
                .as("upright, both are one")
                .isCloseTo((40 - 30) * g, within(1e-9));
    }

    @Test
    void aHookThatWouldCarryMoreThanItsRatingIsRefused() {
        Rubber rubber = new Rubber("strip", 0.5, new LinearLaw(1000), new LossFraction(0), 4, 0, 0);
        StretchLine down = new StretchLine(
                "strip",
                rubber,
                new ElasticLine.Pieces(1, Hang.SINGLE, Placement.CENTRED),
                0,
                new FixedPoint("floor eye", new Vec(0.2, -1), 0, 300),
                new OnBody(grip("hand"), 0),
                List.of());
        assertThatThrownBy(() -> press(up(), down))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS);
                    assertThat(refusal.limit()).isEqualTo(300);
                    assertThat(refusal.unit()).isEqualTo("N");
                })
                .hasMessageContaining("floor eye");
    }
}
