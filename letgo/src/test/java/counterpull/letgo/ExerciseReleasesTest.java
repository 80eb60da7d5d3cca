package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.body.Joint;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Cable;
import counterpull.engine.load.CamRadius;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.FixedPoint;
import counterpull.engine.load.Horn;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverBody;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.MeasuredProfile;
import counterpull.engine.load.OnBody;
import counterpull.engine.load.OnLever;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.RollerPad;
import counterpull.engine.load.StackLine;
import counterpull.engine.load.StretchLine;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.regression.Examples;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Whole exercises let go: knee extension, shank from straight down to level. */
class ExerciseReleasesTest {
    private static final double G = Constants.STANDARD_GRAVITY;
    private static final double STEPS = 1e-9;
    private static final LeverFrame AXLE = new LeverFrame(new Vec(0, 0), RollerPad.against(0, 0.32));
    private static final Loaded PLATES = Loaded.with(0);
    private static final BodyPoint ANKLE = new BodyPoint("ankle", 0, new Vec(0.38, 0));

    private static ExerciseProfile extension(double plates, Resistance... resists) {
        Hinge hinge = new Hinge(Joint.KNEE, 0, Map.of(), Hinge.Lie.UPRIGHT);
        WorkingRange range = new WorkingRange(Angles.radians(90), 0, Angles.radians(90));
        Exercise exercise = new Exercise(hinge, List.of(resists), 1);
        return ExerciseProfile.of(new ExerciseTask(Examples.both(range), exercise, plates, Examples.tempo(), 101));
    }

    private static Lever lever(double horn) {
        LeverBody body = new LeverBody(5, 0.22, 0, 0.40);
        return new Lever("leg lever", AXLE, body, List.of(new Horn("horn", horn, 0, PLATES)), 0);
    }

    /** I φ̇²/2 = (m_lever r + m_plates R) g from level to straight down; the pad is 0.32 m out. */
    @Test
    void aLeverFromTheTopArrivesWithTheEnergyOfItsHeight() {
        ExerciseReleases releases = ExerciseReleases.of(extension(25, lever(0.4)));
        assertThat(releases.others()).isEmpty();
        MachineReleases machine = releases.machines().get(0);
        assertThat(machine.names()).containsExactly("leg lever");
        assertThat(machine.kind()).isEqualTo(MachineReleases.Kind.LEVER);
        Outcome top = machine.releases().atTop();
        double inertia = 0.40 + 25 * 0.16;
        double given = (5 * 0.22 + 25 * 0.4) * G;
        assertThat(top.ending()).isEqualTo(Ending.NOTHING_CATCHES_IT);
        assertThat(top.end().kinetic()).isCloseTo(given, within(1e-8));
        assertThat(machine.arrivalSpeed(top)).isCloseTo(0.32 * Math.sqrt(2 * given / inertia), within(STEPS));
        assertThat(machine.drop(top)).isCloseTo(0.32 * Math.PI / 2, within(STEPS));
        assertThat(machine.position(top)).isEqualTo(100);
        assertThat(releases.largestError()).isLessThan(STEPS);
    }

    /** While lowering it starts with what the tempo has there, and the hardest arrival is one of these. */
    @Test
    void whileLoweringItKeepsItsSpeed() {
        ExerciseProfile profile = extension(25, lever(0.4));
        MachineReleases machine = ExerciseReleases.of(profile).machines().get(0);
        double inertia = 0.40 + 25 * 0.16;
        for (int k = 0; k < machine.positions().size(); k++) {
            Outcome lowering = machine.releases().lowering().get(k);
            double speed =
                    profile.course().speed(Phase.LOWERING, machine.positions().get(k));
            assertThat(lowering.release().speed()).isCloseTo(speed, within(1e-12));
            double height =
                    (5 * 0.22 + 25 * 0.4) * G * Math.sin(lowering.release().place() - Math.PI / 2);
            double kinetic = inertia * speed * speed / 2 + height + (5 * 0.22 + 25 * 0.4) * G;
            assertThat(lowering.end().kinetic()).isCloseTo(kinetic, within(1e-8));
        }
        Outcome hardest = machine.releases().hardest().orElseThrow();
        assertThat(hardest.end().kinetic())
                .isGreaterThanOrEqualTo(machine.releases().atTop().end().kinetic());
    }

    /** Cam, lever and rubber on one frame are one machine; a second kind on another frame is another. */
    @Test
    void whatIsOnOneLeverFallsTogether() {
        StackLine line = new StackLine(1, 0.1, Loaded.always(20), 0);
        CamStack cam = new CamStack("stack", AXLE, CamRadius.round(0.1), line, 0.3);
        Rubber rubber = new Rubber("r", 0.5, LinearLaw.ofStiffness(200, 0.5), new LossFraction(0.1), 2.5, 0, 0);
        FixedPoint hook = new FixedPoint("hook", new Vec(-0.3, -0.5), 0, 5000);
        StretchLine tube = new StretchLine(
                "tube", rubber, ElasticLine.Pieces.one(), 0, hook, new OnLever("peg", AXLE, 0.3, 0, 0), List.of());
        LeverFrame other = new LeverFrame(new Vec(0.02, 0), new Cuff(0, 0.2));
        Lever second = new Lever("second", other, new LeverBody(2, 0.1, 0, 0.05), List.of(), 0);
        ExerciseReleases all = ExerciseReleases.of(extension(25, lever(0.4), second, cam, tube));
        assertThat(all.machines())
                .extracting(MachineReleases::names)
                .containsExactly(List.of("leg lever", "stack", "tube"), List.of("second"));
        assertThat(all.others()).isEmpty();
        assertThat(all.largestError()).isLessThan(1e-7);
        MachineReleases alone =
                ExerciseReleases.of(extension(25, lever(0.4))).machines().get(0);
        MachineReleases together = all.machines().get(0);
        assertThat(together.releases().atTop().energy().rubber()).isNotZero();
        assertThat(together.releases().atTop().energy().weight())
                .isCloseTo(alone.releases().atTop().energy().weight() - 20 * G * 0.1 * Math.PI / 2, within(1e-8));
    }

