package counterpull.picture;

import counterpull.engine.load.MeasuredProfile;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * A machine of which only readings are known: the word that says so.
 *
 * @param measured the machine
 */
record MeasuredSketch(MeasuredProfile measured) implements Sketch {
    @Override
    public List<Vec> extent(Limbwork work, int position) {
        return List.of();
    }

    @Override
    public void behind(Scene scene) {
        // nothing of the machine is known but its force
    }

    @Override
    public void front(Scene scene) {
        Vec at = measured.acts() instanceof MeasuredProfile.Force force
                ? place(scene, force.at())
                : scene.work().joint(0, scene.position());
        String words = "measured up and down";
        scene.words().ask(scene.see(at), new Vec(1, 1), words, Lettering.small(Ink.QUIET));
    }

    private static Vec place(Scene scene, BodyPoint at) {
        return scene.work().drawn(at, scene.position());
    }
}
