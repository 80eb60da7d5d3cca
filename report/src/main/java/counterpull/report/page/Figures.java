package counterpull.report.page;

import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import counterpull.picture.Figure;
import counterpull.report.Setup;
import counterpull.report.table.Measure;

/** The person on the machine at the bottom, half way and at the top. */
final class Figures implements Section {
    private static final String[] WHERE = {"At the bottom", "Half way", "At the top"};

    @Override
    public void write(Desk desk) {
        desk.html().open("section").put("h2", "How it looks");
        for (Setup setup : desk.findings().chosen()) {
            if (desk.findings().split()) {
                desk.html().put("h3", setup.name());
            }
            desk.html().open("div.pictures");
            pictures(desk, setup.profile());
            desk.html().close();
        }
        desk.html().close().line();
    }

    private static void pictures(Desk desk, PressProfile profile) {
        int last = profile.positions() - 1;
        for (int k = 0; k < WHERE.length; k++) {
            int position = k * last / (WHERE.length - 1);
            String caption = WHERE[k] + ": knee bent " + desk.say(Measure.ANGLE, profile.driving(position))
                    + ", mark " + desk.say(Measure.LENGTH, profile.mark(position)) + ", held push "
                    + desk.say(Measure.FORCE, profile.force(Phase.HELD, position));
            desk.figure(Figure.of(profile).at(position), caption);
        }
    }
}
