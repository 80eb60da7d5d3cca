package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.Strand;
import counterpull.engine.motion.Phase;

/**
 * The rubber of one line along its path over a range: how long it is and what one strand pulls, whatever the line hangs on. Rubber
 * length = path − dead length; looseness = natural length + dead length − path. Lengths m, forces N. Read-only once made.
 */
final class StretchedLength {
    private final Strand strand;
    private final double deadLength;
    private final double[] path;
    private final double[] growth;
    private final double[] lengthening;
    private final double[] shortening;

    /** Along a path whose length, m, and growth toward the top are known at every position; both arrays are its own from here on. */
    StretchedLength(Strand strand, double deadLength, double[] path, double[] growth) {
        this.strand = strand;
        this.deadLength = deadLength;
        this.path = path;
        this.growth = growth;
        lengthening = new double[path.length];
        shortening = new double[path.length];
        double[] length = new double[path.length];
        for (int i = 0; i < path.length; i++) {
            length[i] = rubberLength(i);
        }
        strand.forces(length, lengthening, shortening);
    }

    Strand strand() {
        return strand;
    }

    double path(int i) {
        return path[i];
    }

    double growth(int i) {
        return growth[i];
    }

    double rubberLength(int i) {
        return path[i] - deadLength;
    }

    double stretch(int i) {
        return rubberLength(i) / strand.naturalLength();
    }

    double looseness(int i) {
        return strand.naturalLength() + deadLength - path[i];
    }

    boolean shortens(Phase phase, int i) {
        return phase.sense() * growth[i] < 0;
    }

    /** Pull of one strand, N; NaN past the tested length. */
    double tension(Phase phase, int i) {
        return shortens(phase, i) ? shortening[i] : lengthening[i];
    }

    /** What one strand does not give back while it shortens, N. */
    double kept(int i) {
        return lengthening[i] - shortening[i];
    }

    double longest() {
        double most = rubberLength(0);
        for (int i = 1; i < path.length; i++) {
            most = Math.max(most, rubberLength(i));
        }
        return most;
    }

    boolean tightens() {
        return longest() > strand.naturalLength();
    }

    /** Refuses a line, named in words, that passes its tested length; {@code instead} says which other place to use. */
    void requireTested(String line, String instead) {
        double longest = longest();
        double limit = strand.maxLength();
        if (longest > limit) {
            throw new Refusal(
                    Fault.PAST_TESTED_LENGTH,
                    "longest rubber length of " + line,
                    longest,
                    limit,
                    "m",
                    strand.rubber().tag() + " would be stretched past its tested length in this range: use another "
                            + instead + ", more dead length or a longer piece");
        }
    }
}
