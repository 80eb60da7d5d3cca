package counterpull.bench.person;

import counterpull.engine.body.Action;
import counterpull.engine.strength.Tester;

/**
 * Relative standard deviation of the same person's torque between days, nothing having changed: the standard error of measurement as a
 * share, for one tester and instrument. Where a study prints limits of agreement or a minimal detectable change, it is that over 1.96 √2.
 *
 * <p>Held by hand: hip 5 %, adduction 6 %, extension 8 % (Thorborg 2010, 9 people, a week apart), knee extension 12 % and ankle plantarflexion 18 %
 * (Chamorro 2017, limits of agreement 33.6 and 48.9 %), shoulder 7 % (2016, Phys Ther Sport 21:75, 4.8 to 8.6 %); looked up. Knee flexion 9 %,
 * dorsiflexion 10 %, elbow 8 %: our assumption, none found in percent.
 *
 * <p>Held by a belt or frame: hip 5 %; knee extension 8 % (frame with healthy people 4.5 %, ill ones 8.7 %, older people between days 7.1 to
 * 9.3 %, strap gauge 5.5 to 13.8 %); plantarflexion 5.5 % (2022, J Phys Ther Sci 34:463); shoulder 8 % (2016, as above, 6.6 to 11.0 %: no better than by
 * hand); looked up. Knee flexion 8 %, dorsiflexion and elbow 6 %: our assumption.
 *
 * <p>Isokinetic machine: 5.4 % (Chamorro 2017, limits below 15 %; looked up).
 */
final class BetweenDays {
    /** Another tester: 1.3 times (held frames 24.1 and 29.3 %, 1.21; by hand more): our reading. */
    static final double OTHER_TESTER = 1.3;

    private BetweenDays() {}

    static double sd(Tester tester, Action action) {
        return switch (tester) {
            case HAND_HELD -> byHand(action);
            case BELT_FIXED -> byBelt(action);
            case ISOKINETIC -> 0.054;
            case REPETITIONS -> tester.relativeSd(action);
        };
    }

    private static double byHand(Action action) {
        return switch (action) {
            case HIP_EXTENSION -> 0.08;
            case HIP_ADDUCTION -> 0.06;
            case HIP_FLEXION, HIP_ABDUCTION -> 0.05;
            case KNEE_EXTENSION -> 0.121;
            case KNEE_FLEXION -> 0.09;
            case ANKLE_PLANTARFLEXION -> 0.176;
            case ANKLE_DORSIFLEXION -> 0.10;
            case ELBOW_FLEXION, ELBOW_EXTENSION -> 0.08;
            default -> 0.07;
        };
    }

    private static double byBelt(Action action) {
        return switch (action) {
            case HIP_EXTENSION, HIP_FLEXION, HIP_ABDUCTION, HIP_ADDUCTION -> 0.05;
            case KNEE_EXTENSION, KNEE_FLEXION -> 0.08;
            case ANKLE_PLANTARFLEXION -> 0.055;
            case ANKLE_DORSIFLEXION, ELBOW_FLEXION, ELBOW_EXTENSION -> 0.06;
            default -> 0.08;
        };
    }
}
