package counterpull.report.bench;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.person.PersonFindings;
import counterpull.bench.person.PersonFindings.Beside;
import counterpull.bench.person.PersonFindings.Range;
import counterpull.bench.person.PersonFindings.Tested;
import counterpull.bench.person.StrengthBench;
import counterpull.readings.people.PersonSubject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What was measured on a person, for people. */
final class PersonSection {
    private static final String CAUTION =
            "Strength and range after an injury are the licensed professional's to judge. A test that pain ended is a floor, and no"
                    + " test is worth repeating into pain.";

    private final PersonSubject subject;
    private final PersonFindings findings;
    private final BenchWords words;

    PersonSection(PersonSubject subject, BenchWords words) {
        this.subject = subject;
        this.words = words;
        findings = subject.findings();
    }

    BenchSection section() {
        boolean nothing = findings.tests().isEmpty()
                && findings.ranges().isEmpty()
                && findings.lengths().isEmpty();
        return new BenchSection(
                subject.name(),
                nothing ? "" : headline(),
                nothing ? List.of() : sentences(),
                new PersonTables(findings, words).all(),
                new PersonCharts(findings).all(),
                nothing ? findings.remarks() : leftOut(),
                nothing ? "" : subject.forScenario());
    }

    /** A reading that was refused costs its own test alone: the rest stands. */
    private List<Remark> leftOut() {
        List<Remark> remarks = new ArrayList<>();
        for (Remark remark : findings.remarks()) {
            if (remark.refuses()) {
                List<Remark.Piece> sentence = new ArrayList<>(remark.sentence());
                sentence.add(0, new Remark.Text("left out: "));
                remarks.add(new Remark(Remark.Weight.DOUBTFUL, remark.code(), sentence));
            } else {
                remarks.add(remark);
            }
        }
        return remarks;
    }

    private String headline() {
        Optional<Beside> farthest = findings.comparisons().sides().stream()
                .max(Comparator.comparingDouble(
                        pair -> Math.abs(Math.log(pair.comparison().ratio()))));
        if (farthest.isPresent()) {
            return beside(farthest.get());
        }
        if (!findings.tests().isEmpty()) {
            Tested last = findings.tests().get(findings.tests().size() - 1);
            return at(last, last.result().of().subject().words()) + " is "
                    + (last.result().floorOnly() ? "at least " : "")
                    + words.say(last.result().torque(), Kind.TORQUE);
        }
        return "Ranges and lengths of " + subject.name() + ", no strength tests";
    }

    private String beside(Beside pair) {
        String said = at(pair.one(), pair.one().result().of().subject().words()) + " is "
                + words.say(pair.one().result().torque(), Kind.TORQUE) + ", "
                + BenchWords.percent(Math.abs(pair.comparison().ratio() - 1))
                + (pair.comparison().ratio() < 1 ? " below" : " above") + " the right";
        return pair.comparison().beyond()
                ? said + ": more than measuring alone makes of two equal sides"
                : said + ", which measuring alone can make of two equal sides";
    }

    private String at(Tested test, String what) {
        String sentence = what + " at " + words.say(test.result().of().subject().angle(), Kind.ANGLE);
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    private List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        findings.comparisons().changes().forEach(pair -> sentences.add(change(pair)));
        findings.ranges().forEach(range -> range.change().ifPresent(change -> sentences.add(range(range, change))));
        findings.comparisons().sides().stream()
                .filter(pair -> !pair.comparison().beyond())
                .forEach(pair -> sentences.add(alike(pair)));
        sentences.add(
                "The torque that counts is the mean of the efforts that reached the most; the best of three reads a little high."
                        + " Its ± is one standard deviation: the efforts' scatter, the way of testing from day to day, the pad's place and"
                        + " the limb's weight together.");
        sentences.add(CAUTION);
        return sentences;
    }

    private String change(Beside pair) {
        StrengthBench.Subject test = pair.one().result().of().subject();
        double threshold = pair.comparison().ratio() >= 1
                ? pair.comparison().detectable()
                : -pair.comparison().detectable();
        return at(pair.one(), test.words()) + ": "
                + BenchWords.signed(pair.comparison().ratio() - 1) + " since "
                + pair.other().date() + ", "
                + (pair.comparison().beyond() ? "more than the " : "less than the ") + BenchWords.signed(threshold)
                + " that this way of testing can tell from nothing.";
    }

    private String alike(Beside pair) {
        StrengthBench.Subject test = pair.one().result().of().subject();
        return at(pair.one(), test.action().words()) + ": left "
                + BenchWords.signed(pair.comparison().ratio() - 1)
                + " beside the right, no more than measuring alone makes of two equal sides ("
                + BenchWords.percent(pair.comparison().detectable()) + ").";
    }

    private String range(Range range, Estimate change) {
        String what = range.result().of().which().words();
        return Character.toUpperCase(what.charAt(0)) + what.substring(1) + ": "
                + BenchWords.turned(change.value())
                + (change.holds(0) ? ", less than the " : ", more than the ")
                + BenchWords.degrees(change.halfWidth()) + " that this way of measuring can tell from nothing.";
    }
}
