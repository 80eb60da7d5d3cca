package counterpull.report.page;

import counterpull.report.Html;
import counterpull.report.LoadingWords;
import counterpull.report.SessionPlan;
import counterpull.report.Setup;
import counterpull.report.WarmUp;
import counterpull.report.table.Measure;
import counterpull.scenario.units.Dimension;
import java.util.List;

/** How to load it, how much to do, when to stop. */
final class OrderSection implements Section {
    @Override
    public void write(Desk desk) {
        Html html = desk.html();
        html.open("section").put("h2", "Setting up and doing it");
        for (Setup setup : desk.findings().chosen()) {
            LoadingWords words = new LoadingWords(setup, desk.units());
            html.put("h3", desk.findings().split() ? "Loading: " + setup.name() : "Loading")
                    .open("ol.order");
            words.loading().forEach(step -> html.put("li", step));
            html.close().put("h3", "Unloading").open("ol.order");
            words.unloading().forEach(step -> html.put("li", step));
            html.close();
        }
        plan(desk, desk.findings().plan());
        html.close().line();
    }

    private static void plan(Desk desk, SessionPlan plan) {
        SessionPlan.Dose dose = plan.dose();
        desk.html().put("h3", "How much");
        desk.html()
                .put(
                        "p",
                        dose.sets() + " sets of " + dose.repetitions() + ", " + dose.repetitionsLeft()
                                + " repetitions left at the end of each, rest "
                                + desk.units().written(dose.rest(), Dimension.TIME) + " ("
                                + plan.origin().words() + ").");
        if (!plan.warmUp().isEmpty()) {
            desk.html()
                    .put("p", "Before it, without rubber (plain steps from these plates, common practice, no source):")
                    .open("ul");
            for (WarmUp step : plan.warmUp()) {
                desk.html()
                        .put(
                                "li",
                                step.repetitions() + " repetitions with "
                                        + step.plates().words() + " (" + desk.say(Measure.FRACTION, step.share())
                                        + " of the working set's largest push)");
            }
            desk.html().close();
        }
        desk.html().put("h3", "Stop when").open("ul");
        List<String> stops = plan.whenToStop();
        stops.forEach(stop -> desk.html().put("li", stop));
        desk.html().close();
    }
}
