package counterpull.report;

import counterpull.engine.load.ElasticLine;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Profile;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Units;
import java.util.ArrayList;
import java.util.List;

/** What a setup is and what it does, in a reader's words. */
public final class SetupSentences {
    private static final double NEAR = 0.05;
    private final Setup setup;
    private final Units units;
    private final UnitSet unitSet;

    /** For one setup in a reader's units. */
    public SetupSentences(Setup setup, Units units) {
        this.setup = setup;
        this.units = units;
        unitSet = UnitSet.of(units);
    }

    /** Plates and rubber in one line. */
    public String load() {
        List<String> parts = new ArrayList<>();
        parts.add(setup.plates().words());
        for (ElasticLine line : setup.profile().loading().lines()) {
            parts.add(line.rubber().tag() + " at " + line.ends().anchor().name());
        }
        return String.join(", ", parts);
    }

    /** Plates and rubber in full: pieces, both ends and dead length of every line. */
    public String whole() {
        List<String> parts = new ArrayList<>();
        parts.add(setup.plates().words());
        setup.profile().loading().lines().forEach(line -> parts.add(line(line)));
        return String.join("; ", parts);
    }

    /** One line of rubber, whole. */
    public String line(ElasticLine line) {
        return line.words() + ", dead length " + Exact.words(line.deadLength(), Dimension.LENGTH, units);
    }

    /** How the push runs from bottom to top while lifting. */
    public String course() {
        Profile profile = setup.profile();
        double bottom = profile.force(Phase.LIFTING, 0);
        double top = profile.force(Phase.LIFTING, profile.positions() - 1);
        String how = top > bottom * (1 + NEAR)
                ? "grows to " + force(top) + " at the top"
                : top < bottom * (1 - NEAR)
                        ? "falls to " + force(top) + " at the top"
                        : "stays near that up to " + force(top) + " at the top";
        return "Lifting, the push is " + force(bottom) + " at the bottom and " + how + ".";
    }

    /** Where the largest effort is, and how large. */
    public String hardest() {
        return setup.verdict()
                .peak()
                .map(peak -> "The hardest moment is the "
                        + peak.limiting().side().words() + " "
                        + peak.limiting().action().words() + ", " + peak.phase().words() + " at "
                        + Measure.ANGLE.words(setup.profile().drivingAngle(peak.position()), unitSet)
                        + " of knee bend: it takes "
                        + Measure.EFFORT.words(peak.limiting().effort(), unitSet) + " of what there is.")
                .orElse("Nothing is known of this person's strength here, so no effort can be given.");
    }

    private String force(double newtons) {
        return Measure.FORCE.words(newtons, unitSet);
    }
}
