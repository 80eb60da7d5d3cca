package counterpull.report;

import counterpull.engine.load.ElasticLine;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

    /** Plates and rubber in one line: "20 kg each side, R1 and R2 at the top hook". */
    public String load() {
        Map<String, List<String>> byAnchor = new LinkedHashMap<>();
        for (ElasticLine line : setup.profile().loading().lines()) {
            byAnchor.computeIfAbsent(line.ends().anchor().name(), at -> new ArrayList<>())
                    .add(line.rubber().tag());
        }
        List<String> parts = new ArrayList<>();
        parts.add(setup.plates().words());
        byAnchor.forEach((anchor, tags) -> parts.add(String.join(" and ", tags) + " at " + anchor));
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

    /** Tape reading at the bottom: exact where a stop sets it, rounded where only the person's own range does. */
    public Exact.Said bottom() {
        double mark = setup.profile().mark(0);
        return setup.order().stopped()
                ? Exact.saidMark(mark, units)
                : new Exact.Said(Measure.LENGTH.words(mark, unitSet), "");
    }

    /** How the push runs from bottom to top while lifting. */
    public String course() {
        PressProfile profile = setup.profile();
        double bottom = profile.force(Phase.LIFTING, 0);
        double top = profile.force(Phase.LIFTING, profile.positions() - 1);
        String how = top > bottom * (1 + NEAR)
                ? "grows to " + force(top) + " at the top"
                : top < bottom * (1 - NEAR)
                        ? "falls to " + force(top) + " at the top"
                        : "about the same, " + force(top) + ", at the top";
        return "Lifting, the push is " + force(bottom) + " at the bottom and " + how + ".";
    }

    private String force(double newtons) {
        return Measure.FORCE.words(newtons, unitSet);
    }
}
