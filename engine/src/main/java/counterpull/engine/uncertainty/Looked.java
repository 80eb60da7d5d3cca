package counterpull.engine.uncertainty;

import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import java.util.List;

/**
 * What is looked at in every draw.
 *
 * @param joints whose effort counts for peak and ceiling, proximal first
 * @param ceiling effort that must not be passed, above zero; infinite where none is stated
 */
public record Looked(List<Joint> joints, double ceiling) {
    public Looked {
        joints = List.copyOf(joints);
        if (ceiling != Double.POSITIVE_INFINITY) {
            Require.positive(ceiling, "ceiling of effort", "");
        }
    }

    /** These joints without a ceiling. */
    public static Looked at(List<Joint> joints) {
        return new Looked(joints, Double.POSITIVE_INFINITY);
    }
}
