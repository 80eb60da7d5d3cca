package counterpull.report.page;

import counterpull.engine.body.Joint;
import counterpull.engine.choice.Goal;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import counterpull.picture.Chart;
import counterpull.picture.EffortChart;
import counterpull.picture.ForceChart;
import counterpull.picture.GoalLayers;
import counterpull.picture.Layer;
import counterpull.picture.StressChart;
import counterpull.picture.TorqueChart;
import counterpull.report.Cautions;
import counterpull.report.Setup;
import java.util.Optional;

/** The course of everything along the range. */
final class Charts implements Section {
    @Override
    public void write(Desk desk) {
        desk.html().open("section").put("h2", "What is asked, and what there is");
        for (Setup setup : desk.findings().chosen()) {
            if (desk.findings().split()) {
                desk.html().put("h3", setup.name());
            }
            charts(desk, setup.profile(), desk.findings().goal());
        }
        desk.html().put("p.small", Cautions.NET_TORQUE + " " + Cautions.FIRST_REPETITION);
        desk.html().close().line();
    }

    private static void charts(Desk desk, PressProfile profile, Goal goal) {
        desk.html().open("div.pictures");
        desk.chart(EffortChart.of(profile, goal));
        desk.chart(limited(ForceChart.of(profile, Phase.LIFTING), GoalLayers.floor(goal)));
        desk.chart(limited(ForceChart.of(profile, Phase.LOWERING), GoalLayers.floor(goal)));
        desk.html().close();
        for (int limb = 0; limb < profile.limbs().size(); limb++) {
            desk.html().put("h3", "The " + profile.limbs().get(limb).side().words() + " leg");
            desk.html().open("div.pictures");
            for (Joint joint : Joint.LEG) {
                desk.chart(limited(TorqueChart.of(profile, limb, joint), GoalLayers.torque(goal, joint.action())));
            }
            desk.html().close();
        }
        desk.html().put("h3", "The kneecap joint").open("div.pictures");
        for (int limb = 0; limb < profile.limbs().size(); limb++) {
            desk.chart(limited(StressChart.of(profile, limb), GoalLayers.stress(goal)));
        }
        desk.html().close();
    }

    private static Chart limited(Chart chart, Optional<Layer> limit) {
        return limit.map(chart::with).orElse(chart);
    }
}
