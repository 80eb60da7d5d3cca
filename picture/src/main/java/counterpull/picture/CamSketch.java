package counterpull.picture;

import counterpull.engine.load.CamRadius;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.LeverPath;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A cam that winds a stack's line, on its lever: the cam's measured radii where the line leaves it at each angle of the lever, the nearest
 * measured radius held beyond them.
 *
 * @param cam the machine
 * @param plates chosen plates, kg
 */
record CamSketch(CamStack cam, double plates) implements Sketch {
    private static final int PIECES = 48;

    private LeverSketch lever() {
        return new LeverSketch(cam.frame(), List.of(), plates);
    }

    /** On which side of the pivot the line runs down: away from the limb. */
    private double away(LeverPath lever) {
        return lever.contact(0)
                                        .plus(lever.contact(lever.limb().positions() - 1))
                                        .x()
                                / 2
                        >= cam.frame().pivot().x()
                ? -1
                : 1;
    }

    private static List<CamRadius.Reading> sorted(CamRadius radius) {
        List<CamRadius.Reading> sorted = new ArrayList<>(radius.readings());
        sorted.sort(Comparator.comparingDouble(CamRadius.Reading::angle));
        return sorted;
    }

    private static double radius(List<CamRadius.Reading> readings, double angle) {
        CamRadius.Reading before = readings.get(0);
        for (CamRadius.Reading reading : readings) {
            if (reading.angle() >= angle) {
                double width = reading.angle() - before.angle();
                double part = width > 0 ? Math.max(0, (angle - before.angle()) / width) : 0;
                return Math.abs(before.radius() + part * (reading.radius() - before.radius()));
            }
            before = reading;
        }
        return Math.abs(before.radius());
    }

    private Vec lineDown(LeverPath lever, int i) {
        double radius = radius(sorted(cam.radius()), lever.angle(i));
        return cam.frame().pivot().plus(new Vec(away(lever) * radius, 0));
    }

    private Vec stackTop(LeverPath lever, int i) {
        return new Vec(lineDown(lever, i).x(), cam.frame().pivot().y() - 0.22);
    }

    @Override
    public List<Vec> extent(Limbwork work, int position) {
        LeverPath lever = cam.frame().over(work.path());
        Vec top = stackTop(lever, position);
        List<Vec> points = new ArrayList<>(lever().extent(work, position));
        points.add(top.plus(new Vec(away(lever) * 0.1, -Ironwork.stack() - 0.08)));
        points.add(cam.frame().pivot().plus(new Vec(away(lever) * 0.2, 0.15)));
        return points;
    }

    @Override
    public void behind(Scene scene) {
        LeverPath lever = cam.frame().over(scene.work().path());
        int i = scene.position();
        outline(scene, lever, i);
        scene.sheet().line(lineDown(lever, i), stackTop(lever, i), Pen.of(Ink.INK, 1.3));
        new Ironwork(scene).stack(stackTop(lever, i), cam.line().stack().mass(plates), "stack");
    }

    private void outline(Scene scene, LeverPath lever, int i) {
        List<CamRadius.Reading> readings = sorted(cam.radius());
        double middle =
                (readings.get(0).angle() + readings.get(readings.size() - 1).angle()) / 2;
        double side = away(lever) < 0 ? Math.PI : 0;
        PathData path = new PathData();
        for (int k = 0; k < PIECES; k++) {
            double angle = middle - Math.PI + k * 2 * Math.PI / PIECES;
            // what touches the line at this angle of the lever has turned on with the lever since
            Vec out = Vec.unit(side + lever.angle(i) - angle).times(radius(readings, angle));
            Vec at = scene.see(cam.frame().pivot().plus(out));
            path = k == 0 ? path.move(at) : path.line(at);
            scene.words().keepOff(at, at);
        }
        scene.svg().path(path.close(), Fill.of(Ink.STEEL), Pen.of(Ink.INK, 1));
    }

    @Override
    public void front(Scene scene) {
        lever().front(scene);
    }
}
