package counterpull.engine.validation;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.Loaded;
import counterpull.engine.motion.AnkleGive;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.StandDrive;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.regression.Examples;
import counterpull.engine.strength.LimbStrength;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Kneecap stress of a squat with a bar against a knee extension with a weight at the ankle, 90° to straight: which is larger where, not
 * how large. The loads are matched by the largest knee torque, which is our assumption, as are the ankle's give and the point of balance.
 *
 * <p>Source: Powers et al. 2014, J Orthop Sports Phys Ther 44:320 (10 people, 0 to 90° in steps of 15°): the squat's stress is larger at 60,
 * 75 and 90°, the extension's at 0, 15 and 30°; abstract looked up, no numbers in it.
 */
class SquatAgainstExtensionValidationTest {
    private static final int POSITIONS = 91;
    private static final WorkingRange RANGE = new WorkingRange(Angles.radians(90), 0, Angles.radians(90));
    private static final ExerciseLimb SQUAT = squat();
    private static final ExerciseLimb EXTENSION = extension(matchedWeight());

    private static ExerciseLimb squat() {
        Anthropometry body = new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, MeasuredLengths.none());
        Limb left = new Limb(Side.LEFT, body.side(), 0.5, RANGE, JointRanges.open(), LimbStrength.none());
        Limb right = new Limb(Side.RIGHT, body.side(), 0.5, RANGE, JointRanges.open(), LimbStrength.none());
        BalancedStand stand = new BalancedStand(new StandDrive.Knee(AnkleGive.inProportion(0.35)), 0.5);
        DeadWeight bar = new DeadWeight("bar", new BodyPoint("shoulders", 2, new Vec(0.504, 0.04)), Loaded.always(28));
        return limb(new Person(80, List.of(left, right)), new Exercise(stand, List.of(bar), 1), 0);
    }

    private static ExerciseLimb extension(double kilograms) {
        BodyPoint ankle =
                new BodyPoint("ankle", 0, new Vec(Examples.leg().shank().length(), 0));
        DeadWeight weight = new DeadWeight("weight at the ankle", ankle, Loaded.with(0));
        Hinge hinge = new Hinge(Joint.KNEE, 0, Map.of(), Hinge.Lie.UPRIGHT);
        return limb(Examples.alone(RANGE), new Exercise(hinge, List.of(weight), 1), kilograms);
    }

    private static ExerciseLimb limb(Person person, Exercise exercise, double plates) {
        return ExerciseProfile.of(new ExerciseTask(person, exercise, plates, Examples.tempo(), POSITIONS))
                .limbs()
                .get(0);
    }

    private static double matchedWeight() {
        double bare = peak(extension(0));
        return (peak(SQUAT) - bare) / (peak(extension(1)) - bare);
    }

    private static double peak(ExerciseLimb limb) {
        double peak = 0;
        for (int i = 0; i < POSITIONS; i++) {
            peak = Math.max(peak, limb.torque(Joint.KNEE, Phase.HELD, i));
        }
        return peak;
    }

    /** Stress of the squat less that of the extension, Pa; one position a degree from 90°. */
    private static double difference(int degrees) {
        int i = 90 - degrees;
        return SQUAT.kneecapStress(Phase.HELD, i) - EXTENSION.kneecapStress(Phase.HELD, i);
    }

    @ParameterizedTest
    @ValueSource(ints = {60, 75, 90})
    void theSquatStressesMoreWhenBent(int degrees) {
        assertThat(difference(degrees)).isPositive();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 15, 30})
    void theExtensionStressesMoreNearStraight(int degrees) {
        assertThat(difference(degrees)).isNegative();
    }
}
