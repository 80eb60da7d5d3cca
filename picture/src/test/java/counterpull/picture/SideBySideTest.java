package counterpull.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SideBySideTest {
    private static final Compared EXTENSION =
            new Compared("knee extension", Workouts.cuff().limbs().get(0));
    private static final Compared PRESS =
            new Compared("press", Setups.plain().limbs().get(0));
    private static final Compared CURL =
            new Compared("knee curl", Workouts.camCurl().limbs().get(0));
    private static final Compared ELBOW =
            new Compared("elbow curl", Workouts.curl().limbs().get(0));

    private static SideBySide stress(Compared... compared) {
        return SideBySide.of(Joint.KNEE, SideBySide.Quantity.KNEECAP_STRESS, Phase.HELD, List.of(compared));
    }

    @Test
    void pressAndExtensionCrossOnceInTheMiddleOfTheRange() {
        List<Crossing> crossings = stress(EXTENSION, PRESS).crossings();
        assertThat(crossings).hasSize(1);
        Crossing crossing = crossings.get(0);
        assertThat(crossing.first()).isEqualTo("press");
        assertThat(crossing.second()).isEqualTo("knee extension");
        assertThat(Math.toDegrees(crossing.angle())).isBetween(30.0, 60.0);
        // the press, symmetric to the order given
        assertThat(stress(PRESS, EXTENSION).crossings().get(0).angle()).isCloseTo(crossing.angle(), within(1e-12));
    }

    @Test
    void atTheCrossingBothAskTheSame() {
        Crossing crossing = stress(EXTENSION, PRESS).crossings().get(0);
        for (Compared one : List.of(EXTENSION, PRESS)) {
            // interpolated anew, in steps of about a degree
            assertThat(read(one.limb(), crossing.angle())).isCloseTo(crossing.value(), within(1e-9 * crossing.value()));
        }
    }

    private static double read(LimbProfile limb, double angle) {
        int i = 1;
        while (limb.angle(Joint.KNEE, i) > angle) {
            i++;
        }
        double before = limb.angle(Joint.KNEE, i - 1);
        double part = (angle - before) / (limb.angle(Joint.KNEE, i) - before);
        return limb.kneecapStress(Phase.HELD, i - 1) * (1 - part) + limb.kneecapStress(Phase.HELD, i) * part;
    }

    @Test
    void opposedActionsDoNotCross() {
        SideBySide effort = SideBySide.of(Joint.KNEE, SideBySide.Quantity.EFFORT, Phase.HELD, List.of(EXTENSION, CURL));
        assertThat(effort.crossings()).isEmpty();
    }

    @Test
    void theAngleOfACrossingIsWrittenBesideItsRing() {
        SideBySide stress = stress(EXTENSION, PRESS);
        String angle = Wording.metric().angle().say(stress.crossings().get(0).angle());
        Drawn drawn = Drawn.of(stress.chart().svg(View.light(Size.CHART)));
        assertThat(drawn.words()).anyMatch(word -> word.text().equals("equal at " + angle));
        assertThat(stress.crossings().get(0).words(Joint.KNEE, Wording.metric()))
                .isEqualTo("equal at knee flexion " + angle
                        + "; above that angle \u201cpress\u201d asks more, below it \u201cknee extension\u201d");
    }

    @Test
    void linesAreToldApartByFormAsWellAsByColour() {
        List<Layer> layers = SideBySide.of(
                        Joint.KNEE,
                        SideBySide.Quantity.TORQUE,
                        Phase.LIFTING,
                        List.of(
                                EXTENSION,
                                PRESS,
                                CURL,
                                new Compared("squat", Workouts.squat().limbs().get(0))))
                .chart()
                .layers();
        Set<String> dashes = new HashSet<>();
        Set<Marker> markers = new HashSet<>();
        Set<Ink> inks = new HashSet<>();
        for (Layer layer : layers) {
            if (layer instanceof Layer.Curve curve) {
                dashes.add(curve.look().stroke().dash);
                markers.add(curve.look().marker());
                inks.add(curve.look().ink());
            }
        }
        assertThat(dashes).hasSize(4);
        assertThat(markers).hasSize(4);
        assertThat(inks).hasSize(4);
    }

    @Test
    void anExerciseWithoutTheJointGetsAWord() {
        Chart chart = SideBySide.of(Joint.KNEE, SideBySide.Quantity.TORQUE, Phase.HELD, List.of(EXTENSION, ELBOW))
                .chart();
        assertThat(Drawn.of(chart.svg(View.light(Size.CHART))).words())
                .anyMatch(word -> word.text().equals("elbow curl: not known for the knee"));
        Chart none = SideBySide.of(Joint.KNEE, SideBySide.Quantity.TORQUE, Phase.HELD, List.of(ELBOW))
                .chart();
        assertThat(none.svg(View.light(Size.CHART))).doesNotContain("NaN");
    }

    @Test
    void fiveAreTooMany() {
        List<Compared> five = new ArrayList<>(List.of(EXTENSION, PRESS, CURL, EXTENSION, PRESS));
        assertThatThrownBy(() -> SideBySide.of(Joint.KNEE, SideBySide.Quantity.TORQUE, Phase.HELD, five))
                .isInstanceOf(Refusal.class);
    }
}
