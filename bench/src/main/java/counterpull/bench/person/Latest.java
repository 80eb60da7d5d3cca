package counterpull.bench.person;

import counterpull.bench.Remark;
import counterpull.bench.person.PersonFindings.Tested;
import counterpull.engine.body.Action;
import counterpull.engine.body.Side;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tests that hold now, those they are compared with, and who is laid beside whom. */
final class Latest {
    private final List<Tested> tests;
    private final Map<Limb, List<Tested>> now = new LinkedHashMap<>();
    private final Map<Limb, List<Tested>> before = new LinkedHashMap<>();

    /** One action of one limb. */
    record Limb(Action action, Side side) {}

    /** The left, or now; and the right, or before. */
    record Pair(Tested one, Tested other) {}

    Latest(List<Tested> tests) {
        this.tests = tests;
        for (Tested test : tests) {
            Limb limb = limb(test);
            List<LocalDate> dates = dates(limb);
            int age = dates.size() - 1 - dates.indexOf(test.date());
            if (age <= 1) {
                (age == 0 ? now : before)
                        .computeIfAbsent(limb, key -> new ArrayList<>())
                        .add(test);
            }
        }
    }

    private static Limb limb(Tested test) {
        StrengthBench.Subject subject = test.result().of().subject();
        return new Limb(subject.action(), subject.side());
    }

    private List<LocalDate> dates(Limb limb) {
        return tests.stream()
                .filter(test -> limb(test).equals(limb))
                .map(Tested::date)
                .distinct()
                .sorted()
                .toList();
    }

    /** By action and side, the tests of the latest visit that had any. */
    Map<Limb, List<Tested>> tested() {
        return now;
    }

    /** The left's tests beside the right's, of the latest visits. */
    List<Pair> sides() {
        List<Pair> pairs = new ArrayList<>();
        now.forEach((limb, left) -> {
            if (limb.side() == Side.LEFT) {
                pairs.addAll(pairs(left, now.getOrDefault(new Limb(limb.action(), Side.RIGHT), List.of())));
            }
        });
        return pairs;
    }

    /** The latest tests beside those of the visit before. */
    List<Pair> changes() {
        List<Pair> pairs = new ArrayList<>();
        now.forEach((limb, latest) -> pairs.addAll(pairs(latest, before.getOrDefault(limb, List.of()))));
        return pairs;
    }

    /** Those at one angle; where there are none, the two whose angles are nearest. */
    private static List<Pair> pairs(List<Tested> ones, List<Tested> others) {
        List<Pair> pairs = new ArrayList<>();
        for (Tested one : ones) {
            nearest(one, others).ifPresent(other -> pairs.add(new Pair(one, other)));
        }
        pairs.sort(Comparator.comparingDouble(Latest::apart));
        List<Pair> same = pairs.stream()
                .filter(pair -> apart(pair) <= Comparing.ONE_ANGLE)
                .toList();
        return same.isEmpty() && !pairs.isEmpty() ? pairs.subList(0, 1) : same;
    }

    private static double apart(Pair pair) {
        return Math.abs(angle(pair.one) - angle(pair.other));
    }

    private static Optional<Tested> nearest(Tested test, List<Tested> others) {
        double angle = angle(test);
        return others.stream().min(Comparator.comparingDouble(other -> Math.abs(angle(other) - angle)));
    }

    private static double angle(Tested test) {
        return test.result().of().subject().angle();
    }

    /** Where each side now has what the other had. */
    List<Remark> exchanged() {
        List<Remark> remarks = new ArrayList<>();
        for (Pair pair : sides()) {
            Action action = limb(pair.one()).action();
            Optional<Tested> left = nearest(pair.one(), before.getOrDefault(new Limb(action, Side.LEFT), List.of()));
            Optional<Tested> right =
                    nearest(pair.other(), before.getOrDefault(new Limb(action, Side.RIGHT), List.of()));
            if (left.isPresent() && right.isPresent()) {
                remarks.addAll(Exchanged.look(
                        action.words(),
                        new Exchanged.Sides(torque(left.get()), torque(right.get())),
                        new Exchanged.Sides(torque(pair.one()), torque(pair.other()))));
            }
        }
        return remarks;
    }

    private static double torque(Tested test) {
        return test.result().log().value();
    }
}
