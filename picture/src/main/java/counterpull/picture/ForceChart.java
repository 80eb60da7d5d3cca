package counterpull.picture;

import counterpull.engine.load.Part;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** The push along the rail and what it is made of: weight, rubber, friction, inertia, in one phase. */
public final class ForceChart {
    private ForceChart() {}

    /** The parts of the push in a phase. */
    public static Chart of(PressProfile profile, Phase phase) {
        Sampled sampled = new Sampled(profile);
        List<Layer> layers = new ArrayList<>();
        part(layers, sampled, new PartOf(profile, Part.GRAVITY, phase, "weight"), Ink.WEIGHT, Marker.SQUARE);
        if (!profile.lines().isEmpty()) {
            part(layers, sampled, new PartOf(profile, Part.ELASTIC, phase, "rubber"), Ink.RUBBER, Marker.DIAMOND);
        }
        if (phase != Phase.HELD) {
            part(layers, sampled, new PartOf(profile, Part.FRICTION, phase, "friction"), Ink.FRICTION, Marker.CROSS);
            part(
                    layers,
                    sampled,
                    new PartOf(profile, Part.INERTIA, phase, "start and stop"),
                    Ink.INERTIA,
                    Marker.CIRCLE);
        }
        Look total = Look.of(Ink.INK, Stroke.ASKED).heading(Heading.of(phase));
        layers.add(new Layer.Curve(sampled.of(i -> profile.force(phase, i)), total, "total push"));
        String title = "Push along the rail, " + phase.words();
        return new Chart(title, Chart.Measure.FORCE, Range.of(profile), layers, OptionalInt.empty());
    }

    private record PartOf(PressProfile profile, Part part, Phase phase, String words) {}

    private static void part(List<Layer> layers, Sampled sampled, PartOf what, Ink ink, Marker marker) {
        Series series = sampled.of(i -> what.profile.force(what.part, what.phase, i));
        layers.add(new Layer.Curve(series, Look.of(ink, Stroke.ASKED_FINE).marked(marker), what.words));
    }
}
