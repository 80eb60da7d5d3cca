package counterpull.engine.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.validation.Published;
import counterpull.engine.validation.ReferenceFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DeLeva1996ValidationTest {
    private static final String SOURCE = "de Leva 1996, J Biomech 29(9):1223–1230, Table 4; looked up";
    private static final DeLeva1996 TABLE = new DeLeva1996();
    private static final List<String> WHOLE = List.of("Head", "Trunk");
    private static final List<String> PAIRED = List.of("Upper arm", "Forearm", "Hand", "Thigh", "Shank", "Foot");

    private static ReferenceFile file(Sex sex) {
        return ReferenceFile.read(sex == Sex.MALE ? "deleva1996-male.tsv" : "deleva1996-female.tsv");
    }

    private static List<DeLevaRow> constants(Sex sex) {
        return sex == Sex.MALE ? DeLevaTable4.MALE : DeLevaTable4.FEMALE;
    }

    private static double mass(Sex sex, String segment) {
        return TABLE.rows(sex).stream()
                .filter(row -> row.segment().equals(segment))
                .findFirst()
                .orElseThrow()
                .massFraction();
    }

    @ParameterizedTest
    @EnumSource(Sex.class)
    void isTheDataFile(Sex sex) {
        ReferenceFile file = file(sex);
        assertThat(constants(sex)).hasSize(file.size()).hasSize(21);
        for (int i = 0; i < file.size(); i++) {
            DeLevaRow row = constants(sex).get(i);
            assertThat(row.segment()).isEqualTo(file.text(i, "Segment"));
            SegmentRow transverse = row.aboutTransverseAxis();
            assertThat(transverse.endpoints()).isEqualTo(file.text(i, "Endpoints"));
            assertThat(transverse.massFraction()).isEqualTo(file.number(i, "Mass"));
            assertThat(transverse.comFraction()).isEqualTo(file.number(i, "CM Long"));
            assertThat(transverse.gyrationFraction()).isEqualTo(file.number(i, "Rg Trans"));
            assertThat(row.aboutSagittalAxis().gyrationFraction()).isEqualTo(file.number(i, "Rg Sag"));
            assertThat(row.aboutLongitudinalAxis().gyrationFraction()).isEqualTo(file.number(i, "Rg Long"));
        }
    }

    /** "Sagittal" is about the sagittal axis; sagittal-plane motion turns about the transverse one. */
    @ParameterizedTest
    @EnumSource(Sex.class)
    void turningInTheSagittalPlaneUsesTheTransverseAxis(Sex sex) {
        ReferenceFile file = file(sex);
        for (int i = 0; i < file.size(); i++) {
            if (file.text(i, "Segment").equals("Shank")) {
                assertThat(TABLE.shank(sex).gyrationFraction())
                        .isEqualTo(file.number(i, "Rg Trans"))
                        .isNotEqualTo(file.number(i, "Rg Sag"));
            }
        }
        assertThat(TABLE.shank(sex).gyrationFraction()).isEqualTo(sex == Sex.MALE ? 0.246 : 0.263);
    }

    @Test
    void theShankIsTheRowBetweenJointCentres() {
        assertThat(TABLE.shank(Sex.MALE).endpoints()).isEqualTo("KJC-AJC");
        assertThat(TABLE.shank(Sex.MALE).comFraction()).isEqualTo(0.4395);
        assertThat(TABLE.thigh(Sex.FEMALE).endpoints()).isEqualTo("HJC-KJC");
    }

    /** A public copy prints the man's head as 0.694: the sum shows it. */
    @Test
    void theSegmentsAreTheWholeBody() {
        double male = whole(Sex.MALE);
        sum("mass fractions of all segments, men", 1.0000, male);
        sum("mass fractions of all segments, women", 0.9999, whole(Sex.FEMALE));
        assertThat(mass(Sex.MALE, "Head")).isEqualTo(0.0694);
        assertThat(male - 0.0694 + 0.694).as("with the slip").isGreaterThan(1.6);
        sum("mass fraction of the trunk in three parts, men", 0.4346, trunk(Sex.MALE));
        sum("mass fraction of the trunk in three parts, women", 0.4257, trunk(Sex.FEMALE));
    }

    private static double whole(Sex sex) {
        double once = WHOLE.stream().mapToDouble(segment -> mass(sex, segment)).sum();
        return once
                + 2 * PAIRED.stream().mapToDouble(segment -> mass(sex, segment)).sum();
    }

    private static double trunk(Sex sex) {
        return mass(sex, "Upper trunk") + mass(sex, "Middle trunk") + mass(sex, "Lower trunk");
    }

    private static void sum(String quantity, double published, double ours) {
        Published.of(quantity, "")
                .source(SOURCE)
                .value(published)
                .ours(ours)
                .within(1e-9, "a sum of printed fractions");
    }

    @Test
    void thighOfSeventyThreeKilograms() {
        Segment thigh = new Anthropometry(
                        TABLE, Sex.MALE, 1.741, 73, MeasuredLengths.none().with(BodyLength.THIGH, 0.4222))
                .leg()
                .thigh();
        thigh("mass", "kg").value(10.337).ours(thigh.mass()).within(0.00051, "printed to three decimals");
        thigh("centre of mass from the hip", "m")
                .value(0.17289)
                .ours(thigh.comAlong())
                .within(0.51e-5, "printed to five decimals");
        thigh("moment of inertia", "kg·m²")
                .value(0.19944)
                .ours(thigh.inertia())
                .within(0.51e-5, "printed to five decimals");
    }

    private static Published thigh(String quantity, String unit) {
        return Published.of(quantity + " of a 0.4222 m thigh of 73 kg", unit)
                .source("de Leva 1996, Table 4; computed from its fractions, apart from this code");
    }

    /** Forearm and hand as one, against the two bodies laid out by hand. */
    @ParameterizedTest
    @EnumSource(Sex.class)
    void forearmAndHandAreOneBody(Sex sex) {
        double forearmLength = sex == Sex.MALE ? 0.2689 : 0.2643;
        double handLength = sex == Sex.MALE ? 0.0862 : 0.0780;
        Segment forearm = row(sex, "Forearm").segment(forearmLength, 70);
        Segment hand = row(sex, "Hand").segment(handLength, 70);
        Segment both = TABLE.forearmAndHand(sex).segment(forearmLength, 70);
        double handCom = forearmLength + hand.comAlong();
        double mass = forearm.mass() + hand.mass();
        double com = (forearm.mass() * forearm.comAlong() + hand.mass() * handCom) / mass;
        double aboutElbow = forearm.inertia()
                + forearm.mass() * Math.pow(forearm.comAlong(), 2)
                + hand.inertia()
                + hand.mass() * handCom * handCom;
        assertThat(both.mass()).isCloseTo(mass, within(1e-12));
        assertThat(both.comAlong()).isCloseTo(com, within(1e-12));
        assertThat(both.inertia() + both.mass() * com * com).isCloseTo(aboutElbow, within(1e-12));
    }

    private static SegmentRow row(Sex sex, String segment) {
        return TABLE.rows(sex).stream()
                .filter(row -> row.segment().equals(segment))
                .findFirst()
                .orElseThrow();
    }
}
