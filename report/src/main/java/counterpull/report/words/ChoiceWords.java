package counterpull.report.words;

import counterpull.engine.choice.Breach;
import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.LimitKind;
import counterpull.engine.choice.Ranking;
import counterpull.engine.choice.SplitSetup;
import counterpull.engine.choice.Strategy;
import counterpull.engine.choice.Verdict;
import counterpull.engine.profile.Profile;
import counterpull.report.table.Decimals;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a search found, in plain sentences with numbers and places. */
public final class ChoiceWords {
    private final Choice choice;
    private final UnitSet units;
    private final PlaceWords places;
    private final SetupWords setups;

    /** For one choice in a reader's units. */
    public ChoiceWords(Choice choice, UnitSet units) {
        this.choice = choice;
        this.units = units;
        places = new PlaceWords(units);
        setups = new SetupWords(choice.question().kit(), units);
    }

    /** Why a setup is there: how hard it is where, and how near to the target over the range. */
    public String why(Candidate candidate) {
        Verdict verdict = candidate.verdict();
        Profile profile = candidate.profile();
        String hardest = verdict.peak()
                .map(peak -> "Hardest: " + places.peak(profile, peak) + ", at "
                        + effort(peak.limiting().effort()) + " of what it has. ")
                .orElse("No effort is known anywhere in this range. ");
        return hardest + near(verdict) + tightest(profile, verdict);
    }

    /** Efforts and shortfalls with a tenth of a percent, so that neighbours do not look the same. */
    private static String effort(double share) {
        return Decimals.fixed(100 * share, 1) + "\u00A0%";
    }

    private String near(Verdict verdict) {
        if (Double.isNaN(verdict.shortfall())) {
            return "How far from the target cannot be said.";
        }
        return verdict.shortfall() < 0.0005
                ? "The target is reached everywhere that effort is known."
                : "Over the range it stays " + effort(verdict.shortfall()) + " (root mean square) short of the target.";
    }

    private String tightest(Profile profile, Verdict verdict) {
        Optional<Breach> tightest = verdict.tightest().filter(breach -> breach.kind() != LimitKind.CEILING);
        return tightest.filter(breach -> breach.excess() > -0.1)
                .map(breach -> " Near its limit: " + places.breach(profile, breach) + ".")
                .orElse("");
    }

    /** Why a runner-up is not first. */
    public String behind(Candidate first, Candidate next) {
        double more = next.score().shortfall() - first.score().shortfall();
        if (more > 0.0005) {
            return effort(next.score().shortfall()) + " short of the target instead of "
                    + effort(first.score().shortfall());
        }
        if (next.score().peak() > first.score().peak() + 0.0005) {
            return "as near to the target, but "
                    + effort(next.score().peak()) + " at its hardest instead of "
                    + effort(first.score().peak());
        }
        return next.pieces() > first.pieces()
                ? "just as good, with " + next.pieces() + " pieces to handle instead of " + first.pieces()
                : "just as good";
    }

    /** What limits the load: why the next heavier plates with the same rubber in the same place were not taken. */
    public Optional<String> heavier(Candidate candidate) {
        return Neighbours.heavier(choice.question(), candidate).flatMap(next -> {
            Verdict verdict = next.verdict();
            return verdict.tightest()
                    .filter(Breach::passed)
                    .map(breach -> "The next heavier plates ("
                            + Measure.MASS.words(next.plates().total(), units) + " in all) would pass the "
                            + places.breach(next.anyProfile(), breach) + ".");
        });
    }

    /** What stopped the setups that failed, a sentence for each limit that stopped any. */
    public List<String> stopped() {
        List<String> words = new ArrayList<>();
        for (LimitKind kind : LimitKind.values()) {
            int count = choice.rejections().stoppedBy(kind);
            if (count > 0) {
                words.add(count + (count == 1 ? " setup passes the " : " setups pass the ") + kind.words() + ".");
            }
        }
        return words;
    }

    /** Nothing keeps every limit: which limit stops it, by how much, and the setup that comes nearest. */
    public List<String> nothing() {
        List<String> words = new ArrayList<>();
        words.add("Nothing in this kit keeps every limit"
                + (choice.extent().complete()
                        ? ": all " + choice.extent().considered() + " setups were judged."
                        : " so far; the search was stopped before its end."));
        choice.rejections().nearestMiss().ifPresent(miss -> {
            Verdict verdict = miss.verdict();
            words.add("Nearest: " + setups.line(miss) + ".");
            for (Breach breach : verdict.nearest()) {
                if (breach.passed()) {
                    words.add("It passes the " + places.breach(miss.anyProfile(), breach) + ".");
                }
            }
        });
        words.addAll(choice.rejections().leftOut());
        return words;
    }

    /** How many setups were judged, and whether that was all. */
    public String extent() {
        String judged = choice.extent().considered() + " setups judged";
        return choice.extent().complete()
                ? judged + ": all that the kit allows, so what stands first is the best there is."
                : judged + " before the search was stopped: what stands first is the best so far.";
    }

    /** How many setups tie for a strategy's first place. */
    public String ties(Ranking ranking) {
        int ties = ranking.ties().size();
        return ties > 1
                ? ties + " setups come equally near the target; the one that is easiest at its hardest is first."
                : "";
    }

    /** A split range in two sentences. */
    public String split(SplitSetup pair) {
        Profile whole = pair.whole().profile();
        Profile upper = pair.upper().profile();
        return "Heavy set from " + places.position(upper, 0) + " to the top: " + setups.line(pair.upper())
                + ". Light set over the whole range from " + places.position(whole, 0) + ": "
                + setups.line(pair.whole()) + ". Together "
                + effort(pair.shortfall()) + " short of the target; "
                + aloneWords(pair);
    }

    private String aloneWords(SplitSetup pair) {
        return "the light set alone would be " + effort(pair.whole().score().shortfall()) + " short.";
    }

    /** A strategy that has no setup: why. */
    public String none(Strategy strategy) {
        return "No setup of \"" + strategy.words() + "\" keeps every limit.";
    }

    /** The setup in one line. */
    public String line(Candidate candidate) {
        return setups.line(candidate);
    }
}
