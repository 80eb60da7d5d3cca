package counterpull.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NumbersTest {
    @Test
    void agreesWithExactDecimalArithmetic() {
        Random random = new Random(3);
        for (int k = 0; k < 5000; k++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(7));
            int decimals = random.nextInt(5);
            String exact = new BigDecimal(value)
                    .setScale(decimals, RoundingMode.HALF_UP)
                    .toPlainString();
            String ours = Numbers.fixed(value, decimals).replace('−', '-');
            String expected = new BigDecimal(exact).signum() == 0 ? exact.replace("-", "") : exact;
            assertThat(ours).as("%s to %s", value, decimals).isEqualTo(expected);
        }
    }

    @Test
    void minusNoughtIsNought() {
        assertThat(Numbers.fixed(-0.04, 1)).isEqualTo("0.0");
        assertThat(Numbers.coordinate(-0.001)).isEqualTo("0");
    }

    @Test
    void whatIsNotKnownSaysSo() {
        assertThat(Numbers.fixed(Double.NaN, 1)).isEqualTo("not known");
        assertThat(Wording.metric().torque().say(Double.NaN)).isEqualTo("not known");
    }

    @Test
    void coordinatesAreShort() {
        assertThat(Numbers.coordinate(12.5)).isEqualTo("12.5");
        assertThat(Numbers.coordinate(-3)).isEqualTo("-3");
        assertThat(Numbers.coordinate(100)).isEqualTo("100");
        assertThat(Numbers.coordinate(1.006)).isEqualTo("1.01");
    }

    @Test
    void unitsArePeoplesOwn() {
        assertThat(Wording.metric().length().say(0.674)).isEqualTo("67.4\u2009cm");
        assertThat(Wording.inchPound().length().say(0.254)).isEqualTo("10.0\u2009in");
        assertThat(Wording.inchPound().mass().brief(20.41165665)).isEqualTo("45\u2009lb");
        assertThat(Wording.metric().angle().say(Math.PI / 2)).isEqualTo("90°");
        // 1 lbf·ft = 1.355818 N·m (NIST SP 811, appendix B.8)
        assertThat(Wording.inchPound().torque().say(135.5818)).isEqualTo("100\u2009lbf·ft");
    }
}
