package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the pictures of the invented setups, to be looked at. Not a test. */
public final class Gallery {
    private final Path folder;
    private final String suffix;
    private final View view;

    private Gallery(Path folder, String suffix, Palette palette) {
        this.folder = folder;
        this.suffix = suffix;
        view = View.light(Size.CHART).with(palette);
    }

    /** Writes everything to the folder named by the first argument. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        for (Gallery gallery : new Gallery[] {
            new Gallery(folder, "light", Palette.LIGHT),
            new Gallery(folder, "dark", Palette.DARK),
            new Gallery(folder, "print", Palette.PRINT)
        }) {
            gallery.charts();
            gallery.figures();
        }
    }

    private void charts() throws IOException {
        PressProfile today = Setups.plain();
        PressProfile chosen = Setups.both();
        for (Joint joint : Joint.LEG) {
            chart("torque-" + joint.words(), TorqueChart.of(today, 0, joint).at(30));
        }
        chart("effort", EffortChart.of(chosen, Setups.goal(), today));
        chart("force-lifting", ForceChart.of(chosen, Phase.LIFTING));
        chart("force-lowering", ForceChart.of(Setups.relieved(), Phase.LOWERING));
        Chart stress = StressChart.of(today, 0);
        chart("stress", GoalLayers.stress(Setups.goal()).map(stress::with).orElse(stress));
        chart("comparison", ComparisonChart.of(today, chosen, Setups.goal()));
    }

    private void figures() throws IOException {
        PressProfile plain = Setups.plain();
        figure("b-bottom", Figure.of(plain).showing(Joint.KNEE));
        figure("b-middle", Figure.of(plain).at(50).during(Phase.LIFTING).showing(Joint.HIP));
        figure("b-top", Figure.of(plain).at(100).showing(Joint.KNEE));
        figure("c-bottom", Figure.of(Setups.relieved()));
        figure("c-top", Figure.of(Setups.relieved()).at(95));
        figure("both", Figure.of(Setups.both()).at(40).showing(Joint.ANKLE));
        figure("shallow", Figure.of(Setups.shallowRail()).at(30).showing(Joint.KNEE));
        figure("unknown", Figure.of(Setups.unknown()).at(20).showing(Joint.HIP));
        figure("steep-seat", Figure.of(Setups.steepSeat()).at(20).showing(Joint.KNEE));
        figure("level", Figure.of(Setups.level()).at(70).during(Phase.LIFTING));
        figure("tilted", Figure.of(Setups.tilted()).at(20).showing(Joint.ANKLE));
        figure("seat-rides", Figure.of(Setups.seatRides()).at(30).showing(Joint.KNEE));
    }

    private void figure(String name, Figure figure) throws IOException {
        Figure built = figure.built(Build.of(Setups.BODY));
        write("figure-" + name, built.svg(view.with(Size.FIGURE)));
        write("figure-" + name + "-card", built.svg(view.with(new Size(420, 340))));
    }

    private void chart(String name, Chart chart) throws IOException {
        write(name, chart.svg(view));
        write(name + "-card", chart.svg(view.with(Size.CARD)));
    }

    private void write(String name, String svg) throws IOException {
        Files.write(folder.resolve(name + "-" + suffix + ".svg"), svg.getBytes(StandardCharsets.UTF_8));
    }
}
