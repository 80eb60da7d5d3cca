package counterpull.bench.person;

import counterpull.bench.person.RangeBench.End;
import counterpull.engine.body.Joint;

/**
 * What an angle of a joint was read with.
 *
 * <p>Standard deviation of one reading from day to day, one tester: knee bent 3°, straight 1.5° (Mehta 2017: goniometer 3.4 and 1.6,
 * phone 2.7 and 1.2; looked up); hip 3.5° (phone 1.1 to 3.6, minimal detectable change 5 to 10; looked up); dorsiflexion 3° off the ground; its
 * knee-to-wall lunge 1.7° (Powden 2015, minimal detectable change 4.7; looked up); plantarflexion 4°, shoulder 7° (de Winter 2004,
 * limits ±19 in people with pain; looked up), elbow 3°: where no source is named, our assumption. By eye 1.5 times that, ours.
 */
public enum AngleGauge {
    /** Two arms and a circle. */
    GONIOMETER("goniometer", 1),
    /** A digital inclinometer. */
    INCLINOMETER("inclinometer", 1),
    /** A telephone used as an inclinometer. */
    PHONE("phone", 1),
    /** Nothing. */
    BY_EYE("eye", 1.5);

    private final String words;
    private final double factor;

    AngleGauge(String words, double factor) {
        this.words = words;
        this.factor = factor;
    }

    /** How a file says it. */
    public String words() {
        return words;
    }

    /** Standard deviation of one reading from one day to another, rad. */
    public double sd(Joint joint, End end) {
        return Math.toRadians(factor * degrees(joint, end));
    }

    private static double degrees(Joint joint, End end) {
        return switch (joint) {
            case HIP, HIP_SIDEWAYS -> 3.5;
            case KNEE -> end == End.MOST ? 3 : 1.5;
            case ANKLE -> end == End.MOST ? 3 : 4;
            case SHOULDER, SHOULDER_SIDEWAYS, SHOULDER_TURNING -> 7;
            case ELBOW -> 3;
        };
    }
}
