package counterpull.bench.person;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.Joint;
import counterpull.engine.strength.Prior;
import counterpull.engine.strength.Tester;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is wrong, odd or worth knowing about a strength test; the limits are ours unless said otherwise. */
final class StrengthChecks {
    /** More than the strongest leg press of one limb shows, N. */
    private static final double MOST_FORCE = 6000;

    private static final double STEEPEST_PULL = Math.toRadians(60);
    private static final double OBLIQUE_PULL = Math.toRadians(20);
    private static final double CLOSEST_PAD = 0.03;

    /** Older people's efforts of one session vary by 3.3 to 12.4 % (docs/sources.md, 26; looked up): beyond that something differed. */
    private static final double RESTLESS = 0.125;

    /** Testers differ above this (Wikholm and Bohannon 1991; looked up). */
    private static final double SURE_BY_HAND = 120;

    /** Published spreads are 20 to 35 %; three times the average is past any of them. */
    private static final double UNLIKE = 3;

    private final StrengthBench bench;
    private final Anthropometry body;

    StrengthChecks(StrengthBench bench, Anthropometry body) {
        this.bench = bench;
        this.body = body;
    }

    private String effort(int index) {
        return "effort " + (index + 1) + " of " + bench.subject().words();
    }

    private String test() {
        return bench.subject().words();
    }

    List<Remark> ofReadings() {
        List<Remark> remarks = new ArrayList<>();
        if (bench.efforts().isEmpty()) {
            remarks.add(Remark.refuses("no-efforts", test() + ": there is no effort to take a torque from"));
        }
        for (int i = 0; i < bench.efforts().size(); i++) {
            force(i).ifPresent(remarks::add);
        }
        angle().ifPresent(remarks::add);
        pad(remarks);
        if (remarks.isEmpty()) {
            remarks.addAll(new Slips(Kind.FORCE, this::effort).in(forces()));
        }
        return remarks;
    }

    private List<Double> forces() {
        return bench.efforts().stream().map(Effort::force).toList();
    }

    private Optional<Remark> force(int index) {
        double force = bench.efforts().get(index).force();
        if (!Double.isFinite(force)) {
            return Optional.of(Remark.refuses("not-a-number", effort(index) + ": the force is no number"));
        }
        if (force <= 0) {
            return Optional.of(Remark.refuses("force-not-above-zero", effort(index) + " shows ")
                    .then(force, Kind.FORCE)
                    .then("; a scale that was pulled shows more than nothing. Leave the effort out if it was none"));
        }
        if (force > MOST_FORCE) {
            return Optional.of(Remark.refuses("force-too-large", effort(index) + " shows ")
                    .then(force, Kind.FORCE)
                    .then(", more than ")
                    .then(MOST_FORCE, Kind.FORCE)
                    .then(" that nobody passes so: check the unit and the decimal point"));
        }
        return Optional.empty();
    }

    private Optional<Remark> angle() {
        Joint joint = JointOf.joint(bench.subject().action());
        double angle = bench.subject().angle();
        return JointChecks.impossible(joint, angle, test() + ": the joint angle");
    }

    private void pad(List<Remark> remarks) {
        Pad pad = bench.setting().pad();
        double reach = new DistalLimb(body, JointOf.joint(bench.subject().action())).reach();
        if (!(pad.distance() > 0) || !(pad.sd() >= 0)) {
            remarks.add(Remark.refuses("pad-not-above-zero", test() + ": the pad's distance from the joint is ")
                    .then(pad.distance(), Kind.LENGTH)
                    .then(" and must be above zero"));
        } else if (pad.distance() > reach) {
            remarks.add(Remark.refuses("pad-beyond-limb", test() + ": the pad lies ")
                    .then(pad.distance(), Kind.LENGTH)
                    .then(" from the joint, but the limb ends at ")
                    .then(reach, Kind.LENGTH)
                    .then(": measure from the joint that was tested"));
        } else if (pad.distance() < CLOSEST_PAD) {
            remarks.add(Remark.refuses("pad-on-joint", test() + ": the pad lies ")
                    .then(pad.distance(), Kind.LENGTH)
                    .then(" from the joint, where nobody can push it: check the unit"));
        }
        offSquare(remarks, Math.abs(pad.offSquare()));
    }

    private void offSquare(List<Remark> remarks, double off) {
        if (!(off <= STEEPEST_PULL)) {
            remarks.add(Remark.refuses("pull-along-limb", test() + ": the pull lies ")
                    .then(off, Kind.ANGLE)
                    .then(" off square to the limb, more than ")
                    .then(STEEPEST_PULL, Kind.ANGLE)
                    .then(", and mostly along it: 0 is square"));
        }
    }

    List<Remark> ofWeight(double weight) {
        List<Remark> remarks = new ArrayList<>();
        List<Double> torques = bench.torques(weight);
        for (int i = 0; i < torques.size(); i++) {
            if (torques.get(i) <= 0) {
                remarks.add(Remark.refuses("limb-weight-exceeds", effort(i) + " shows ")
                        .then(torques.get(i) - weight, Kind.TORQUE)
                        .then(" and the limb's weight alone makes ")
                        .then(-weight, Kind.TORQUE)
                        .then(
                                " of it: nothing is left. Check how the limb lay, or whether the scale was set to zero with"
                                        + " the limb on it"));
            }
        }
        return remarks;
    }

