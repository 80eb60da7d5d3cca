package counterpull.picture;

import counterpull.engine.planar.Vec;

/**
 * What every part of a press figure's drawing works with.
 *
 * @param figure what is drawn
 * @param points where the sled's points are
 * @param sheet what it is drawn on
 */
record Stage(Figure figure, SledPoints points, Sheet sheet) {
    Camera camera() {
        return sheet.camera();
    }

    Svg svg() {
        return sheet.svg();
    }

    FigureWords words() {
        return sheet.words();
    }

    Vec see(Vec point) {
        return sheet.see(point);
    }

    double px(double metres) {
        return sheet.px(metres);
    }

    /** A line between two points of the sled, which words keep off. */
    void line(Vec from, Vec to, Pen pen) {
        sheet.line(from, to, pen);
    }

    void link(Vec from, Vec to, double fromRadius, double toRadius, Sheet.Look look) {
        sheet.link(from, to, fromRadius, toRadius, look);
    }
}
