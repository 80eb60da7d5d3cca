package counterpull.engine.load;

import counterpull.engine.Require;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;

/**
 * How a carriage on a straight rail touches the body: the body pushes it along the rail and slides across it without friction.
 *
 * @param at where it touches the body
 * @param railAngle direction of the rail from x, rad; which of its two senses does not matter
 */
public record RailFrame(BodyPoint at, double railAngle) implements Carrier {
    private static final Require.Limits TURN = new Require.Limits(-2 * Math.PI, 2 * Math.PI);
    private static final double ROUNDING = 1e-9;

    public RailFrame {
        Require.within(railAngle, TURN, "direction of the rail at " + at.name(), "rad");
    }

    @Override
    public String words() {
        return at.name() + " on its rail";
    }

    @Override
    public boolean isSame(Carrier other) {
        return other instanceof RailFrame rail
                && rail.at.segment() == at.segment()
                && rail.at.at().minus(at.at()).norm() < ROUNDING
                && Math.abs(Math.sin(rail.railAngle - railAngle)) < ROUNDING;
    }

    @Override
    public RailRun over(ChainPath path) {
        return new RailRun(this, path);
    }
}