    List<Remark> ofResult(StrengthResult result, Optional<Prior> expected) {
        List<Remark> remarks = new ArrayList<>();
        floors(result, remarks);
        scatter(result, remarks);
        oblique(remarks);
        overpowered(remarks);
        heavy(result, remarks);
        expected.flatMap(prior -> unlike(result, prior)).ifPresent(remarks::add);
        return remarks;
    }

    private void floors(StrengthResult result, List<Remark> remarks) {
        if (result.floorOnly()) {
            remarks.add(Remark.note("floor-only", test() + ": no effort reached the most, so ")
                    .then(result.log().value(), Kind.TORQUE)
                    .then(" is what this person has at least, and says nothing of how much more"));
            return;
        }
        for (int i = 0; i < bench.efforts().size(); i++) {
            double torque = result.efforts().torques().get(i);
            Ended ended = bench.efforts().get(i).ended();
            if (!ended.reached() && torque > result.log().value()) {
                remarks.add(
                        Remark.doubts("stopped-above-reached", effort(i) + " " + ended.words() + " at ")
                                .then(torque, Kind.TORQUE)
                                .then(", above the ")
                                .then(result.log().value(), Kind.TORQUE)
                                .then(
                                        " of those that reached the most: they were not the most. It counts as a floor beside them"));
            }
        }
    }

    private void scatter(StrengthResult result, List<Remark> remarks) {
        Scatter reached = result.efforts().reached();
        if (reached.count() == 1) {
            remarks.add(Remark.note(
                    "one-effort", test() + ": one effort shows no scatter; two more tell how steady it is"));
        }
        if (reached.repeated() && reached.variation() > RESTLESS) {
            remarks.add(Remark.doubts("efforts-differ", test() + ": the efforts differ by ")
                    .then(reached.variation(), Kind.SHARE)
                    .then(" (coefficient of variation), more than ")
                    .then(RESTLESS, Kind.SHARE)
                    .then(" that one session usually shows: rest longer, and do not count one that was held back"));
        }
        if (rising(result)) {
            remarks.add(Remark.note(
                    "still-rising",
                    test() + ": every effort was stronger than the one before; another may be" + " stronger still"));
        }
    }

    private boolean rising(StrengthResult result) {
        List<Double> torques = result.efforts().torques();
        boolean rising = torques.size() > 2 && result.efforts().reached().count() == torques.size();
        for (int i = 1; i < torques.size(); i++) {
            rising &= torques.get(i) > torques.get(i - 1);
        }
        return rising && result.efforts().reached().variation() > 0.02;
    }

    private void oblique(List<Remark> remarks) {
        double off = Math.abs(bench.setting().pad().offSquare());
        if (off > OBLIQUE_PULL && off <= STEEPEST_PULL) {
            remarks.add(Remark.doubts("pull-oblique", test() + ": the pull lies ")
                    .then(off, Kind.ANGLE)
                    .then(
                            " off square, and every degree that this is wrong moves the torque: anchor the strap square to the"
                                    + " limb"));
        }
    }

    private void overpowered(List<Remark> remarks) {
        for (int i = 0; i < bench.efforts().size(); i++) {
            Effort effort = bench.efforts().get(i);
            if (bench.way().tester() == Tester.HAND_HELD && effort.ended().reached() && effort.force() > SURE_BY_HAND) {
                remarks.add(Remark.note("held-by-hand", effort(i) + " shows ")
                        .then(effort.force(), Kind.FORCE)
                        .then("; above about ")
                        .then(SURE_BY_HAND, Kind.FORCE)
                        .then(
                                " it takes a strong tester to hold. If the person moved the hand, write that it overpowered the"
                                        + " tester; a strap holds more"));
                return;
            }
        }
    }

    private void heavy(StrengthResult result, List<Remark> remarks) {
        double weight = result.efforts().limbWeight();
        if (Math.abs(weight) > result.log().value() / 2) {
            remarks.add(Remark.doubts("limb-weight-large", test() + ": the limb's weight is ")
                    .then(Math.abs(weight), Kind.TORQUE)
                    .then(" beside the ")
                    .then(result.log().value(), Kind.TORQUE)
                    .then(" that counts: test where the limb hangs or lies, or weigh it relaxed"));
        }
    }

    /** Says which slip of a unit would bring the torque back to what people have, where one does. */
    private Optional<Remark> unlike(StrengthResult result, Prior prior) {
        double angle = bench.subject().angle();
        double expected = prior.held(angle);
        if (!prior.known(angle, 0)) {
            return Optional.of(Remark.note("outside-published-angles", test() + ": nobody was measured at ")
                    .then(angle, Kind.ANGLE)
                    .then(" in the published average; the curve rests on this person there"));
        }
        double ratio = result.log().value() / expected;
        boolean weak = ratio < 1 / UNLIKE && !result.floorOnly();
        if (!weak && ratio <= UNLIKE) {
            return Optional.empty();
        }
        return Optional.of(Remark.doubts("unlike-published", test() + ": ")
                .then(result.log().value(), Kind.TORQUE)
                .then(" stands beside ")
                .then(expected, Kind.TORQUE)
                .then(" of the published average" + hint(1 / ratio)));
    }

    private static String hint(double factor) {
        String unit = factor > 5.5
                ? ": were kilograms written as newtons?"
                : factor > UNLIKE
                        ? ": were pounds written as newtons?"
                        : ": was a newton written as a kilogram or a pound?";
        return unit + " Check the pad's distance too";
    }
}
