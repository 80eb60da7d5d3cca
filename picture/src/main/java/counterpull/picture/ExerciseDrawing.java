package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays an exercise figure out on its size and draws its parts from back to front. */
final class ExerciseDrawing {
    private final ExerciseFigure figure;
    private final View view;
    private final ExerciseLimb limb;
    private final Limbwork work;
    private final WholeBody body;
    private final List<Touch> touches;
    private final List<Sketch> sketches;

    ExerciseDrawing(ExerciseFigure figure, View view) {
        this.figure = figure;
        this.view = view;
        ExerciseProfile profile = figure.profile();
        limb = profile.limbs().get(figure.limb());
        work = new Limbwork(limb.path(), figure.build());
        body = WholeBody.of(
                limb, work, figure.build(), profile.task().exercise().motion().gravity());
        touches = Touch.of(profile, figure.limb());
        sketches = Sketches.of(profile);
    }

    String draw() {
        Box picture = new Box(0, 0, view.size().width(), view.size().height());
        Scene scene = scene(picture);
        title(scene);
        body(scene);
        TouchDrawing drawing = new TouchDrawing(scene, touches);
        drawing.draw();
        joints(scene);
        if (scene.words().roomy()) {
            new TapeDrawing(scene, touches).draw();
        }
        scale(scene, picture);
        scene.svg().open("labels");
        scene.words().draw(scene.svg());
        scene.svg().close();
        return scene.svg().finish();
    }

    private void body(Scene scene) {
        scene.svg().open("person");
        body.rest(scene.sheet(), figure.position());
        scene.svg().close();
        scene.svg().open("resists");
        sketches.forEach(sketch -> sketch.behind(scene));
        scene.svg().close();
        ghosts(scene);
        scene.svg().open("limb");
        body.limb(scene.sheet(), figure.position(), Sheet.Look.BODY);
        scene.svg().close();
        scene.svg().open("resists");
        sketches.forEach(sketch -> sketch.front(scene));
        scene.svg().close();
    }

    private Scene scene(Box picture) {
        double side = view.size().small() ? 20 : 44;
        Box room = new Box(side, 50, picture.width() - 2 * side, picture.height() - 50 - Math.max(side, 38));
        Camera camera = Camera.holding(extent(), WholeBody.sight(limb), room, 0);
        Box inner = new Box(6, 6, picture.width() - 12, picture.height() - 12);
        Svg svg = new Svg(view, "Person and load, " + words());
        Sheet sheet = new Sheet(camera, svg, new FigureWords(inner, view.size()));
        return new Scene(figure, work, sheet, view.wording());
    }

    // one frame for all positions, so that figures of one exercise can be laid beside each other
    private List<Vec> extent() {
        List<Vec> points = new ArrayList<>();
        double scale = TouchDrawing.newtonsPerMetre(touches, work.last());
        for (int i : new int[] {0, work.last() / 2, work.last(), figure.position()}) {
            points.addAll(body.extent(i));
            sketches.forEach(sketch -> points.addAll(sketch.extent(work, i)));
            for (Touch touch : touches) {
                Vec at = touch.place(work, i);
                points.add(at);
                if (touch.kind() == Hit.Kind.FORCE) {
                    points.add(at.plus(touch.force(Phase.HELD, i).times(1 / scale)));
                }
            }
        }
        return points;
    }

    private String words() {
        Optional<Joint> driver = figure.profile().driver();
        double at = figure.profile().driving(figure.position());
        String place = driver.map(joint ->
                        joint.angleWords() + " " + view.wording().angle().say(at))
                .orElseGet(() -> "travel " + view.wording().length().say(at));
        return place + ", " + figure.phase().words();
    }

    private void title(Scene scene) {
        write(scene, new Vec(12, 22), Words.sentence(words()), Lettering.head(Ink.INK));
        if (!body.seenFrom().isEmpty()) {
            write(scene, new Vec(12, 40), body.seenFrom(), Lettering.small(Ink.QUIET));
        }
    }

    private static void write(Scene scene, Vec at, String words, Lettering lettering) {
        scene.svg().text(at, words, lettering);
        scene.words().take(Box.of(at, words, lettering));
    }

    private void ghosts(Scene scene) {
        int[] ends = {0, work.last()};
        String[] names = {"bottom", "top"};
        for (int k = 0; k < ends.length; k++) {
            if (ends[k] != figure.position()) {
                scene.svg().open("ghost");
                body.limb(scene.sheet(), ends[k], Sheet.Look.GHOST);
                scene.svg().close();
                int far =
                        work.stands() ? work.path().segments() - 1 : work.path().segments();
                Vec end = work.joint(far, ends[k]);
                Vec before = work.joint(0, ends[k]);
                Vec out = scene.sheet().camera().way(end.minus(before));
                scene.words().askIfRoomy(scene.see(end), out, names[k], Lettering.small(Ink.QUIET));
            }
        }
    }

    private void joints(Scene scene) {
        scene.svg().open("joints");
        for (Joint joint : work.joints()) {
            boolean chosen = figure.joint().filter(j -> j == joint).isPresent();
            Fill fill = Fill.of(chosen ? Marker.ink(joint) : Ink.PAPER);
            Vec at = scene.see(work.at(joint, figure.position()));
            scene.svg().circle(at, chosen ? 5 : 4, fill, Pen.of(Ink.INK, 1.5));
        }
        scene.svg().close();
    }

    private void scale(Scene scene, Box picture) {
        double newtonsPerMetre = TouchDrawing.newtonsPerMetre(touches, work.last());
        boolean forces = touches.stream().anyMatch(touch -> touch.kind() == Hit.Kind.FORCE);
        String whose = limb.share() < 1 ? " on this limb" : "";
        ScaleBar.draw(
                scene.sheet(),
                picture,
                view.wording(),
                length -> forces ? " = " + view.wording().force().say(length * newtonsPerMetre) + whose : "");
    }
}
