package counterpull.picture;

import counterpull.engine.load.Cable;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.HangingChain;
import counterpull.engine.load.Lever;
import counterpull.engine.load.MeasuredProfile;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StretchLine;
import counterpull.engine.profile.ExerciseProfile;
import java.util.ArrayList;
import java.util.List;

/** Which sketch is drawn for what resists. A kind that has none is still drawn by its force, its place and its name. */
final class Sketches {
    private Sketches() {}

    static List<Sketch> of(ExerciseProfile profile) {
        List<Sketch> sketches = new ArrayList<>();
        for (Resistance resists : profile.task().exercise().resists()) {
            add(sketches, resists, profile.task().plates());
        }
        return sketches;
    }

    private static void add(List<Sketch> sketches, Resistance resists, double plates) {
        if (resists instanceof DeadWeight weight) {
            sketches.add(new WeightSketch(weight, plates));
        } else if (resists instanceof Cable cable) {
            sketches.add(new CableSketch(cable, plates));
        } else if (resists instanceof Lever lever) {
            sketches.add(new LeverSketch(lever.frame(), lever.horns(), plates));
        } else if (resists instanceof CamStack cam) {
            sketches.add(new CamSketch(cam, plates));
        } else if (resists instanceof HangingChain chain) {
            sketches.add(new ChainSketch(chain));
        } else if (resists instanceof StretchLine line) {
            sketches.add(new StretchSketch(line));
        } else if (resists instanceof GuidedMass guided) {
            sketches.add(new RailSketch(guided, plates));
        } else if (resists instanceof MeasuredProfile measured) {
            sketches.add(new MeasuredSketch(measured));
        }
    }
}
