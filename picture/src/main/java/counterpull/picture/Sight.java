package counterpull.picture;

import counterpull.engine.planar.Vec;

/**
 * How the axes of an exercise lie on the picture.
 *
 * @param tilt by how much they are turned, rad, counter-clockwise
 * @param side 1, or −1 for a mirror image: a right limb in a plane whose axes are those of a left one
 */
record Sight(double tilt, int side) {
    /** As they are. */
    static final Sight STRAIGHT = new Sight(0, 1);

    Vec of(Vec point) {
        Vec along = Vec.unit(tilt);
        Vec turned = along.times(point.x()).plus(along.left().times(point.y()));
        return new Vec(side * turned.x(), turned.y());
    }
}
