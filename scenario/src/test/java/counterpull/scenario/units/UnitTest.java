package counterpull.scenario.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
    /**
     * validation. NIST Special Publication 811 (2008), appendix B.8 and footnotes (exact factors in bold there): inch, foot, pound, pound-force
     * 4.448 221 615 260 5 N, kilogram-force 9.806 65 N; foot pound-force 1.355 818 N·m, inch pound-force 0.112 984 8 N·m, pound-force per
     * inch 175.1268 N/m, psi 6894.757 Pa are printed rounded to seven digits; here they are the quotients of the exact ones.
     * From memory, not looked up.
     */
    @ParameterizedTest
    @CsvSource({
        "INCH, 0.0254",
        "FOOT, 0.3048",
        "POUND, 0.45359237",
        "STONE, 6.35029318",
        "POUND_FORCE, 4.4482216152605",
        "KILOGRAM_FORCE, 9.80665",
        "FOOT_POUND_FORCE, 1.3558179483314004",
        "INCH_POUND_FORCE, 0.1129848290276167",
        "POUND_FORCE_PER_INCH, 175.1268352464764",
        "POUND_FORCE_PER_SQUARE_INCH, 6894.757293168361",
        "SQUARE_INCH, 0.00064516",
        "DEGREE, 0.017453292519943295"
    })
    void isItsPublishedSize(Unit unit, String si) {
        double expected = new BigDecimal(si).doubleValue();
        // The last of 16 digits may differ: the factor is a quotient of two doubles.
        assertThat(unit.toSi(1)).isCloseTo(expected, offset(expected * 3e-16));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void goesThereAndBack(Unit unit) {
        // Two roundings of a double: 2 × 1.1e-16.
        assertThat(unit.fromSi(unit.toSi(37.25))).isCloseTo(37.25, offset(37.25 * 3e-16));
    }

    @Test
    void decimalNumbersBecomeTheNearestDouble() {
        for (int i = 1; i < 2000; i++) {
            assertThat(Unit.CENTIMETRE.toSi(i))
                    .isEqualTo(new BigDecimal(i).movePointLeft(2).doubleValue());
            assertThat(Unit.MILLIMETRE.toSi(i))
                    .isEqualTo(new BigDecimal(i).movePointLeft(3).doubleValue());
            assertThat(Unit.POUND.toSi(i))
                    .isEqualTo(new BigDecimal("0.45359237")
                            .multiply(new BigDecimal(i))
                            .doubleValue());
            assertThat(Unit.INCH.toSi(i))
                    .isEqualTo(
                            new BigDecimal("0.0254").multiply(new BigDecimal(i)).doubleValue());
        }
    }

    @Test
    void noSpellingMeansTwoUnits() {
        List<String> spellings = Arrays.stream(Unit.values())
                .flatMap(unit -> unit.spellings().stream())
                .toList();
        assertThat(spellings).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyDimensionHasAnSiUnitAndAUnitInBothSystems(Dimension dimension) {
        assertThat(Unit.si(dimension).toSi(1)).isEqualTo(1);
        assertThat(Units.METRIC.unit(dimension).dimension()).isEqualTo(dimension);
        assertThat(Units.IMPERIAL.unit(dimension).dimension()).isEqualTo(dimension);
    }

    @ParameterizedTest
    @CsvSource({
        "N*m, NEWTON_METRE",
        "'N · m', NEWTON_METRE",
        "N⋅m, NEWTON_METRE",
        "Nm, NEWTON_METRE",
        "lbf*ft, FOOT_POUND_FORCE",
        "mm², SQUARE_MILLIMETRE",
        "kg·m², KILOGRAM_SQUARE_METRE",
        "°, DEGREE",
        "'', ONE"
    })
    void readsOtherSpellings(String spelling, Unit unit) {
        assertThat(Unit.spelled(spelling)).contains(unit);
    }

    @ParameterizedTest
    @CsvSource({"KG", "Lb", "n", "ft-lb", "lbm", "M", "kgs"})
    void refusesWhatIsNoUnit(String spelling) {
        assertThat(Unit.spelled(spelling)).isEmpty();
    }
}
