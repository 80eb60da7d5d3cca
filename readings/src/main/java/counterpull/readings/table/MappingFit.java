package counterpull.readings.table;

import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Place;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether a mapping was made for a sheet like this one. */
public final class MappingFit {
    private MappingFit() {}

    /** The sheet's rows as the mapping has them; a problem for each heading that is another one here. */
    public static Optional<Grid> grid(Sheet sheet, Mapping mapping, Problems problems) {
        Grid grid = new Grid(sheet, mapping.lines().headings(), mapping.lines().units());
        List<Heading> headings = grid.headings();
        for (ColumnUse use : mapping.columns()) {
            String found = use.number() <= headings.size()
                    ? headings.get(use.number() - 1).text()
                    : "nothing";
            boolean other = !use.heading().isEmpty() && !use.heading().equals(found.strip());
            if (other || use.number() > headings.size()) {
                problems.add(Problem.of(
                        Code.CONTRADICTION,
                        Place.file(sheet.file()),
                        "the mapping was made for a file whose column " + use.number() + " is headed \"" + use.heading()
                                + "\"; here it is \"" + found + "\"",
                        "Make a new mapping for this file"));
            }
        }
        return problems.isEmpty() ? Optional.of(grid) : Optional.empty();
    }

    /** What a mapping still asks, each a sentence without a full stop. */
    public static List<String> open(Mapping mapping) {
        List<String> open = new ArrayList<>();
        if (mapping.decimals().isEmpty()) {
            open.add("the mapping does not say which decimal sign the numbers have (decimals)");
        }
        for (ColumnUse use : mapping.columns()) {
            if (use.unit().equals(Mapping.OPEN)) {
                open.add("the mapping does not say the unit of " + use.named());
            }
            if (use.sign() == ColumnUse.Sign.OPEN) {
                open.add("the mapping does not say how " + use.named()
                        + " is signed: \"as it is\" or \"turned around\"");
            }
        }
        mapping.whole().forEach((key, value) -> {
            if (value.equals(Mapping.OPEN)) {
                open.add("the mapping does not say the " + key);
            }
        });
        return open;
    }
}
