package counterpull.scenario.content;

import java.util.List;

/**
 * What an exercise's author says to whoever uses it.
 *
 * @param name what the floor calls it
 * @param what how it is done, in a sentence
 * @param measure what to measure before it is computed for somebody
 * @param cautions what to look out for
 */
public record About(String name, String what, List<Measuring> measure, List<String> cautions) {
    public About {
        measure = List.copyOf(measure);
        cautions = List.copyOf(cautions);
    }

    /**
     * Something to measure.
     *
     * @param what which length, angle or mass
     * @param how with what, from where to where
     */
    public record Measuring(String what, String how) {}
}
