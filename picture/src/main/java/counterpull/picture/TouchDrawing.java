package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Draws what acts on the limb: force arrows to scale with their numbers, turning forces as arcs, and a chosen joint's moment arms. */
final class TouchDrawing {
    /** Length of the arrow of the largest force of a result at most, m. */
    static final double LONGEST_ARROW = 0.30;

    private static final double LEAST_FORCE = 0.5;
    private static final double LEAST_ARM = 0.01;
    private final Scene scene;
    private final List<Touch> touches;
    private final double newtonsPerMetre;

    TouchDrawing(Scene scene, List<Touch> touches) {
        this.scene = scene;
        this.touches = touches;
        newtonsPerMetre = newtonsPerMetre(touches, scene.work().last());
    }

    /** Newtons that one metre of arrow stands for: one scale for every position and phase of a result, a round number. */
    static double newtonsPerMetre(List<Touch> touches, int last) {
        double most = 1;
        for (Touch touch : touches) {
            if (touch.kind() == Hit.Kind.FORCE) {
                for (Phase phase : Phase.values()) {
                    for (int i = 0; i <= last; i++) {
                        most = Math.max(most, touch.force(phase, i).norm());
                    }
                }
            }
        }
        return Ticks.covering(0, most / LONGEST_ARROW, 2).high();
    }

    void draw() {
        scene.svg().open("forces");
        Map<Vec, Vec> tips = new HashMap<>();
        for (Touch touch : touches) {
            if (touch.kind() == Hit.Kind.FORCE) {
                force(touch, tips);
            } else {
                couple(touch);
            }
        }
        scene.figure().joint().ifPresent(this::turn);
        scene.svg().close();
    }

    private Vec place(Touch touch) {
        return touch.place(scene.work(), scene.position());
    }

    // a second force at one place starts at the tip of the first, as forces are added on paper
    private void force(Touch touch, Map<Vec, Vec> tips) {
        Vec force = touch.force(scene.phase(), scene.position());
        if (force.norm() < LEAST_FORCE) {
            return;
        }
        Vec at = place(touch);
        Vec way = force.times(1 / force.norm());
        scene.figure().joint().ifPresent(joint -> arm(joint, at, way));
        Vec start = tips.getOrDefault(at, at);
        Vec end = start.plus(force.times(1 / newtonsPerMetre));
        tips.put(at, end);
        Vec from = scene.see(start);
        Vec tip = scene.see(end);
        arrow(from, tip);
        scene.words()
                .ask(tip, tip.minus(from), named(touch, scene.wording().force().say(force.norm())), strong());
    }

    // a name that ends in a number keeps apart from the one that follows
    private static String named(Touch touch, String size) {
        String name = touch.words();
        char last = name.charAt(name.length() - 1);
        return name + (last >= '0' && last <= '9' ? ": " : " ") + size;
    }

    private Lettering strong() {
        return Lettering.body(Ink.INK).sized(scene.words().strong()).bold();
    }

    private void arrow(Vec from, Vec tip) {
        Vec way = tip.minus(from);
        double size = Math.min(8, way.norm() / 2.2);
        Vec head = way.times(size / way.norm());
        scene.svg().line(from, tip.minus(head), Pen.of(Ink.INK, 2.6));
        CurveDrawing.arrow(scene.svg(), tip.minus(head), way, new CurveDrawing.ArrowHead(size, Ink.INK));
        scene.svg().circle(from, 3, Fill.of(Ink.INK), Pen.of(Ink.PAPER, 1));
        scene.words().keepOff(from, tip);
    }

    private void couple(Touch touch) {
        double couple = touch.couple(scene.phase(), scene.position());
        int segment = touch.at().segment();
        Vec at = scene.work().joint(segment, scene.position());
        Vec toward = scene.work().joint(segment + 1, scene.position()).minus(at);
        new TurnArc(at, toward.times(-1), Math.signum(couple)).draw(scene.sheet(), Ink.INK);
        String words = named(touch, scene.wording().torque().say(Math.abs(couple)));
        scene.words().ask(scene.see(at), scene.sheet().camera().way(toward.times(-1)), words, strong());
    }

    // the perpendicular from the joint to the line of the force
    private void arm(Joint joint, Vec from, Vec way) {
        Vec at = scene.work().at(joint, scene.position());
        Vec foot = from.plus(way.times(at.minus(from).dot(way)));
        double arm = foot.minus(at).norm();
        if (arm < LEAST_ARM) {
            return;
        }
        Vec beyond = foot.minus(from)
                .times(1 + 0.05 / Math.max(0.05, foot.minus(from).norm()));
        scene.sheet().line(from, from.plus(beyond), Pen.of(Ink.INK, 0.9).dashed("8 3 2 3"));
        scene.sheet().line(at, foot, Pen.of(Marker.ink(joint), 1.6));
        corner(at, foot, way);
        Vec middle = scene.see(at.plus(foot).times(0.5));
        scene.words()
                .askIfRoomy(
                        middle,
                        scene.sheet().camera().way(way),
                        "arm " + scene.wording().length().say(arm),
                        Lettering.body(Ink.INK));
    }

    private void corner(Vec joint, Vec foot, Vec way) {
        Vec up = joint.minus(foot);
        if (up.norm() < 0.03) {
            return;
        }
        Vec a = up.times(0.018 / up.norm());
        Vec b = way.times(0.018);
        PathData square = new PathData()
                .move(scene.see(foot.plus(a)))
                .line(scene.see(foot.plus(a).plus(b)))
                .line(scene.see(foot.plus(b)));
        scene.svg().path(square, Fill.NONE, Pen.of(Ink.QUIET, 1));
    }

    // turning the way the muscles turn what is distal
    private void turn(Joint joint) {
        int i = scene.position();
        double torque = scene.limb().torque(joint, scene.phase(), i);
        Vec at = scene.work().at(joint, i);
        Vec toward = scene.work().distal(joint, i).minus(at);
        double sense = Math.signum(torque) * scene.work().sense(joint);
        new TurnArc(at, toward, sense).draw(scene.sheet(), Marker.ink(joint));
        String words = (torque >= 0 ? joint.action() : joint.opposite()).words() + " "
                + scene.wording().torque().say(Math.abs(torque));
        scene.words().ask(scene.see(at), scene.sheet().camera().way(toward.times(-1)), words, strong());
    }
}
