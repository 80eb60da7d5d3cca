package counterpull.report.words;

import counterpull.engine.Fault;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.strength.Tester;
import counterpull.engine.uncertainty.Again;
import counterpull.engine.uncertainty.Band;
import counterpull.engine.uncertainty.Chance;
import counterpull.engine.uncertainty.Contribution;
import counterpull.engine.uncertainty.Contributions;
import counterpull.engine.uncertainty.EffortBands;
import counterpull.engine.uncertainty.Hardest;
import counterpull.engine.uncertainty.HowSure;
import counterpull.engine.uncertainty.NextReading;
import counterpull.report.table.Decimals;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How sure an answer is, in sentences. */
public final class SureWords {
    private static final double WORTH_SAYING = 0.02;
    private static final double WORTH_NAMING = 0.05;
    private static final double WORTH_READING = 0.05;
    private static final double WORTH_TEACHING = 0.15;
    private static final Map<Fault, String> WHY = Map.of(
            Fault.CONTACT_LOST, "contact lost",
            Fault.SLACK_STACK, "a line gone slack",
            Fault.PAST_TESTED_LENGTH, "rubber past its tested length",
            Fault.OUT_OF_REACH, "out of reach",
            Fault.PAST_STRAIGHT, "past straight",
            Fault.EMPTY_RANGE, "nothing left of the range");

    private final HowSure sure;
    private final EffortBands bands;
    private final UnitSet units;

    /** For one answer in a reader's units. */
    public SureWords(HowSure sure, UnitSet units) {
        this.sure = sure;
        bands = sure.bands();
        this.units = units;
    }

    /** Everything that a reader should know, the most important first. */
    public List<String> all() {
        List<String> words = new ArrayList<>(List.of(hardest()));
        if (sure.contributions().isPresent()) {
            words.add(ceiling());
            words.add(contributors());
        }
        words.addAll(others());
        next().ifPresent(words::add);
        return words;
    }

    /** Where the largest effort lies and between which ends nine of ten draws have it. */
    public String hardest() {
        if (sure.contributions().isEmpty()) {
            return "No effort is known anywhere in this range, so it cannot be said how sure one is.";
        }
        Hardest at = sure.contributions().get().hardest();
        Band peak = bands.peak();
        String where = "Hardest as measured: " + at.side().words() + " "
                + at.action().words() + ", "
                + at.phase().words() + ", at " + new ChallengeWords(sure.profile(), units).at(at.position()) + ": "
                + percent(at.effort()) + " of what it has. ";
        return where + "With everything that is not known exactly, the largest effort of a repetition lies between "
                + Decimals.fixed(100 * peak.low(), 0) + " and " + percent(peak.high())
                + " (nine in ten of " + thousands(bands.draws()) + " draws).";
    }

    /** The chance that the ceiling is passed anywhere. */
    public String ceiling() {
        double ceiling = bands.looked().ceiling();
        String what = ceiling == 1
                ? "More than there is, 100\u00A0%, is asked"
                : "The ceiling of " + percent(ceiling) + " is passed";
        return what + " somewhere in the range with a chance of " + chance(bands.ceilingPassed()) + ".";
    }

    /** "12 % ± 1 %", "less than 1 in 3,000". */
    public static String chance(Chance chance) {
        if (chance.never()) {
            double in = Math.floor(1 / chance.most() / 10) * 10;
            double round = in >= 1000 ? Math.floor(in / 1000) * 1000 : in;
            return "less than 1 in " + thousands((int) Math.max(1, round));
        }
        double points = 100 * chance.error();
        int decimals = points < 0.5 && 100 * chance.value() < 20 ? 1 : 0;
        double shown = Math.max(points, decimals == 1 ? 0.1 : 1);
        return Decimals.fixed(100 * chance.value(), decimals) + "\u00A0% (\u00B1" + Decimals.fixed(shown, decimals)
                + ")";
    }

    private static String thousands(int number) {
        String digits = Integer.toString(number);
        return digits.length() > 3
                ? digits.substring(0, digits.length() - 3) + "," + digits.substring(digits.length() - 3)
                : digits;
    }

