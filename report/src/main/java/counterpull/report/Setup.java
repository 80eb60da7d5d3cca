package counterpull.report;

import counterpull.engine.Require;
import counterpull.engine.profile.Profile;

/**
 * One setup as it is shown: its profile and the plates that make up its load.
 *
 * @param name what it is called here ("chosen", "today")
 * @param profile what it asks; its loading's plates weigh what {@code plates} do
 * @param plates by horn
 */
public record Setup(String name, Profile profile, Plates plates) {
    private static final double SAME = 1e-6;

    public Setup {
        double loaded = profile.loading().plates();
        Require.within(
                plates.total(),
                new Require.Limits(loaded - SAME, loaded + SAME),
                "plates by horn against the plates of the setup \"" + name + "\"",
                "kg");
    }
}
