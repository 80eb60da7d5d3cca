package counterpull.bench.person;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.body.PossibleAngles;
import java.util.Optional;

/** Whether a joint can be at an angle at all. */
final class JointChecks {
    private JointChecks() {}

    static Optional<Remark> impossible(Joint joint, double angle, String reading) {
        Require.Limits possible = PossibleAngles.of(joint);
        if (angle >= possible.low() && angle <= possible.high()) {
            return Optional.empty();
        }
        double limit = angle < possible.low() ? possible.low() : possible.high();
        return Optional.of(Remark.refuses("angle-impossible", reading + " is ")
                .then(angle, Kind.ANGLE)
                .then(" and " + joint.angleWords() + (angle < limit ? " does not go below " : " does not go past "))
                .then(limit, Kind.ANGLE)
                .then(": check sign and unit"));
    }
}
