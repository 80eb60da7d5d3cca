package counterpull.picture;

import counterpull.engine.planar.Vec;

/**
 * Where a chart's values lie on the picture.
 *
 * @param frame the plot's box, px
 * @param range left and right end
 * @param ticks lower and upper end, in the reader's unit
 * @param unit the reader's unit
 */
record Plot(Box frame, Range range, Ticks ticks, Unit unit) {
    double x(double coordinate) {
        double part = (coordinate - range.bottom()) / (range.top() - range.bottom());
        return frame.left() + part * frame.width();
    }

    double y(double si) {
        return level(unit.of(si));
    }

    /** Height of a value in the reader's unit. */
    double level(double value) {
        double part = (value - ticks.low()) / (ticks.high() - ticks.low());
        return frame.bottom() - part * frame.height();
    }

    Vec at(Layer.Mark mark) {
        return new Vec(x(mark.x()), y(mark.y()));
    }

    Vec at(Series series, int i) {
        return new Vec(x(series.x(i)), y(series.y(i)));
    }
}
