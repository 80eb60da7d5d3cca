package counterpull.browser;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressTask;
import counterpull.engine.strength.Tester;
import counterpull.engine.uncertainty.Band;
import counterpull.engine.uncertainty.Contribution;
import counterpull.engine.uncertainty.Doubts;
import counterpull.engine.uncertainty.EffortBands;
import counterpull.engine.uncertainty.Generator;
import counterpull.engine.uncertainty.HowSure;
import counterpull.engine.uncertainty.Looked;
import counterpull.engine.uncertainty.PressTrial;
import counterpull.engine.uncertainty.Sampling;
import counterpull.engine.uncertainty.Stated;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Random numbers, and bands drawn with them, for {@link WorkedExample}. */
final class WorkedUncertainty {
    private static final int NUMBERS = 50;
    private static final int DRAWS = 120;

    private WorkedUncertainty() {}

    static void add(NumberLines lines, PressTask task) {
        Generator generator = new Generator(2026, 7);
        for (int i = 0; i < NUMBERS; i++) {
            lines.add("random bits " + i, generator.next());
            lines.add("random share " + i, generator.uniform());
            lines.add("random normal " + i, generator.normal());
        }
        Doubts<PressTrial> doubts = Doubts.of(task, Stated.nothing());
        EffortBands bands = new Sampling<>(doubts, new Looked(Joint.LEG, 0.5), 3, DRAWS).bands();
        for (int i = 0; i < bands.positions(); i++) {
            for (Joint joint : Joint.LEG) {
                band(lines, "band, " + joint.words() + ", " + i, bands.effort(joint, Phase.LIFTING, i));
            }
        }
        band(lines, "largest effort", bands.peak());
        lines.add("draws past the ceiling", bands.ceilingPassed().times());
        HowSure sure = HowSure.of(doubts, bands, Tester.BELT_FIXED);
        // equal legs share a rank, which rounding alone would decide
        List<Contribution> byName =
                new ArrayList<>(sure.contributions().orElseThrow().ranked());
        byName.sort(Comparator.comparing(Contribution::name));
        for (Contribution one : byName) {
            lines.add("share of " + one.name(), one.share());
        }
    }

    private static void band(NumberLines lines, String name, Band band) {
        lines.add(name + " low", band.low());
        lines.add(name + " middle", band.middle());
        lines.add(name + " high", band.high());
    }
}
