package counterpull.bench.person;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import counterpull.bench.repetitions.RepetitionBench;
import counterpull.bench.repetitions.SetEnd;
import counterpull.bench.repetitions.ShareOfMaximum;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Trials;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.Tester;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Benches of a person that are wrong, odd or only half a measurement: each is answered by its code and names the reading. */
class BadPersonBenchesTest {
    private record Bad(String what, List<Remark> remarks, Remark.Weight weight, String code, String... names) {}

    private static final Remark.Weight REFUSES = Remark.Weight.REFUSES;
    private static final Remark.Weight DOUBTFUL = Remark.Weight.DOUBTFUL;
    private static final Remark.Weight NOTE = Remark.Weight.NOTE;

    @TestFactory
    Stream<DynamicTest> eachIsNamed() {
        List<Bad> all = new ArrayList<>();
        all.addAll(efforts());
        all.addAll(settings());
        all.addAll(ranges());
        all.addAll(lengths());
        all.addAll(comparisons());
        all.addAll(sets());
        assertThat(all).as("this slice's share of the bad benches").hasSizeGreaterThan(30);
        return all.stream().map(bad -> DynamicTest.dynamicTest(bad.what, () -> named(bad)));
    }

    private static void named(Bad bad) {
        List<Remark> found = bad.remarks.stream()
                .filter(each -> each.code().equals(bad.code))
                .toList();
        assertThat(found).as("%s among %s", bad.code, bad.remarks).isNotEmpty();
        assertThat(found.get(0).weight()).isEqualTo(bad.weight);
        assertThat(found.get(0).inSi()).contains(bad.names).doesNotContain("NaN rad");
    }

    private static List<Remark> of(StrengthBench bench) {
        return bench.answer(Birds.BODY, Birds.published(bench.subject().action()))
                .remarks();
    }

    private static StrengthBench with(StrengthBench.Subject subject, Pad pad, LimbWeight weight, Tester tester) {
        return new StrengthBench(
                subject, Birds.reached(290, 310, 300), new StrengthBench.Setting(pad, weight), Way.of(tester));
    }

    private static StrengthBench with(Pad pad) {
        return with(Birds.knee(Side.LEFT), pad, Birds.sitting(), Tester.BELT_FIXED);
    }

    private static StrengthBench at(double degrees) {
        StrengthBench.Subject subject =
                new StrengthBench.Subject(Action.KNEE_EXTENSION, Side.LEFT, Math.toRadians(degrees));
        return with(subject, Pad.at(0.34), Birds.sitting(), Tester.BELT_FIXED);
    }

    private static List<Bad> efforts() {
        String second = "effort 2 of knee extension left";
        return List.of(
                new Bad("no effort", of(Birds.belt(List.of())), REFUSES, "no-efforts", "knee extension left"),
                new Bad(
                        "force 0",
                        of(Birds.belt(Birds.reached(300, 0, 310))),
                        REFUSES,
                        "force-not-above-zero",
                        second,
                        "0 N"),
                new Bad(
                        "force below 0",
                        of(Birds.belt(Birds.reached(300, -290))),
                        REFUSES,
                        "force-not-above-zero",
                        second,
                        "-290 N"),
                new Bad("no number", of(Birds.belt(Birds.reached(300, Double.NaN))), REFUSES, "not-a-number", second),
                new Bad(
                        "a tonne",
                        of(Birds.belt(Birds.reached(300, 9000))),
                        REFUSES,
                        "force-too-large",
                        second,
                        "9000 N",
                        "6000 N"),
                new Bad(
                        "decimal slip up",
                        of(Birds.belt(Birds.reached(300, 3100, 305))),
                        REFUSES,
                        "decimal-slip",
                        second,
                        "3100 N"),
                new Bad(
                        "decimal slip down",
                        of(Birds.belt(Birds.reached(300, 31, 305))),
                        REFUSES,
                        "decimal-slip",
                        second,
                        "31 N"),
                new Bad(
                        "kilograms as newtons",
                        of(Birds.belt(Birds.reached(31, 30, 32))),
                        DOUBTFUL,
                        "unlike-published",
                        "kilograms written as newtons"),
                new Bad(
                        "newtons as kilograms",
                        of(Birds.belt(Birds.reached(2940, 2900))),
                        DOUBTFUL,
                        "unlike-published",
                        "newton written as a kilogram"),
                new Bad(
                        "restless",
                        of(Birds.belt(Birds.reached(300, 200, 380))),
                        DOUBTFUL,
                        "efforts-differ",
                        "knee extension left"),
                new Bad(
                        "rising",
                        of(Birds.belt(Birds.reached(270, 295, 320))),
                        NOTE,
                        "still-rising",
                        "knee extension left"),
                new Bad("one effort", of(Birds.belt(Birds.reached(300))), NOTE, "one-effort", "knee extension left"),
                new Bad(
                        "all in pain",
                        of(Birds.belt(List.of(new Effort(200, Ended.PAIN)))),
                        NOTE,
                        "floor-only",
                        "knee extension left"),
                new Bad(
                        "pain above the most",
                        of(Birds.belt(List.of(Effort.reached(250), new Effort(300, Ended.PAIN)))),
                        DOUBTFUL,
                        "stopped-above-reached",
                        second,
                        "ended by pain"),
                new Bad(
                        "strong against a hand",
                        of(with(Birds.knee(Side.LEFT), Pad.at(0.34), Birds.sitting(), Tester.HAND_HELD)),
                        NOTE,
                        "held-by-hand",
                        "effort 1",
                        "120 N"));
    }

