package counterpull.scenario.resist;

import counterpull.engine.elastic.BenchReading;
import counterpull.scenario.content.GivesBack;
import counterpull.scenario.content.Piece;
import counterpull.scenario.content.PieceLaw;
import counterpull.scenario.content.Size;
import counterpull.scenario.format.Out;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Unit;

/** Writes a piece of rubber. */
public final class RubberWriter {
    private RubberWriter() {}

    /** Its keys. */
    public static Out piece(Piece piece) {
        Out out = new Out().put("tag", piece.tag());
        piece.size().ifPresent(size -> out.put("size", size(size)));
        out.put("natural length", piece.lengths().natural(), Dimension.LENGTH);
        out.put("law", law(piece.law()));
        givesBack(piece.back(), out);
        return out.put("tested length", piece.lengths().tested(), Dimension.LENGTH)
                .put("mass", piece.mass(), Unit.GRAM)
                .put("hardware", piece.lengths().hardware(), Dimension.LENGTH)
                .put("count", piece.count());
    }

    private static Out size(Size size) {
        Out out = new Out();
        if (size instanceof Size.Tube tube) {
            out.put("bore", tube.bore(), Unit.MILLIMETRE).put("wall", tube.wall(), Unit.MILLIMETRE);
        } else if (size instanceof Size.Strip strip) {
            out.put("width", strip.width(), Unit.MILLIMETRE).put("thickness", strip.thickness(), Unit.MILLIMETRE);
        }
        return out;
    }

    private static Out law(PieceLaw law) {
        Out out = new Out();
        if (law instanceof PieceLaw.Linear linear) {
            out.put("linear", new Out().put("stiffness", linear.stiffness(), Dimension.STIFFNESS));
        } else if (law instanceof PieceLaw.TwoConstants two) {
            out.put(
                    "mooney-rivlin",
                    new Out().put("c1", two.c1(), Unit.KILOPASCAL).put("c2", two.c2(), Unit.KILOPASCAL));
        } else if (law instanceof PieceLaw.Terms terms) {
            out.putGroups(
                    "ogden",
                    terms.terms(),
                    term -> new Out().put("mu", term.mu(), Unit.KILOPASCAL).put("alpha", term.alpha(), Unit.ONE));
        } else if (law instanceof PieceLaw.Bench bench) {
            out.putGroups("bench", bench.readings(), RubberWriter::reading);
        }
        return out;
    }

    private static void givesBack(GivesBack back, Out out) {
        if (back instanceof GivesBack.Less less) {
            out.put("loss", less.loss(), Dimension.RATIO);
        } else if (back instanceof GivesBack.Bench bench) {
            out.putGroups("shortening", bench.readings(), RubberWriter::reading);
        }
    }

    private static Out reading(BenchReading reading) {
        return new Out()
                .put("length", reading.length(), Dimension.LENGTH)
                .put("force", reading.force(), Dimension.FORCE);
    }
}
