package counterpull.picture;

import counterpull.engine.body.Joint;

/**
 * What runs along a chart from left to right.
 *
 * @param words its name as a person says it ("knee flexion")
 * @param kind what it is counted in
 */
public record Coordinate(String words, Kind kind) {
    /** Travel along a path. */
    public static final Coordinate TRAVEL = new Coordinate("travel along the path", Kind.LENGTH);

    /** Time since a recording began. */
    public static final Coordinate TIME = new Coordinate("time", Kind.TIME);

    /** What a coordinate is counted in. */
    public enum Kind {
        ANGLE,
        LENGTH,
        MASS,
        TIME
    }

    /** The anatomical angle of a joint. */
    public static Coordinate of(Joint joint) {
        return new Coordinate(joint.angleWords(), Kind.ANGLE);
    }

    /** The reader's unit for it. */
    Unit unit(Wording wording) {
        return switch (kind) {
            case ANGLE -> wording.angle();
            case LENGTH -> wording.length();
            case MASS -> wording.mass();
            case TIME -> wording.time();
        };
    }
}
