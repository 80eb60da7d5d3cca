package counterpull.picture;

import counterpull.engine.planar.Vec;

/**
 * What every part of a figure is drawn on, whatever the exercise. Points in metres, of the axes that the camera looks at.
 *
 * @param camera from metres to px
 * @param svg the picture
 * @param words its words, placed last
 */
record Sheet(Camera camera, Svg svg, FigureWords words) {
    Vec see(Vec point) {
        return camera.see(point);
    }

    double px(double metres) {
        return camera.px(metres);
    }

    /** A line between two points, which words keep off. */
    void line(Vec from, Vec to, Pen pen) {
        svg.line(see(from), see(to), pen);
        words.keepOff(see(from), see(to));
    }

    void link(Vec from, Vec to, double fromRadius, double toRadius, Look look) {
        Outline.End start = new Outline.End(see(from), px(fromRadius));
        Outline.End end = new Outline.End(see(to), px(toRadius));
        svg.path(Outline.taper(start, end), look.fill, look.pen);
        words.keepOff(see(from), see(to));
        Vec side = see(to).minus(see(from)).left();
        double length = Math.max(1, side.norm());
        Vec a = side.times(px(fromRadius) / length);
        Vec b = side.times(px(toRadius) / length);
        words.keepOff(see(from).plus(a), see(to).plus(b));
        words.keepOff(see(from).minus(a), see(to).minus(b));
    }

    /**
     * Fill and outline of a part.
     *
     * @param fill its area
     * @param pen its outline
     */
    record Look(Fill fill, Pen pen) {
        /** A part of the machine. */
        static final Look STEEL = new Look(Fill.of(Ink.STEEL), Pen.of(Ink.INK, 1));

        /** The body in front. */
        static final Look BODY = new Look(Fill.of(Ink.BODY), Pen.of(Ink.INK, 1.3));

        /** A part of the body that is held, or goes along. */
        static final Look REST = new Look(Fill.of(Ink.BODY), Pen.of(Ink.QUIET, 1));

        /** A part of the body that is not looked at. */
        static final Look BEHIND = new Look(Fill.of(Ink.PAPER), Pen.of(Ink.QUIET, 1));

        /** Another position. */
        static final Look GHOST =
                new Look(Fill.NONE, Pen.of(Ink.QUIET, 0.8).dashed("3 3").faded(0.75));
    }
}
