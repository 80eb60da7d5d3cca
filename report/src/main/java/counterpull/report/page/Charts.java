package counterpull.report.page;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Profile;
import counterpull.picture.EffortChart;
import counterpull.picture.ForceChart;
import counterpull.picture.StressChart;
import counterpull.picture.TorqueChart;
import counterpull.report.Cautions;
import counterpull.report.Setup;

/** The course of everything along the range. */
final class Charts implements Section {
    @Override
    public void write(Desk desk) {
        desk.html().open("section").put("h2", "What is asked, and what there is");
        for (Setup setup : desk.findings().chosen()) {
            if (desk.findings().split()) {
                desk.html().put("h3", setup.name());
            }
            charts(desk, setup.profile());
        }
        desk.html().put("p.small", Cautions.NET_TORQUE + " " + Cautions.FIRST_REPETITION);
        desk.html().close().line();
    }

    private static void charts(Desk desk, Profile profile) {
        desk.html().open("div.pictures");
        desk.chart(EffortChart.of(profile, desk.findings().goal()));
        desk.chart(ForceChart.of(profile, Phase.LIFTING));
        desk.chart(ForceChart.of(profile, Phase.LOWERING));
        desk.html().close();
        for (int limb = 0; limb < profile.limbs().size(); limb++) {
            desk.html().put("h3", "The " + profile.limbs().get(limb).side().words() + " leg");
            desk.html().open("div.pictures");
            for (Joint joint : Joint.values()) {
                desk.chart(TorqueChart.of(profile, limb, joint));
            }
            desk.html().close();
        }
        desk.html().put("h3", "The kneecap joint").open("div.pictures");
        for (int limb = 0; limb < profile.limbs().size(); limb++) {
            desk.chart(StressChart.of(profile, limb));
        }
        desk.html().close();
    }
}
