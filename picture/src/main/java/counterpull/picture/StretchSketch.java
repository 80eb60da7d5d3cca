package counterpull.picture;

import counterpull.engine.load.FixedPoint;
import counterpull.engine.load.LineEnd;
import counterpull.engine.load.OnBody;
import counterpull.engine.load.OnGuidedMass;
import counterpull.engine.load.StretchLine;
import counterpull.engine.load.StretchSeries;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * An elastic line between its ends over its guides: taut as straight pieces, loose with its own length, sagging in its longest piece.
 *
 * @param line the line
 */
record StretchSketch(StretchLine line) implements Sketch {
    private List<Vec> points(Limbwork work, int position) {
        return line.over(work.path()).points(position);
    }

    @Override
    public List<Vec> extent(Limbwork work, int position) {
        return points(work, position);
    }

    @Override
    public void behind(Scene scene) {
        // a line runs in front
    }

    @Override
    public void front(Scene scene) {
        StretchSeries series = line.over(scene.work().path());
        List<Vec> points = points(scene.work(), scene.position());
        double loose = Math.max(0, series.looseness(scene.position()));
        int longest = longest(points);
        for (int k = 1; k < points.size(); k++) {
            if (k == longest && loose > 0) {
                sagging(scene, points.get(k - 1), points.get(k), loose);
            } else {
                scene.sheet().line(points.get(k - 1), points.get(k), Pen.of(Ink.RUBBER, 3.2));
            }
        }
        hook(scene, points);
        ends(scene, points);
        for (LineEnd end : List.of(line.from(), line.to())) {
            if (end instanceof FixedPoint fixed) {
                new Ironwork(scene).place(fixed.at());
            }
        }
        words(scene, series, points);
    }

    private static int longest(List<Vec> points) {
        int longest = 1;
        for (int k = 2; k < points.size(); k++) {
            if (piece(points, k) > piece(points, longest)) {
                longest = k;
            }
        }
        return longest;
    }

    private static double piece(List<Vec> points, int k) {
        return points.get(k).minus(points.get(k - 1)).norm();
    }

    private static void sagging(Scene scene, Vec from, Vec to, double loose) {
        Vec a = scene.see(from);
        Vec b = scene.see(to);
        Sag sag = Sag.of(a, b, scene.sheet().px(to.minus(from).norm() + loose));
        scene.svg().path(new PathData().move(a).quad(sag.control(), b), Fill.NONE, Pen.of(Ink.RUBBER, 2.6));
        scene.words().keepOff(a, sag.lowest());
        scene.words().keepOff(sag.lowest(), b);
    }

    private void ends(Scene scene, List<Vec> points) {
        List<Vec> beside = new ArrayList<>(List.of(points.get(1), points.get(points.size() - 2)));
        List<Vec> at = List.of(points.get(0), points.get(points.size() - 1));
        List<LineEnd> ends = List.of(line.from(), line.to());
        for (int k = 0; k < ends.size(); k++) {
            Vec seen = scene.see(at.get(k));
            if (ends.get(k).moves()) {
                scene.svg().circle(seen, 3.5, Fill.of(Ink.PAPER), Pen.of(Ink.INK, 1.3));
            } else {
                new Ironwork(scene).fixed(at.get(k), beside.get(k));
                String name = Wrap.cut(ends.get(k).name(), 130, Lettering.small(Ink.QUIET));
                scene.words().askIfRoomy(seen, new Vec(0, 1), name, Lettering.small(Ink.QUIET));
            }
        }
        for (int k = 1; k < points.size() - 1; k++) {
            new Ironwork(scene).pulley(points.get(k));
        }
    }

    // a hook beside a bar on rails is held by it
    private void hook(Scene scene, List<Vec> points) {
        Vec[] at = {points.get(0), points.get(points.size() - 1)};
        LineEnd[] ends = {line.from(), line.to()};
        for (int k = 0; k < ends.length; k++) {
            if (ends[k] instanceof OnGuidedMass on) {
                Vec bar = scene.work().point(on.frame().at(), scene.position());
                scene.sheet().link(bar, at[k], 0.008, 0.008, Sheet.Look.STEEL);
            }
        }
    }

    // a taut line on the body has its number at its arrow
    private void words(Scene scene, StretchSeries series, List<Vec> points) {
        int i = scene.position();
        boolean loose = series.looseness(i) > 0;
        boolean onBody = line.from() instanceof OnBody || line.to() instanceof OnBody;
        String name = Wrap.cut(line.name(), 130, Lettering.body(Ink.INK));
        String state = loose
                ? ": loose " + scene.wording().length().say(series.looseness(i))
                : ": " + scene.wording().force().say(line.strands() * series.tension(scene.phase(), i));
        if (loose || !onBody) {
            int k = longest(points);
            Vec middle = scene.see(points.get(k).plus(points.get(k - 1)).times(0.5));
            scene.words().ask(middle, new Vec(0, -1), name + state, Lettering.body(Ink.INK));
        }
    }
}