    /** The inputs that contribute most. */
    public String contributors() {
        Contributions found = sure.contributions().orElseThrow();
        if (found.ranked().isEmpty() || found.total() == 0) {
            return "Everything counts as known exactly: the bands have no width.";
        }
        Contribution first = found.ranked().get(0);
        String most = "Most of that comes from " + named(first);
        if (found.ranked().size() > 1 && found.ranked().get(1).share() >= WORTH_NAMING) {
            most += " and from " + named(found.ranked().get(1));
        }
        return most + ".";
    }

    private static String named(Contribution one) {
        return one.name() + " (" + SpreadWords.share(one.share()) + " of the variance)";
    }

    /** Chances beside the ceiling's, and what could not be set up; a sentence each where there is something to say. */
    public List<String> others() {
        List<String> words = new ArrayList<>();
        words.addAll(elsewhere());
        for (Joint joint : sure.profile().joints()) {
            Chance passed = bands.limitPassed(joint);
            if (!passed.never()) {
                words.add(
                        "The " + joint.words() + " goes past this person's own limit of it somewhere with a chance of "
                                + chance(passed) + ".");
            }
        }
        words.addAll(refused());
        return words;
    }

    private List<String> elsewhere() {
        if (sure.contributions().isEmpty()) {
            return List.of();
        }
        Action told = sure.contributions().get().hardest().action();
        List<String> other = new ArrayList<>();
        for (Action action : Action.values()) {
            Chance here = bands.hardest(action);
            if (action != told && here.value() >= WORTH_SAYING) {
                other.add(action.words() + " in " + SpreadWords.share(here.value()));
            }
        }
        return other.isEmpty()
                ? List.of()
                : List.of("The hardest is another one in some draws: " + String.join(", ", other) + ".");
    }

    private List<String> refused() {
        List<String> words = new ArrayList<>();
        for (Fault fault : Fault.values()) {
            int count = bands.refused(fault);
            if (count > 0) {
                words.add(thousands(count) + " of " + thousands(bands.draws()) + " draws could not be set up: "
                        + WHY.getOrDefault(fault, "outside what can be computed") + ". They are in no band.");
            }
        }
        return words;
    }

    /** The reading worth taking next, and what no reading settles; empty where nothing is known. */
    public Optional<String> next() {
        return sure.contributions().filter(found -> found.total() > 0).map(found -> best() + unsettled(found));
    }

    private String best() {
        if (sure.next().isEmpty() || sure.next().get(0).gain() < WORTH_READING) {
            return "Next reading: none would help much.";
        }
        NextReading first = sure.next().get(0);
        return "Next reading: " + reading(first.what()) + ". The largest effort would be known to \u00B1"
                + SpreadWords.share(first.after()) + " of itself instead of \u00B1" + SpreadWords.share(first.before())
                + ".";
    }

    private static String unsettled(Contributions found) {
        double share = 0;
        List<String> names = new ArrayList<>();
        for (Contribution one : found.ranked()) {
            if (one.again() instanceof Again.EachTime) {
                share += one.share();
                if (names.isEmpty() || one.share() >= WORTH_NAMING) {
                    names.add(one.name());
                }
            }
        }
        return share < WORTH_TEACHING
                ? ""
                : " " + SpreadWords.share(share) + " of the variance is another one at each repetition ("
                        + String.join("; ", names) + "): no reading settles that; teach it and watch it.";
    }

    /** What to read, as an order. */
    public String reading(NextReading.What what) {
        if (what instanceof NextReading.Test test) {
            return "test " + test.side().words() + " " + test.action().words() + " at "
                    + SetupWords.trimmed(Measure.ANGLE, test.angle(), units).replace('-', '\u2212') + " ("
                    + tester(sure.tester()) + ")";
        }
        return ((NextReading.Measure) what).words();
    }

    private static String tester(Tester tester) {
        return switch (tester) {
            case HAND_HELD -> "hand-held";
            case BELT_FIXED -> "belt";
            case REPETITIONS -> "repetitions";
            case ISOKINETIC -> "isokinetic";
        };
    }

    /** What is not in it. */
    public String notVaried() {
        return "Not varied: " + String.join("; ", sure.notVaried()) + ". Each would widen the bands.";
    }

    private static String percent(double share) {
        return Decimals.fixed(100 * share, 0) + "\u00A0%";
    }
}
