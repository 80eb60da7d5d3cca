package counterpull.report;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Judge;
import counterpull.engine.choice.Kit;
import counterpull.engine.choice.PlateKind;
import counterpull.engine.choice.PlateSet;
import counterpull.engine.choice.SafeOrder;
import counterpull.engine.choice.Verdict;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.report.PlateStack.Horn;
import counterpull.scenario.PressScenario;
import counterpull.scenario.content.Loaded;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Quantity;
import counterpull.scenario.units.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A setup that a person wrote down themselves: its plates are named from the kit where it has them. */
final class ByHand {
    private final PressScenario scenario;

    private ByHand(PressScenario scenario) {
        this.scenario = scenario;
    }

    static Setup of(String name, PressScenario scenario) {
        return new ByHand(scenario).setup(name);
    }

    private Setup setup(String name) {
        PressTask task = scenario.task();
        PressProfile profile = PressProfile.of(task);
        Plates plates = plates(scenario.loaded().plates());
        Verdict verdict = Judge.of(profile, scenario.goal());
        Candidate.Place place = new Candidate.Place(task.stance(), task.stroke(), profile.ground());
        Kit kit = kitOf(plates);
        PlateSet set = new PlateSet(plates.total(), counts(plates));
        Candidate candidate =
                new Candidate(place, set, task.loading().lines(), scenario.goal(), Candidate.Score.of(verdict));
        return new Setup(name, profile, plates, verdict, SafeOrder.of(candidate, scenario.racking(), kit));
    }

    private Plates plates(Loaded.Plates loaded) {
        List<PlateStack> stacks = new ArrayList<>();
        if (counted(loaded.left()).equals(counted(loaded.right()))) {
            addAll(stacks, Horn.EACH_SIDE, loaded.left());
        } else {
            addAll(stacks, Horn.LEFT, loaded.left());
            addAll(stacks, Horn.RIGHT, loaded.right());
        }
        addAll(stacks, Horn.MIDDLE, loaded.middle());
        return new Plates(stacks);
    }

    private void addAll(List<PlateStack> stacks, Horn horn, List<Double> masses) {
        counted(masses).forEach((mass, count) -> stacks.add(new PlateStack(horn, name(mass), mass, count)));
    }

    private static Map<Double, Integer> counted(List<Double> masses) {
        Map<Double, Integer> counts = new TreeMap<>(Collections.reverseOrder());
        masses.forEach(mass -> counts.merge(mass, 1, Integer::sum));
        return counts;
    }

    private String name(double mass) {
        return scenario.room().plates().stream()
                .filter(kind -> Math.abs(kind.mass() - mass) < 1e-9)
                .map(PlateKind::name)
                .findFirst()
                .orElseGet(() -> Quantity.exactly(mass, Unit.si(Dimension.MASS)).toString());
    }

    /** The plates of this setup as a kit of their own, for the loading order. */
    private Kit kitOf(Plates plates) {
        List<PlateKind> kinds = new ArrayList<>();
        for (PlateStack stack : plates.stacks()) {
            kinds.add(new PlateKind(stack.plate(), stack.mass(), stack.pieces()));
        }
        Kit kit = scenario.kit();
        boolean middle = plates.stacks().stream().allMatch(stack -> stack.horn() == Horn.MIDDLE);
        return new Kit(kinds, middle ? 1 : 2, kit.rubber(), kit.hooks(), kit.rules(), kit.places());
    }

    private static List<Integer> counts(Plates plates) {
        return plates.stacks().stream().map(PlateStack::pieces).toList();
    }
}
