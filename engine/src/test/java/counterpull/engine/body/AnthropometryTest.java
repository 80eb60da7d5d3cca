package counterpull.engine.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class AnthropometryTest {
    private static final Anthropometry PERSON =
            new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, MeasuredLengths.none());

    private static Fault fault(ThrowingCallable call) {
        return catchThrowableOfType(Refusal.class, call).fault();
    }

    @Test
    void aFootHasItsSoleOnTheRightAndItsAnkleNearTheHeel() {
        Foot foot = PERSON.foot();
        assertThat(foot.length()).isCloseTo(0.266, within(1e-12));
        assertThat(foot.ankleHeight()).isCloseTo(0.06825, within(1e-12));
        assertThat(foot.ankleFromHeel()).isCloseTo(0.0665, within(1e-12));
        assertThat(foot.inertia()).isCloseTo(1.16 * Math.pow(0.475 * 0.266, 2), within(1e-12));
        Segment segment = foot.asSegment();
        assertThat(segment.length()).isCloseTo(0.1995, within(1e-12));
        assertThat(segment.comAlong()).as("half the foot, less the heel").isCloseTo(0.0665, within(1e-12));
        assertThat(segment.comAcross()).as("half the ankle height below").isCloseTo(-0.034125, within(1e-12));
        assertThat(segment.mass()).isEqualTo(foot.mass());
        assertThat(segment.inertia()).isEqualTo(foot.inertia());
    }

    @Test
    void aPressurePointRunsFromHeelToToe() {
        Foot foot = PERSON.foot();
        assertThat(foot.pressureAlong(0)).isCloseTo(-foot.ankleFromHeel(), within(1e-15));
        assertThat(foot.pressureAlong(0.25)).isCloseTo(0, within(1e-15));
        assertThat(foot.pressureAlong(1)).isCloseTo(foot.asSegment().length(), within(1e-15));
        assertThat(foot.pressureAcross()).isEqualTo(-foot.ankleHeight());
        assertThat(fault(() -> foot.pressureAlong(1.01))).isEqualTo(Fault.OUTSIDE_LIMITS);
    }

    @Test
    void aMeasuredLengthReplacesTheLengthAndNotTheMass() {
        MeasuredLengths tape =
                MeasuredLengths.none().with(BodyLength.THIGH, 0.40).with(BodyLength.FOOT, 0.30);
        Leg leg = new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, tape).leg();
        assertThat(leg.thigh().length()).isEqualTo(0.40);
        assertThat(leg.thigh().mass()).isEqualTo(PERSON.leg().thigh().mass());
        assertThat(leg.thigh().comAlong()).isCloseTo(0.433 * 0.40, within(1e-12));
        assertThat(leg.thigh().inertia()).isCloseTo(8 * Math.pow(0.323 * 0.40, 2), within(1e-12));
        assertThat(leg.shank()).isEqualTo(PERSON.leg().shank());
        assertThat(leg.foot().ankleFromHeel())
                .as("a quarter of the measured foot")
                .isCloseTo(0.075, within(1e-12));
    }

    @Test
    void aMeasuredAnkleStaysWhereItIs() {
        MeasuredLengths tape =
                MeasuredLengths.none().with(BodyLength.ANKLE_FROM_HEEL, 0.05).with(BodyLength.ANKLE_HEIGHT, 0.08);
        Foot foot = new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, tape).foot();
        assertThat(foot.ankleFromHeel()).isEqualTo(0.05);
        assertThat(foot.ankleHeight()).isEqualTo(0.08);
    }

    @Test
    void headArmsAndTrunkHangOnTheHip() {
        Segment trunk = PERSON.headArmsTrunk();
        assertThat(trunk.length()).isCloseTo(0.504, within(1e-12));
        assertThat(trunk.mass()).isCloseTo(54.24, within(1e-9));
        assertThat(trunk.comAlong()).isCloseTo(0.626 * 0.504, within(1e-12));
        Anthropometry other = new Anthropometry(new DeLeva1996(), Sex.MALE, 1.75, 80, MeasuredLengths.none());
        assertThat(fault(other::headArmsTrunk)).isEqualTo(Fault.OUTSIDE_PUBLISHED_RANGE);
    }

    @Test
    void theSexSelectsTheRowWhereTheTableHasTwo() {
        Anthropometry woman = new Anthropometry(new DeLeva1996(), Sex.FEMALE, 1.75, 80, MeasuredLengths.none());
        Anthropometry man = new Anthropometry(new DeLeva1996(), Sex.MALE, 1.75, 80, MeasuredLengths.none());
        assertThat(woman.leg().thigh().mass()).isCloseTo(0.1478 * 80, within(1e-12));
        assertThat(man.leg().thigh().mass()).isCloseTo(0.1416 * 80, within(1e-12));
        assertThat(woman.upperArm().mass()).isCloseTo(0.0255 * 80, within(1e-12));
        assertThat(woman.forearmAndHand().mass()).isCloseTo(0.0194 * 80, within(1e-12));
    }

    @Test
    void everySegmentTakesItsTableAndLength() {
        assertThat(PERSON.upperArm().length()).isCloseTo(0.3255, within(1e-12));
        assertThat(PERSON.forearmAndHand().length()).isCloseTo(0.2555, within(1e-12));
        assertThat(PERSON.forearmAndHand().comAlong()).isCloseTo(0.682 * 0.2555, within(1e-12));
    }

    @Test
    void refusesWhatNobodyIs() {
        assertThat(fault(() -> new Anthropometry(new DempsterWinter(), Sex.MALE, 175, 80, MeasuredLengths.none())))
                .isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(fault(() -> new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, -80, MeasuredLengths.none())))
                .isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(fault(() -> MeasuredLengths.none().with(BodyLength.SHANK, 0)))
                .isEqualTo(Fault.MUST_BE_POSITIVE);
        assertThat(fault(() -> MeasuredLengths.none().with(BodyLength.SHANK, 43)))
                .isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(fault(() -> new Segment(0.4, 0, 0.2, 0, 0.1))).isEqualTo(Fault.MUST_BE_POSITIVE);
        assertThat(fault(() -> new Segment(0.4, 1, 0.2, 0, -0.1))).isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(fault(() -> new Foot(0.2, 0.07, 0.2, 1, 0.01))).isEqualTo(Fault.OUTSIDE_LIMITS);
    }

    @Test
    void aRowWithoutARadiusOfGyrationSaysSo() {
        SegmentRow trunk = new DempsterWinter()
                .rows(Sex.MALE).stream()
                        .filter(row -> row.segment().equals("Trunk"))
                        .findFirst()
                        .orElseThrow();
        assertThat(trunk.mass(80)).isCloseTo(39.76, within(1e-9));
        assertThat(fault(() -> trunk.segment(0.5, 80))).isEqualTo(Fault.OUTSIDE_PUBLISHED_RANGE);
    }
}
