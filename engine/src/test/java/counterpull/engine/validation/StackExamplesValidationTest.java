package counterpull.engine.validation;

import counterpull.engine.Constants;
import counterpull.engine.body.Joint;
import counterpull.engine.load.Cable;
import counterpull.engine.load.CamRadius;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.HangingChain;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Part;
import counterpull.engine.load.Pull;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.regression.Examples;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stacks, cables and chains beside examples that other people worked: a knee extended from 90°, thigh level, in each. */
class StackExamplesValidationTest {
    private static final int POSITIONS = 11;

    private static ExerciseLimb extension(Resistance thing) {
        WorkingRange range = new WorkingRange(Angles.radians(90), 0, Angles.radians(90));
        Exercise exercise = new Exercise(new Hinge(Joint.KNEE, 0, Map.of(), Hinge.Lie.UPRIGHT), List.of(thing), 1);
        return ExerciseProfile.of(new ExerciseTask(Examples.alone(range), exercise, 0, Examples.tempo(), POSITIONS))
                .limbs()
                .get(0);
    }

    /**
     * Two disks on one axle, 2.25 g·m² together, a string wound on one of them, a block of 1.50 kg: how fast the block falls when let go.
     * Here a cam with its stack. What holds the cam is linear in the turning acceleration, and nothing holds it at the one that is sought.
     */
    @ParameterizedTest
    @CsvSource({"0.0250, 2.88", "0.0500, 6.13"})
    void blockOnAStringRoundADisk(double radius, double fall) {
        StackLine string = new StackLine(1, 0, Loaded.always(1.50), 0);
        LeverFrame axle = new LeverFrame(new Vec(0, 0), new Cuff(0, 0.3));
        ExerciseLimb limb = extension(new CamStack("disks", axle, CamRadius.round(radius), string, 2.25e-3));
        double held = limb.size(0, Phase.HELD, 2);
        double turning = limb.path().course().acceleration(Phase.LIFTING, 2);
        double perTurning = (limb.size(0, Phase.LIFTING, 2) - held) / turning;
        Published.of("fall of a block from a disk of " + 100 * radius + " cm", "m/s²")
                .source(
                        "Young and Freedman, University Physics, 13th ed., problem 10.71; inputs looked up, answer from memory and"
                                + " computed by hand with g = 9.80")
                .value(fall)
                .ours(radius * held / perTurning * 9.80 / Constants.STANDARD_GRAVITY)
                .within(0.0051, "printed to two decimals");
    }

    /** A wire over pulleys from 10 kg to a cuff 35 cm below the knee, square to the hanging shank. */
    @Test
    void wireOverPulleysToACuff() {
        BodyPoint cuff = new BodyPoint("cuff", 0, new Vec(0.35, 0));
        StackLine stack = new StackLine(1, 0, Loaded.always(10), 0);
        ExerciseLimb limb = extension(new Cable("wire", cuff, new Vec(-1, -0.35), stack));
        Published.of("knee torque against a wire over pulleys", "N·m")
                .source(
                        "OpenStax College Physics, section 9.6, exercise on a device for the upper leg; inputs looked up, torque"
                                + " computed by hand with g = 9.80")
                .value(34.3)
                .ours(limb.torque(Part.GRAVITY, Joint.KNEE, Phase.HELD, 0) * 9.80 / Constants.STANDARD_GRAVITY)
                .within(1e-9, "exact");
    }

    /** 6 kg/m from a cuff 0.40 m below the knee, the floor 0.45 m below the knee; 0.30 m of chain. */
    @ParameterizedTest
    @CsvSource({"0, 0.05, 2.9420", "4, 0.1264, 7.4370", "8, 0.3, 17.6520", "10, 0.3, 17.6520"})
    void chainThatLiesOnTheFloor(int position, double clear, double weight) {
        BodyPoint cuff = new BodyPoint("cuff", 0, new Vec(0.40, 0));
        HangingChain chain = new HangingChain("chain", cuff, 6, 0.30, -0.45);
        ExerciseLimb limb = extension(chain);
        String at = ", shank " + (90 - 9 * position) + "° below the level";
        String source =
                "load = mass per metre × g × height of the top above the floor, up to the chain's length; computed by hand";
        Published.of("chain clear of the floor" + at, "m")
                .source(source)
                .value(clear)
                .ours(chain.clear(limb.path())[position])
                .within(0.000051, "given to four decimals");
        Published.of("weight of a chain" + at, "N")
                .source(source)
                .value(weight)
                .ours(weight(limb, position))
                .within(0.00051, "given to four decimals, from g to six digits");
    }

    private static double weight(ExerciseLimb limb, int position) {
        double down = 0;
        for (int p = 0; p < limb.pulls().size(); p++) {
            Pull pull = limb.pulls().get(p);
            down -= limb.size(p, Phase.HELD, position)
                    * pull.direction(position).y();
        }
        return down;
    }

    /** Doubled over, both ends at the top, it weighs twice as much for each metre of height and lies on the floor half as high up. */
    @Test
    void chainDoubledOver() {
        BodyPoint cuff = new BodyPoint("cuff", 0, new Vec(0.40, 0));
        ExerciseLimb single = extension(new HangingChain("chain", cuff, 6, 0.80, -0.45));
        ExerciseLimb doubled = extension(new HangingChain("chain", cuff, 12, 0.40, -0.45));
        Published.of("doubled chain over a single one, top 0.05 m above the floor", "")
                .source("twice the links for each metre of height: closed form; computed by hand")
                .value(2)
                .ours(weight(doubled, 0) / weight(single, 0))
                .within(1e-12, "exact");
        Published.of("doubled chain over a single one, top 0.45 m above the floor", "")
                .source("twice the links for each metre of height: closed form; computed by hand")
                .value(0.80 / 0.45)
                .ours(weight(doubled, 10) / weight(single, 10))
                .within(1e-12, "exact");
    }
}
