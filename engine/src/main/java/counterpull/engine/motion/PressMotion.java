package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.planar.Angles;
import java.util.List;

/**
 * A rail press as movement: where the plate is at each position, how fast it moves in each phase, and what every leg does.
 * Read-only once made. Distances m, speeds m/s along <b>u</b> relative to the hip, positive toward the top.
 *
 * <p>Refuses a range that ends less than 2° before straight for any leg: it is timed by travel, and there the joints'
 * accelerations grow without bound; and a place outside the stroke.
 */
public final class PressMotion {
    private static final double NEAREST_TO_STRAIGHT = Angles.radians(2);
    private static final double TOUCH = 1e-9;
    private final RailStroke stroke;
    private final double[] plate;
    private final double[] fraction;
    private final StrokeMotion[] strokes;
    private final LegPath[] paths;

    private PressMotion(RailStroke stroke, double[] plate, Tempo tempo) {
        this.stroke = stroke;
        this.plate = plate;
        fraction = new double[plate.length];
        for (int i = 0; i < plate.length; i++) {
            fraction[i] = Math.min(1, Math.max(0, (plate[i] - stroke.bottom()) / stroke.travel()));
        }
        strokes = new StrokeMotion[] {
            StrokeMotion.still(plate.length),
            tempo.along(Phase.LIFTING, fraction, stroke.travel()),
            tempo.along(Phase.LOWERING, fraction, stroke.travel())
        };
        paths = new LegPath[0];
    }

    private PressMotion(PressMotion timing, LegPath[] paths) {
        stroke = timing.stroke;
        plate = timing.plate;
        fraction = timing.fraction;
        strokes = timing.strokes;
        this.paths = paths;
    }

    /**
     * The movement of all legs over a stroke.
     *
     * @param stroke the shared stretch of rail
     * @param plate the hip-to-plate distances to look at, inside the stroke, m
     * @param tempo how the stroke is timed
     * @param seated rail, seat and legs
     */
    public static PressMotion of(RailStroke stroke, double[] plate, Tempo tempo, Seated seated) {
        Require.Limits inside = new Require.Limits(stroke.bottom() - TOUCH, stroke.top() + TOUCH);
        for (double at : plate) {
            Require.within(at, inside, "hip-to-plate distance looked at", "m");
        }
        PressMotion timing = new PressMotion(stroke, plate.clone(), tempo);
        LegPath.Frame frame = new LegPath.Frame(seated.rail(), seated.seat().trunkDirection());
        LegPath[] paths = new LegPath[seated.legs().size()];
        for (int k = 0; k < paths.length; k++) {
            LegOnPlate leg = seated.legs().get(k);
            if (leg.kneeAt(stroke.top()) < NEAREST_TO_STRAIGHT - TOUCH) {
                throw new Refusal(
                        Fault.PAST_STRAIGHT,
                        "knee flexion at the top",
                        leg.kneeAt(stroke.top()),
                        NEAREST_TO_STRAIGHT,
                        "rad",
                        "a moving range must end 2° or more before straight: raise the knee angle at the top");
            }
            paths[k] = LegPath.of(leg, timing.plate, frame, timing.strokes);
        }
        return new PressMotion(timing, paths);
    }

    /**
     * Rail, seat and the legs on the plate.
     *
     * @param rail the rail
     * @param seat the seat setting
     * @param legs the legs, in the person's order
     */
    public record Seated(Rail rail, SeatSetting seat, List<LegOnPlate> legs) {
        public Seated {
            legs = List.copyOf(legs);
        }
    }

    /** The stretch of rail. */
    public RailStroke stroke() {
        return stroke;
    }

    /** How many positions there are, bottom first. */
    public int positions() {
        return plate.length;
    }

    /** Hip-to-plate distance at position i, m. */
    public double plate(int i) {
        return plate[i];
    }

    /** How far position i is from the bottom, as a fraction of the travel. */
    public double fraction(int i) {
        return fraction[i];
    }

    /** Speed of the plate from the hip at position i, m/s, positive toward the top. */
    public double speed(Phase phase, int i) {
        return strokes[phase.ordinal()].speed(i);
    }

    /** Acceleration of the plate from the hip at position i, m/s², positive toward the top. */
    public double acceleration(Phase phase, int i) {
        return strokes[phase.ordinal()].acceleration(i);
    }

    /** The path of leg k. */
    public LegPath path(int k) {
        return paths[k];
    }

    /** The paths of all legs, in the person's order. */
    public List<LegPath> paths() {
        return List.of(paths);
    }

    /** How many legs take part. */
    public int legs() {
        return paths.length;
    }
}
