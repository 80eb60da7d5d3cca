package counterpull.report;

import counterpull.scenario.PressScenario;
import counterpull.scenario.content.Plan;

/** A scenario's plan with warm-up steps from the same plates. */
public final class Plans {
    private Plans() {}

    /** The dose that the scenario states, warm-up steps worked out for a setup, plain reasons to stop. */
    public static SessionPlan of(PressScenario scenario, Setup setup) {
        Plan plan = scenario.wanted().plan();
        SessionPlan.Dose dose =
                new SessionPlan.Dose(plan.sets(), plan.repetitions(), plan.repetitionsLeft(), plan.rest());
        return SessionPlan.stated(dose, WarmUps.of(setup));
    }
}
