package counterpull.engine.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A side of the body whose lengths or masses turn out a little different. */
class ResizedSideTest {
    private static final BodySide SIDE =
            new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, MeasuredLengths.none()).side();

    /** The table's own segments for a measured length are what a changed length must give: same mass, same shares of the length. */
    @Test
    void aChangedLengthIsThatOfAMeasuredOne() {
        for (BodyLength which : BodyLength.values()) {
            if (which == BodyLength.ANKLE_FROM_HEEL) {
                continue;
            }
            double length = 1.07 * SIDE.length(which);
            MeasuredLengths measured = MeasuredLengths.none().with(which, length);
            BodySide expected = new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, measured).side();
            BodySide changed = SIDE.with(which, length);
            assertThat(changed.length(which)).isEqualTo(length);
            alike(changed.leg().thigh(), expected.leg().thigh());
            alike(changed.leg().shank(), expected.leg().shank());
            alike(changed.leg().foot().asSegment(), expected.leg().foot().asSegment());
            alike(
                    changed.arm().orElseThrow().upperArm(),
                    expected.arm().orElseThrow().upperArm());
            alike(
                    changed.arm().orElseThrow().forearm(),
                    expected.arm().orElseThrow().forearm());
            alike(changed.trunk().orElseThrow(), expected.trunk().orElseThrow());
        }
    }

    private static void alike(Segment changed, Segment expected) {
        assertThat(changed.length()).isCloseTo(expected.length(), within(1e-12));
        assertThat(changed.mass()).isEqualTo(expected.mass());
        assertThat(changed.comAlong()).isCloseTo(expected.comAlong(), within(1e-12));
        assertThat(changed.comAcross()).isCloseTo(expected.comAcross(), within(1e-12));
        assertThat(changed.inertia()).isCloseTo(expected.inertia(), within(1e-12));
    }

    @Test
    void heavierLimbsAreThoseOfAHeavierPerson() {
        BodySide heavy = new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 96, MeasuredLengths.none()).side();
        BodySide changed = SIDE.limbsHeavier(1.2).trunkHeavier(1.2);
        assertThat(changed.leg().thigh().mass()).isCloseTo(heavy.leg().thigh().mass(), within(1e-12));
        assertThat(changed.leg().shank().inertia())
                .isCloseTo(heavy.leg().shank().inertia(), within(1e-12));
        assertThat(changed.leg().foot().mass()).isCloseTo(heavy.leg().foot().mass(), within(1e-12));
        assertThat(changed.trunk().orElseThrow().mass())
                .isCloseTo(heavy.trunk().orElseThrow().mass(), within(1e-12));
    }
}
