package counterpull.bench.person;

import counterpull.bench.Answer;
import counterpull.bench.Budget;
import counterpull.bench.Remark;
import counterpull.engine.body.Action;
import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.Side;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.Prior;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A strength test held still: efforts against a scale that a hand, a belt or a machine holds, at one joint angle.
 *
 * <p>torque = force × pad distance × cos(angle off square) + what the limb's weight took or gave. The mean of the efforts that reached
 * the person's most (of their logarithms) is what counts; the best stands beside it. The mean of three is 1.3 times steadier than
 * their best, and the best reads 0.85 coefficients of variation high (exact for independent normal efforts; computed), so that a change
 * or a side seen by the mean is seen sooner. An effort that something else ended (pain, a slip, a tester who gave way)
 * is a floor: it never pulls the mean down, and counts alone where no effort reached.
 *
 * <p>Standard uncertainty of log torque: scatter/√efforts, the way of testing between days, the pad's place, the limb's weight, as
 * independent parts. The published between-day values hold some of the scatter already, so this errs on the wide side.
 *
 * @param subject what was tested, and where
 * @param efforts in their order, one or more
 * @param setting pad and limb
 * @param way what held the scale
 */
public record StrengthBench(Subject subject, List<Effort> efforts, Setting setting, Way way) {
    /**
     * What was tested.
     *
     * @param action which action
     * @param side left or right
     * @param angle anatomical angle of the joint, rad
     */
    public record Subject(Action action, Side side, double angle) {
        /** As a person says it, without the angle. */
        public String words() {
            return action.words() + " " + side.words();
        }
    }

    /**
     * How scale and limb lay.
     *
     * @param pad where the scale was
     * @param weight how the limb's weight is taken out
     */
    public record Setting(Pad pad, LimbWeight weight) {}

    public StrengthBench {
        efforts = List.copyOf(efforts);
    }

    /**
     * What the test says.
     *
     * @param body the tested side's lengths and masses
     * @param expected the published average for this person and action, to notice a slip of a unit; empty where there is none
     */
    public Answer<StrengthResult> answer(Anthropometry body, Optional<Prior> expected) {
        StrengthChecks checks = new StrengthChecks(this, body);
        List<Remark> remarks = new ArrayList<>(checks.ofReadings());
        if (remarks.stream().anyMatch(Remark::refuses)) {
            return Answer.refused(remarks);
        }
        double weight = setting.weight.torque(subject.action, body, setting.pad);
        remarks.addAll(checks.ofWeight(weight));
        if (remarks.stream().anyMatch(Remark::refuses)) {
            return Answer.refused(remarks);
        }
        StrengthResult result = result(weight, setting.weight.sd(subject.action, body, setting.pad));
        remarks.addAll(checks.ofResult(result, expected));
        return Answer.of(result, remarks);
    }

    /** Every effort's torque, N·m. */
    List<Double> torques(double limbWeight) {
        List<Double> torques = new ArrayList<>();
        for (Effort effort : efforts) {
            torques.add(effort.force() * setting.pad.arm() + limbWeight);
        }
        return torques;
    }

    private StrengthResult result(double weight, double weightSd) {
        List<Double> torques = torques(weight);
        List<Double> reached = new ArrayList<>();
        double highestStopped = 0;
        for (int i = 0; i < torques.size(); i++) {
            if (efforts.get(i).ended().reached()) {
                reached.add(Math.log(torques.get(i)));
            } else {
                highestStopped = Math.max(highestStopped, torques.get(i));
            }
        }
        Scatter scatter =
                reached.isEmpty() ? new Scatter(0, Math.log(highestStopped), Double.NaN) : Scatter.of(reached);
        LogEstimate torque =
                new LogEstimate(Math.exp(scatter.mean()), budget(Math.exp(scatter.mean()), weightSd, scatter));
        StrengthResult.Efforts summary = new StrengthResult.Efforts(torques, scatter, weight);
        return new StrengthResult(this, summary, torque, tests(torque, scatter, highestStopped, weightSd));
    }

    private Budget budget(double torque, double weightSd, Scatter scatter) {
        Budget budget = Budget.none()
                .with(way.betweenDays(subject.action))
                .with(setting.pad.relativeSd())
                .with(weightSd / torque);
        return scatter.repeated() ? scatter.into(budget) : budget.with(way.withinSession());
    }

    private List<IsometricTest> tests(LogEstimate torque, Scatter reached, double highestStopped, double weightSd) {
        List<IsometricTest> tests = new ArrayList<>();
        boolean floorOnly = reached.count() == 0;
        if (!floorOnly) {
            tests.add(new IsometricTest(
                    subject.angle, torque.value(), atMostAll(torque.budget().standardError())));
        }
        if (floorOnly || highestStopped > torque.value()) {
            double sd = budget(highestStopped, weightSd, reached.single()).standardError();
            tests.add(IsometricTest.atLeast(subject.angle, highestStopped, atMostAll(sd)));
        }
        return tests;
    }

    /** A curve takes no test that is off by more than itself. */
    private static double atMostAll(double relativeSd) {
        return Math.min(1, relativeSd);
    }
}
