package counterpull.picture;

import counterpull.engine.profile.PressProfile;

/** Turns a profile's values into series. */
final class Sampled {
    private final PressProfile profile;
    private final double[] angle;

    Sampled(PressProfile profile) {
        this.profile = profile;
        angle = new double[profile.positions()];
        for (int i = 0; i < angle.length; i++) {
            angle[i] = profile.driving(i);
        }
    }

    /** A value at each position. */
    interface At {
        double position(int i);
    }

    Series of(At value) {
        double[] y = new double[angle.length];
        for (int i = 0; i < y.length; i++) {
            y[i] = value.position(i);
        }
        return new Series(angle, y);
    }

    PressProfile profile() {
        return profile;
    }
}
