package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.LineSeries;
import counterpull.engine.motion.PressMotion;
import counterpull.engine.motion.RailStroke;
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
        checkRanges(task, motion);
        return new Groundwork(
                task,
                motion,
                PressTerms.layOut(task, motion),
                Capacity.of(task.person().limbs(), motion));
    }

    private static void checkRanges(PressTask task, PressMotion motion) {
        int last = motion.positions() - 1;
        for (int k = 0; k < motion.legs(); k++) {
            Limb limb = task.person().limbs().get(k);
            String whose = " (" + limb.side().words() + ")";
            for (Joint joint : Joint.values()) {
                limb.ranges().check(joint, motion.path(k).angle(joint, 0), "at the bottom" + whose);
                limb.ranges().check(joint, motion.path(k).angle(joint, last), "at the top" + whose);
            }
        }
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
