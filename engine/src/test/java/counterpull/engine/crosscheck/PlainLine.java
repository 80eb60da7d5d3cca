package counterpull.engine.crosscheck;

import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.MooneyRivlin;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Hang;

/** An elastic line as energy alone: its path by Pythagoras, its energy by the law's closed form. */
final class PlainLine {
    private final ElasticLine line;
    private final double strands;
    private final double natural;
    final double[] anchor;
    final double[] attachment;

    PlainLine(ElasticLine line) {
        this.line = line;
        boolean doubled = line.pieces().hang() == Hang.DOUBLED;
        Rubber rubber = line.rubber();
        strands = line.pieces().count() * (doubled ? 2 : 1);
        natural = doubled ? (rubber.naturalLength() - rubber.hardwareLength()) / 2 : rubber.naturalLength();
        anchor = new double[] {
            line.ends().anchor().at().x(),
            line.ends().anchor().at().y(),
            line.ends().anchor().lateral()
        };
        attachment = new double[] {
            line.ends().attachment().at().x(),
            line.ends().attachment().at().y(),
            line.ends().attachment().lateral()
        };
    }

    /** How far the rubber is past its natural length at a path, m. */
    double tightness(double path) {
        return path - line.deadLength() - natural;
    }

    /** Energy of all strands that counts while the line lengthens, J. */
    double energy(double path) {
        double past = tightness(path);
        if (past <= 0) {
            return 0;
        }
        double stretch = 1 + past / natural;
        if (line.rubber().law() instanceof LinearLaw linear) {
            return strands * linear.modulus() * past * past / (2 * natural);
        }
        MooneyRivlin law = (MooneyRivlin) line.rubber().law();
        double first = stretch * stretch + 2 / stretch - 3;
        double second = 2 * stretch + 1 / (stretch * stretch) - 3;
        return strands * natural * law.area() * (law.c1() * first + law.c2() * second);
    }

    /** Pull of all strands while the line lengthens or is held, N. */
    double tension(double path) {
        double past = tightness(path);
        if (past <= 0) {
            return 0;
        }
        if (line.rubber().law() instanceof LinearLaw linear) {
            return strands * linear.modulus() * past / natural;
        }
        MooneyRivlin law = (MooneyRivlin) line.rubber().law();
        double stretch = 1 + past / natural;
        return strands * law.area() * 2 * (stretch - 1 / (stretch * stretch)) * (law.c1() + law.c2() / stretch);
    }

    /** Whether it ever gets longer than it was tested. */
    boolean overstretched(double path) {
        return path - line.deadLength() > natural * line.rubber().maxStretch();
    }

    /** What part of that energy comes back while it shortens. */
    double returned() {
        return 1 - ((LossFraction) line.rubber().unloading()).loss();
    }
}
