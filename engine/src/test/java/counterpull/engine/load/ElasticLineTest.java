package counterpull.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.planar.Vec;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines off centre, doubled, and what their anchors carry. */
class ElasticLineTest {
    // lengths of about a metre and forces of some hundred newtons, rounded a few times
    private static final double ROUNDING = 1e-12;
    private static final double FORCE_ROUNDING = 1e-10;
    private static final double[] PLATE = {0.6, 0.8};

    /** Tape origin at the hip. */
    private static final SledFrame FRAME =
            new SledFrame(new Rail(0.7, Ride.PLATE, 0, 1), new SeatSetting("seat", 1, 1, 0, 2));

    private static Rubber rubber(double hardware) {
        return new Rubber("r", 0.5, LinearLaw.ofStiffness(200, 0.5), LossFraction.NONE, 2, 0, hardware);
    }

    private static ElasticLine line(int pieces, Hang hang, Placement placement, Anchor anchor, Attachment attachment) {
        return new ElasticLine(
                rubber(0),
                new ElasticLine.Pieces(pieces, hang, placement),
                0,
                new ElasticLine.Ends(anchor, attachment));
    }

    private static Anchor anchor(double lateral) {
        return new Anchor("a", new Vec(1.6, 0.3), lateral, 1000);
    }

    private static Attachment attachment(double lateral) {
        return new Attachment("t", new Vec(0, 0), lateral);
    }