    private static List<Bad> settings() {
        StrengthBench.Subject flexion = new StrengthBench.Subject(Action.KNEE_FLEXION, Side.LEFT, Birds.SIXTY);
        StrengthBench resting = with(flexion, Pad.at(0.34), new LimbWeight.Resting(320), Tester.BELT_FIXED);
        StrengthBench weak = new StrengthBench(
                flexion,
                Birds.reached(20, 22),
                new StrengthBench.Setting(Pad.at(0.34), new LimbWeight.FromTable(Attitude.level())),
                Way.of(Tester.BELT_FIXED));
        return List.of(
                new Bad("pad at 0", of(with(Pad.at(0))), REFUSES, "pad-not-above-zero", "knee extension left", "0 m"),
                new Bad("pad in centimetres", of(with(Pad.at(34))), REFUSES, "pad-beyond-limb", "34 m"),
                new Bad("pad past the heel", of(with(Pad.at(0.6))), REFUSES, "pad-beyond-limb", "0.6 m"),
                new Bad("pad on the joint", of(with(Pad.at(0.0034))), REFUSES, "pad-on-joint", "0.0034 m"),
                new Bad(
                        "pull along the limb",
                        of(with(new Pad(0.34, 0.01, Math.toRadians(80)))),
                        REFUSES,
                        "pull-along-limb",
                        "1.3963 rad"),
                new Bad(
                        "pull oblique",
                        of(with(new Pad(0.34, 0.01, Math.toRadians(35)))),
                        DOUBTFUL,
                        "pull-oblique",
                        "knee extension left"),
                new Bad("knee at 190°", of(at(190)), REFUSES, "angle-impossible", "knee extension left", "3.3161 rad"),
                new Bad("knee at −60°", of(at(-60)), REFUSES, "angle-impossible", "does not go below"),
                new Bad("degrees as radians", of(at(Math.toDegrees(60))), REFUSES, "angle-impossible", "unit"),
                new Bad("knee at 130°", of(at(130)), NOTE, "outside-published-angles", "knee extension left"),
                new Bad(
                        "resting reading above the effort",
                        of(resting),
                        REFUSES,
                        "limb-weight-exceeds",
                        "effort 1 of knee flexion left"),
                new Bad(
                        "limb's weight above the effort",
                        of(weak),
                        REFUSES,
                        "limb-weight-exceeds",
                        "effort 1 of knee flexion left"));
    }

    private static RangeBench knee(double... degrees) {
        RangeBench.Which which =
                new RangeBench.Which(Joint.KNEE, Side.RIGHT, RangeBench.End.MOST, RangeBench.How.PAIN_FREE);
        return new RangeBench(
                which,
                AngleGauge.GONIOMETER,
                Arrays.stream(degrees).map(Math::toRadians).boxed().toList());
    }

    private static List<Bad> ranges() {
        return List.of(
                new Bad("no reading", knee().answer().remarks(), REFUSES, "no-readings", "knee flexion right"),
                new Bad(
                        "knee at 200°",
                        knee(118, 200).answer().remarks(),
                        REFUSES,
                        "angle-impossible",
                        "reading 2 of knee flexion right"),
                new Bad("no angle", knee(118, Double.NaN).answer().remarks(), REFUSES, "not-a-number", "reading 2"),
                new Bad(
                        "30° apart",
                        knee(118, 120, 88).answer().remarks(),
                        REFUSES,
                        "readings-far-apart",
                        "reading 3 of knee flexion right"),
                new Bad("18° apart", knee(118, 100).answer().remarks(), DOUBTFUL, "readings-apart", "reading 2"),
                new Bad("read once", knee(118).answer().remarks(), NOTE, "one-reading", "knee flexion right"));
    }

