package counterpull.report.page;

import counterpull.engine.load.ElasticLine;
import counterpull.picture.ComparisonChart;
import counterpull.report.Facts;
import counterpull.report.PlateStack;
import counterpull.report.Setup;
import counterpull.report.SetupSentences;
import java.util.Optional;

/** Today's setup against the chosen one. */
final class Comparison implements Section {
    @Override
    public void write(Desk desk) {
        Optional<Setup> today = desk.findings().others().today();
        if (today.isEmpty()) {
            return;
        }
        desk.html().open("section").put("h2", "Today and chosen");
        FactTable table = new FactTable();
        add(desk, table, today.get());
        desk.findings().chosen().forEach(setup -> add(desk, table, setup));
        desk.table(table.table("What changes"));
        desk.html()
                .put(
                        "p.small",
                        "“Under target” is the root mean square of the effort that is missing, over the range"
                                + " and both moving phases. “Inertia at the turn” is what starting and stopping adds near the bottom;"
                                + " it is part of the push.");
        desk.html().open("div.pictures");
        for (Setup setup : desk.findings().chosen()) {
            desk.chart(ComparisonChart.of(
                    today.get().profile(), setup.profile(), desk.findings().goal()));
        }
        desk.html().close().close().line();
    }

    private static void add(Desk desk, FactTable table, Setup setup) {
        int pieces = 0;
        for (PlateStack stack : setup.plates().stacks()) {
            pieces += stack.pieces();
        }
        for (ElasticLine line : setup.profile().loading().lines()) {
            pieces += line.pieces().count();
        }
        String name = setup.name() + ": " + new SetupSentences(setup, desk.units()).whole();
        table.add(name, Facts.of(setup.profile(), setup.verdict()), pieces);
    }
}
