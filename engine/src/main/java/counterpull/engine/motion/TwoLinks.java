package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;

/**
 * Two links from the origin to a point P, with derivatives where P goes along a straight line at unit speed. With σ = turn · sin κ:
 *
 * <p>θ₁′ = P′·e₂/(a σ), θ₂′ = −P′·e₁/(b σ); w = a θ₁′² e₁ + b θ₂′² e₂; θ₁″ = w·e₂/(a σ), θ₂″ = −w·e₁/(b σ).
 *
 * @param near length a of the first link, m
 * @param far length b of the second link, m
 * @param turn +1 where the bend κ turns the second link counter-clockwise from the first, −1 where clockwise
 * @param names what the two links are called in a refusal
 */
record TwoLinks(double near, double far, int turn, Names names) {
    private static final double NEAREST_TO_STRAIGHT = Angles.radians(2);
    // as far as a knee may fold in a press
    private static final double MOST_FOLDED = Math.PI * 0.95;
    private static final double TOUCH = 1e-9;

    /**
     * What a refusal calls the parts.
     *
     * @param distance "shoulder to grip"
     * @param middle "elbow"
     */
    record Names(String distance, String middle) {}

    /**
     * Where the links point.
     *
     * @param first direction of the first link with derivatives by the way of P
     * @param second direction of the second link
     */
    record Posture(Jet first, Jet second) {}

    /** Refuses a place that is too far, or too near, to go through with speed. */
    void check(Vec at, String where) {
        double distance = at.norm();
        if (distance > near + far + TOUCH) {
            throw refusal(Fault.PAST_STRAIGHT, distance, near + far, where, "is longer than the straight limb");
        }
        if (distance > distance(NEAREST_TO_STRAIGHT) + TOUCH) {
            double bend = Math.acos(Math.min(1, cosine(at)));
            String sentence = "the " + names.middle + " must stay bent by 2° or more " + where
                    + ": a path timed by its travel must end that far before straight";
            throw new Refusal(
                    Fault.PAST_STRAIGHT,
                    names.middle + " flexion " + where,
                    bend,
                    NEAREST_TO_STRAIGHT,
                    "rad",
                    sentence);
        }
        if (distance < distance(MOST_FOLDED) - TOUCH) {
            throw refusal(
                    Fault.OUT_OF_REACH, distance, distance(MOST_FOLDED), where, "is shorter than this limb folds");
        }
    }

    private Refusal refusal(Fault fault, double distance, double limit, String where, String why) {
        String quantity = "distance from " + names.distance + " " + where;
        return new Refusal(
                fault, quantity, distance, limit, "m", "the distance from " + names.distance + " " + where + " " + why);
    }

    private double distance(double bend) {
        return Math.sqrt(near * near + far * far + 2 * near * far * Math.cos(bend));
    }

    private double cosine(Vec at) {
        return (at.dot(at) - near * near - far * far) / (2 * near * far);
    }

    /**
     * The posture with the end of the second link at a place.
     *
     * @param at P, m from the origin, within reach
     * @param way P′, a unit vector
     */
    Posture posture(Vec at, Vec way) {
        double cos = cosine(at);
        double sin = turn * Math.sqrt((1 - cos) * (1 + cos));
        // P as the first link sees it
        Vec seen = new Vec(near + far * cos, far * sin);
        Vec first = new Vec(at.dot(seen), seen.cross(at)).times(1 / seen.dot(seen));
        Vec second = new Vec(first.x() * cos - first.y() * sin, first.y() * cos + first.x() * sin);
        double perNear = 1 / (near * sin);
        double perFar = -1 / (far * sin);
        double slope1 = way.dot(second) * perNear;
        double slope2 = way.dot(first) * perFar;
        Vec inward = first.times(near * slope1 * slope1).plus(second.times(far * slope2 * slope2));
        double angle = Math.atan2(first.y(), first.x());
        return new Posture(
                new Jet(angle, slope1, inward.dot(second) * perNear),
                new Jet(angle + Math.atan2(sin, cos), slope2, inward.dot(first) * perFar));
    }
}
