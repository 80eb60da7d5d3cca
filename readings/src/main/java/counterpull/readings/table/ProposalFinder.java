package counterpull.readings.table;

import counterpull.readings.table.Mapping.Lines;
import counterpull.readings.table.Mapping.Standing;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Unit;
import counterpull.scenario.units.Units;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds which column is what from headings and cells; asks where they do not tell. */
final class ProposalFinder {
    private final Grid grid;
    private final TableKind kind;
    private final List<Heading> headings;
    private final List<String> questions = new ArrayList<>();
    private final Map<String, String> whole = new LinkedHashMap<>();

    ProposalFinder(Grid grid, TableKind kind) {
        this.grid = grid;
        this.kind = kind;
        headings = grid.headings();
    }

    Proposal proposal() {
        Map<Integer, Wanted> meanings = meanings();
        List<ColumnUse> columns = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            columns.add(use(i, Optional.ofNullable(meanings.get(i))));
        }
        Optional<DecimalSign> decimals = DecimalSign.of(numbers(columns));
        if (decimals.isEmpty()) {
            questions.add(
                    "is the decimal sign of these numbers a point or a comma? Their signs are mixed, or each could"
                            + " part thousands");
        }
        Lines lines = new Lines(grid.headingLine(), grid.unitsLine());
        Mapping mapping = new Mapping(kind, Standing.PROPOSED, lines, decimals, columns, whole);
        return new Proposal(grid, mapping, questions);
    }

    /** Each wanted thing goes to the column that is most like it; two that are equally like it are a question. */
    private Map<Integer, Wanted> meanings() {
        Map<Integer, Wanted> meanings = new HashMap<>();
        for (int likeness = 3; likeness > 0; likeness--) {
            for (Wanted wanted : kind.columns()) {
                if (!meanings.containsValue(wanted)) {
                    give(wanted, candidates(wanted, likeness, meanings), meanings);
                }
            }
        }
        for (Wanted wanted : kind.columns()) {
            if (wanted.need() == Wanted.Need.MUST && !meanings.containsValue(wanted)) {
                missing(wanted);
            }
        }
        kind.asked().forEach(asked -> oneOf(asked, meanings));
        return meanings;
    }

    private void oneOf(Asked asked, Map<Integer, Wanted> meanings) {
        boolean named = meanings.values().stream().map(Wanted::key).anyMatch(asked.keys()::contains);
        boolean inRows =
                grid.data().stream().anyMatch(row -> row.cells().stream().anyMatch(asked.keys()::contains));
        if (!named && !inRows) {
            whole.put(asked.keys().get(0), Mapping.OPEN);
            questions.add(asked.question());
        }
    }

    private List<Integer> candidates(Wanted wanted, int likeness, Map<Integer, Wanted> taken) {
        List<Integer> candidates = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            if (!taken.containsKey(i) && wanted.likeness(headings.get(i)) == likeness) {
                candidates.add(i);
            }
        }
        return candidates;
    }

    private void give(Wanted wanted, List<Integer> candidates, Map<Integer, Wanted> meanings) {
        if (candidates.size() == 1) {
            meanings.put(candidates.get(0), wanted);
        } else if (candidates.size() > 1) {
            List<String> names = candidates.stream().map(i -> named(i)).toList();
            String question = "which column is the " + wanted.key() + ": " + String.join(" or ", names) + "?";
            if (!questions.contains(question) && wanted.need() == Wanted.Need.MUST) {
                questions.add(question);
            }
        }
    }

    private void missing(Wanted wanted) {
        whole.put(wanted.key(), Mapping.OPEN);
        boolean asked = questions.stream()
                .anyMatch(question -> question.startsWith("which column is the " + wanted.key() + ":"));
        if (!asked) {
            questions.add(
                    wanted.question().isEmpty()
                            ? "which column is the " + wanted.key()
                                    + "? No heading names it; if it is the same for every row,"
                                    + " write it under \"whole file\""
                            : wanted.question());
        }
    }

    private String named(int i) {
        return new ColumnUse(i + 1, headings.get(i).text(), Optional.empty(), "", ColumnUse.Sign.AS_IT_IS).named();
    }

    private ColumnUse use(int i, Optional<Wanted> means) {
        Heading heading = headings.get(i);
        boolean amount =
                means.filter(wanted -> wanted.due() instanceof Due.Amount).isPresent();
        String unit = amount ? unit(i, means.get()) : "";
        return new ColumnUse(
                i + 1, heading.text(), means, unit, amount ? sign(i, means.get()) : ColumnUse.Sign.AS_IT_IS);
    }

    private String unit(int i, Wanted wanted) {
        Dimension dimension = ((Due.Amount) wanted.due()).measure().dimension();
        String written = headings.get(i).unit();
        if (written.isEmpty()) {
            return withoutUnit(i, wanted, dimension);
        }
        Optional<Unit> unit = Heading.known(written);
        if (unit.filter(known -> known.dimension() == dimension).isPresent()) {
            return unit.get().symbol();
        }
        questions.add(unitQuestion(i, wanted, dimension, written));
        return Mapping.OPEN;
    }

    private String withoutUnit(int i, Wanted wanted, Dimension dimension) {
        List<String> cells = cells(i);
        boolean inCells = !cells.isEmpty()
                && cells.stream()
                                        .filter(cell ->
                                                !Heading.known(behind(cell)).isEmpty())
                                        .count()
                                * 2
                        > cells.size();
        if (inCells) {
            return ColumnUse.IN_CELLS;
        }
        if (dimension == Dimension.RATIO) {
            return Unit.ONE.symbol();
        }
        questions.add("in which unit is the " + wanted.key() + " in " + named(i) + "? One of: " + units(dimension));
        return Mapping.OPEN;
    }

    private static String behind(String cell) {
        return cell.replaceFirst("^[+\u2212-]?[\\d.,]+(?:[eE][+-]?\\d+)?\\s*", "");
    }

    private String unitQuestion(int i, Wanted wanted, Dimension dimension, String written) {
        boolean mass = dimension == Dimension.FORCE
                && Heading.known(written)
                        .filter(unit -> unit.dimension() == Dimension.MASS)
                        .isPresent();
        if (mass) {
            return named(i) + " has its force in " + written
                    + ", a mass: write kgf if a scale showed kilograms, lbf if it" + " showed pounds";
        }
        return "in which unit is the " + wanted.key() + " in " + named(i) + "? \"" + written
                + "\" is not known as a unit of " + dimension.words() + "; one of: " + units(dimension);
    }

    /** The units of a dimension, the one that people use most first. */
    static String units(Dimension dimension) {
        Unit usual = Units.METRIC.unit(dimension);
        return Stream.concat(Stream.of(usual), Unit.of(dimension).stream().filter(unit -> unit != usual))
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private ColumnUse.Sign sign(int i, Wanted wanted) {
        double low = ((Due.Amount) wanted.due()).measure().low().si();
        List<String> cells = cells(i).stream().filter(Grid::isNumeric).toList();
        long negative = cells.stream()
                .filter(cell -> cell.startsWith("-") || cell.startsWith("\u2212"))
                .count();
        if (low >= 0 && negative * 2 > cells.size()) {
            questions.add(
                    "most of the " + wanted.key() + " in " + named(i) + " is below zero: is its sign turned around?");
            return ColumnUse.Sign.OPEN;
        }
        return ColumnUse.Sign.AS_IT_IS;
    }

    private List<String> cells(int i) {
        return grid.data().stream()
                .map(row -> row.cell(i))
                .filter(cell -> !cell.isEmpty())
                .toList();
    }

    private List<String> numbers(List<ColumnUse> columns) {
        List<String> numbers = new ArrayList<>();
        for (ColumnUse use : columns) {
            if (use.means().filter(wanted -> wanted.due() instanceof Due.Amount).isPresent()) {
                numbers.addAll(cells(use.number() - 1));
            }
        }
        return numbers;
    }
}
