package counterpull.report.page;

import counterpull.engine.profile.PushCheck;
import counterpull.report.Setup;
import counterpull.report.table.Measure;

/** Which way they push, and how much hangs on it. */
final class PushSection implements Section {
    @Override
    public void write(Desk desk) {
        desk.html().open("section").put("h2", "Direction of the push");
        desk.html()
                .put(
                        "p",
                        "The rails carry whatever is square to them, so a person may push a little toward the head or"
                                + " toward the seat without the load changing. That moves work between hip and knee.");
        for (Setup setup : desk.findings().chosen()) {
            one(desk, setup);
        }
        desk.html().close().line();
    }

    private static void one(Desk desk, Setup setup) {
        double ceiling = desk.findings().goal().ceiling();
        PushCheck check = PushCheck.of(setup.profile(), desk.findings().goal().joints());
        String told = "Told: " + setup.profile().task().pushing().push().words() + ". Looked at again "
                + desk.say(Measure.ANGLE, check.spread())
                + " to either side: toward the foot end the largest effort is "
                + desk.say(Measure.EFFORT, check.lowPeak()) + ", toward the head "
                + desk.say(Measure.EFFORT, check.highPeak()) + ", where "
                + desk.say(Measure.EFFORT, ceiling) + " is the ceiling.";
        desk.html().put("p", told);
        if (!check.matters(ceiling)) {
            desk.html()
                    .put(
                            "p",
                            "The limiting joint stays the same and the ceiling holds: the answer does not depend on how"
                                    + " they push inside that interval.");
            return;
        }
        desk.html().open("p.warn").put("strong", "The answer depends on how they push. ");
        desk.html().text(matter(check, ceiling)).close();
    }

    private static String matter(PushCheck check, double ceiling) {
        String changes = check.changes() > 0
                ? "Another joint becomes the limiting one at " + check.changes() + " of " + check.looked()
                        + " positions and phases. "
                : "";
        String passed = check.peak() > ceiling ? "The ceiling is passed at an end of the interval. " : "";
        return changes + passed + "Teach the push first, or demand that the limits hold over the whole interval.";
    }
}
