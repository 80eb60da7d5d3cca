package counterpull.report.bench;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.tubing.Loss;
import counterpull.bench.tubing.Softening;
import counterpull.bench.tubing.TubingBench;
import counterpull.bench.tubing.TubingResult;
import counterpull.bench.tubing.Wear;
import counterpull.readings.rubber.RubberSubject;
import counterpull.scenario.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the readings of a piece of rubber say, for people. */
final class RubberSection {
    private final RubberSubject subject;
    private final BenchWords words;

    private RubberSection(RubberSubject subject, Units units) {
        this.subject = subject;
        words = new BenchWords(units);
    }

    /** The section of a piece. */
    static BenchSection of(RubberSubject subject, Units units) {
        RubberSection section = new RubberSection(subject, units);
        List<Remark> remarks = subject.answer().remarks();
        String title = "Rubber " + subject.bench().piece().tag();
        return subject.answer()
                .result()
                .map(result -> new BenchSection(
                        title,
                        section.headline(result),
                        section.sentences(result),
                        new RubberTables(result, section.words).all(),
                        new RubberCharts(subject.bench(), result).all(),
                        remarks,
                        subject.forScenario()))
                .orElseGet(() -> new BenchSection(title, "", section.life(), List.of(), List.of(), remarks, ""));
    }

    private String headline(TubingResult result) {
        Estimate force = result.band().force(result.band().last());
        String due = subject.life()
                .filter(life -> life.wear().due() != Wear.Due.NOTHING)
                .map(life -> "; it is " + life.wear().due().words())
                .orElse("");
        return "One strand pulls with " + words.say(force, Kind.FORCE) + " at its tested length of "
                + words.say(result.band().last(), Kind.LENGTH) + due;
    }

    private List<String> sentences(TubingResult result) {
        List<String> said = new ArrayList<>();
        TubingBench bench = subject.bench();
        said.add(capital(result.law().family().words()) + " is used ("
                + result.law().family().meaning() + "): " + result.why() + ".");
        unusable(result).ifPresent(said::add);
        said.add("Natural length: " + words.say(result.lengths().tape(), Kind.LENGTH) + " by the tape, "
                + words.say(result.lengths().fitted(), Kind.LENGTH) + " with what the pulls say.");
        if (bench.piece().strands() > 1) {
            said.add("The scale showed " + (int) bench.piece().strands()
                    + " strands together; every number here is of one strand.");
        }
        said.add(result.loss()
                .map(this::loss)
                .orElse(
                        "Letting go was not read: what the piece loses is not known, and it counts wherever a line shortens while"
                                + " the person works."));
        result.lengths().set().ifPresent(set -> said.add(set(set)));
        result.softening().ifPresent(softening -> said.add(softening(softening)));
        said.add("Nothing is said past " + words.say(result.band().last(), Kind.LENGTH)
                + ", the longest that was read: a scenario refuses it too.");
        said.addAll(life());
        return said;
    }

    private static Optional<String> unusable(TubingResult result) {
        String list = result.laws().stream()
                .filter(each -> !each.usable())
                .map(each -> each.family().words() + ": " + each.refused())
                .collect(Collectors.joining("; "));
        return list.isEmpty() ? Optional.empty() : Optional.of("Not tried or not usable: " + list + ".");
    }

    private String loss(Loss loss) {
        return "On the way back it keeps " + words.say(loss.share(), Kind.SHARE) + " of the work put in ("
                + words.interval(loss.share(), Kind.SHARE) + " 95 times in 100), between "
                + words.say(loss.from(), Kind.LENGTH) + " and " + words.say(loss.to(), Kind.LENGTH) + ".";
    }

    private String set(Estimate set) {
        String size = words.interval(set, Kind.SHARE);
        return set.low() <= 0 && set.high() >= 0
                ? "It did not clearly stay longer: by " + size + " of its natural length 95 times in 100."
                : "It stayed longer by " + words.say(set, Kind.SHARE) + " of its natural length (" + size
                        + " 95 times in 100). Some of that comes back with rest.";
    }

    private String softening(Softening softening) {
        Estimate fall = softening.fall();
        return "Since its first stretch it softened by " + words.say(fall, Kind.SHARE) + " ("
                + words.interval(fall, Kind.SHARE) + " 95 times in 100, " + softening.readings()
                + " readings): the first stretch is left out of the curve, because it does not come again.";
    }

    private List<String> life() {
        List<String> said = new ArrayList<>();
        subject.life().ifPresent(life -> {
            Wear wear = life.wear();
            said.add("Record: " + life.tests() + (life.tests() == 1 ? " test, " : " tests, ") + life.cycles()
                    + " stretches since the last; on " + life.day() + " it "
                    + (wear.due() == Wear.Due.NOTHING ? "" : "is ")
                    + wear.due().words() + ".");
            wear.reasons().forEach(reason -> said.add(words.say(reason)));
            wear.sinceLast()
                    .ifPresent(lost -> said.add("Since the test before, its force changed by "
                            + words.say(lost.times(-1), Kind.SHARE) + " at the compared length."));
        });
        return said;
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
