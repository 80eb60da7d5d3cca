package counterpull.report.bench;

import counterpull.report.table.Table;
import java.util.List;

/** What is said about one kind of machine. */
interface MachineParts {
    String headline();

    List<String> sentences();

    List<Table> tables();

    List<BenchSection.Captioned> charts();
}
