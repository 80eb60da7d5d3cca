package counterpull.report;

import counterpull.engine.Require;
import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.SafeOrder;
import counterpull.engine.choice.Verdict;
import counterpull.engine.profile.Profile;
import counterpull.scenario.Scenario;

/**
 * One setup as it is shown.
 *
 * @param name what it is called here ("chosen", "today")
 * @param profile what it asks; its loading's plates weigh what {@code plates} do
 * @param plates by horn
 * @param verdict how it does against the goal
 * @param order a safe order to load it
 */
public record Setup(String name, Profile profile, Plates plates, Verdict verdict, SafeOrder order) {
    private static final double SAME = 1e-6;

    public Setup {
        double loaded = profile.loading().plates();
        Require.within(
                plates.total(),
                new Require.Limits(loaded - SAME, loaded + SAME),
                "plates by horn against the plates of the setup \"" + name + "\"",
                "kg");
    }

    /** A setup that the search returned for a scenario. */
    public static Setup of(String name, Candidate candidate, Scenario scenario) {
        var kit = scenario.kit();
        return new Setup(
                name,
                candidate.profile(),
                Plates.of(kit.plates(), candidate.plates().counts(), kit.platesAtOnce()),
                candidate.verdict(),
                SafeOrder.of(candidate, Racks.of(scenario), kit));
    }

    /** What is on the machine today in a scenario, or what a person put together there by hand. */
    public static Setup today(String name, Scenario scenario) {
        return ByHand.of(name, scenario);
    }
}
