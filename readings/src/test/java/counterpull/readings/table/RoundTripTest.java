package counterpull.readings.table;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.scenario.fields.Measure;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.tree.Source;
import counterpull.scenario.tree.TreeReader;
import counterpull.scenario.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Out to a table and back in: the same readings, to the last digit and letter, seeded. */
class RoundTripTest {
    private static final Due LENGTH = new Due.Amount(Measure.between(Dimension.LENGTH, "-20 m", "20 m"));
    private static final Due FORCE = new Due.Amount(Measure.between(Dimension.FORCE, "-10 kN", "10 kN"));
    private static final Due SHARE = new Due.Amount(Measure.between(Dimension.RATIO, "0 %", "100 %"));
    private static final int TRIALS = Boolean.getBoolean("long") ? 2000 : 200;

    /** A subject with values in a group of its own, a list inside a list, and two lists told apart by a word. */
    private static final ReadingsTable NESTED = new ReadingsTable(
            "nested",
            new Level(
                    List.of("things"),
                    "",
                    List.of(
                            Slot.of(Wanted.must("name", new Due.Words(60))),
                            Slot.in(Wanted.may("bore", LENGTH), "size", "bore"),
                            Slot.of(Wanted.may("loss", SHARE))),
                    List.of(
                            new Level(
                                    List.of("loads"),
                                    "",
                                    List.of(Slot.of(Wanted.must("load number", new Due.Whole(0, 99)))),
                                    List.of(
                                            new Level(
                                                    List.of("up"),
                                                    "up",
                                                    List.of(Slot.itself(Wanted.must("force", FORCE))),
                                                    List.of()),
                                            new Level(
                                                    List.of("down"),
                                                    "down",
                                                    List.of(Slot.itself(Wanted.must("force", FORCE))),
                                                    List.of()))),
                            new Level(
                                    List.of("tests", "long"),
                                    "tests",
                                    List.of(
                                            Slot.of(Wanted.must("length", LENGTH)),
                                            Slot.in(Wanted.may("note", new Due.Words(60)), "about", "note")),
                                    List.of()))),
            new Which("readings", List.of(), Map.of()),
            List.of());

    private static final String[] WORDS = {
        "T1",
        "=1+1",
        "'=1",
        "'quoted'",
        "# no comment",
        "a, b",
        "a; b",
        "say \"so\"",
        "yes",
        "null",
        "1.5",
        "-x",
        "ä ö · °",
        "x: y",
        "{x}",
        "- z",
        "@home",
        "+1",
        "?",
        "C:\\new",
        "50 %"
    };

    @Test
    void aTableComesBackAsItWas() {
        Random random = new Random(4_711);
        for (int trial = 0; trial < TRIALS; trial++) {
            List<Map<String, String>> rows = rows(random);
            Conversion first = new Conversion(
                    rows.stream().map(row -> new Conversion.Taken(1, row)).toList(), List.of(), List.of(), List.of());
            String yaml = ReadingsText.yaml("a", NESTED, first);
            ReadingsRows out = read(yaml);
            assertThat(out.leftOut()).as(yaml).isEmpty();
            assertThat(out.rows()).as(yaml).containsExactlyInAnyOrderElementsOf(rows);
            String csv = TableText.csv(NESTED, out.rows());
            Conversion back = back(csv);
            assertThat(ReadingsText.yaml("a", NESTED, back)).as(csv).isEqualTo(yaml);
        }
    }

    private static ReadingsRows read(String yaml) {
        Problems problems = new Problems();
        return ReadingsRows.of(
                TreeReader.read(Source.of("a.yaml", yaml), problems)
                        .orElseThrow(() -> new AssertionError(problems.lines() + yaml)),
                NESTED);
    }

    private static Conversion back(String csv) {
        Problems problems = new Problems();
        Sheet sheet = SheetReader.read(Source.of("a.csv", csv), problems)
                .orElseThrow(() -> new AssertionError(problems.lines() + csv));
        Proposal proposal = Proposal.of(sheet, NESTED);
        assertThat(proposal.questions()).as(csv).isEmpty();
        Conversion conversion = Conversion.of(proposal.grid(), proposal.mapping());
        assertThat(conversion.refused()).as(csv).isEmpty();
        return conversion;
    }

    private static List<Map<String, String>> rows(Random random) {
        List<Map<String, String>> rows = new ArrayList<>();
        for (int thing = 0; thing < 1 + random.nextInt(3); thing++) {
            Map<String, String> own = new LinkedHashMap<>();
            own.put("name", thing + WORDS[random.nextInt(WORDS.length)]);
            if (thing > 0) {
                own.put("name", WORDS[random.nextInt(WORDS.length)] + thing);
            }
            put(own, "bore", amount(random, "cm", "mm", "in"), random);
            put(own, "loss", amount(random, "%").replace("-", ""), random);
            for (int load = 0; load < random.nextInt(3); load++) {
                for (int i = 0; i < 1 + random.nextInt(3); i++) {
                    Map<String, String> row = new LinkedHashMap<>(own);
                    row.put("load number", String.valueOf(load));
                    row.put("force", amount(random, "N", "kgf"));
                    row.put("readings", random.nextBoolean() ? "up" : "down");
                    rows.add(row);
                }
            }
            for (int i = 0; i < 1 + random.nextInt(3); i++) {
                Map<String, String> row = new LinkedHashMap<>(own);
                row.put("length", amount(random, "cm"));
                put(row, "note", WORDS[random.nextInt(WORDS.length)], random);
                row.put("readings", "tests");
                rows.add(row);
            }
        }
        return rows;
    }

    private static void put(Map<String, String> row, String key, String value, Random random) {
        if (random.nextBoolean()) {
            row.put(key, value);
        }
    }

    private static String amount(Random random, String... units) {
        String sign = random.nextInt(4) == 0 ? "-" : "";
        return sign + random.nextInt(100) + "." + random.nextInt(100) + (random.nextBoolean() ? "0" : "") + " "
                + units[random.nextInt(units.length)];
    }
}
