package counterpull.report.card;

import counterpull.engine.choice.SafeOrder;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.LineSeries;
import counterpull.engine.load.Placement;
import counterpull.engine.load.SledFrame;
import counterpull.engine.profile.PressTask;
import counterpull.report.Setup;
import java.util.ArrayList;
import java.util.List;

/**
 * One elastic line as somebody hangs it.
 *
 * @param line the line
 * @param mark tape reading at which it is hung and checked, m
 * @param looseness what the tape must show there, m: positive loose, negative pre-stretched
 */
record CardLine(ElasticLine line, double mark, double looseness) {
    /** The lines of a setup, in the order in which they are hung. */
    static List<CardLine> of(Setup setup) {
        List<CardLine> found = new ArrayList<>();
        List<ElasticLine> lines = setup.profile().loading().lines();
        for (SafeOrder.Step step : setup.order().steps()) {
            if (step.kind() == SafeOrder.Kind.HANG_LINE) {
                ElasticLine line = lines.get(found.size());
                found.add(new CardLine(
                        line, step.mark(), looseness(setup.profile().task(), line, step.mark())));
            }
        }
        return found;
    }

    private static double looseness(PressTask task, ElasticLine line, double mark) {
        double plate = task.stance().seat().plateAt(mark, task.sled().rail());
        SledFrame frame = new SledFrame(task.sled().rail(), task.stance().seat());
        return LineSeries.of(line, new double[] {plate}, frame).looseness(0);
    }

    /** Pieces and how they hang: "1 × single", "2 × doubled, one half on each side". */
    String hang() {
        String aside = line.pieces().placement() == Placement.MATCHED_PAIR ? ", half on each side" : "";
        return line.pieces().count() + " × " + line.pieces().hang().words() + aside;
    }
}
