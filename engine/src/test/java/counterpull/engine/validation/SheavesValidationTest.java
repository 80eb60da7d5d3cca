package counterpull.engine.validation;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.load.Loaded;
import counterpull.engine.load.StackLine;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A wire rope over n sheaves, each with an efficiency of 0.98: it pulls W/ηⁿ while the weight rises and W·ηⁿ while it sinks. The engine
 * has one fraction each way; found from the two pulls, as one does with a scale, it gives both back.
 */
class SheavesValidationTest {
    private static final String SOURCE =
            "efficiency 0.98 of a rolling sheave: rope maker's engineering note; looked up; W/ηⁿ and W·ηⁿ computed by hand";

    @ParameterizedTest
    @CsvSource({
        "1, 1.020408, 0.98",
        "2, 1.041233, 0.9604",
        "3, 1.062482, 0.941192",
        "4, 1.084166, 0.922368",
        "5, 1.106292, 0.903921"
    })
    void oneFractionGivesBothPullsBack(int sheaves, double lifting, double lowering) {
        double mean = (lifting + lowering) / 2;
        StackLine line = new StackLine(1, (lifting - lowering) / 2 / mean, Loaded.always(20), 0);
        check("pull over weight while it rises, sheaves: " + sheaves, Math.pow(0.98, -sheaves), mean * line.factor(1));
        check("pull over weight while it sinks, sheaves: " + sheaves, Math.pow(0.98, sheaves), mean * line.factor(-1));
        // cosh(5 ln(1/0.98)) − 1 is half a per cent: what is missed where the stack's printed weight is taken for the
        // mean
        assertThat(mean - 1).isBetween(0.0, 0.0052);
    }

    private static void check(String quantity, double value, double ours) {
        Published.of(quantity, "").source(SOURCE).value(value).ours(ours).within(1e-6, "given to six decimals");
    }
}
