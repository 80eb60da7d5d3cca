package counterpull.engine.motion;

/** Which end of a sled moves along the rail. */
public enum Ride {
    /** The plate rides; the person stays where they are. */
    PLATE,
    /** The seat rides with the person; the plate stays where it is. */
    SEAT
}
