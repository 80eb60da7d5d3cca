package counterpull.engine.load;

import counterpull.engine.planar.Vec;

/**
 * The centre line of a segment as a lever's pivot sees it at one position, with first and second derivative by the stroke's
 * coordinate x.
 *
 * @param from from the pivot to the segment's joint, m
 * @param slope its first derivative
 * @param curve its second derivative
 * @param turn the segment's direction
 */
record LimbLine(Vec from, Vec slope, Vec curve, Turn turn) {
    /**
     * A direction and how it goes on.
     *
     * @param angle rad, counter-clockwise from the plane's x
     * @param first d(angle)/dx
     * @param second d²(angle)/dx²
     */
    record Turn(double angle, double first, double second) {}
}
