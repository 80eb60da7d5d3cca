package counterpull.engine.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.validation.Published;
import counterpull.engine.validation.ReferenceFile;
import java.util.List;
import org.junit.jupiter.api.Test;

class DempsterWinterValidationTest {
    private static final ReferenceFile FILE = ReferenceFile.read("dempster-winter.tsv");
    private static final String WINTER =
            "Winter, Biomechanics and Motor Control of Human Movement, Table 4.1, after Dempster 1955; looked up";
    private static final DempsterWinter TABLE = new DempsterWinter();

    private static SegmentRow row(String segment) {
        return TABLE.rows(Sex.FEMALE).stream()
                .filter(row -> row.segment().equals(segment))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void isTheDataFile() {
        List<SegmentRow> rows = TABLE.rows(Sex.FEMALE);
        assertThat(rows).hasSize(FILE.size()).hasSize(19).isEqualTo(TABLE.rows(Sex.MALE));
        for (int i = 0; i < FILE.size(); i++) {
            SegmentRow row = row(FILE.text(i, "Segment"));
            assertThat(row.massFraction()).isEqualTo(FILE.number(i, "Mass"));
            assertThat(row.comFraction()).isEqualTo(FILE.number(i, "CM prox"));
            assertThat(Double.valueOf(row.gyrationFraction()))
                    .as("NaN where none is printed")
                    .isEqualTo(Double.valueOf(FILE.number(i, "Rg CM")));
            assertThat(1 - row.comFraction()).isCloseTo(FILE.number(i, "CM dist"), within(1e-12));
        }
    }

    /** Head and neck is a slip of the copy, the total leg contradicts itself: both have their own test. */
    @Test
    void radiiAboutTheEndsFollowFromTheParallelAxis() {
        int checked = 0;
        for (int i = 0; i < FILE.size(); i++) {
            String segment = FILE.text(i, "Segment");
            if (Double.isNaN(FILE.number(i, "Rg CM"))
                    || List.of("Head neck", "Total leg").contains(segment)) {
                continue;
            }
            SegmentRow row = row(segment);
            radius(segment + " about its proximal end", FILE.number(i, "Rg prox"), row.gyrationAboutProximal());
            checked++;
            if (!segment.equals("Upper arm")) {
                radius(segment + " about its distal end", FILE.number(i, "Rg dist"), row.gyrationAboutDistal());
                checked++;
            }
        }
        assertThat(checked).as("eleven rows, the upper arm from one end only").isEqualTo(21);
    }

    private static void radius(String quantity, double published, double ours) {
        Published.of("radius of gyration of " + quantity, "")
                .source(WINTER)
                .value(published)
                .ours(ours)
                .within(
                        0.0015,
                        "two inputs and the answer printed to three decimals: 0.0012, and the forearm 0.00147 off");
    }

    /** Found here: these three printed radii do not follow from their own row. None of them is used. */
    @Test
    void twoRowsOfTheTableContradictThemselves() {
        assertThat(row("Total leg").gyrationAboutProximal() - 0.560).isCloseTo(-0.0068, within(0.0001));
        assertThat(row("Total leg").gyrationAboutDistal() - 0.650).isCloseTo(-0.0081, within(0.0001));
        assertThat(row("Upper arm").gyrationAboutDistal() - 0.645).isCloseTo(0.0044, within(0.0001));
    }

    /** The copy has 0.116; the row's own numbers give 1.116, which is what the book prints. */
    @Test
    void aSlipInTheCopyIsSeenByTheParallelAxis() {
        assertThat(row("Head neck").gyrationAboutProximal()).isCloseTo(1.116, within(0.0005));
    }

    @Test
    void headArmsTrunkAndTwoLegsAreTheWholeBody() {
        sum(
                "head, arms, trunk and both legs",
                1,
                row("HAT").massFraction() + 2 * row("Total leg").massFraction());
        sum("shank and foot", 0.061, row("Leg").massFraction() + row("Foot").massFraction());
        sum(
                "thigh, shank and foot",
                0.161,
                row("Thigh").massFraction()
                        + row("Leg").massFraction()
                        + row("Foot").massFraction());
        sum(
                "trunk, head and neck",
                0.578,
                row("Trunk").massFraction() + row("Head neck").massFraction());
        sum(
                "both arms and the rest",
                0.678,
                row("Trunk head neck").massFraction() + 2 * row("Total arm").massFraction());
    }

    private static void sum(String quantity, double published, double ours) {
        Published.of("mass fraction of " + quantity, "")
                .source(WINTER)
                .value(published)
                .ours(ours)
                .within(1e-9, "a sum of printed fractions");
    }

    @Test
    void massesOfEightyKilograms() {
        Leg leg = new Anthropometry(TABLE, Sex.MALE, 1.75, 80, MeasuredLengths.none()).leg();
        mass("thigh", 8.00, leg.thigh().mass());
        mass("shank", 3.72, leg.shank().mass());
        mass("foot", 1.16, leg.foot().mass());
    }

    private static void mass(String segment, double published, double ours) {
        Published.of("mass of the " + segment + " of 80 kg", "kg")
                .source(WINTER)
                .value(published)
                .ours(ours)
                .within(1e-9, "exact products of printed fractions");
    }
}
