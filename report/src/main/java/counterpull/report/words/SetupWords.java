package counterpull.report.words;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Kit;
import counterpull.engine.choice.PlateKind;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Placement;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.profile.PressTask;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;
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

    /** The whole setup: "each side 20 kg + 10 kg; R1, 1 × single, …; row 2, back 3, stop at mark 15.0 cm". */
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
        String total = " (" + Measure.MASS.words(candidate.plates().total(), units) + " in all)";
        return (kit.platesAtOnce() == 2 ? "each side " : "") + String.join(" + ", names) + total;
    }

    /** One line of rubber. */
    public String rubber(ElasticLine line) {
        String pair = line.pieces().placement() == Placement.MATCHED_PAIR ? ", matched pair" : "";
        String dead = line.deadLength() > 0
                ? ", " + Measure.LENGTH.words(line.deadLength(), units) + " of webbing and links"
                : "";
        return line.words() + pair + dead;
    }

    private String place(Candidate candidate) {
        PressTask task = candidate.place().ground().task();
        SeatSetting seat = candidate.place().stance().seat();
        double mark =
                seat.markAt(candidate.place().stroke().bottom(), task.sled().rail());
        String bottom = task.sled().stops().any() ? "stop at mark " : "bottom at mark ";
        return candidate.place().stance().row().name() + ", " + seat.name() + ", " + bottom
                + Measure.LENGTH.words(mark, units);
    }
}
