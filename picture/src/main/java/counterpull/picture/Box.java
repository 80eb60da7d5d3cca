package counterpull.picture;

import counterpull.engine.planar.Vec;

/**
 * A rectangle in px, y downward.
 *
 * @param left x of its left side
 * @param top y of its upper side
 * @param width ≥ 0
 * @param height ≥ 0
 */
record Box(double left, double top, double width, double height) {
    /** The box that a word takes when its baseline point is given. */
    static Box of(Vec at, String text, Lettering lettering) {
        double width = TextSize.width(text, lettering);
        double left = switch (lettering.align()) {
            case START -> at.x();
            case MIDDLE -> at.x() - width / 2;
            case END -> at.x() - width;
        };
        return new Box(left, at.y() - 0.8 * lettering.size(), width, 1.05 * lettering.size());
    }

    double right() {
        return left + width;
    }

    double bottom() {
        return top + height;
    }

    boolean overlaps(Box other) {
        return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
    }

    boolean contains(Vec point) {
        return point.x() >= left && point.x() <= right() && point.y() >= top && point.y() <= bottom();
    }

    boolean inside(Box outer) {
        return left >= outer.left && right() <= outer.right() && top >= outer.top && bottom() <= outer.bottom();
    }

    /** The point of the box that is nearest to another point. */
    Vec nearest(Vec to) {
        return new Vec(Math.max(left, Math.min(right(), to.x())), Math.max(top, Math.min(bottom(), to.y())));
    }

    Box grown(double by) {
        return new Box(left - by, top - by, width + 2 * by, height + 2 * by);
    }
}
