package counterpull.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.load.LineSeries;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class FigureTest {
    private static final View VIEW = View.light(Size.FIGURE);
    // coordinates are written to a hundredth of a px
    private static final double WRITTEN = 0.03;

    private static List<Figure> figures() {
        List<Figure> all = new ArrayList<>();
        for (PressProfile profile : List.of(
                Setups.plain(),
                Setups.relieved(),
                Setups.both(),
                Setups.shallowRail(),
                Setups.seatRides(),
                Setups.tilted(),
                Setups.unknown(),
                Setups.steepSeat(),
                Setups.level())) {
            for (int position : new int[] {0, 35, 100}) {
                all.add(Figure.of(profile).at(position));
                all.add(Figure.of(profile).at(position).during(Phase.LIFTING).showing(Joint.KNEE));
            }
        }
        return all;
    }

    @Test
    void jointsAreDrawnWhereTheResultHasThem() {
        for (Figure figure : figures()) {
            List<Element> joints = Drawn.of(figure.svg(VIEW)).in("joints", "circle");
            Vec hip = centre(joints.get(0));
            Vec knee = centre(joints.get(1));
            Vec ankle = centre(joints.get(2));
            PressLimb limb = figure.profile().limbs().get(0);
            double scale = knee.minus(hip).norm() / limb.limb().leg().thigh().length();
            assertThat(ankle.minus(knee).norm())
                    .isCloseTo(scale * limb.limb().leg().shank().length(), within(WRITTEN));
            double rail = figure.profile().task().sled().rail().angle();
            int i = figure.position();
            // a hundredth of a px over more than 100 px is under 1e-3 rad
            assertThat(turn(hip, knee)).isCloseTo(Angles.wrap(limb.path().thigh(i) + rail), within(1e-3));
            assertThat(turn(knee, ankle)).isCloseTo(Angles.wrap(limb.path().shank(i) + rail), within(1e-3));
        }
    }

    private static double turn(Vec from, Vec to) {
        return Math.atan2(from.y() - to.y(), to.x() - from.x());
    }

    private static Vec centre(Element circle) {
        return new Vec(Drawn.number(circle, "cx"), Drawn.number(circle, "cy"));
    }

    private static double scale(Drawn drawn, Figure figure) {
        List<Element> joints = drawn.in("joints", "circle");
        double thigh = figure.profile().limbs().get(0).limb().leg().thigh().length();
        return centre(joints.get(1)).minus(centre(joints.get(0))).norm() / thigh;
    }

    @Test
    void tautRubberHasItsRealLength() {
        Figure figure = Figure.of(Setups.relieved());
        Drawn drawn = Drawn.of(figure.svg(VIEW));
        List<Element> ends = drawn.in("rubber", "circle");
        double px = centre(ends.get(0)).minus(centre(ends.get(1))).norm();
        LineSeries line = figure.profile().lines().get(0);
        assertThat(px / scale(drawn, figure)).isCloseTo(line.path(0), within(1e-3));
    }

    @Test
    void looseRubberHangsWithItsRealLength() {
        Figure figure = Figure.of(Setups.relieved()).at(100);
        LineSeries line = figure.profile().lines().get(0);
        assertThat(line.looseness(100)).isPositive();
        Drawn drawn = Drawn.of(figure.svg(VIEW));
        String path = "";
        for (Element element : drawn.in("rubber", "path")) {
            path = element.getAttribute("d").contains("Q") ? element.getAttribute("d") : path;
        }
        String[] numbers = path.substring(1).split("[Q ]");
        Vec[] points = new Vec[3];
        for (int i = 0; i < 3; i++) {
            points[i] = new Vec(Double.parseDouble(numbers[2 * i]), Double.parseDouble(numbers[2 * i + 1]));
        }
        double natural = line.strand().naturalLength() + line.line().deadLength();
        // 48 straight pieces stand for the curve
        assertThat(Sag.length(points[0], points[1], points[2]) / scale(drawn, figure))
                .isCloseTo(natural, within(1e-3));
    }

    @Test
    void theArrowIsToScale() {
        Figure figure = Figure.of(Setups.plain());
        Drawn drawn = Drawn.of(figure.svg(VIEW));
        Element shaft = drawn.in("push", "line").get(0);
        double px = Math.hypot(
                Drawn.number(shaft, "x2") - Drawn.number(shaft, "x1"),
                Drawn.number(shaft, "y2") - Drawn.number(shaft, "y1"));
        double newtons = figure.profile().force(Phase.HELD, 0);
        // the shaft ends 9 px short of the tip, inside the head
        double metres = (px + 9) / scale(drawn, figure);
        assertThat(metres * PushDrawing.newtonsPerMetre(figure.profile())).isCloseTo(newtons, within(newtons * 2e-3));
    }

    @Test
    void theMomentArmIsTheResultsOwn() {
        for (PressProfile profile : List.of(Setups.plain(), Setups.angled(), Setups.seatRides(), Setups.tilted())) {
            for (Joint joint : Joint.LEG) {
                Figure figure = Figure.of(profile).at(25).showing(joint);
                Drawn drawn = Drawn.of(figure.svg(VIEW));
                Element arm = drawn.in("push", "line").get(1);
                double px = Math.hypot(
                        Drawn.number(arm, "x2") - Drawn.number(arm, "x1"),
                        Drawn.number(arm, "y2") - Drawn.number(arm, "y1"));
                // a hundredth of a px at 300 px and more to the metre
                assertThat(px / scale(drawn, figure))
                        .isCloseTo(profile.limbs().get(0).momentArm(joint, Phase.HELD, 25), within(1e-4));
            }
        }
    }

    @Test
    void wordsNeitherMeetNorLeaveThePicture() {
        Box picture = new Box(0, 0, Size.FIGURE.width(), Size.FIGURE.height());
        for (Figure figure : figures()) {
            List<Drawn.Word> words = Drawn.of(figure.svg(VIEW)).words();
            assertThat(words).hasSizeGreaterThan(5);
            for (int i = 0; i < words.size(); i++) {
                assertThat(words.get(i).box().inside(picture))
                        .as(words.get(i).text())
                        .isTrue();
                for (int j = 0; j < i; j++) {
                    assertThat(words.get(i).box().overlaps(words.get(j).box()))
                            .as(words.get(i).text() + " / " + words.get(j).text())
                            .isFalse();
                }
            }
        }
    }

    @Test
    void anySizeHoldsTheFigure() {
        for (Size size : new Size[] {new Size(200, 140), new Size(360, 300), new Size(1600, 500)}) {
            Box picture = new Box(0, 0, size.width(), size.height());
            for (Figure figure : figures()) {
                for (Element joint : Drawn.of(figure.svg(View.light(size))).in("joints", "circle")) {
                    assertThat(picture.contains(centre(joint))).isTrue();
                }
            }
        }
    }

    @Test
    void theSamePictureEveryTime() {
        assertThat(Figure.of(Setups.both()).at(10).svg(VIEW))
                .isEqualTo(Figure.of(Setups.both()).at(10).svg(VIEW));
    }
}
