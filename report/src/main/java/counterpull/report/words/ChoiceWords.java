package counterpull.report.words;

import counterpull.engine.choice.Breach;
import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.LimitKind;
import counterpull.engine.choice.Ranking;
import counterpull.engine.choice.SplitSetup;
import counterpull.engine.choice.Strategy;
import counterpull.engine.choice.Verdict;
import counterpull.engine.profile.PressProfile;
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
        return String.join(" ", new VerdictWords(candidate.profile(), candidate.verdict(), units).all());
    }

    /** Why a runner-up is not first; numbers that would look the same are not set against each other. */
    public String behind(Candidate first, Candidate next) {
        String more = VerdictWords.points(next.score().shortfall());
        String less = VerdictWords.points(first.score().shortfall());
        if (!more.equals(less)) {
            return more + " points below the target instead of " + less;
        }
        String harder = VerdictWords.points(next.score().peak());
        String easier = VerdictWords.points(first.score().peak());
        if (!harder.equals(easier)) {
            return "as near to the target, but " + harder + "\u00A0% at its hardest instead of " + easier + "\u00A0%";
        }
        return next.pieces() > first.pieces()
                ? "just as good, with " + next.pieces() + " pieces to handle instead of " + first.pieces()
                : "just as good";
    }

    /** A split range that comes nearer than the best single setup, pointed at. */
    public Optional<String> nearerSplit(Candidate best) {
        return choice.splits().stream()
                .findFirst()
                .map(pair -> VerdictWords.points(pair.shortfall()))
                .filter(together -> Double.parseDouble(together)
                        < Double.parseDouble(VerdictWords.points(best.score().shortfall())))
                .map(together -> "A heavy short-range set and a light full-range set together would come nearer: "
                        + together + " points; see \"" + Strategy.SPLIT_RANGE.words() + "\" below.");
    }

    /** What limits the load: why the next heavier plates with the same rubber in the same place were not taken. */
    public Optional<String> heavier(Candidate candidate) {
        return Neighbours.heavier(choice.question(), candidate).flatMap(next -> {
            Verdict verdict = next.verdict();
            return verdict.tightest()
                    .filter(Breach::passed)
                    .map(breach -> "The next heavier plates ("
                            + setups.total(next) + ") are not taken: that setup "
                            + places.passes(next.anyProfile(), breach) + ".");
        });
    }

    /** What stopped the setups that failed, a sentence for each limit that stopped any. */
    public List<String> stopped() {
        List<String> words = new ArrayList<>();
        for (LimitKind kind : LimitKind.values()) {
            int count = choice.rejections().stoppedBy(kind);
            if (count > 0) {
                words.add(count
                        + (count == 1 ? " setup " + PlaceWords.verb(kind) : " setups " + PlaceWords.verbOfMany(kind))
                        + " the " + kind.words() + ".");
            }
        }
        return words;
    }

    /** Nothing keeps every limit: which limit stops it, by how much, and the setup that comes nearest. */
    public List<String> nothing() {
        List<String> words = new ArrayList<>();
        words.add(nothingKeeps());
        choice.rejections().nearestMiss().ifPresent(miss -> {
            Verdict verdict = miss.verdict();
            words.add("Nearest: " + setups.line(miss) + ".");
            for (Breach breach : verdict.nearest()) {
                if (breach.passed()) {
                    words.add("It " + places.passes(miss.anyProfile(), breach) + ".");
                }
            }
        });
        return words;
    }

    private String nothingKeeps() {
        int judged = choice.extent().considered();
        if (!choice.extent().complete()) {
            return "Nothing found so far: the search was stopped after " + judged + " setups, before its end.";
        }
        return judged == 0
                ? "No setup could be judged: nothing that the kit and the machine allow can be built for this person."
                : "Nothing in this kit keeps every limit: all " + judged + " setups were judged.";
    }

    /** What was left out before it was judged: each reason once. */
    public List<String> leftOut() {
        return new LeftOutWords(choice.rejections(), units).sentences();
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
        PressProfile whole = pair.whole().profile();
        PressProfile upper = pair.upper().profile();
        return "Heavy set from " + places.position(upper, 0) + " to the top: " + setups.line(pair.upper())
                + ". Light set over the whole range from " + places.position(whole, 0) + ": "
                + setups.line(pair.whole()) + ". Together "
                + VerdictWords.points(pair.shortfall()) + " points below the target; "
                + aloneWords(pair);
    }

    private String aloneWords(SplitSetup pair) {
        return "the light set alone would be "
                + VerdictWords.points(pair.whole().score().shortfall()) + " points below.";
    }

    /** What a strategy is and how many of its setups keep every limit. */
    public String heading(Ranking ranking) {
        int keep = ranking.size();
        String how = keep == 0 ? "no setup keeps" : keep == 1 ? "1 setup keeps" : keep + " setups keep";
        return ranking.strategy().words() + ", " + gloss(ranking.strategy()) + ": " + how + " every limit";
    }

    private static String gloss(Strategy strategy) {
        return switch (strategy) {
            case LOAD_ALONE -> "plates without rubber";
            case RELIEVE_LOW -> "rubber takes load off, most at the bottom";
            case ADD_HIGH -> "rubber adds load, most at the top";
            case BOTH -> "rubber of both kinds";
            case SPLIT_RANGE -> "a heavy set above a shallower stop and a light set over the whole range";
        };
    }

    /** The split ranges' own heading. */
    public String splitHeading() {
        return Strategy.SPLIT_RANGE.words() + ", " + gloss(Strategy.SPLIT_RANGE);
    }

    /** A strategy that has no setup, where the kit is why; empty where limits are. */
    public Optional<String> none(Strategy strategy) {
        return strategy != Strategy.LOAD_ALONE
                        && choice.question().kit().rubber().isEmpty()
                ? Optional.of("There is no rubber in the kit.")
                : Optional.empty();
    }

    /** The setup in one line. */
    public String line(Candidate candidate) {
        return setups.line(candidate);
    }
}
