package counterpull.engine.body;

import static counterpull.engine.body.DrillisContini1966.ANKLE_HEIGHT;
import static counterpull.engine.body.DrillisContini1966.CHIN_HEIGHT;
import static counterpull.engine.body.DrillisContini1966.ELBOW_HEIGHT;
import static counterpull.engine.body.DrillisContini1966.FINGERTIP_HEIGHT;
import static counterpull.engine.body.DrillisContini1966.FOREARM;
import static counterpull.engine.body.DrillisContini1966.HAND;
import static counterpull.engine.body.DrillisContini1966.HEAD_HEIGHT;
import static counterpull.engine.body.DrillisContini1966.HIP_HEIGHT;
import static counterpull.engine.body.DrillisContini1966.HIP_TO_SHOULDER;
import static counterpull.engine.body.DrillisContini1966.KNEE_HEIGHT;
import static counterpull.engine.body.DrillisContini1966.SHANK;
import static counterpull.engine.body.DrillisContini1966.SHOULDER_HEIGHT;
import static counterpull.engine.body.DrillisContini1966.THIGH;
import static counterpull.engine.body.DrillisContini1966.UPPER_ARM;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.validation.Published;
import org.junit.jupiter.api.Test;

class DrillisContini1966ValidationTest {
    private static final String SOURCE = "Drillis & Contini 1966, Tech. Rep. 1163.03, as Fig. 4.1 in Winter; looked up";

    @Test
    void theFractionsClose() {
        closes("knee height", KNEE_HEIGHT.fraction(), ANKLE_HEIGHT.fraction() + SHANK.fraction());
        closes("hip height", HIP_HEIGHT.fraction(), KNEE_HEIGHT.fraction() + THIGH.fraction());
        closes("shoulder height", SHOULDER_HEIGHT.fraction(), HIP_HEIGHT.fraction() + HIP_TO_SHOULDER.fraction());
        closes("stature", 1, CHIN_HEIGHT.fraction() + HEAD_HEIGHT.fraction());
    }

    private static void closes(String quantity, double published, double ours) {
        Published.of(quantity + " over stature, as a sum", "")
                .source(SOURCE)
                .value(published)
                .ours(ours)
                .within(1e-12, "a sum of printed fractions");
    }

    /** The arm's heights, from memory, are not closed to the last digit in the source either. */
    @Test
    void theArmClosesNearly() {
        assertThat(SHOULDER_HEIGHT.fraction() - UPPER_ARM.fraction())
                .as("0.632 beside the printed 0.630")
                .isCloseTo(ELBOW_HEIGHT.fraction(), within(0.0021));
        assertThat(UPPER_ARM.fraction() + FOREARM.fraction() + HAND.fraction())
                .as("0.440 beside 0.441")
                .isCloseTo(SHOULDER_HEIGHT.fraction() - FINGERTIP_HEIGHT.fraction(), within(0.0011));
    }

    @Test
    void lengthsOfAPersonOf175Centimetres() {
        Anthropometry person = new Anthropometry(new DempsterWinter(), Sex.FEMALE, 1.75, 70, MeasuredLengths.none());
        length("thigh", 0.42875, person.length(BodyLength.THIGH));
        length("shank", 0.4305, person.length(BodyLength.SHANK));
        length("foot", 0.266, person.length(BodyLength.FOOT));
        length("upper arm", 0.3255, person.length(BodyLength.UPPER_ARM));
        length("forearm", 0.2555, person.length(BodyLength.FOREARM));
    }

    private static void length(String segment, double published, double ours) {
        Published.of(segment + " length at stature 1.75 m", "m")
                .source(SOURCE)
                .value(published)
                .ours(ours)
                .within(1e-12, "exact products of printed fractions");
    }

    /** A web copy of this example states 1.68 m, but its arithmetic is that of 1.65 m. */
    @Test
    void densityOfTheWholeBody() {
        density(1.65, 1.05934);
        density(1.68, 1.06605);
    }

    private static void density(double stature, double published) {
        Published.of("whole-body density at " + stature + " m and 65 kg", "kg/l")
                .source(
                        "Drillis & Contini 1966, via Winter p. 84; equation looked up, value computed from it, apart from"
                                + " this code")
                .value(published)
                .ours(DrillisContini1966.wholeBodyDensity(stature, 65) / 1000)
                .within(0.51e-5, "printed to five decimals");
    }
}
