package counterpull.scenario.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import counterpull.scenario.units.Reading.Read;
import counterpull.scenario.units.Reading.Reason;
import counterpull.scenario.units.Reading.Refused;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTextTest {
    @ParameterizedTest
    @CsvSource({
        "45 deg, ANGLE, 0.7853981633974483",
        "-12.5 deg, ANGLE, -0.2181661564992912",
        "−12.5°, ANGLE, -0.2181661564992912",
        "60 kg, MASS, 60",
        "60kg, MASS, 60",
        "'  60  kg ', MASS, 60",
        "132 lb, MASS, 59.87419284",
        "11 st 4 lb, MASS, 71.66759446",
        "38 cm, LENGTH, 0.38",
        "15 in, LENGTH, 0.381",
        "5 ft 9 in, LENGTH, 1.7526",
        "5ft 9.5in, LENGTH, 1.7653",
        "1 m 75 cm, LENGTH, 1.75",
        "6 ft 0 in, LENGTH, 1.8288",
        "90 N, FORCE, 90",
        "1e3 N, FORCE, 1000",
        "20 lbf, FORCE, 88.96443230521",
        "10 kgf, FORCE, 98.0665",
        "96 N·m, TORQUE, 96",
        "96 N m, TORQUE, 96",
        "71 ft·lbf, TORQUE, 96.26307433152943",
        "60 mm², AREA, 6e-5",
        "150 N/m, STIFFNESS, 150",
        "5 MPa, STRESS, 5e6",
        "2 min, TIME, 120",
        "41 years, AGE, 41",
        "30 deg/s, ANGULAR_SPEED, 0.5235987755982988",
        "0.5, RATIO, 0.5",
        ".5, RATIO, 0.5",
        "50 %, RATIO, 0.5",
        "50%, RATIO, 0.5",
    })
    void reads(String text, Dimension dimension, double si) {
        Reading reading = QuantityText.read(text, dimension);
        assertThat(reading).isInstanceOf(Read.class);
        // Up to three roundings of a double in a conversion, and a sum in a compound.
        assertThat(((Read) reading).quantity().si()).isCloseTo(si, offset(Math.abs(si) * 6e-16));
    }

    @ParameterizedTest
    @CsvSource({
        "45, ANGLE, UNIT_MISSING",
        "'1,75 m', LENGTH, DECIMAL_COMMA",
        "'1,000 N', FORCE, DECIMAL_COMMA",
        "'1.000,5 N', FORCE, DECIMAL_COMMA",
        "45 degs, ANGLE, UNKNOWN_UNIT",
        "60 kilos, MASS, UNKNOWN_UNIT",
        "5'9, LENGTH, UNKNOWN_UNIT",
        "60 kg, FORCE, WRONG_UNIT",
        "60 kg, LENGTH, WRONG_UNIT",
        "50 %, LENGTH, WRONG_UNIT",
        "0.5 m, RATIO, WRONG_UNIT",
        "NaN kg, MASS, NOT_FINITE",
        ".nan, MASS, NOT_FINITE",
        "-.inf, MASS, NOT_FINITE",
        "Infinity m, LENGTH, NOT_FINITE",
        "1e999 m, LENGTH, NOT_FINITE",
        "1e308 kN, FORCE, NOT_FINITE",
        "'', LENGTH, NOT_A_NUMBER",
        "tall, LENGTH, NOT_A_NUMBER",
        "0x10 m, LENGTH, UNKNOWN_UNIT",
        "1_000 m, LENGTH, UNKNOWN_UNIT",
        "9 in 5 ft, LENGTH, NOT_A_NUMBER",
        "5 ft 13 in, LENGTH, NOT_A_NUMBER",
        "5.5 ft 2 in, LENGTH, NOT_A_NUMBER",
        "5 ft -2 in, LENGTH, NOT_A_NUMBER",
        "5 ft 9, LENGTH, UNIT_MISSING",
        "5 ft 9 kg, LENGTH, WRONG_UNIT",
        "50 % 2 %, RATIO, NOT_A_NUMBER",
        "38 cm 38 cm, LENGTH, NOT_A_NUMBER",
        "about 38 cm, LENGTH, NOT_A_NUMBER",
        "38 ± 1 cm, LENGTH, UNKNOWN_UNIT",
    })
    void refuses(String text, Dimension dimension, Reason reason) {
        assertThat(QuantityText.read(text, dimension))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.reason()).isEqualTo(reason));
    }

    @Test
    void refusesEndlessTextQuickly() {
        assertThat(QuantityText.read("1 ".repeat(500_000), Dimension.LENGTH)).isInstanceOf(Refused.class);
    }

    /** crosscheck: writing and reading are each other's inverse, to the last bit. */
    @Test
    void whatIsWrittenExactlyReadsBackAsTheSameNumber() {
        Random random = new Random(20261125);
        for (int i = 0; i < 20_000; i++) {
            double si = (random.nextDouble() - 0.3) * Math.pow(10, random.nextInt(8) - 4);
            Unit unit = Unit.values()[random.nextInt(Unit.values().length)];
            String text = Quantity.exactly(si, unit).toString();
            Reading reading = QuantityText.read(text, unit.dimension());
            assertThat(reading).as(text).isInstanceOf(Read.class);
            assertThat(((Read) reading).quantity().si()).as(text).isEqualTo(si);
        }
    }

    @Test
    void whatAPersonWroteIsWrittenBackAsTheyWroteIt() {
        assertThat(Quantity.exactly(Unit.DEGREE.toSi(45), Unit.DEGREE)).hasToString("45 deg");
        assertThat(Quantity.exactly(Unit.POUND.toSi(132), Unit.POUND)).hasToString("132 lb");
        assertThat(Quantity.exactly(0.38, Unit.CENTIMETRE)).hasToString("38 cm");
        assertThat(Quantity.exactly(0, Unit.CENTIMETRE)).hasToString("0 cm");
        assertThat(Quantity.exactly(1e6, Unit.METRE)).hasToString("1000000 m");
    }
}