    @Test
    void aSingleLineAtTheSideIsRefusedAndAnOddPairToo() {
        for (int lateral : new int[] {0, 1}) {
            assertThatThrownBy(() -> line(
                            1, Hang.SINGLE, Placement.CENTRED, anchor(0.3 * lateral), attachment(0.3 * (1 - lateral))))
                    .isInstanceOfSatisfying(
                            Refusal.class,
                            refusal -> assertThat(refusal.fault()).isEqualTo(Fault.UNBALANCED_SIDE_PULL));
        }
        assertThatThrownBy(() -> line(3, Hang.SINGLE, Placement.MATCHED_PAIR, anchor(0.3), attachment(0.3)))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.fault()).isEqualTo(Fault.UNBALANCED_SIDE_PULL);
                    assertThat(refusal.value()).isEqualTo(3);
                });
    }

    @Test
    void aMatchedPairOffCentreIsLongerAndOnlyItsInPlanePartActs() {
        LineSeries series =
                LineSeries.of(line(2, Hang.SINGLE, Placement.MATCHED_PAIR, anchor(0.5), attachment(0.2)), PLATE, FRAME);
        // from (0.6, 0, 0.2) to (1.6, 0.3, 0.5): √(1 + 0.09 + 0.09)
        double path = Math.sqrt(1.18);
        assertThat(series.path(0)).isCloseTo(path, within(ROUNDING));
        double pull = 200 * (path - 0.5);
        assertThat(series.tension(Phase.HELD, 0)).isCloseTo(pull, within(FORCE_ROUNDING));
        assertThat(series.along(Phase.HELD, 0)).isCloseTo(pull / path, within(FORCE_ROUNDING));
        assertThat(series.push(Phase.HELD, 0)).isCloseTo(-pull / path, within(FORCE_ROUNDING));
        assertThat(series.across(Phase.HELD, 0)).isCloseTo(pull * 0.3 / path, within(FORCE_ROUNDING));
        assertThat(series.aside(Phase.HELD, 0)).isCloseTo(pull * 0.3 / path, within(FORCE_ROUNDING));
        LineSeries inward =
                LineSeries.of(line(2, Hang.SINGLE, Placement.MATCHED_PAIR, anchor(0.2), attachment(0.5)), PLATE, FRAME);
        assertThat(inward.aside(Phase.HELD, 0)).isCloseTo(-pull * 0.3 / path, within(FORCE_ROUNDING));
    }

    @Test
    void anAnchorOnEachSideCarriesHalfWithItsSidePullAMiddleOneAllWithout() {
        double path = Math.sqrt(1.18);
        double pull = 200 * (path - 0.5);
        AnchorLoads side = only(line(4, Hang.SINGLE, Placement.MATCHED_PAIR, anchor(0.5), attachment(0.2)));
        // two of four strands, with all of their pull
        assertThat(side.most()).isCloseTo(2 * pull, within(FORCE_ROUNDING));
        assertThat(side.position()).isZero();
        AnchorLoads middle = only(line(4, Hang.SINGLE, Placement.MATCHED_PAIR, anchor(0), attachment(0.3)));
        // the same path; all four, but the sideways parts cancel: √1.09 of √1.18 remain
        assertThat(middle.most()).isCloseTo(4 * pull * Math.sqrt(1.09 / 1.18), within(FORCE_ROUNDING));
    }

    private static AnchorLoads only(ElasticLine line) {
        List<AnchorLoads> loads = AnchorLoads.of(List.of(LineSeries.of(line, PLATE, FRAME)), PLATE.length);
        assertThat(loads).hasSize(1);
        return loads.get(0);
    }

    @Test
    void severalLinesOnOneAnchorAddUpAsVectors() {
        Attachment low = new Attachment("low", new Vec(0, 0.3 - 0.75), 0.5);
        Attachment high = new Attachment("high", new Vec(0, 0.3 + 0.75), 0.5);
        ElasticLine one = line(2, Hang.SINGLE, Placement.MATCHED_PAIR, anchor(0.5), low);
        ElasticLine two = line(2, Hang.SINGLE, Placement.MATCHED_PAIR, anchor(0.5), high);
        List<AnchorLoads> loads = AnchorLoads.of(
                List.of(LineSeries.of(one, PLATE, FRAME), LineSeries.of(two, PLATE, FRAME)), PLATE.length);
        assertThat(loads).hasSize(1);
        // 1 m along and 0.75 m up or down: 1.25 m of path, 150 N; across cancels, 0.8 of each remains along
        assertThat(loads.get(0).most()).isCloseTo(2 * 150 * 0.8, within(FORCE_ROUNDING));
    }

    @Test
    void sidePullsOfOneAnchorThatOpposeEachOtherCancel() {
        Attachment inside = new Attachment("in", new Vec(0, 0.3), 0.5 - 0.4);
        Attachment outside = new Attachment("out", new Vec(0, 0.3), 0.5 + 0.4);
        ElasticLine one = line(2, Hang.SINGLE, Placement.MATCHED_PAIR, anchor(0.5), inside);
        ElasticLine two = line(2, Hang.SINGLE, Placement.MATCHED_PAIR, anchor(0.5), outside);
        List<AnchorLoads> loads = AnchorLoads.of(
                List.of(LineSeries.of(one, PLATE, FRAME), LineSeries.of(two, PLATE, FRAME)), PLATE.length);
        double path = Math.sqrt(1.16);
        assertThat(loads.get(0).most()).isCloseTo(2 * 200 * (path - 0.5) / path, within(FORCE_ROUNDING));
    }

    @Test
    void aDoubledPieceIsTwoStrandsAndFourTimesAsStiff() {
        ElasticLine single = line(1, Hang.SINGLE, Placement.CENTRED, anchor(0), attachment(0));
        ElasticLine doubled = line(1, Hang.DOUBLED, Placement.CENTRED, anchor(0), attachment(0));
        assertThat(single.strands()).isEqualTo(1);
        assertThat(doubled.strands()).isEqualTo(2);
        // 200 N/m: half the length makes a strand twice as stiff, and there are two
        assertThat(single.strand().stiffness(0.6)).isCloseTo(200, within(FORCE_ROUNDING));
        assertThat(doubled.strands() * doubled.strand().stiffness(0.3)).isCloseTo(800, within(FORCE_ROUNDING));
    }

    @Test
    void hardwareOfADoubledPieceTakesUpLengthOnce() {
        ElasticLine doubled = new ElasticLine(
                rubber(0.06),
                new ElasticLine.Pieces(2, Hang.DOUBLED, Placement.CENTRED),
                0.1,
                new ElasticLine.Ends(anchor(0), attachment(0)));
        assertThat(doubled.strands()).isEqualTo(4);
        // (0.50 − 0.06)/2
        assertThat(doubled.strand().naturalLength()).isCloseTo(0.22, within(ROUNDING));
        LineSeries series = LineSeries.of(doubled, new double[] {1.45}, FRAME);
        // path √(0.15² + 0.3²) less webbing of 0.1 m
        double path = Math.hypot(0.15, 0.3);
        assertThat(series.looseness(0)).isCloseTo(0.22 + 0.1 - path, within(ROUNDING));
        assertThat(series.rubberLength(0)).isCloseTo(path - 0.1, within(ROUNDING));
    }

    @Test
    void aTapeThatReadsLowerAsThePlateMovesAwayTurnsAnchorsAround() {
        SledFrame other = new SledFrame(new Rail(0.7, Ride.PLATE, 0, -1), new SeatSetting("seat", 1, 1, 0, 2));
        // reading 0 lies one metre farther than the pair's distance of 1 m
        assertThat(other.anchorAt(new Anchor("a", new Vec(-0.4, 0.3), 0, 9), 0.6)
                        .x())
                .isCloseTo(1.6, within(ROUNDING));
    }
}
