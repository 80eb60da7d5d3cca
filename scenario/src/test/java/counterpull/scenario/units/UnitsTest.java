package counterpull.scenario.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitsTest {
    @ParameterizedTest
    @CsvSource({
        "METRIC, 693.4349, FORCE, '693\u2009N'",
        "IMPERIAL, 693.4349, FORCE, '156\u2009lbf'",
        "METRIC, 1569.064, FORCE, '1569\u2009N'",
        "METRIC, 59.87419284, MASS, '59.9\u2009kg'",
        "IMPERIAL, 59.87419284, MASS, '132\u2009lb'",
        "METRIC, 1.25, MASS, '1.25\u2009kg'",
        "METRIC, 2.5, MASS, '2.5\u2009kg'",
        "METRIC, 0.381, LENGTH, '38.1\u2009cm'",
        "IMPERIAL, 0.381, LENGTH, '15\u2009in'",
        "METRIC, 84.6071, TORQUE, '84.6\u2009N·m'",
        "IMPERIAL, 84.6071, TORQUE, '62.4\u2009ft·lbf'",
        "METRIC, 0.7853981633974483, ANGLE, 45°",
        "IMPERIAL, -0.2181661564992912, ANGLE, -12.5°",
        "METRIC, 0.00006, AREA, '0.6\u2009cm²'",
        "METRIC, 0.123, RATIO, '12.3\u2009%'",
        "METRIC, 0, FORCE, '0\u2009N'",
        "METRIC, 0.00004, FORCE, '0.00004\u2009N'",
    })
    void writesThreeSignificantDigits(Units units, double si, Dimension dimension, String text) {
        assertThat(units.written(si, dimension)).hasToString(text);
    }

    @Test
    void writesAFixedNumberOfDecimals() {
        assertThat(Units.METRIC.written(0.38, Dimension.LENGTH, 1)).hasToString("38.0\u2009cm");
        assertThat(Units.METRIC.written(-0.0001, Dimension.FORCE, 1)).hasToString("0.0\u2009N");
        assertThat(Units.METRIC.written(12.345, Dimension.FORCE, 2)).hasToString("12.35\u2009N");
    }

    @Test
    void writesAsManyDigitsAsTheUncertaintyBears() {
        assertThat(Units.METRIC.writtenWithin(84.6071, 12.34, Dimension.TORQUE)).hasToString("85 ± 12\u2009N·m");
        assertThat(Units.METRIC.writtenWithin(84.6071, 3.14, Dimension.TORQUE)).hasToString("84.6 ± 3.1\u2009N·m");
        assertThat(Units.METRIC.writtenWithin(84.6071, 0.05, Dimension.TORQUE)).hasToString("84.61 ± 0.05\u2009N·m");
        assertThat(Units.METRIC.writtenWithin(84.6071, 0, Dimension.TORQUE)).hasToString("84.6\u2009N·m");
    }

    @Test
    void knowsWhereTheOtherSystemDiffers() {
        assertThat(Units.METRIC.differsFor(Dimension.FORCE)).isTrue();
        assertThat(Units.METRIC.differsFor(Dimension.ANGLE)).isFalse();
        assertThat(Units.IMPERIAL.other()).isEqualTo(Units.METRIC);
    }

    @Test
    void writesTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Units.METRIC.written(1234.5, Dimension.MASS, 1)).hasToString("1234.5\u2009kg");
        } finally {
            Locale.setDefault(before);
        }
    }
}
