package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.Strand;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Ride;
import counterpull.engine.planar.Vec;

/**
 * One elastic line over a whole range: its path, rubber length and looseness, and what one strand pulls on the end that
 * rides, along <b>u</b> and across it. Lengths m, forces N per strand; positive along <b>u</b> pulls away from the seat.
 *
 * <p>Path P in three dimensions; rubber length = P − w; looseness = L₀ + w − P, positive loose, negative pre-stretched. Only
 * the in-plane part of the pull acts. While the line shortens it pulls what its rubber gives back, also where the speed is
 * zero; while it lengthens or is held the loading curve.
 */
public final class LineSeries {
    private final ElasticLine line;
    private final Ride ride;
    private final StretchedLength rubber;
    private final double[] along;
    private final double[] across;

    private LineSeries(ElasticLine line, double[] plate, SledFrame frame) {
        this.line = line;
        ride = frame.ride();
        along = new double[plate.length];
        across = new double[plate.length];
        double[] path = new double[plate.length];
        double[] growth = new double[plate.length];
        for (int i = 0; i < plate.length; i++) {
            path[i] = place(i, plate[i], frame);
            // d(path)/d(plate): the anchor comes along with the plate where the seat rides
            growth[i] = ride == Ride.PLATE ? -along[i] : along[i];
        }
        rubber = new StretchedLength(line.strand(), line.deadLength(), path, growth);
    }

    /**
     * The line on a sled.
     *
     * @param line the line
     * @param plate hip-to-plate distance at each position, m
     * @param frame how the sled's points lie from the hip
     */
    public static LineSeries of(ElasticLine line, double[] plate, SledFrame frame) {
        return new LineSeries(line, plate, frame);
    }

    /** Points the line at a position and gives its path, m. */
    private double place(int i, double plate, SledFrame frame) {
        Vec toAnchor = frame.toAnchor(line.ends(), plate);
        double aside = line.ends().anchor().lateral() - line.ends().attachment().lateral();
        double length = Math.sqrt(toAnchor.dot(toAnchor) + aside * aside);
        if (length < 1e-9) {
            throw new Refusal(
                    Fault.COINCIDENT_POINTS,
                    "path of " + line.words(),
                    length,
                    0,
                    "m",
                    "anchor and attachment meet in this range, so the line has no direction: use another hole");
        }
        along[i] = toAnchor.x() / length;
        across[i] = toAnchor.y() / length;
        return length;
    }

    /** The line itself. */
    public ElasticLine line() {
        return line;
    }

    /** One of its strands. */
    public Strand strand() {
        return rubber.strand();
    }

    /** Path from anchor to attachment at position i, m. */
    public double path(int i) {
        return rubber.path(i);
    }

    /** Length left for the rubber, P − w, m; below natural length it hangs loose. */
    public double rubberLength(int i) {
        return rubber.rubberLength(i);
    }

    /** Rubber length over natural length; below 1 the line is loose. */
    public double stretch(int i) {
        return rubber.stretch(i);
    }

    /** Looseness L₀ + w − P at position i, m: positive loose, negative pre-stretched. */
    public double looseness(int i) {
        return rubber.looseness(i);
    }

    /** Pull of one strand at position i in a phase, N; NaN past the tested length. */
    public double tension(Phase phase, int i) {
        return rubber.tension(phase, i);
    }

    /** Its part along <b>u</b> on the end that rides, N per strand. */
    public double along(Phase phase, int i) {
        return tension(phase, i) * along[i];
    }

    /** What one strand adds to the push on the plate, N: positive makes the person push harder, whichever end rides. */
    public double push(Phase phase, int i) {
        return ride == Ride.PLATE ? -along(phase, i) : along(phase, i);
    }

    /** Its part across the rail, along <b>n</b>, N per strand. */
    public double across(Phase phase, int i) {
        return tension(phase, i) * across[i];
    }

    /** Direction from the attachment to the anchor at position i, in the plane, times in-plane path over path. */
    public Vec toward(int i) {
        return new Vec(along[i], across[i]);
    }

    /**
     * Part of the pull to the side of the sled's middle plane on the end that rides, N per strand of one half of a pair;
     * positive away from the middle on the side where its lateral places are positive, 0 for a centred line.
     */
    public double aside(Phase phase, int i) {
        double off = line.ends().anchor().lateral() - line.ends().attachment().lateral();
        return tension(phase, i) * off / rubber.path(i);
    }

    /** The longest rubber length of the range, m. */
    public double longest() {
        return rubber.longest();
    }

    /** Whether the line tightens anywhere in the range. */
    public boolean tightens() {
        return rubber.tightens();
    }

    /** Refuses a line that passes its tested length somewhere in the range. */
    public LineSeries withinTestedLength() {
        rubber.requireTested(line.words(), "hole");
        return this;
    }
}
