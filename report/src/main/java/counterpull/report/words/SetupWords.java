package counterpull.report.words;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Kit;
import counterpull.engine.choice.PlateKind;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Placement;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.profile.PressTask;
import counterpull.report.Exact;
import counterpull.report.table.Decimals;
import counterpull.report.table.Measure;
import counterpull.report.table.Scale;
import counterpull.report.table.UnitSet;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Units;
import java.util.ArrayList;
import java.util.List;

/** A setup of the search in one line each: plates, rubber, place. */
public final class SetupWords {
    private final Kit kit;
    private final UnitSet units;

    /** For setups built from one kit, in a reader's units. */
    public SetupWords(Kit kit, UnitSet units) {
        this.kit = kit;
        this.units = units;
    }

    /** The whole setup: "each side 20 kg + 10 kg; R1 single from top hook to plate bar; row 2, back 3, stop at mark 15.0 cm". */
    public String line(Candidate candidate) {
        List<String> parts = new ArrayList<>();
        parts.add(plates(candidate));
        for (ElasticLine line : candidate.lines()) {
            parts.add(rubber(line));
        }
        parts.add(place(candidate));
        return String.join("; ", parts);
    }

    /** The plates, by horn. */
    public String plates(Candidate candidate) {
        List<String> names = new ArrayList<>();
        for (int k = 0; k < candidate.plates().counts().size(); k++) {
            int count = candidate.plates().counts().get(k) / kit.platesAtOnce();
            PlateKind kind = kit.plates().get(k);
            if (count > 0) {
                names.add(count == 1 ? kind.name() : count + " × " + kind.name());
            }
        }
        if (names.isEmpty()) {
            return "no plates";
        }
        return (kit.platesAtOnce() == 2 ? "each side " : "") + String.join(" + ", names) + " (" + total(candidate)
                + ")";
    }

    /** "60 kg in all"; with the other system's unit beside it where a plate is named in that. */
    String total(Candidate candidate) {
        double total = candidate.plates().total();
        Units own = units.people();
        String other = own.other().unit(Dimension.MASS).label();
        boolean mixed = false;
        for (int k = 0; k < kit.plates().size(); k++) {
            mixed |= candidate.plates().counts().get(k) > 0
                    && kit.plates().get(k).name().endsWith(other);
        }
        return briefly(total, own) + " in all" + (mixed ? ", " + briefly(total, own.other()) : "");
    }

    private static String briefly(double mass, Units units) {
        return trimmed(Measure.MASS, mass, UnitSet.of(units));
    }

    /** As many digits as usual, without zeros at the end. */
    public static String trimmed(Measure measure, double si, UnitSet units) {
        Scale scale = measure.in(units);
        String digits = Decimals.exact(Double.parseDouble(scale.fixed(si)));
        return digits + (scale.unit().equals("°") ? "" : "\u00A0") + scale.unit();
    }

    /** One line of rubber. */
    public String rubber(ElasticLine line) {
        String dead = line.deadLength() > 0
                ? " with " + Exact.words(line.deadLength(), Dimension.LENGTH, units.people()) + " of webbing and links"
                : "";
        int count = line.pieces().count();
        String what =
                count == 1 ? line.rubber().tag() : count + " × " + line.rubber().tag();
        String pair = line.pieces().placement() == Placement.MATCHED_PAIR ? ", half on each side" : "";
        return what + " " + line.pieces().hang().words() + " from "
                + line.ends().anchor().name() + " to "
                + line.ends().attachment().name() + dead + pair;
    }

    private String place(Candidate candidate) {
        PressTask task = candidate.place().ground().task();
        SeatSetting seat = candidate.place().stance().seat();
        double mark =
                seat.markAt(candidate.place().stroke().bottom(), task.sled().rail());
        return candidate.place().stance().row().name() + ", " + seat.name() + ", " + bottom(task, mark);
    }

    /** Exact where a stop sets it, rounded where only the person's own range does. */
    private String bottom(PressTask task, double mark) {
        return task.sled().stops().any()
                ? "stop at mark " + Exact.mark(mark, units.people())
                : "bottom at mark " + Measure.LENGTH.words(mark, units) + ", no stop";
    }
}
