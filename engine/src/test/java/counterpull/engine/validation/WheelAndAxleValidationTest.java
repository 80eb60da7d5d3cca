package counterpull.engine.validation;

import counterpull.engine.Constants;
import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.load.CamRadius;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Pull;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Vec;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A round cam on the joint's own axle is the textbooks' wheel and axle: the stack on the axle, the cuff on the wheel. */
class WheelAndAxleValidationTest {
    private static ChainPath elbow() {
        Hinge hinge = new Hinge(Joint.ELBOW, -Math.PI / 2, Map.of(), Hinge.Lie.UPRIGHT);
        WorkingRange range = new WorkingRange(0.3, 2, 0.3);
        Course course = Course.even(1.7, 5, new FullStop(new Tempo.Seconds(2, 0, 2, 0)));
        Anthropometry body = new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, MeasuredLengths.none());
        return hinge.path(new Motion.Moving(body.side(), 1, range, course, List.of()));
    }

    @Test
    void aCarsAxleAndTyre() {
        ChainPath path = elbow();
        LeverFrame wheel = new LeverFrame(new Vec(0, 0), new Cuff(0, 0.275));
        StackLine axle = new StackLine(1, 0, Loaded.always(50), 0);
        CamStack machine = new CamStack("wheel and axle", wheel, CamRadius.round(0.0110), axle, 0);
        Pull pull = machine.on(path, Constants.STANDARD_GRAVITY).get(0);
        double atTheRim = pull.size(path.course().cell(Phase.HELD, 2), 0);
        Published.of("force at a tyre of 27.5 cm over force at its axle of 1.10 cm", "")
                .source(
                        "OpenStax College Physics, section 9.5, problem on a car's axle; question looked up, answer from "
                                + "memory, the arithmetic exact")
                .value(0.0400)
                .ours(atTheRim / (50 * Constants.STANDARD_GRAVITY))
                .within(0.00005, "printed to three digits");
    }
}
