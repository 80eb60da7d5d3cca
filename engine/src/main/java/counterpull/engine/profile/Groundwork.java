package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.LineSeries;
import counterpull.engine.motion.LegOnPlate;
import counterpull.engine.motion.LegPath;
import counterpull.engine.motion.PressMotion;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.planar.Angles;
import java.util.List;

/**
 * Everything of a profile that does not depend on how much is loaded: movement, terms and strength. The search lays it out
 * once for a stance and a range and then only multiplies.
 *
 * @param task the task it was laid out for
 * @param motion the movement
 * @param terms forces and torques as amounts × coefficients
 * @param capacity what the person has
 */
public record Groundwork(PressTask task, PressMotion motion, Terms terms, Capacity capacity) {
    /** For a task over its own stroke at equal steps of the driving angle. */
    public static Groundwork of(PressTask task) {
        RailStroke stroke = task.stroke();
        return of(task, stroke, stroke.equalAngles(task.legs().get(stroke.reference()), task.positions()));
    }

    /**
     * For a task over a stated stroke, looked at from stated places.
     *
     * @param task the task
     * @param stroke the stretch of rail, which times the movement
     * @param plate hip-to-plate distances inside it, m
     */
    public static Groundwork of(PressTask task, RailStroke stroke, double[] plate) {
        PressMotion.Seated seated =
                new PressMotion.Seated(task.sled().rail(), task.stance().seat(), task.legs());
        PressMotion motion = PressMotion.of(stroke, plate, task.tempo(), seated);
        checkRanges(task, stroke, seated);
        Groundwork ground = new Groundwork(
                task,
                motion,
                PressTerms.layOut(task, motion),
                Capacity.of(task.person().limbs(), motion.paths(), Grid.leg(motion.positions())));
        new PushDirection(ground, task.pushing().push()).refuseUnreachableAim();
        return ground;
    }

    // joint angles are not monotone over every range: each is looked at where it turns back, too
    private static void checkRanges(PressTask task, RailStroke stroke, PressMotion.Seated seated) {
        for (int k = 0; k < seated.legs().size(); k++) {
            double[] places = extremes(stroke, seated.legs().get(k));
            LegPath path = PressMotion.of(stroke, places, task.tempo(), seated).path(k);
            Limb limb = task.person().limbs().get(k);
            for (int i = 0; i < places.length; i++) {
                for (Joint joint : Joint.LEG) {
                    limb.ranges().check(joint, path.angle(joint, i), where(i, path) + whose(limb));
                }
            }
        }
    }

    private static double[] extremes(RailStroke stroke, LegOnPlate leg) {
        double[] places = {stroke.bottom(), stroke.top(), stroke.top(), stroke.top()};
        int count = 2;
        for (double turning : leg.turningPlaces()) {
            if (turning > stroke.bottom() && turning < stroke.top()) {
                places[count++] = turning;
            }
        }
        return java.util.Arrays.copyOf(places, count);
    }

    private static String where(int place, LegPath path) {
        if (place > 1) {
            return "with the knee bent to " + Math.round(Angles.degrees(path.angle(Joint.KNEE, place))) + "°";
        }
        return place == 0 ? "at the bottom" : "at the top";
    }

    private static String whose(Limb limb) {
        return " (" + limb.side().words() + ")";
    }

    /** A line over this range; refused past its tested length. */
    public LineSeries series(ElasticLine line) {
        return PressTerms.series(line, task, motion);
    }

    /** The same ground with other lines on it. */
    public Groundwork with(List<LineSeries> lines) {
        return new Groundwork(task, motion, terms.with(lines), capacity);
    }
}
