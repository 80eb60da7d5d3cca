package counterpull.report;

import counterpull.engine.choice.Racking;
import counterpull.scenario.Scenario;

/** How a scenario's sled is loaded on the floor. */
final class Racks {
    private Racks() {}

    /** Nothing stated about left against right while loading: the horns' own limit is not part of a scenario. */
    static Racking of(Scenario scenario) {
        return new Racking(scenario.machine().places().racking(), Double.POSITIVE_INFINITY);
    }
}
