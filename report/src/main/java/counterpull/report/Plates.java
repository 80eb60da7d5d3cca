package counterpull.report;

import counterpull.engine.choice.PlateKind;
import counterpull.report.PlateStack.Horn;
import java.util.ArrayList;
import java.util.List;

/**
 * Every plate of a setup by horn, as it is put on.
 *
 * @param stacks heaviest first on each horn
 */
public record Plates(List<PlateStack> stacks) {
    public Plates {
        stacks = List.copyOf(stacks);
    }

    /**
     * Plates by the kit's kinds.
     *
     * @param kinds the kit's kinds of plates
     * @param counts how many of each, in the same order
     * @param platesAtOnce 2 where they go on in pairs, 1 on a middle horn
     */
    public static Plates of(List<PlateKind> kinds, List<Integer> counts, int platesAtOnce) {
        Horn horn = platesAtOnce == 2 ? Horn.EACH_SIDE : Horn.MIDDLE;
        List<PlateStack> stacks = new ArrayList<>();
        for (int k = 0; k < counts.size(); k++) {
            if (counts.get(k) > 0) {
                PlateKind kind = kinds.get(k);
                stacks.add(new PlateStack(horn, kind.name(), kind.mass(), counts.get(k) / platesAtOnce));
            }
        }
        stacks.sort((a, b) -> Double.compare(b.mass(), a.mass()));
        return new Plates(stacks);
    }

    /** The same kilograms chosen on a weight stack. */
    Plates onStack() {
        return new Plates(stacks.stream()
                .map(stack -> new PlateStack(Horn.STACK, stack.plate(), stack.mass(), stack.pieces()))
                .toList());
    }

    /** Whether they are chosen on a weight stack. */
    public boolean areOnStack() {
        return !on(Horn.STACK).isEmpty();
    }

    /** All together, kg. */
    public double total() {
        double sum = 0;
        for (PlateStack stack : stacks) {
            sum += stack.total();
        }
        return sum;
    }

    /** Those on one horn. */
    public List<PlateStack> on(Horn horn) {
        return stacks.stream().filter(stack -> stack.horn() == horn).toList();
    }

    /** One sentence part: "2 × 20 kg + 5 kg each side"; "no plates". */
    public String words() {
        List<String> parts = new ArrayList<>();
        for (Horn horn : Horn.values()) {
            String there = words(horn);
            if (!there.isEmpty()) {
                parts.add(there + " " + horn.words());
            }
        }
        return parts.isEmpty() ? "no plates" : String.join(", ", parts);
    }

    /** What is on one horn: "2 × 20 kg + 5 kg"; empty where nothing is. */
    public String words(Horn horn) {
        return String.join(" + ", on(horn).stream().map(PlateStack::words).toList());
    }
}
