package counterpull.readings.table;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.readings.table.Conversion.Refused;
import counterpull.readings.table.Conversion.Taken;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.tree.Source;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableTest {
    private static final TableKind PULLS = new Pulls();

    private static Sheet sheet(String text) {
        Problems problems = new Problems();
        return SheetReader.read(Source.of("pulls.csv", text), problems)
                .orElseThrow(() -> new AssertionError(problems.lines()));
    }

    private static Proposal proposal(String text) {
        return Proposal.of(sheet(text), PULLS);
    }

    private static Conversion converted(String text) {
        Proposal proposal = proposal(text);
        return Conversion.of(proposal.grid(), proposal.mapping());
    }

    private static List<Map<String, String>> values(String text) {
        return converted(text).taken().stream().map(Taken::values).toList();
    }

    private static List<String> refused(String text) {
        return converted(text).refused().stream().map(Refused::line).toList();
    }

    private static String problem(String text) {
        Problems problems = new Problems();
        assertThat(SheetReader.read(Source.of("pulls.csv", text), problems)).isEmpty();
        return problems.lines().get(0);
    }

    /** The same readings in every usual dress. */
    @Test
    void theDressDoesNotMatter() {
        List<String> same = List.of(
                "Length [cm],Force (kgf)\n45,2.10\n63.5,2.80\n",
                "Length [cm],Force (kgf)\r\n45,2.10\r\n63.5,2.80\r\n",
                "\uFEFFlength/cm;force, kgf\n45;2,10\n63,5;2,80\n",
                "length cm\tforce_kgf\n45\t2.10\n63.5\t2.80",
                "Length;Force\ncm;kgf\n45;2,10\n63,5;2,80\n",
                "Made on;2026-11-25\n\nlength (cm);pull (kgf)\n\n45;2,10\n\n63,5;2,80\n;\n",
                "length,force\n45 cm,2.10 kgf\n63.5 cm,2.80 kgf\n",
                "note,\"force, both strands (kgf)\",length (cm)\n,2.10,45\n,\"2.80\",63.5\n",
                "# taped to the post\nLength [cm],Force (kgf)\n45,2.10\n# a pause\n63.5,2.80\n");
        for (String text : same) {
            assertThat(proposal(text).questions()).as(text).isEmpty();
            assertThat(values(text))
                    .as(text)
                    .containsExactly(
                            Map.of("length", "45 cm", "force", "2.10 kgf"),
                            Map.of("length", "63.5 cm", "force", "2.80 kgf"));
        }
    }

    @Test
    void whatIsNotReadIsKept() {
        Conversion conversion = converted("Made by hand;\nlength (cm);force (N)\n45;21\n# a pause\naverage;21\n");
        assertThat(conversion.aside()).extracting(row -> row.cell(0)).containsExactly("Made by hand", "# a pause");
        assertThat(conversion.refused())
                .extracting(Refused::line)
                .containsExactly("row 5, column 1 (length (cm)): \"average\": this is not a number");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "abc|this is not a number",
                "12kN|its unit is kN in a column of N",
                "12 parsecs|what stands behind the number, \"parsecs\", is no unit of force",
                "1,5|its decimal sign is not the point of the other numbers",
                "-3|it is below 0 N, the limit for this value",
                "20000|it is above 10 kN, the limit for this value",
                "1 234|what stands behind the number, \"234\", is no unit of force",
                "1.2.3|what stands behind the number, \".3\", is no unit of force",
                "1e999|this is not a force",
                "NaN|this is not a number",
                "#DIV/0!|this is not a number",
                "=2+3|this is not a number",
                "12-13|what stands behind the number, \"-13\", is no unit of force",
            })
    void aCellThatIsNoForceIsRefusedWithItsReason(String cell, String why) {
        String text = "length (cm),force (N)\n45,20.5\n50,21.5\n55,\"" + cell + "\"\n";
        assertThat(refused(text)).containsExactly("row 4, column 2 (force (N)): \"" + cell + "\": " + why);
        assertThat(converted(text).taken()).hasSize(2);
    }

    @Test
    void otherCellsAreRefusedWithTheirReasons() {
        String text = "length (cm),force (N),way,cycles,note\n45,20,Stretching,5,=1+1\n45,,stretching,5,\n"
                + "45,20,sideways,5,\n45,20,letting_go,5.5,\n45,20,,2000,\n,20,,,\n";
        assertThat(refused(text))
                .containsExactly(
                        "row 3, column 2 (force (N)): \"\": the force is missing",
                        "row 4, column 3 (way): \"sideways\": it is none of: stretching, letting go",
                        "row 5, column 4 (cycles): \"5.5\": this is not a whole number",
                        "row 6, column 4 (cycles): \"2000\": a whole number from 0 to 1000 is due",
                        "row 7, column 1 (length (cm)): \"\": the length is missing");
        assertThat(values(text))
                .containsExactly(
                        Map.of("length", "45 cm", "force", "20 N", "way", "stretching", "cycles", "5", "note", "=1+1"));
    }

    /** A decimal comma in a file parted by commas: the row has more cells than headings, and nothing is guessed. */
    @Test
    void aCommaThatIsBothIsRefused() {
        assertThat(refused("length (cm),force (N)\n45,20\n63,5,28\n50,21\n"))
                .containsExactly(
                        "row 3: \"63 | 5 | 28\": the row has 3 cells under 2 headings: a decimal comma, or a separator"
                                + " inside words without quotes?");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "length (cm);force (smoots)|\"smoots\" is not known as a unit of force; one of: N, kN, lbf, kgf",
                "length (cm);force|in which unit is the force in column 2 (force)? One of: N, kN, lbf, kgf",
                "length (cm);force (kg)|column 2 (force (kg)) has its force in kg, a mass: write kgf if a scale showed kilograms",
                "length (cm);force (lb)|column 2 (force (lb)) has its force in lb, a mass",
                "length (N);force (N)|in which unit is the length in column 1 (length (N))? \"N\" is not known as a unit of length",
                "a;b|which column is the length? No heading names it",
                "length (cm);length (in)|which column is the length: column 1 (length (cm)) or column 2 (length (in))?",
            })
    void whatTheHeadingsDoNotTellIsAsked(String heading, String question) {
        assertThat(String.join("\n", proposal(heading + "\n45;20\n50;21\n").questions()))
                .contains(question);
    }

    @Test
    void whatTheNumbersDoNotTellIsAsked() {
        assertThat(proposal("length (cm);force (N)\n45;-20\n50;-21\n").questions())
                .containsExactly("most of the force in column 2 (force (N)) is below zero: is its sign turned around?");
        assertThat(proposal("length (cm);force (N)\n45;1,234\n50;1,235\n")
                        .questions()
                        .get(0))
                .contains("decimal sign");
        assertThat(proposal("length (cm);force (N)\n45,5;20.5\n50;21\n")
                        .questions()
                        .get(0))
                .contains("decimal sign");
        assertThat(proposal("45;20\n50;21\n").questions()).hasSize(2);
    }

    @Test
    void aSignIsTurnedAroundWithoutTouchingADigit() {
        String text = "length (cm);force (N)\n45;-20.50\n50;\u221221.0\n";
        Mapping asked = proposal(text).mapping();
        List<ColumnUse> columns = asked.columns().stream()
                .map(use -> new ColumnUse(
                        use.number(), use.heading(), use.means(), use.unit(), ColumnUse.Sign.TURNED_AROUND))
                .toList();
        Mapping turned = new Mapping(
                PULLS,
                asked.standing(),
                asked.lines(),
                asked.decimals(),
                List.of(asked.columns().get(0), columns.get(1)),
                Map.of());
        assertThat(Conversion.of(proposal(text).grid(), turned).taken())
                .extracting(taken -> taken.values().get("force"))
                .containsExactly("20.50 N", "21.0 N");
    }

    @Test
    void filesThatAreNoTables() {
        assertThat(problem("")).contains("the file is empty").contains("[no-table]");
        assertThat(problem("   \n\n")).contains("the file is empty");
        assertThat(problem("length\n45\n50\n")).contains("no comma, semicolon or tab parts the lines into columns");
        assertThat(problem("a,b\n1,\"2\n3,4\n")).startsWith("pulls.csv:2:1").contains("is never closed");
        assertThat(problem("a,b\n1,\"2\"x\n3,4\n")).startsWith("pulls.csv:2:").contains("behind a closing quote");
        assertThat(problem("a,b\n1,\u0000\n")).startsWith("pulls.csv:2:3").contains("not plain text");
        assertThat(problem("a,b\n1," + "x".repeat(500) + "\n"))
                .startsWith("pulls.csv:2:1")
                .contains("longer than 400 characters");
        assertThat(problem("a" + ",b".repeat(300) + "\n")).contains("the row has 301 cells; at most 200 are read");
        assertThat(problem("a,b\n" + "1,2\n".repeat(200_001))).contains("more than 200000 rows");
        assertThat(problem("a,b\n" + "1234567,1234567890\n".repeat(300_000))).contains("larger than 4 MiB");
    }

    @Test
    void bytesOfAnotherEncodingAreSaidWithTheirPlace() {
        Problems problems = new Problems();
        byte[] latin = "L\u00e4nge (cm);Kraft (N)\n45;20\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(SheetReader.read(Source.of("pulls.csv", latin), problems)).isEmpty();
        assertThat(problems.lines().get(0))
                .startsWith("pulls.csv:1:2")
                .contains("Save it from the spreadsheet as \"CSV UTF-8\"");
    }

    /** A mapping survives being written and read, whatever the headings hold. */
    @Test
    void aMappingReadsBackAsItWasWritten() {
        Stream.of(
                        "Length [cm],Force (kgf),\"a \"\"quoted\"\" # one: {x}\"\n45,2.1,\n",
                        "yes;length (cm);force\n;45;20\n",
                        "length (cm);force (kg)\n45;-20\n50;-1,5\n",
                        "45;20\n50;21\n")
                .forEach(text -> {
                    Proposal proposal = proposal(text);
                    String yaml = MappingWriter.yaml(proposal.mapping(), proposal.questions());
                    Problems problems = new Problems();
                    Mapping read = MappingReader.read(Source.of("m.yaml", yaml), List.of(PULLS), problems)
                            .orElseThrow(() -> new AssertionError(problems.lines() + yaml));
                    assertThat(read.columns())
                            .as(yaml)
                            .isEqualTo(proposal.mapping().columns());
                    assertThat(read.whole()).isEqualTo(proposal.mapping().whole());
                    assertThat(read.lines()).isEqualTo(proposal.mapping().lines());
                    assertThat(read.decimals()).isEqualTo(proposal.mapping().decimals());
                    assertThat(MappingFit.grid(sheet(text), read, problems)).isPresent();
                });
    }

    @Test
    void aMappingThatDoesNotHoldIsRefused() {
        assertThat(mapping("columns:\n  - { column: 1, is: lenght, unit: cm }\n"))
                .anyMatch(line -> line.contains("\"lenght\" is nothing that a table of kind pulls has")
                        && line.contains("Did you mean \"length\"?"));
        assertThat(mapping("columns:\n  - { column: 1, is: length, unit: N }\n  - { column: 2, is: force, unit: N }\n"))
                .anyMatch(line -> line.contains("\"N\" is no unit of length"));
        assertThat(mapping("columns:\n  - { column: 1, is: length, unit: cm }\n"))
                .anyMatch(line -> line.contains("no column is the force"));
        assertThat(mapping(
                        "columns:\n  - { column: 1, is: length, unit: cm }\n  - { column: 2, is: length, unit: cm }\n"))
                .anyMatch(line -> line.contains("2 columns are the length"));
        assertThat(mapping("whole file:\n  force: plenty\ncolumns:\n  - { column: 1, is: length, unit: cm }\n"))
                .anyMatch(line -> line.contains("\"plenty\": this is not a number"));
    }

    private static List<String> mapping(String rest) {
        Problems problems = new Problems();
        String head = "format: counterpull-mapping/1\nconfirmed: yes\nas: pulls\ndecimals: point\nheading row: 1\n";
        assertThat(MappingReader.read(Source.of("m.yaml", head + rest), List.of(PULLS), problems))
                .isEmpty();
        return problems.lines();
    }

    @Test
    void aMappingOfAnotherFileIsRefused() {
        Proposal proposal = proposal("length (cm),force (N)\n45,20\n");
        Problems problems = new Problems();
        assertThat(MappingFit.grid(sheet("force (N),length (cm)\n20,45\n"), proposal.mapping(), problems))
                .isEmpty();
        assertThat(problems.lines().get(0)).contains("column 1 is headed \"length (cm)\"; here it is \"force (N)\"");
    }
}