    private static List<Remark> thigh(Double... lengths) {
        return new LengthBench("thigh left", List.of(lengths), OptionalDouble.of(0.42))
                .answer()
                .remarks();
    }

    private static List<Bad> lengths() {
        return List.of(
                new Bad("length 0", thigh(0.42, 0.0), REFUSES, "length-impossible", "reading 2 of thigh left"),
                new Bad("centimetres as metres", thigh(42.0), REFUSES, "length-impossible", "42 m"),
                new Bad("a digit lost", thigh(0.42, 0.042), REFUSES, "decimal-slip", "reading 1 of thigh left"),
                new Bad("apart", thigh(0.42, 0.45), DOUBTFUL, "readings-apart", "reading 2 of thigh left"),
                new Bad("a whole leg", thigh(0.80), DOUBTFUL, "length-unlike-stature", "thigh left"),
                new Bad("pounds as kilograms", new Size(1.70, 141).remarks(), DOUBTFUL, "size-odd", "pounds"),
                new Bad("nobody", new Size(2.1, 40).remarks(), DOUBTFUL, "size-odd", "40 kg"));
    }

    private static StrengthResult result(StrengthBench bench) {
        return bench.answer(Birds.BODY, Optional.empty()).result().orElseThrow();
    }

    private static List<Bad> comparisons() {
        StrengthResult good = result(Birds.belt(Birds.reached(300, 305, 310)));
        StrengthResult floor = result(Birds.belt(List.of(new Effort(200, Ended.PAIN))));
        StrengthResult byHand = result(with(Birds.knee(Side.LEFT), Pad.at(0.34), Birds.sitting(), Tester.HAND_HELD));
        Comparing without = new Comparing(Optional.empty());
        Comparing curve = new Comparing(Birds.published(Action.KNEE_EXTENSION));
        return List.of(
                new Bad(
                        "a floor compared",
                        curve.visits(floor, good).remarks(),
                        REFUSES,
                        "floor-compared",
                        "knee extension left"),
                new Bad(
                        "two angles, no curve",
                        without.visits(good, result(at(90))).remarks(),
                        REFUSES,
                        "angles-differ",
                        "knee extension left"),
                new Bad(
                        "two angles",
                        curve.visits(good, result(at(90))).remarks(),
                        NOTE,
                        "compared-by-curve",
                        "knee extension left"),
                new Bad(
                        "another way",
                        curve.visits(good, byHand).remarks(),
                        DOUBTFUL,
                        "another-way",
                        "knee extension left"),
                new Bad(
                        "sides exchanged",
                        Exchanged.look("knee extension", new Exchanged.Sides(100, 140), new Exchanged.Sides(142, 101)),
                        DOUBTFUL,
                        "sides-exchanged",
                        "knee extension"));
    }

    private static List<Remark> set(LimbStrength strength, int done, SetEnd end) {
        PressProfile profile = PressProfile.of(Trials.task(strength));
        Answer<?> answer = new RepetitionBench(profile, ShareOfMaximum.LEG_PRESS, done, end, Optional.empty()).answer();
        return answer.remarks();
    }

    private static List<Bad> sets() {
        LimbStrength known = LimbStrength.published(Birds.PERSON);
        LimbStrength weak = Trials.strong(40, 10, 30);
        return List.of(
                new Bad(
                        "no repetition",
                        set(known, 0, new SetEnd.Called(2)),
                        REFUSES,
                        "repetitions-outside",
                        "repetitions done: 0"),
                new Bad(
                        "thirty repetitions",
                        set(known, 30, new SetEnd.Called(2)),
                        REFUSES,
                        "repetitions-outside",
                        "30"),
                new Bad(
                        "twelve left",
                        set(known, 8, new SetEnd.Called(12)),
                        REFUSES,
                        "reserve-outside",
                        "repetitions left: 12"),
                new Bad("minus one left", set(known, 8, new SetEnd.Called(-1)), REFUSES, "reserve-outside", "-1"),
                new Bad(
                        "nothing known",
                        set(LimbStrength.none(), 8, new SetEnd.Called(2)),
                        REFUSES,
                        "no-effort-known",
                        "strength curve"),
                new Bad("a long set", set(known, 14, new SetEnd.Called(2)), DOUBTFUL, "many-repetitions", "heavier"),
                new Bad("a very long set", set(known, 20, new SetEnd.Called(4)), NOTE, "too-many-left", "floor"),
                new Bad("stopped by pain", set(known, 8, new SetEnd.Pain()), NOTE, "set-stopped", "at least"),
                new Bad(
                        "far above the curve",
                        set(weak, 8, new SetEnd.Called(2)),
                        DOUBTFUL,
                        "unlike-curve",
                        "8 repetitions"));
    }
}
