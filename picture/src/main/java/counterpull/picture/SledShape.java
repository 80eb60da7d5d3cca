package counterpull.picture;

import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.List;

/**
 * The sled's outline in its own axes, m. What the result knows (plate, rail angle, marks, stops) is true; how carriage, seat and
 * posts look is a drawing's convention.
 */
final class SledShape {
    static final double DISC = 0.225;
    static final double PAD = 0.03;
    private static final double RAIL_BELOW = 0.30;
    private final Figure figure;
    private final SledPoints points;
    private final double railAcross;

    SledShape(Figure figure, SledPoints points) {
        this.figure = figure;
        this.points = points;
        double heel = figure.profile().task().stance().row().heel();
        double seat = points.plateRides() ? 0 : lowestOfSeat();
        railAcross = Math.min(Math.min(-RAIL_BELOW, heel - 0.16), seat - 0.05);
    }

    private double lowestOfSeat() {
        double low = 0;
        Vec hip = points.hip(0);
        for (Vec point : new Vec[] {backFrom(hip), backTo(hip), panFrom(hip), panTo(hip)}) {
            low = Math.min(low, point.y() - PAD);
        }
        return low;
    }

    /** Where the rail lies across. */
    double railAcross() {
        return railAcross;
    }

    /** Where the dimension from hip to plate lies across: between person and rail, or beyond the rail under a seat that rides. */
    double dimensionAcross() {
        return points.plateRides() ? railAcross + 0.09 : railAcross - 0.14;
    }

    Vec onRail(double along) {
        return new Vec(along, railAcross);
    }

    double railFrom() {
        PressProfile profile = figure.profile();
        int top = profile.positions() - 1;
        return points.plateRides()
                ? Math.min(points.pointer(0) - 0.16, firstStop() - 0.03)
                : points.pointer(top) - 0.50;
    }

    double railTo() {
        return points.plateRides() ? points.pointer(figure.profile().positions() - 1) + 0.62 : 0.06;
    }

    private double firstStop() {
        double first = Double.POSITIVE_INFINITY;
        for (double mark : figure.profile().task().sled().stops().marks()) {
            double at = points.pointerAtMark(mark);
            if (at > points.pointer(0) - 0.3) {
                first = Math.min(first, at);
            }
        }
        return first;
    }

    private Vec back() {
        return points.trunkWay().left();
    }

    Vec backFrom(Vec hip) {
        double off = BodyPieces.pelvis(figure.build()) + PAD;
        return hip.plus(back().times(off)).plus(points.trunkWay().times(0.02));
    }

    Vec backTo(Vec hip) {
        double off = BodyPieces.chest(figure.build()) + PAD;
        double length = figure.build().trunk() + figure.build().share(0.10);
        return hip.plus(back().times(off)).plus(points.trunkWay().times(length));
    }

    // the pan stands 105° from the back
    private Vec pan() {
        Vec trunk = points.trunkWay();
        return Vec.unit(Math.atan2(trunk.y(), trunk.x()) - Math.toRadians(105));
    }

    Vec panFrom(Vec hip) {
        double off = BodyPieces.pelvis(figure.build()) + PAD;
        return hip.minus(pan().left().times(off)).minus(pan().times(0.03));
    }

    Vec panTo(Vec hip) {
        return panFrom(hip).plus(pan().times(figure.build().share(0.15)));
    }

    Vec plateLow(int position) {
        double low = Math.min(figure.profile().task().stance().row().heel() - 0.10, -0.20);
        return points.plate(position).plus(points.plateWay().times(low));
    }

    Vec plateHigh(int position) {
        Posture posture = Posture.of(figure.profile(), figure.limb(), position);
        double toe = posture.toe().minus(points.plate(position)).dot(points.plateWay());
        return points.plate(position).plus(points.plateWay().times(Math.max(0.22, toe + 0.08)));
    }

    /** Middle of the plates on their horn. */
    Vec horn(int position) {
        Vec at = points.plateRides()
                ? new Vec(points.pointer(position) + 0.30, railAcross + 0.19)
                : new Vec(points.pointer(position) - 0.33, railAcross + 0.10);
        return at;
    }

    /** Under the line of a weight stack's tower, behind the seat at its farthest. */
    Vec stackFoot() {
        double behind = 0;
        for (int position : new int[] {0, figure.profile().positions() - 1}) {
            behind = Math.min(behind, backTo(points.hip(position)).x());
        }
        return new Vec(behind - 0.12, railAcross - 0.2);
    }

    /** Where what rides stands on the rail: its two rollers. */
    Vec roller(int position, double from) {
        double start = points.plateRides() ? points.pointer(position) + 0.07 : points.pointer(position) - 0.33;
        return new Vec(start + from, railAcross + 0.035);
    }

    /** Points that the picture must hold. */
    List<Vec> extent() {
        List<Vec> all = new ArrayList<>();
        int top = figure.profile().positions() - 1;
        for (int position : new int[] {0, top}) {
            Posture posture = Posture.of(figure.profile(), figure.limb(), position);
            around(all, posture.knee(), figure.build().share(0.033));
            Vec hip = points.hip(position);
            around(all, hip.plus(points.trunkWay().times(BodyPieces.toCrown(figure.build()))), 0.05);
            all.add(backTo(hip).plus(back().times(PAD)));
            around(all, panFrom(hip), PAD);
            around(all, panTo(hip), PAD);
            all.add(plateHigh(position));
            around(all, horn(position), DISC);
            figure.profile().lines().forEach(line -> {
                around(all, points.anchor(line.line(), position), 0.03);
                around(all, points.attachment(line.line(), position), 0.03);
            });
        }
        Vec tip = points.plate(top).plus(new Vec(PushDrawing.LONGEST_ARROW + 0.02, 0.1));
        all.add(tip);
        if (!points.plateRides()) {
            all.add(new Vec(points.plate(0).x(), railAcross - 0.18));
            all.add(tip.plus(new Vec(0.12, 0)));
        }
        if (!figure.profile().task().sled().platesRide()) {
            all.add(stackFoot().plus(new Vec(-0.3, 0)));
            all.add(stackFoot().plus(new Vec(-0.3, 1.2)));
        }
        all.add(new Vec(railFrom(), railAcross - 0.09));
        all.add(onRail(railTo()));
        return all;
    }

    private static void around(List<Vec> all, Vec point, double radius) {
        for (int i = 0; i < 8; i++) {
            all.add(point.plus(Vec.unit(i * Math.PI / 4).times(radius)));
        }
    }
}
