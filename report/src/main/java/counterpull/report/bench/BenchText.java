package counterpull.report.bench;

import counterpull.bench.Remark;
import counterpull.report.table.TextTable;
import counterpull.report.table.UnitSet;
import counterpull.report.table.Wrap;
import java.util.List;

/** What the bench found, for a terminal of a given width. */
public final class BenchText {
    private final UnitSet units;
    private final int width;
    private final BenchWords words;
    private final StringBuilder out = new StringBuilder();

    private BenchText(UnitSet units, int width) {
        this.units = units;
        this.width = width;
        words = new BenchWords(units.people());
    }

    /** Every section, one below the other. */
    public static String of(List<BenchSection> sections, UnitSet units, int width) {
        BenchText text = new BenchText(units, width);
        sections.forEach(text::section);
        return text.out.toString();
    }

    private void section(BenchSection section) {
        out.append(out.isEmpty() ? "" : "\n").append(section.title()).append('\n');
        out.append("─".repeat(section.title().length())).append('\n');
        remarks(section, Remark.Weight.REFUSES, "No answer: ");
        if (!section.headline().isEmpty()) {
            out.append(Wrap.block(section.headline() + ".", width, ""));
        }
        remarks(section, Remark.Weight.DOUBTFUL, "Look at this first: ");
        section.sentences().forEach(sentence -> out.append(Wrap.block(sentence, width, "")));
        section.tables().forEach(table -> out.append('\n').append(TextTable.of(table, units, width)));
        remarks(section, Remark.Weight.NOTE, "");
        if (!section.forScenario().isEmpty()) {
            out.append("\nFor a scenario file:\n\n");
            section.forScenario()
                    .lines()
                    .forEach(line -> out.append("    ").append(line).append('\n'));
        }
    }

    private void remarks(BenchSection section, Remark.Weight weight, String lead) {
        section.remarks().stream()
                .filter(remark -> remark.weight() == weight)
                .forEach(remark -> out.append(Wrap.block(lead + words.say(remark), width, "")));
    }
}
