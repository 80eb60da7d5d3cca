package counterpull.letgo;

import counterpull.engine.Constants;
import counterpull.engine.load.StackLine;

/**
 * A weight stack on its line when the handle is let go: the stack sinks and draws the handle to the pulley. Its coordinate is the line
 * that is drawn out beyond its shortest in the range, m.
 *
 * <p>weight = −m g/R, friction k m (g + l̈/R)/R with k the lost share, inertia m/R² + what moves with the line: in closed form
 * l̈ = −(1 − k)(m g/R)/((1 − k) m/R² + moving), the stack's free fall where nothing moves with the line. Source: {@link StackLine}. The
 * handle's own weight is left out, and nothing on the way slows it.
 */
final class FreeLine implements LoneMachine {
    private final double pull;
    private final double inertia;
    private final double share;
    private final double stack;
    private final Ends ends;

    /**
     * @param line the stack and its pulleys
     * @param plates chosen plates, kg
     * @param drawn by how much the line's longest in the range is longer than its shortest, m, above zero
     */
    FreeLine(StackLine line, double plates, double drawn) {
        pull = line.stack().mass(plates) * Constants.STANDARD_GRAVITY / line.ratio();
        inertia = line.feltMass(plates);
        share = line.friction();
        stack = inertia - line.moving();
        ends = new Ends(0, Ends.Bottom.NOTHING, drawn);
    }

    @Override
    public double inertia(double x) {
        return inertia;
    }

    @Override
    public double inertiaSlope(double x) {
        return 0;
    }

    @Override
    public double rubbedInertia(double x) {
        return share * stack;
    }

    @Override
    public double weight(double x) {
        return -pull;
    }

    @Override
    public double rubber(double x, Sense sense) {
        return 0;
    }

    @Override
    public double storing(double x) {
        return 0;
    }

    @Override
    public double friction(double x) {
        return share * pull;
    }

    @Override
    public double holding(double x) {
        return share * pull;
    }

    @Override
    public double weightEnergy(double x) {
        return pull * x;
    }

    @Override
    public double rubberEnergy(double x) {
        return 0;
    }

    @Override
    public double testedRoom(double x) {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public Ends ends() {
        return ends;
    }
}
