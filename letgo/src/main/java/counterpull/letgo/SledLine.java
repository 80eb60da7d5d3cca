package counterpull.letgo;

import counterpull.engine.elastic.Strand;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.SledFrame;
import counterpull.engine.planar.Vec;

/**
 * One elastic line of a sled at any hip-to-plate distance, not only inside a person's range: what all its strands pull along
 * the distance, N, and store, J. A line at its tested length pulls what it pulls there: who follows the sled has to stop.
 */
final class SledLine {
    private static final double NO_DIRECTION = 1e-9;
    private final ElasticLine line;
    private final SledFrame frame;
    private final Strand strand;
    private final double aside;

    SledLine(ElasticLine line, SledFrame frame) {
        this.line = line;
        this.frame = frame;
        strand = line.strand();
        aside = line.ends().anchor().lateral() - line.ends().attachment().lateral();
    }

    /** Pull along the distance while the plate moves this way from the hip. */
    double pull(double plate, Sense sense) {
        double growth = growth(plate);
        double length = rubberLength(plate);
        double tension = growth * sense.sign() < 0 ? strand.unloadingForce(length) : strand.force(length);
        return -line.strands() * tension * growth;
    }

    /** The same where the line is held. */
    double heldPull(double plate) {
        return -line.strands() * strand.force(rubberLength(plate)) * growth(plate);
    }

    double energy(double plate) {
        return line.strands() * strand.energy(rubberLength(plate));
    }

    /** How far the rubber is from its tested length, m; negative past it. */
    double testedRoom(double plate) {
        return strand.maxLength() - (path(plate) - line.deadLength());
    }

    private double rubberLength(double plate) {
        return Math.min(path(plate) - line.deadLength(), strand.maxLength());
    }

    private double path(double plate) {
        Vec way = frame.toAnchor(line.ends(), plate);
        return Math.sqrt(way.dot(way) + aside * aside);
    }

    /** d(path)/d(plate): the anchor comes along with the plate where the seat rides. */
    private double growth(double plate) {
        double path = path(plate);
        if (path < NO_DIRECTION) {
            return 0;
        }
        double along = frame.toAnchor(line.ends(), plate).x() / path;
        return switch (frame.ride()) {
            case PLATE -> -along;
            case SEAT -> along;
        };
    }
}
