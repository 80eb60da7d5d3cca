package counterpull.picture;

import counterpull.engine.profile.Profile;

/** Turns a profile's values into series. */
final class Sampled {
    private final Profile profile;
    private final double[] angle;

    Sampled(Profile profile) {
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

    Profile profile() {
        return profile;
    }
}
