package counterpull.scenario.write;

import counterpull.engine.load.ElasticLine;
import counterpull.scenario.content.Loaded;
import counterpull.scenario.content.Loaded.Plates;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Words;
import counterpull.scenario.units.Dimension;

/** Writes what is on the machine. */
final class LoadedWriter {
    private LoadedWriter() {}

    static Out resists(Loaded loaded) {
        Plates plates = loaded.plates();
        Out out = new Out();
        if (plates.left().equals(plates.right())) {
            out.putQuantities("plates each side", plates.left(), Dimension.MASS);
        } else {
            out.putQuantities("plates left", plates.left(), Dimension.MASS);
            out.putQuantities("plates right", plates.right(), Dimension.MASS);
        }
        return out.putQuantities("plates in the middle", plates.middle(), Dimension.MASS)
                .putGroups("lines", loaded.lines(), LoadedWriter::line);
    }

    private static Out line(ElasticLine line) {
        return new Out()
                .put("rubber", line.rubber().tag())
                .put("pieces", line.pieces().count())
                .put("hang", Words.HANG.word(line.pieces().hang()))
                .put("placement", Words.PLACEMENT.word(line.pieces().placement()))
                .put("anchor", line.ends().anchor().name())
                .put("attachment", line.ends().attachment().name())
                .put("dead length", line.deadLength(), Dimension.LENGTH);
    }
}
