package counterpull.letgo;

import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;

/** A press's loaded sled let go all along its range. */
public final class SledReleases {
    /** At how many places of the range a sled is let go. */
    public static final int PLACES = 21;

    private SledReleases() {}

    /** The sled of a profile, with what is loaded on it, from places that the profile looks at. */
    public static Releases of(PressProfile profile) {
        FreeSled sled =
                FreeSled.of(profile.task(), profile.ground().motion().stroke().bottom());
        int[] positions = Releases.positions(profile.positions(), PLACES);
        double[] places = new double[positions.length];
        double[] speeds = new double[positions.length];
        for (int k = 0; k < places.length; k++) {
            places[k] = sled.placeOf(profile.plate(positions[k]));
            speeds[k] = profile.ground().motion().speed(Phase.LOWERING, positions[k]);
        }
        return Releases.of(sled, places, speeds);
    }
}
