package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.PressProfile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

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
            gallery.exercises();
            gallery.sideBySide();
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

    private void exercises() throws IOException {
        for (Map.Entry<String, ExerciseProfile> workout : Workouts.all().entrySet()) {
            exercise(workout.getKey(), workout.getValue());
        }
    }

    private void exercise(String name, ExerciseProfile profile) throws IOException {
        int last = profile.positions() - 1;
        Joint first = profile.joints().get(0);
        ExerciseFigure figure = ExerciseFigure.of(profile).built(Build.of(Setups.BODY));
        drawn(name + "-bottom", figure);
        drawn(name + "-middle", figure.at(last / 2).during(Phase.LIFTING).showing(first));
        drawn(name + "-top", figure.at(last));
        chart("x-" + name + "-effort", EffortChart.of(profile));
        chart("x-" + name + "-torque", TorqueChart.of(profile, 0, first));
        for (Chart pulls : PullChart.of(profile, 0)) {
            chart("x-" + name + "-" + pulls.measure(), pulls);
        }
    }

    private void drawn(String name, ExerciseFigure figure) throws IOException {
        write("x-" + name, figure.svg(view.with(Size.FIGURE)));
        write("x-" + name + "-small", figure.svg(view.with(new Size(360, 300))));
    }

    private void sideBySide() throws IOException {
        List<Compared> knees = List.of(
                new Compared(
                        "knee extension, cuff 8\u2009kg",
                        Workouts.cuff().limbs().get(0)),
                new Compared("rail press, 60\u2009kg", Setups.plain().limbs().get(0)),
                new Compared("squat, bar 60\u2009kg", Workouts.squat().limbs().get(0)),
                new Compared("knee curl on a cam", Workouts.camCurl().limbs().get(0)));
        for (SideBySide.Quantity quantity : SideBySide.Quantity.values()) {
            chart(
                    "s-" + quantity,
                    SideBySide.of(Joint.KNEE, quantity, Phase.HELD, knees).chart());
        }
        chart(
                "s-two",
                SideBySide.of(Joint.KNEE, SideBySide.Quantity.KNEECAP_STRESS, Phase.LIFTING, knees.subList(0, 2))
                        .chart());
        chart("x-knee-cuff-stress", StressChart.of(Workouts.cuff(), 0));
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
