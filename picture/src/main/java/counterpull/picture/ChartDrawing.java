package counterpull.picture;

import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/** Lays a chart out on its size and draws it. */
final class ChartDrawing {
    private final Chart chart;
    private final View view;
    private final Svg svg;
    private final Plot plot;
    private final CurveDrawing curves;
    private final LabelColumn column;

    ChartDrawing(Chart chart, View view) {
        this.chart = chart;
        this.view = view;
        Unit unit = chart.measure().unit(view.wording());
        svg = new Svg(view, chart.title() + ", " + unit.symbol());
        Box frame = frame(view.size());
        plot = new Plot(frame, chart.range(), ticks(unit, frame), unit);
        curves = new CurveDrawing(svg, plot);
        double right = view.size().width();
        Box beside = new Box(frame.right(), frame.top() - 8, right - frame.right(), frame.height() + 8);
        column = new LabelColumn(beside, Lettering.small(Ink.INK));
    }

    private static Box frame(Size size) {
        double right = size.small() ? 138 : 164;
        double below = size.small() ? 44 : 60;
        return new Box(46, 50, size.width() - 46 - right, size.height() - 50 - below);
    }

    private Ticks ticks(Unit unit, Box frame) {
        Extent extent = new Extent();
        for (Layer layer : chart.layers()) {
            extent.add(layer);
        }
        int most = Math.max(3, (int) (frame.height() / 24));
        return Ticks.covering(unit.of(extent.low()), unit.of(extent.high()), most);
    }

    String draw() {
        heads();
        stretches();
        new AxesDrawing(svg, plot, view).draw();
        svg.open("layers");
        for (Layer layer : chart.layers()) {
            draw(layer);
        }
        here();
        svg.close();
        svg.open("labels");
        column.draw(svg);
        words();
        svg.close();
        return svg.finish();
    }

    private void heads() {
        double room = view.size().width() - 20.0;
        Lettering head = Lettering.head(Ink.INK);
        svg.text(new Vec(12, 20), Wrap.cut(chart.title(), room, head), head);
        String measure = plot.unit().symbol() + ", " + chart.measure().words();
        svg.text(new Vec(12, 38), Wrap.cut(measure, room, Lettering.small(Ink.QUIET)), Lettering.small(Ink.QUIET));
    }

    private void stretches() {
        for (Layer layer : chart.layers()) {
            if (layer instanceof Layer.Stretch stretch) {
                Hatching.fill(svg, box(stretch), Pen.of(Ink.FAINT, 0.8));
            }
        }
    }

    private Box box(Layer.Stretch stretch) {
        double left = Math.max(plot.frame().left(), Math.min(plot.x(stretch.from()), plot.x(stretch.to())));
        double right = Math.min(plot.frame().right(), Math.max(plot.x(stretch.from()), plot.x(stretch.to())));
        return new Box(
                left,
                plot.frame().top(),
                Math.max(0, right - left),
                plot.frame().height());
    }

    private void draw(Layer layer) {
        if (layer instanceof Layer.Band band) {
            band(band);
        } else if (layer instanceof Layer.Limit limit) {
            limit(limit);
        } else if (layer instanceof Layer.Curve curve) {
            curves.draw(curve.series(), curve.look());
            label(curve);
        } else if (layer instanceof Layer.Dots dots) {
            new DotsDrawing(svg, plot, column).draw(dots);
        } else if (layer instanceof Layer.Bars bars) {
            DotsDrawing.bars(svg, plot, bars);
        } else if (layer instanceof Layer.Mark mark) {
            svg.circle(plot.at(mark), 6, Fill.NONE, Pen.of(Ink.ACCENT, 1.8));
        }
    }

    private void label(Layer.Curve curve) {
        int last = curve.series().endKnown(plot.range().sense());
        if (last >= 0 && !curve.label().isEmpty()) {
            LabelColumn.Rank rank = curve.look().stroke().fine ? LabelColumn.Rank.SECOND : LabelColumn.Rank.FIRST;
            column.add(
                    new LabelColumn.Text(plot.at(curve.series(), last), curve.label(), rank),
                    (s, from, to) -> curves.key(curve.look(), from, to));
        }
    }

    private void band(Layer.Band band) {
        int n = band.low().size();
        int i = 0;
        while (i < n) {
            int end = i;
            while (end < n && band.low().known(end) && band.high().known(end)) {
                end++;
            }
            if (end - i > 1) {
                band(band, i, end);
            }
            i = end + 1;
        }
    }

    private void band(Layer.Band band, int from, int to) {
        PathData path = new PathData().move(plot.at(band.high(), from));
        for (int i = from + 1; i < to; i++) {
            path.line(plot.at(band.high(), i));
        }
        for (int i = to - 1; i >= from; i--) {
            path.line(plot.at(band.low(), i));
        }
        svg.path(path.close(), new Fill(band.ink(), 0.14), Pen.of(band.ink(), 0));
    }

    private void limit(Layer.Limit limit) {
        double y = plot.y(limit.value());
        Vec from = new Vec(plot.frame().left(), y);
        Vec to = new Vec(plot.frame().right(), y);
        double out = limit.side() == Layer.Limit.Side.ABOVE ? -7 : 7;
        svg.line(from, to, Pen.of(Ink.LIMIT, 1.4));
        Hatching.edge(svg, from, to, out, Pen.of(Ink.LIMIT, 0.8));
        column.add(new LabelColumn.Text(to, limit.label(), LabelColumn.Rank.FIRST), (s, a, b) -> {
            s.line(a, b, Pen.of(Ink.LIMIT, 1.4));
            Hatching.edge(s, a, b, Math.signum(out) * 5, Pen.of(Ink.LIMIT, 0.8));
        });
    }

    private void here() {
        if (chart.here().isPresent()) {
            double x = plot.x(chart.range().at(chart.here().getAsInt()));
            svg.line(
                    new Vec(x, plot.frame().top() - 6),
                    new Vec(x, plot.frame().bottom() + 22),
                    Pen.of(Ink.ACCENT, 1.2));
        }
    }

    private void words() {
        PlotWords words = new PlotWords(svg, plot, obstacles());
        for (Layer layer : chart.layers()) {
            if (layer instanceof Layer.Stretch stretch) {
                words.over(box(stretch), stretch.words());
            } else if (layer instanceof Layer.Note note) {
                words.note(note);
            } else if (layer instanceof Layer.Mark mark) {
                words.beside(plot.at(mark), mark.words());
            } else if (layer instanceof Layer.Curve curve && !curve.gap().isEmpty()) {
                words.gaps(curve);
            }
        }
    }

    private List<Vec> obstacles() {
        List<Vec> points = new ArrayList<>();
        for (Layer layer : chart.layers()) {
            if (layer instanceof Layer.Curve curve) {
                for (int i = 0; i < curve.series().size(); i++) {
                    if (curve.series().known(i)) {
                        points.add(plot.at(curve.series(), i));
                    }
                }
            } else if (layer instanceof Layer.Dots dots) {
                for (int i = 0; i < dots.series().size(); i++) {
                    if (dots.series().known(i)) {
                        points.add(plot.at(dots.series(), i));
                    }
                }
            } else if (layer instanceof Layer.Limit limit) {
                for (double x = plot.frame().left(); x < plot.frame().right(); x += 6) {
                    points.add(new Vec(x, plot.y(limit.value())));
                }
            }
        }
        if (chart.here().isPresent()) {
            double x = plot.x(chart.range().at(chart.here().getAsInt()));
            for (double y = plot.frame().top(); y < plot.frame().bottom(); y += 6) {
                points.add(new Vec(x, y));
            }
        }
        return points;
    }
}
