package counterpull.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StretchLineTest {
    // forces of some hundred newtons, rounded a few times
    private static final double ROUNDING = 1e-10;
    private static final ElasticLine.Pieces PAIR = new ElasticLine.Pieces(2, Hang.SINGLE, Placement.MATCHED_PAIR);

    @Test
    void balancesPower() {
        for (String ends : List.of("FB", "BF", "FL", "LF", "FG", "BB", "BL", "LL")) {
            balances(ends);
        }
    }

    /** Fixed to the body and to machines, with one guide (a dot) or two. */
    @ParameterizedTest
    @ValueSource(strings = {"F.B", "B.F", "F..B", "F.L", "L.B", "F..G", "G.L", "B..B"})
    void balancesPowerOverGuides(String ends) {
        balances(ends);
    }

    private static void balances(String ends) {
        RandomLimb random = new RandomLimb(41 + ends.hashCode());
        RandomStretch lines = new RandomStretch(random);
        int tight = 0;
        for (int trial = 0; trial < 8; trial++) {
            ChainPath path = lines.limb(ends);
            StretchLine line = lines.line(path, ends);
            StretchSeries series = line.over(path);
            List<Integer> kinks = kinks(series, path.positions());
            tight += series.tightens() ? 1 : 0;
            PowerBalance.check(line, new PowerBalance.Setting(path, Constants.STANDARD_GRAVITY, 0), kinks);
        }
        assertThat(tight).as("lines that pull at all").isGreaterThan(1);
    }

    private static List<Integer> kinks(StretchSeries series, int positions) {
        List<Integer> kinks = new ArrayList<>();
        for (int i = 1; i < positions; i++) {
            if (series.looseness(i - 1) * series.looseness(i) <= 0) {
                kinks.add(i);
            }
        }
        return kinks;
    }

    private static Rubber rubber(double loss) {
        return new Rubber("r", 0.5, LinearLaw.ofStiffness(200, 0.5), new LossFraction(loss), 2, 0, 0);
    }

    /** Both ends on one segment: the line keeps its length, whatever the rounding of its slope says. */
    @Test
    void aLineThatKeepsItsLengthLosesNothing() {
        ChainPath elbow = HeldLimb.elbow(15, 125, 41);
        OnBody from = new OnBody(new BodyPoint("from", 0, new Vec(0.0866, 0.1498)), 0);
        OnBody to = new OnBody(new BodyPoint("to", 0, new Vec(0.6, 0.0107)), 0);
        StretchSeries series =
                new StretchLine("line", rubber(0.1), ElasticLine.Pieces.one(), 0, from, to, List.of()).over(elbow);
        for (int i = 0; i < elbow.positions(); i++) {
            for (Phase phase : Phase.values()) {
                double held = series.tension(Phase.HELD, 0);
                assertThat(series.tension(phase, i)).isPositive().isCloseTo(held, within(ROUNDING));
            }
        }
    }

    private static ChainPath limb() {
        return new RandomLimb(3).next();
    }

    private static BodyPoint place(ChainPath path) {
        return new BodyPoint("wrist", path.segments() - 1, new Vec(0.2, 0));
    }

    @Test
    void aPairAtTheSideIsLongerAndOnlyItsInPlanePartActs() {
        ChainPath path = limb();
        BodyPoint wrist = place(path);
        Vec at = path.track(wrist).at(0);
        FixedPoint post = new FixedPoint("post", at.plus(new Vec(0.8, 0.6)), 0.75, 1000);
        StretchLine line = new StretchLine("band", rubber(0), PAIR, 0.25, post, new OnBody(wrist, 0), List.of());
        StretchSeries series = line.over(path);
        // 1 m in the plane and 0.75 m to the side: 1.25 m, of which 0.25 m is webbing
        assertThat(series.path(0)).isCloseTo(1.25, within(1e-14));
        assertThat(series.rubberLength(0)).isCloseTo(1, within(1e-14));
        assertThat(series.looseness(0)).isCloseTo(-0.5, within(1e-14));
        assertThat(series.tension(Phase.HELD, 0)).isCloseTo(100, within(ROUNDING));
        List<Pull> pulls = line.on(path, 9.8);
        assertThat(pulls).hasSize(1);
        assertThat(pulls.get(0).size(0, 0)).as("two strands, 1/1.25 of each").isCloseTo(160, within(ROUNDING));
        assertThat(pulls.get(0).direction(0).x()).isCloseTo(0.8, within(1e-14));
        FixedPointLoads load = only(FixedPointLoads.of(List.of(series), 1));
        assertThat(load.most()).as("one of two posts: one strand").isCloseTo(100, within(ROUNDING));
    }

    private static FixedPointLoads only(List<FixedPointLoads> loads) {
        assertThat(loads).hasSize(1);
        return loads.get(0);
    }

    @Test
    void oneStrandOverGuidesLosesItsShareAtEach() {
        ChainPath path = limb();
        BodyPoint wrist = place(path);
        PointTrack track = path.track(wrist);
        // a guide straight behind where the wrist comes from: the line runs out over it while the limb lifts
        Vec back = track.slope(0).times(-1 / track.slope(0).norm());
        Vec guide = track.at(0).plus(back);
        FixedPoint post = new FixedPoint("post", guide.plus(new Vec(0, 1)), 0, 1000);
        List<Guide> guides =
                List.of(new Guide("upper", guide.plus(new Vec(0, 0.5)), 0, 0.1), new Guide("lower", guide, 0, 0.05));
        StretchLine line =
                new StretchLine("band", rubber(0.2), ElasticLine.Pieces.one(), 1, post, new OnBody(wrist, 0), guides);
        StretchSeries series = line.over(path);
        assertThat(series.path(0)).isCloseTo(2, within(1e-14));
        assertThat(series.points(0)).hasSize(4);
        assertThat(series.tension(Phase.HELD, 0)).isCloseTo(100, within(ROUNDING));
        assertThat(series.tension(Phase.LOWERING, 0)).as("loss in the rubber").isCloseTo(80, within(ROUNDING));
        Pull pull = line.on(path, 9.8).get(0);
        assertThat(size(pull, path, Phase.HELD)).isCloseTo(100, within(ROUNDING));
        assertThat(size(pull, path, Phase.LIFTING)).isCloseTo(100 * 1.1 * 1.05, within(ROUNDING));
        assertThat(size(pull, path, Phase.LOWERING)).isCloseTo(80 * 0.9 * 0.95, within(ROUNDING));
    }

    private static double size(Pull pull, ChainPath path, Phase phase) {
        return pull.size(path.course().cell(phase, 0), 0);
    }

    /** Joint O, post at D, cuff at r, angle t between: s² = r² + D² − 2rD cos t, torque F(s) r D sin t/s; closed form (laws of cosines and sines). */
    @Test
    void aboutAJointItsTorqueIsTheClosedFormOfTheTriangle() {
        ChainPath path = limb();
        PowerBalance.Setting setting = new PowerBalance.Setting(path, 0, 0);
        double r = 0.2;
        double far = 0.7;
        BodyPoint cuff = new BodyPoint("cuff", 0, new Vec(r, 0));
        for (double lead : new double[] {-1.2, 0.1, 0.8, 2.5}) {
            double post = path.direction(0, 200) + lead;
            FixedPoint hook = new FixedPoint("hook", Vec.unit(post).times(far), 0, 1000);
            StretchLine line = new StretchLine(
                    "band", rubber(0), ElasticLine.Pieces.one(), 0, hook, new OnBody(cuff, 0), List.of());
            for (int i = 0; i < path.positions(); i += 50) {
                double t = post - path.direction(0, i);
                double s = Math.sqrt(r * r + far * far - 2 * r * far * Math.cos(t));
                double pull = Math.max(0, 200 * (s - 0.5));
                double torque = HeldTorque.of(line.on(path, 0), setting, Phase.HELD, i)[0];
                assertThat(-torque).isCloseTo(pull * r * far * Math.sin(t) / s, within(ROUNDING));
            }
        }
    }

    @Test
    void betweenTwoPlacesOfOneSegmentNothingMovesAndNoJointFeelsIt() {
        ChainPath path = limb();
        int last = path.segments() - 1;
        OnBody near = new OnBody(new BodyPoint("near", last, new Vec(-0.4, 0.1)), 0);
        OnBody far = new OnBody(new BodyPoint("far", last, new Vec(0.2, 0.1)), 0);
        StretchLine line = new StretchLine("band", rubber(0), ElasticLine.Pieces.one(), 0, near, far, List.of());
        PowerBalance.Setting setting = new PowerBalance.Setting(path, 0, 0);
        List<Pull> pulls = line.on(path, 0);
        assertThat(pulls).hasSize(2);
        assertThat(pulls.get(0).size(5, 0)).isCloseTo(20, within(ROUNDING));
        for (double torque : HeldTorque.of(pulls, setting, Phase.HELD, 5)) {
            assertThat(torque).isCloseTo(0, within(ROUNDING));
        }
    }

    @Test
    void onALeverItPullsThroughThePad() {
        ChainPath path = limb();
        LeverFrame frame = new LeverFrame(new Vec(0, 0), new Cuff(0, 0.25));
        Vec limbWay = Vec.unit(path.direction(0, 0));
        double turn = Math.signum(path.slope(0, 0));
        // peg square to the lever, 0.3 m on the side it turns to; the line runs back from there along the lever's own
        // line
        OnLever peg = new OnLever("peg", frame, 0.3, turn * Math.PI / 2, 0);
        Vec pegAt = limbWay.left().times(0.3 * turn);
        FixedPoint post = new FixedPoint("post", pegAt.plus(limbWay.times(1)), 0, 1000);
        StretchLine line = new StretchLine("band", rubber(0), ElasticLine.Pieces.one(), 0, post, peg, List.of());
        Pull pull = line.on(path, 0).get(0);
        // 100 N on an arm of 0.3 m, at a cuff 0.25 m out
        assertThat(size(pull, path, Phase.HELD)).isCloseTo(100 * 0.3 / 0.25, within(ROUNDING));
        assertThat(pull.direction(0).dot(limbWay.left().times(turn)))
                .as("against the lift")
                .isCloseTo(-1, within(1e-12));
        assertThat(pull.carrier()).contains(frame);
    }

    @Test
    void onARailItIsTheSledsElasticLine() {
        RandomLimb random = new RandomLimb(77);
        for (int trial = 0; trial < 20; trial++) {
            ChainPath path = random.next();
            BodyPoint at = random.point(path);
            PointTrack track = path.track(at);
            Vec whole = track.at(path.positions() - 1).minus(track.at(0));
            double angle = Math.atan2(whole.y(), whole.x());
            Vec u = Vec.unit(angle);
            double[] plate = new double[path.positions()];
            for (int i = 0; i < plate.length; i++) {
                plate[i] = u.dot(track.at(i)) + 5;
            }
            Anchor anchor = new Anchor("a", new Vec(random.between(5.5, 7), random.between(0.2, 0.5)), 0.4, 1000);
            Attachment hook = new Attachment("h", new Vec(0.1, random.between(-0.1, 0.1)), 0.1);
            ElasticLine line = new ElasticLine(rubber(0.1), PAIR, 0.2, new ElasticLine.Ends(anchor, hook));
            SledFrame sled = new SledFrame(new Rail(0.1, Ride.PLATE, 0, 1), new SeatSetting("s", 1, 1, 0, 9));
            LineSeries expected = LineSeries.of(line, plate, sled);
            // the same two points in the plane's axes; the rail's own line passes through the point's lowest place
            double across = u.left().dot(track.at(0));
            Vec post = u.times(anchor.at().x() - 5)
                    .plus(u.left().times(across + anchor.at().y()));
            Vec from = u.times(hook.at().x()).plus(u.left().times(hook.at().y()));
            RailFrame frame = new RailFrame(at, angle);
            StretchLine ours = new StretchLine(
                    "band",
                    rubber(0.1),
                    PAIR,
                    0.2,
                    new FixedPoint("a", post, 0.4, 1000),
                    new OnGuidedMass("h", frame, from, 0.1),
                    List.of());
            Pull pull = ours.on(path, 0).get(0);
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < plate.length; i += 50) {
                    double push = pull.size(path.course().cell(phase, i), 0);
                    assertThat(push).isCloseTo(2 * expected.push(phase, i), within(1e-9 * (1 + Math.abs(push))));
                }
            }
        }
    }

    @Test
    void whatGoesThroughOneContactCarriesTheSameMachine() {
        ChainPath path = new RandomLimb(5).next();
        BodyPoint at = place(path);
        Vec whole = path.track(at).at(path.positions() - 1).minus(path.track(at).at(0));
        double rail = Math.atan2(whole.y(), whole.x());
        Carriage carriage = new Carriage(20, Counterweight.none(), Friction.none(), 100);
        GuidedMass bar = new GuidedMass("bar", at, rail, carriage, Loaded.Plates.HERE);
        FixedPoint post = new FixedPoint("post", new Vec(0, 1.2), 0, 1000);
        OnGuidedMass peg = new OnGuidedMass("peg", bar.frame(), new Vec(0, 0.05), 0);
        StretchLine line = new StretchLine("band", rubber(0), ElasticLine.Pieces.one(), 0, post, peg, List.of());
        Pull weight = bar.on(path, 9.8).get(0);
        Pull band = line.on(path, 9.8).get(0);
        assertThat(band.carrier()).isPresent().isEqualTo(weight.carrier());
        assertThat(band.direction(7)).isEqualTo(weight.direction(7));
        Pull free = new DeadWeight("cuff", at, Loaded.always(1)).on(path, 9.8).get(0);
        assertThat(free.carrier())
                .as("a weight in the hand goes through no machine")
                .isEmpty();
    }

    @Test
    void pastItsTestedLengthItIsRefusedAndTheSeriesSaysSo() {
        ChainPath path = limb();
        FixedPoint post = new FixedPoint("post", new Vec(4, 0), 0, 1000);
        StretchLine line = new StretchLine(
                "band", rubber(0), ElasticLine.Pieces.one(), 0, post, new OnBody(place(path), 0), List.of());
        StretchSeries series = line.over(path);
        assertThat(series.longest()).isGreaterThan(2);
        assertThat(series.tension(Phase.HELD, 0)).isNaN();
        assertThatThrownBy(() -> line.on(path, 0)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.fault()).isEqualTo(Fault.PAST_TESTED_LENGTH);
            assertThat(refusal.value()).isEqualTo(series.longest());
            assertThat(refusal.limit()).isEqualTo(2);
        });
    }

    @Test
    void whatDoesNotBalanceToTheSideIsRefused() {
        ChainPath path = limb();
        OnBody wrist = new OnBody(place(path), 0);
        refusedAside(() -> line(PAIR, new FixedPoint("p", new Vec(1, 1), 0.2, 9), wrist, 0.0, 3));
        refusedAside(() -> line(ElasticLine.Pieces.one(), new FixedPoint("p", new Vec(1, 1), 0.2, 9), wrist, 0.2, 1));
        LeverFrame frame = new LeverFrame(new Vec(0, 0), new Cuff(0, 0.25));
        OnLever peg = new OnLever("peg", frame, 0.3, 0, 0.2);
        refusedAside(() -> line(ElasticLine.Pieces.one(), new FixedPoint("p", new Vec(1, 1), 0.2, 9), peg, 0.2, 1));
        OnBody beside = new OnBody(place(path), 0.2);
        assertThat(line(ElasticLine.Pieces.one(), new FixedPoint("p", new Vec(1, 1), 0.2, 9), beside, 0.2, 1)
                        .strands())
                .as("on the body one plane to the side will do")
                .isEqualTo(1);
    }

    private static StretchLine line(ElasticLine.Pieces pieces, LineEnd from, LineEnd to, double guideAside, int count) {
        ElasticLine.Pieces counted = new ElasticLine.Pieces(count, pieces.hang(), pieces.placement());
        Guide guide = new Guide("g", new Vec(1, 0), guideAside, 0);
        return new StretchLine("band", rubber(0), counted, 0, from, to, List.of(guide));
    }

    private static void refusedAside(org.assertj.core.api.ThrowableAssert.ThrowingCallable making) {
        assertThatThrownBy(making)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.UNBALANCED_SIDE_PULL));
    }

    @Test
    void twoFixedEndsAndMeetingPointsAreRefused() {
        ChainPath path = limb();
        FixedPoint post = new FixedPoint("p", new Vec(1, 1), 0, 9);
        assertThatThrownBy(() -> line(ElasticLine.Pieces.one(), post, post, 0, 1))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.EMPTY_RANGE));
        FixedPoint there = new FixedPoint("p", path.track(place(path)).at(7), 0, 9);
        StretchLine line = new StretchLine(
                "band", rubber(0), ElasticLine.Pieces.one(), 0, there, new OnBody(place(path), 0), List.of());
        assertThatThrownBy(() -> line.over(path))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.COINCIDENT_POINTS));
    }
}
