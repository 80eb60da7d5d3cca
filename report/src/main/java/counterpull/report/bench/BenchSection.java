package counterpull.report.bench;

import counterpull.bench.Remark;
import counterpull.picture.Chart;
import counterpull.report.table.Table;
import java.util.List;

/**
 * What is said about one thing that was measured: the same on a page and in a terminal.
 *
 * @param title what was measured ("Rubber T1")
 * @param headline the answer in one sentence without a full stop; empty where the readings give none
 * @param sentences what else matters, each a whole sentence
 * @param tables numbers with how sure they are
 * @param charts pictures with the words under them
 * @param remarks what the bench says about the readings, refusals first
 * @param forScenario lines for a scenario file; empty where there is no answer
 */
public record BenchSection(
        String title,
        String headline,
        List<String> sentences,
        List<Table> tables,
        List<Captioned> charts,
        List<Remark> remarks,
        String forScenario) {
    public BenchSection {
        sentences = List.copyOf(sentences);
        tables = List.copyOf(tables);
        charts = List.copyOf(charts);
        remarks = List.copyOf(remarks);
    }

    /** What was measured where its readings give no answer: only what is wrong with them. */
    static BenchSection refused(String title, List<Remark> remarks) {
        return new BenchSection(title, "", List.of(), List.of(), List.of(), remarks, "");
    }

    /**
     * A chart with what to see in it.
     *
     * @param chart the chart
     * @param caption words under it
     */
    public record Captioned(Chart chart, String caption) {}
}
