package counterpull.report.words;

import counterpull.engine.choice.Breach;
import counterpull.engine.choice.LimitKind;
import counterpull.engine.choice.Verdict;
import counterpull.engine.profile.Limiting;
import counterpull.engine.profile.PressProfile;
import counterpull.report.table.Decimals;
import counterpull.report.table.UnitSet;
import java.util.ArrayList;
import java.util.List;

/** How one setup does against what is wanted, in sentences. */
public final class VerdictWords {
    private static final double NEAR_ITS_LIMIT = 0.1;
    private final PressProfile profile;
    private final Verdict verdict;
    private final PlaceWords places;

    /** For one profile, judged, in a reader's units. */
    public VerdictWords(PressProfile profile, Verdict verdict, UnitSet units) {
        this.profile = profile;
        this.verdict = verdict;
        places = new PlaceWords(units);
    }

    /** Where it is hardest, how near the target it is, and what it passes or nearly does. */
    public List<String> all() {
        List<String> words = new ArrayList<>(List.of(hardest(), near()));
        words.addAll(verdict.feasible() ? nearLimit() : passed());
        return words;
    }

    /** Where the largest effort is. */
    public String hardest() {
        return verdict.peak()
                .map(peak -> "Hardest: " + places.peak(profile, peak) + ", at "
                        + points(peak.limiting().effort()) + "\u00A0% of what it has" + band(peak) + ".")
                .orElse("No effort is known anywhere in this range.");
    }

    /** How sure: what the 90 % band of the strength makes of this effort. */
    private String band(Verdict.Peak peak) {
        Limiting limiting = peak.limiting();
        return profile.limbs().stream()
                .filter(limb -> limb.side() == limiting.side())
                .map(limb -> limb.effortBand(limiting.joint(), peak.phase(), peak.position()))
                .filter(band -> band.high() > 0)
                .map(band -> " (" + Decimals.fixed(100 * band.low(), 0) + " to " + Decimals.fixed(100 * band.high(), 0)
                        + "\u00A0% within the strength's 90\u00A0% band)")
                .findFirst()
                .orElse("");
    }

    /** How far from the target. */
    public String near() {
        if (Double.isNaN(verdict.shortfall())) {
            return "How far it is from the target cannot be said.";
        }
        String missing = points(verdict.shortfall());
        return missing.equals(points(0))
                ? "The target is reached everywhere that effort is known."
                : "Over the range, effort stays " + missing + " points (root mean square) below the target.";
    }

    /** Every limit that is passed, each where it is passed farthest. */
    public List<String> passed() {
        return verdict.nearest().stream()
                .filter(Breach::passed)
                .map(breach -> "It " + places.passes(profile, breach) + ".")
                .toList();
    }

    private List<String> nearLimit() {
        return verdict.tightest()
                .filter(breach -> breach.kind() != LimitKind.CEILING && breach.excess() > -NEAR_ITS_LIMIT)
                .map(breach -> List.of("It comes near " + places.breach(profile, breach) + "."))
                .orElse(List.of());
    }

    /** A share of what a joint has, in points of a percent, with a tenth: so that neighbours do not look the same. */
    static String points(double share) {
        return Decimals.fixed(100 * share, 1);
    }
}
