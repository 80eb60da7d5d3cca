package counterpull.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.load.StretchLine;
import counterpull.engine.load.StretchSeries;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class ExerciseFigureTest {
    private static final View VIEW = View.light(Size.FIGURE);
    private static final View SMALL = View.light(new Size(360, 300));
    private static final Map<String, ExerciseProfile> ALL = Workouts.all();
    // coordinates are written to a hundredth of a px
    private static final double WRITTEN = 0.03;

    private static List<ExerciseFigure> figures(ExerciseProfile profile) {
        int last = profile.positions() - 1;
        ExerciseFigure figure = ExerciseFigure.of(profile);
        List<ExerciseFigure> figures = new ArrayList<>();
        for (int position : new int[] {0, last / 2, last}) {
            figures.add(figure.at(position));
            figures.add(figure.at(position)
                    .during(Phase.LIFTING)
                    .showing(profile.joints().get(0)));
        }
        return figures;
    }

    private static Vec centre(Element circle) {
        return new Vec(Drawn.number(circle, "cx"), Drawn.number(circle, "cy"));
    }

    /** Joints in the order of the limb's joints. */
    private static List<Vec> joints(Drawn drawn) {
        return drawn.in("joints", "circle").stream()
                .map(ExerciseFigureTest::centre)
                .toList();
    }

    @Test
    void jointsAreWhereTheResultHasThem() {
        ALL.forEach((name, profile) -> {
            ChainPath path = profile.limbs().get(0).path();
            for (ExerciseFigure figure : figures(profile)) {
                List<Vec> seen = joints(Drawn.of(figure.svg(VIEW)));
                assertThat(seen).as(name).hasSameSizeAs(path.joints());
                double scale = 0;
                for (int k = 1; k < seen.size(); k++) {
                    double px = seen.get(k).minus(seen.get(k - 1)).norm();
                    double m =
                            at(path, k, figure).minus(at(path, k - 1, figure)).norm();
                    scale = scale == 0 ? px / m : scale;
                    assertThat(px).as(name).isCloseTo(scale * m, within(2 * WRITTEN));
                }
            }
        });
    }

    private static Vec at(ChainPath path, int joint, ExerciseFigure figure) {
        return path.joint(path.index(path.joints().get(joint)), figure.position());
    }

    @Test
    void aSegmentPointsWhereTheResultHasIt() {
        ExerciseProfile profile = Workouts.cuff();
        ChainPath path = profile.limbs().get(0).path();
        for (int i : new int[] {0, 20, 60}) {
            List<Vec> seen = joints(Drawn.of(ExerciseFigure.of(profile).at(i).svg(VIEW)));
            Vec way = seen.get(1).minus(seen.get(0));
            // a hundredth of a px over more than 50 px
            assertThat(Math.atan2(-way.y(), way.x())).isCloseTo(Angles.wrap(path.direction(0, i)), within(1e-3));
        }
    }

    @Test
    void wordsDoNotMeet() {
        for (View view : List.of(VIEW, SMALL)) {
            ALL.forEach((name, profile) -> {
                for (ExerciseFigure figure : figures(profile)) {
                    apart(Drawn.of(figure.svg(view)).words(), name + " " + figure.position() + " " + view.size());
                }
            });
        }
    }

    private static void apart(List<Drawn.Word> words, String where) {
        for (int i = 0; i < words.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(words.get(i).box().overlaps(words.get(j).box()))
                        .as(where + ": " + words.get(i).text() + " / "
                                + words.get(j).text())
                        .isFalse();
            }
        }
    }

    @Test
    void wordsStayInThePicture() {
        ALL.forEach((name, profile) -> {
            for (ExerciseFigure figure : figures(profile)) {
                for (Drawn.Word word : Drawn.of(figure.svg(VIEW)).words()) {
                    assertThat(word.box().inside(new Box(0, 0, 760, 560)))
                            .as(name + ": " + word.text())
                            .isTrue();
                }
            }
        });
    }

    @Test
    void whateverResistsIsNamedWithItsForce() {
        ALL.forEach((name, profile) -> {
            for (ExerciseFigure figure : figures(profile)) {
                Set<String> words = new HashSet<>();
                Drawn.of(figure.svg(SMALL)).words().forEach(word -> words.add(word.text()));
                for (Touch touch : Touch.of(profile, 0)) {
                    double amount = touch.kind() == Hit.Kind.FORCE
                            ? touch.force(figure.phase(), figure.position()).norm()
                            : Math.abs(touch.couple(figure.phase(), figure.position()));
                    Unit unit = touch.kind() == Hit.Kind.FORCE
                            ? Wording.metric().force()
                            : Wording.metric().torque();
                    if (amount > 1) {
                        assertThat(words)
                                .as(name)
                                .anyMatch(word -> word.startsWith(touch.words()) && word.endsWith(unit.say(amount)));
                    }
                }
            }
        });
    }

    @Test
    void theArrowIsToScale() {
        ExerciseProfile profile = Workouts.cuff();
        Drawn drawn = Drawn.of(ExerciseFigure.of(profile).svg(VIEW));
        Element shaft = drawn.in("forces", "line").get(0);
        double px = Math.hypot(
                Drawn.number(shaft, "x2") - Drawn.number(shaft, "x1"),
                Drawn.number(shaft, "y2") - Drawn.number(shaft, "y1"));
        List<Vec> joints = joints(drawn);
        double scale = joints.get(1).minus(joints.get(0)).norm()
                / profile.limbs().get(0).path().chain().length(0);
        double perMetre = TouchDrawing.newtonsPerMetre(Touch.of(profile, 0), profile.positions() - 1);
        // the shaft ends 8 px short of the tip, inside the head; 8 kg under standard gravity
        assertThat((px + 8) / scale * perMetre).isCloseTo(8 * 9.80665, within(0.2));
    }

    @Test
    void momentArmsAreTheResultsOwn() {
        for (ExerciseProfile profile : List.of(
                Workouts.cuff(),
                Workouts.abduction(),
                Workouts.curl(),
                Workouts.row(),
                Workouts.squat(),
                Workouts.camCurl())) {
            ExerciseLimb limb = profile.limbs().get(0);
            Joint joint = profile.joints().get(0);
            for (int i : new int[] {10, 30, 50}) {
                double torque = 0;
                for (int p = 0; p < limb.pulls().size(); p++) {
                    if (!limb.pulls().get(p).isCouple()) {
                        torque += limb.share() * limb.size(p, Phase.HELD, i) * limb.arm(p, joint, i);
                    }
                }
                double force = Touch.of(profile, 0).get(0).force(Phase.HELD, i).norm();
                double arm = arm(ExerciseFigure.of(profile).at(i).showing(joint).svg(VIEW));
                // written to a millimetre
                assertThat(arm).isCloseTo(100 * Math.abs(torque) / force, within(0.051));
            }
        }
    }

    private static double arm(String svg) {
        Matcher matcher = Pattern.compile(">arm ([0-9.]+)\u2009cm<").matcher(svg);
        assertThat(matcher.find()).isTrue();
        return Double.parseDouble(matcher.group(1));
    }

    @Test
    void aLooseLineHangsWithItsOwnLength() {
        ExerciseProfile profile = Workouts.leverExtension();
        StretchLine line = (StretchLine) profile.task().exercise().resists().get(1);
        StretchSeries series = line.over(profile.limbs().get(0).path());
        assertThat(series.looseness(0)).isPositive();
        Drawn drawn = Drawn.of(ExerciseFigure.of(profile).svg(VIEW));
        String sagging = drawn.all("path").stream()
                .filter(path -> path.getAttribute("stroke").equals(Palette.LIGHT.of(Ink.RUBBER)))
                .map(path -> path.getAttribute("d"))
                .findFirst()
                .orElseThrow();
        String[] numbers = sagging.substring(1).split("[Q ]");
        Vec[] points = new Vec[3];
        for (int i = 0; i < 3; i++) {
            points[i] = new Vec(Double.parseDouble(numbers[2 * i]), Double.parseDouble(numbers[2 * i + 1]));
        }
        List<Vec> joints = joints(drawn);
        double scale = joints.get(1).minus(joints.get(0)).norm()
                / profile.limbs().get(0).path().chain().length(0);
        // 48 straight pieces stand for the curve
        assertThat(Sag.length(points[0], points[1], points[2]) / scale)
                .isCloseTo(series.path(0) + series.looseness(0), within(2e-3));
    }

    @Test
    void planesAreNamedAndARightLimbIsOnItsOwnSide() {
        assertThat(ExerciseFigure.of(Workouts.sideRaise()).svg(VIEW)).contains("seen from the front");
        assertThat(ExerciseFigure.of(Workouts.abduction()).svg(VIEW)).contains("seen from the front");
        String left = ExerciseFigure.of(Workouts.turning(Side.LEFT)).at(60).svg(VIEW);
        String right = ExerciseFigure.of(Workouts.turning(Side.RIGHT)).at(60).svg(VIEW);
        assertThat(left).contains("seen from above");
        assertThat(right).contains("seen from above");
        assertThat(ExerciseFigure.of(Workouts.cuff()).svg(VIEW)).doesNotContain("seen from");
        assertThat(ExerciseFigure.of(Workouts.turningOnTheSide()).svg(VIEW))
                .contains("seen from the head")
                .doesNotContain("level plane");
        // the hand of a left arm turned outward goes to the picture's left, of a right one to its right
        assertThat(handFromElbow(left)).isNegative();
        assertThat(handFromElbow(right)).isPositive();
    }

    private static double handFromElbow(String svg) {
        Drawn drawn = Drawn.of(svg);
        String forearm = drawn.in("limb", "path").get(1).getAttribute("d");
        String x = forearm.substring(1, forearm.indexOf(' '));
        return Double.parseDouble(x) - joints(drawn).get(0).x();
    }

    @Test
    void somebodyWhoStandsHasAFloorUnderTheSole() {
        Drawn drawn = Drawn.of(ExerciseFigure.of(Workouts.squat()).svg(VIEW));
        Element floor = drawn.in("support", "line").get(0);
        double y = Drawn.number(floor, "y1");
        List<Vec> joints = joints(drawn);
        Vec knee = joints.get(1);
        Vec ankle = joints.get(2);
        double scale = ankle.minus(knee).norm() / Setups.BODY.leg().shank().length();
        assertThat((y - ankle.y()) / scale).isCloseTo(Setups.BODY.leg().foot().ankleHeight(), within(1e-3));
    }

    @Test
    void picturesAreClean() {
        Set<String> tokens = new HashSet<>();
        for (Ink ink : Ink.values()) {
            tokens.add(Palette.DARK.of(ink));
        }
        ALL.forEach((name, profile) -> {
            for (ExerciseFigure figure : figures(profile)) {
                String svg = figure.svg(VIEW.with(Palette.DARK));
                assertThat(svg).as(name).doesNotContain("NaN", "Infinity", " id=", "url(");
                Matcher colour = Pattern.compile("#[0-9a-f]{3,6}").matcher(svg);
                while (colour.find()) {
                    assertThat(tokens).contains(colour.group());
                }
            }
        });
    }
}
