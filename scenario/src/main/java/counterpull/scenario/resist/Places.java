package counterpull.scenario.resist;

import counterpull.engine.planar.Vec;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Measures;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.units.Dimension;

/** Reads and writes places in the movement's plane, from the joint that stays in place. */
final class Places {
    private Places() {}

    /** The place under a key; the middle of nowhere after a problem. */
    static Vec read(Fields fields, String key) {
        return fields.group(key, Shapes.PLACE).map(Places::inside).orElse(new Vec(0, 0));
    }

    /** A place whose keys stand in the group itself. */
    static Vec inside(Fields fields) {
        return new Vec(fields.required("forward", Measures.PLACE), fields.required("up", Measures.PLACE));
    }

    static Out written(Vec place) {
        return inside(new Out(), place);
    }

    static Out inside(Out out, Vec place) {
        return out.put("forward", place.x(), Dimension.LENGTH).put("up", place.y(), Dimension.LENGTH);
    }
}
