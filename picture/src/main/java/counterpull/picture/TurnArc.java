package counterpull.picture;

import counterpull.engine.planar.Vec;

/**
 * A turning force about a point: an arc with a head.
 *
 * @param at the point, m
 * @param toward its middle lies in this direction from the point
 * @param sense +1 counter-clockwise, −1 clockwise
 */
record TurnArc(Vec at, Vec toward, double sense) {
    private static final double RADIUS = 0.085;
    private static final int PIECES = 14;
    private static final double PIECE = 0.1;

    void draw(Sheet sheet, Ink ink) {
        double middle = Math.atan2(toward.y(), toward.x());
        PathData arc = new PathData();
        Vec last = at;
        Vec before = at;
        for (int i = 0; i <= PIECES; i++) {
            before = last;
            last = at.plus(Vec.unit(middle + sense * (i - PIECES / 2) * PIECE).times(RADIUS));
            arc = i == 0 ? arc.move(sheet.see(last)) : arc.line(sheet.see(last));
        }
        sheet.svg().path(arc, Fill.NONE, Pen.of(ink, 2));
        Vec way = sheet.see(last).minus(sheet.see(before));
        CurveDrawing.arrow(sheet.svg(), sheet.see(last), way, new CurveDrawing.ArrowHead(7, ink));
    }
}