    /** Low pulley behind: the handle goes the line's way, whose length the pulley's place tells. */
    @Test
    void aHandleFliesToItsPulley() {
        Vec pulley = new Vec(-0.6, -0.4);
        Cable cable = new Cable("low cable", ANKLE, pulley, new StackLine(2, 0.1, Loaded.with(0), 1));
        MachineReleases machine =
                ExerciseReleases.of(extension(30, cable)).machines().get(0);
        assertThat(machine.kind()).isEqualTo(MachineReleases.Kind.LINE);
        double shortest = new Vec(0, -0.38).minus(pulley).norm();
        double longest = new Vec(0.38, 0).minus(pulley).norm();
        Outcome top = machine.releases().atTop();
        assertThat(top.drop()).isCloseTo(longest - shortest, within(1e-12));
        double a = 0.9 * 15 * G / (0.9 * 7.5 + 1);
        assertThat(machine.arrivalSpeed(top)).isCloseTo(Math.sqrt(2 * a * top.drop()), within(STEPS));
    }

    @Test
    void aCounterweightThatIsTooHeavyLiftsTheLever() {
        Horn counterweight = new Horn("counterweight", 0.4, Math.PI, Loaded.always(10));
        LeverFrame strapped = new LeverFrame(new Vec(0, 0), new Cuff(0, 0.3));
        Lever light = new Lever("lever", strapped, new LeverBody(2, 0.2, 0, 0.1), List.of(counterweight), 0);
        MachineReleases machine =
                ExerciseReleases.of(extension(0, light)).machines().get(0);
        assertThat(machine.releases().pulledUp()).isPresent();
        assertThat(machine.releases().held().get(10).ending()).isEqualTo(Ending.AT_THE_TOP);
    }

    @Test
    void whatIsNotFollowedSaysWhy() {
        Rubber rubber = new Rubber("r", 0.3, LinearLaw.ofStiffness(100, 0.3), new LossFraction(0.1), 3, 0, 0);
        FixedPoint hook = new FixedPoint("hook", new Vec(-0.5, -0.4), 0, 5000);
        StretchLine tube =
                new StretchLine("tube", rubber, ElasticLine.Pieces.one(), 0, hook, new OnBody(ANKLE, 0), List.of());
        MeasuredProfile readings = new MeasuredProfile(
                "readings",
                new MeasuredProfile.Torque(Joint.KNEE),
                List.of(new MeasuredProfile.Reading(-0.1, 20, 18), new MeasuredProfile.Reading(2, 30, 27)));
        assertThat(ExerciseReleases.of(extension(0, new DeadWeight("cuff", ANKLE, Loaded.always(3)), tube, readings))
                        .others())
                .containsExactly(
                        new LeftAlone("cuff", LeftAlone.Why.FALLS_FREELY),
                        new LeftAlone("tube", LeftAlone.Why.SNAPS_BACK),
                        new LeftAlone("readings", LeftAlone.Why.MASS_NOT_MEASURED));
        StretchLine tied = new StretchLine(
                "tied",
                rubber,
                ElasticLine.Pieces.one(),
                0,
                new OnLever("peg", AXLE, 0.1, 2, 0),
                new OnBody(ANKLE, 0),
                List.of());
        ExerciseReleases both = ExerciseReleases.of(extension(25, lever(0.4), tied));
        assertThat(both.machines()).isEmpty();
        assertThat(both.others())
                .containsExactly(new LeftAlone("leg lever, tied", LeftAlone.Why.TIED_TO_SOMETHING_LOOSE));
        Lever weightless = new Lever("bare", AXLE, LeverBody.weightless(), List.of(), 0);
        assertThat(ExerciseReleases.of(extension(0, weightless)).others())
                .containsExactly(new LeftAlone("bare", LeftAlone.Why.WITHOUT_MASS));
    }

    /** A line that neither comes in nor goes out over the range, and one with nothing on it, are not followed. */
    @Test
    void aLineWithoutWayOrWeightSaysWhy() {
        Cable still = new Cable("round the knee", ANKLE, new Vec(0, 0), new StackLine(1, 0, Loaded.always(20), 0));
        Cable empty = new Cable("empty", ANKLE, new Vec(-0.6, -0.4), new StackLine(1, 0, Loaded.always(0), 0));
        assertThat(ExerciseReleases.of(extension(0, still, empty)).others())
                .containsExactly(
                        new LeftAlone("round the knee", LeftAlone.Why.TURNS_BACK),
                        new LeftAlone("empty", LeftAlone.Why.WITHOUT_MASS));
    }
}
