package counterpull.report;

import counterpull.engine.Require;
import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Kit;
import counterpull.engine.choice.SafeOrder;
import counterpull.engine.choice.Verdict;
import counterpull.engine.load.LineSeries;
import counterpull.engine.profile.PressProfile;
import counterpull.scenario.PressScenario;
import java.util.ArrayList;
import java.util.List;

/**
 * One setup as it is shown.
 *
 * @param name what it is called here ("chosen", "today")
 * @param profile what it asks; its loading's plates weigh what {@code plates} do
 * @param plates by horn
 * @param verdict how it does against the goal
 * @param order a safe order to load it
 */
public record Setup(String name, PressProfile profile, Plates plates, Verdict verdict, SafeOrder order) {
    private static final double SAME = 1e-6;

    public Setup {
        plates = profile.task().sled().platesRide() ? plates : plates.onStack();
        double loaded = profile.loading().plates();
        Require.within(
                plates.total(),
                new Require.Limits(loaded - SAME, loaded + SAME),
                "plates by horn against the plates of the setup \"" + name + "\"",
                "kg");
    }

    /** A setup that the search returned for a scenario. */
    public static Setup of(String name, Candidate candidate, PressScenario scenario) {
        return of(name, candidate, candidate.profile(), scenario);
    }

    private static Setup of(String name, Candidate candidate, PressProfile profile, PressScenario scenario) {
        Kit kit = scenario.kit();
        return new Setup(
                name,
                profile,
                Plates.of(kit.plates(), candidate.plates().counts(), kit.platesAtOnce()),
                candidate.verdict(),
                SafeOrder.of(candidate, scenario.racking(), kit));
    }

    /** A setup that the search judged and threw out; its profile may have lost contact somewhere. */
    public static Setup judged(String name, Candidate candidate, PressScenario scenario) {
        List<LineSeries> lines = new ArrayList<>();
        candidate.lines().forEach(line -> lines.add(candidate.place().ground().series(line)));
        PressProfile profile = PressProfile.onGround(candidate.place().ground().with(lines), candidate.loading());
        return of(name, candidate, profile, scenario);
    }

    /** What is on the machine today in a scenario, or what a person put together there by hand. */
    public static Setup today(String name, PressScenario scenario) {
        return ByHand.of(name, scenario);
    }
}
