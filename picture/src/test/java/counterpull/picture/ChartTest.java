package counterpull.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class ChartTest {
    private static List<Chart> charts() {
        PressProfile plain = Setups.plain();
        PressProfile both = Setups.both();
        List<Chart> all = new ArrayList<>();
        for (Joint joint : Joint.LEG) {
            all.add(TorqueChart.of(plain, 0, joint).at(30));
            all.add(TorqueChart.of(both, 1, joint));
        }
        all.add(EffortChart.of(both, Setups.goal()));
        all.add(EffortChart.of(both, Setups.goal(), plain));
        all.add(ForceChart.of(both, Phase.LIFTING));
        all.add(ForceChart.of(both, Phase.HELD));
        all.add(StressChart.of(plain, 0));
        all.add(ComparisonChart.of(plain, both, Setups.goal()));
        Workouts.all().values().forEach(profile -> exercise(all, profile));
        sideBySide(all);
        return all;
    }

    private static void exercise(List<Chart> all, ExerciseProfile profile) {
        all.add(EffortChart.of(profile));
        for (Joint joint : profile.joints()) {
            all.add(TorqueChart.of(profile, 0, joint));
        }
        all.addAll(PullChart.of(profile, 0));
        if (StressChart.tells(profile)) {
            all.add(StressChart.of(profile, 0));
        }
    }

    private static void sideBySide(List<Chart> all) {
        List<Compared> knees = List.of(
                new Compared(
                        "knee extension with an ankle cuff",
                        Workouts.cuff().limbs().get(0)),
                new Compared("press", Setups.plain().limbs().get(0)),
                new Compared("squat", Workouts.squat().limbs().get(0)),
                new Compared("knee curl", Workouts.camCurl().limbs().get(0)));
        for (SideBySide.Quantity quantity : SideBySide.Quantity.values()) {
            for (Phase phase : Phase.values()) {
                all.add(SideBySide.of(Joint.KNEE, quantity, phase, knees).chart());
            }
        }
    }

    @Test
    void theAxisNamesTheDrivingCoordinate() {
        assertThat(EffortChart.of(Workouts.curl()).svg(View.light(Size.CHART)))
                .contains(">elbow flexion<")
                .doesNotContain("mark,");
        assertThat(EffortChart.of(Workouts.row()).svg(View.light(Size.CHART))).contains("travel along");
        assertThat(EffortChart.of(Setups.plain()).svg(View.light(Size.CHART))).contains("mark, cm");
    }

    @Test
    void aRangeThatRisesRunsFromBottomAtTheLeft() {
        Range range = Range.of(Workouts.curl());
        assertThat(range.bottom()).isLessThan(range.top());
        Range wider = range.holding(Range.of(Workouts.slantedCurl()));
        assertThat(Math.toDegrees(wider.bottom())).isCloseTo(10, within(1e-9));
        assertThat(Math.toDegrees(wider.top())).isCloseTo(135, within(1e-9));
        Plot plot = new Plot(new Box(0, 0, 100, 100), range, Ticks.covering(0, 1, 3), new Unit("N", 1, 0));
        assertThat(plot.x(range.bottom())).isEqualTo(0);
        assertThat(plot.x(range.top())).isEqualTo(100);
    }

    @Test
    void pullsAreThoseOfTheResult() {
        ExerciseProfile bench = Workouts.benchPress();
        Layer.Curve barHeld =
                (Layer.Curve) PullChart.of(bench, 0).get(0).layers().get(1);
        // half of 40 kg on each limb; held there is no inertia
        assertThat(barHeld.series().y(30)).isCloseTo(20 * 9.80665, within(1e-9));
        assertThat(PullChart.of(Workouts.slantedCurl(), 0).get(0).measure()).isEqualTo(Chart.Measure.COUPLE);
    }

    @Test
    void labelsDoNotMeetOnPageOrCard() {
        for (Size size : new Size[] {Size.CHART, Size.CARD}) {
            for (Chart chart : charts()) {
                apart(Drawn.of(chart.svg(View.light(size))).words(), chart.title() + size);
            }
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
    void lettersAreNeverTooSmallAndSizesAreWhole() {
        for (Chart chart : charts()) {
            Drawn drawn = Drawn.of(chart.svg(View.light(Size.CARD)));
            for (Element text : drawn.all("text")) {
                assertThat(Drawn.number(text, "font-size")).isGreaterThanOrEqualTo(11);
            }
            assertThat(drawn.root().getAttribute("width")).isEqualTo("400");
            assertThat(drawn.root().getAttribute("viewBox")).isEqualTo("0 0 400 240");
        }
    }

    @Test
    void whatIsNotKnownLeavesAGapAndAWord() {
        double[] x = new double[21];
        double[] y = new double[21];
        for (int i = 0; i < 21; i++) {
            x[i] = 1.5 - 0.06 * i;
            y[i] = i > 5 && i < 14 ? Double.NaN : 10 + i;
        }
        Series series = new Series(x, y);
        Layer curve = new Layer.Curve(series, Look.of(Ink.KNEE, Stroke.ASKED), "asked", "not known here");
        Range range = Range.of(Setups.plain());
        Chart chart = new Chart("gap", Chart.Measure.TORQUE, range, List.of(curve), OptionalInt.empty());
        Drawn drawn = Drawn.of(chart.svg(View.light(Size.CHART)));
        String path = drawn.in("layers", "path").get(0).getAttribute("d");
        assertThat(path.chars().filter(c -> c == 'M').count()).isEqualTo(2);
        assertThat(path.chars().filter(c -> c == 'L').count()).isEqualTo(5 + 6);
        assertThat(drawn.words()).anyMatch(word -> word.text().equals("not known here"));
        assertThat(path).doesNotContain("NaN");
    }

    @Test
    void curvesStayInsideThePlot() {
        for (Chart chart : charts()) {
            Drawn drawn = Drawn.of(chart.svg(View.light(Size.CHART)));
            Pattern point = Pattern.compile("(-?[0-9.]+) (-?[0-9.]+)");
            for (Element path : drawn.in("layers", "path")) {
                Matcher matcher = point.matcher(path.getAttribute("d"));
                while (matcher.find()) {
                    // markers and arrow heads may reach a few px over the frame (left 46, top 50)
                    assertThat(Double.parseDouble(matcher.group(1))).isBetween(38.0, 640.0 - 164 + 8);
                    assertThat(Double.parseDouble(matcher.group(2))).isBetween(42.0, 360.0 - 60 + 8);
                }
            }
        }
    }

    @Test
    void coloursAreTokensOnly() {
        Set<String> tokens = new HashSet<>();
        for (Ink ink : Ink.values()) {
            tokens.add(Palette.DARK.of(ink));
        }
        for (Chart chart : charts()) {
            Matcher colour = Pattern.compile("#[0-9a-f]{3,6}")
                    .matcher(chart.svg(View.light(Size.CHART).with(Palette.DARK)));
            while (colour.find()) {
                assertThat(tokens).contains(colour.group());
            }
        }
    }

    @Test
    void thePartsThatAreDrawnAddUpToTheTotal() {
        for (PressProfile profile : List.of(Setups.both(), Setups.seatRides())) {
            for (Phase phase : Phase.values()) {
                List<Layer> layers = ForceChart.of(profile, phase).layers();
                double sum = 0;
                for (Layer part : layers.subList(0, layers.size() - 1)) {
                    sum += ((Layer.Curve) part).series().y(20);
                }
                double total =
                        ((Layer.Curve) layers.get(layers.size() - 1)).series().y(20);
                // rounding of a sum of a dozen terms
                assertThat(sum).isCloseTo(total, within(1e-9 * total));
            }
        }
    }

    @Test
    void aPersonOfWhomNothingIsKnownStillGetsCharts() {
        PressProfile unknown = Setups.unknown();
        for (Joint joint : Joint.LEG) {
            Drawn drawn = Drawn.of(TorqueChart.of(unknown, 0, joint).svg(View.light(Size.CARD)));
            assertThat(drawn.words()).anyMatch(word -> word.text().equals("strength not known here"));
        }
        Drawn effort = Drawn.of(EffortChart.of(unknown, Setups.goal()).svg(View.light(Size.CHART)));
        assertThat(effort.words()).anyMatch(word -> word.text().equals("hip: effort not known"));
        assertThat(effort.words()).anyMatch(word -> word.text().equals("knee: effort not known"));
        apart(effort.words(), "unknown");
        PressProfile one = Setups.oneActionUnknown();
        Drawn drawn = Drawn.of(EffortChart.of(one, Setups.goal()).svg(View.light(Size.CHART)));
        assertThat(drawn.words()).anyMatch(word -> word.text().equals("knee flexion: strength not known, drawn as 0"));
    }

    @Test
    void manyPicturesCanStandInOnePage() {
        for (Chart chart : charts()) {
            assertThat(chart.svg(View.light(Size.CHART))).doesNotContain(" id=").doesNotContain("url(");
        }
    }

    @Test
    void theReadersUnitIsOnTheAxis() {
        Chart chart = TorqueChart.of(Setups.plain(), 0, Joint.KNEE);
        assertThat(chart.svg(View.light(Size.CHART).with(Wording.inchPound())))
                .contains("lbf·ft")
                .contains("mark, in");
        assertThat(chart.svg(View.light(Size.CHART))).contains("N·m").contains("mark, cm");
    }

    @Test
    void aNegativeTorqueIsNamedByTheActionItAsksFor() {
        assertThat(TorqueChart.of(Setups.plain(), 0, Joint.KNEE).svg(View.light(Size.CHART)))
                .contains("below 0: knee flexion is asked");
        assertThat(TorqueChart.of(Setups.plain(), 0, Joint.ANKLE).svg(View.light(Size.CHART)))
                .doesNotContain("below 0");
    }

    @Test
    void wordsFromOutsideAreEscapedAndCut() {
        String name = "Maximiliane <script>alert(1)</script> von & zu \"Wolkenstein-Trostburg\" ".repeat(3);
        Chart chart = ForceChart.of(Setups.plain(), Phase.HELD).titled(name);
        String svg = chart.svg(View.light(Size.CARD));
        assertThat(svg).doesNotContain("<script>").contains("&lt;script&gt;");
        assertThat(Drawn.of(svg).words().get(0).text()).endsWith("…");
        apart(Drawn.of(svg).words(), name);
    }
}
