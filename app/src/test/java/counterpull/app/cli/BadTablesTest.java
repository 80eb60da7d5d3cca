package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables that are wrong, at the terminal: what is said names row, column, text and limit; nothing ever ends in a stack trace. */
class BadTablesTest {
    private static final String MAPPING = """
            format: counterpull-mapping/1
            confirmed: yes
            as: trace
            heading row: 1
            decimals: point
            columns:
              - { column: 1, heading: "t (s)", is: time, unit: s }
              - { column: 2, heading: "F (N)", is: force, unit: "N" }
            whole file:
              gravity: as shown
            """;

    @TempDir
    Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static String plain(Ran ran) {
        assertThat(ran.out() + ran.err()).doesNotContain("\tat ", "Exception", "fault in Counterpull");
        return (ran.out() + ran.err()).replaceAll("\\s+", " ");
    }

    /** The text of the file as Java would have it, the words that must be said. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "~~|the file is empty",
                "t (s)\\n1\\n2\\n|no comma, semicolon or tab parts the lines into columns",
                "t (s),F (N)\\n0,\"1\\n1,2\\n|table.csv:2:1 a quote opens in this row or below and is never closed",
                "t (s),F (N)\\n0,\"1\"2\\n|table.csv:2:7 something stands behind a closing quote",
                "t (s),F (N)\\n0,\\u0007\\n|table.csv:2:3 this is not plain text in UTF-8",
                "t (s),F (N)\\n0,x\\n|Row 2, column 2 (F (N)): \"x\": this is not a number",
                "t (s),F (N)\\n0,\\n|Row 2, column 2 (F (N)): \"\": the force is missing",
                "t (s),F (N)\\n0,1,5\\n|Row 2: \"0 | 1 | 5\": the row has 3 cells under 2 headings: a decimal comma",
                "t (s);F (N)\\n0;1,5\\n1;2,5\\n2;2.5\\n|Row 4, column 2 (F (N)): \"2.5\": its decimal sign is not the comma",
                "t (s);F (N)\\n0;1,500\\n1;2,500\\n|Is the decimal sign of these numbers a point or a comma?",
                "t (s);F (N)\\n0,5;1.5\\n1;2\\n|Is the decimal sign of these numbers a point or a comma?",
                "t (s),F (N)\\n0,5 kN\\n1,5\\n2,5\\n|Row 2, column 2 (F (N)): \"5 kN\": its unit is kN in a column of N",
                "t (s),F (kg)\\n0,1\\n1,2\\n|Column 2 (F (kg)) has its force in kg, a mass: write kgf if a scale showed kilograms",
                "t (s),F (dyn)\\n0,1\\n1,2\\n|\"dyn\" is not known as a unit of force; one of: N, kN, lbf, kgf",
                "t,F\\n0,1\\n1,2\\n|In which unit is the time in column 1 (t)? One of: s, ms, min",
                "t (s),pull (N),push (N)\\n0,1,2\\n|Which column is the force: column 2 (pull (N)) or column 3 (push (N))?",
                "a,b\\n0,1\\n|Which column is the time? No heading names it",
                "0,1\\n1,2\\n|Which column is the force? No heading names it",
                "t (s),F (N)\\n0,1e999\\n|Row 2, column 2 (F (N)): \"1e999\": this is not a force",
                "t (s),F (N)\\n0,9e9\\n|Row 2, column 2 (F (N)): \"9e9\": it is above 1000000000 N, the limit for this value",
                "t (s),F (N)\\n0,#DIV/0!\\n|Row 2, column 2 (F (N)): \"#DIV/0!\": this is not a number",
                "t (s),F (N)\\n12:30:01,5\\n|Row 2, column 1 (t (s)): \"12:30:01\": what stands behind the number, \":30:01\", is no unit",
                "t (s),F (N)\\n2026-11-25,5\\n|Row 2, column 1 (t (s)): \"2026-11-25\": what stands behind the number",
                "t (s),F (N)\\nmean,5\\n|Row 2, column 1 (t (s)): \"mean\": this is not a number",
            })
    void aTableThatCannotBeUsedIsToldApart(String text, String said) throws IOException {
        String real = text.replace("\\n", "\n").replace("\\u0007", "\u0007");
        Ran ran = Ran.with("bench", "import", file("table.csv", real).toString(), "--as", "trace");
        assertThat(plain(ran)).contains(said);
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "rubber|tag;length (cm);force (N);readings\\nT1;45;2;sideways|column 4 (readings): \"sideways\": it is none of: stretching, letting go",
                "rubber|tag;length (cm);force (N);readings\\nT1;45;;stretching|How long is the piece when nothing pulls at it",
                "rubber|tag;natural length (cm);length (cm);force (N);readings\\nT1;45;50;;out|out\": the force is missing",
                "rubber|tag;natural length (cm);length (cm);force (N);readings\\nT1;45;50;2;natural length|a row of natural length has no force",
                "rubber|tag;natural length (cm);length (km);force (N);way\\nT1;45;50;2;out|\"km\" is not known as a unit of length; one of: cm, m, mm, in, ft",
                "sled|name;rail angle (deg);plates (kg);force (N);readings\\nA;45;ten;300;up|column 3 (plates (kg)): \"ten\": this is not a number",
                "sled|name;rail angle (deg);plates (lbf);force (N);readings\\nA;45;10;300;up|\"lbf\" is not known as a unit of mass; one of: kg, g, lb, st",
                "machine|name;travel (cm);force (N)\\nA;0;200|Which column is the readings?",
                "person-tests|name;side;force (N)\\nA;left;200|Is the limb's own weight taken off these forces already (limb: borne)?",
                "person-tests|name;side;force (N)\\nA;upper;200|column 2 (side): \"upper\": it is none of: left, right",
                "person-ranges|name;joint;reading\\nA;knee;110|In which unit is the reading in column 3 (reading)? One of: deg, rad",
                "person-ranges|name;joint;reading (deg)\\nA;neck;110|column 2 (joint): \"neck\": it is none of: hip, knee, ankle",
            })
    void readingsThatCannotBeUsedAreToldApart(String kind, String text, String said) throws IOException {
        Path table = file("table.csv", text.replace("\\n", "\n"));
        Ran ran = Ran.with("bench", "import", table.toString(), "--as", kind);
        assertThat(plain(ran)).contains(said.replaceAll("\\s+", " "));
    }

    /** Good tables whose trace says nothing. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "0,1;1,2;2,3|the trace has 3 samples; at least 10 are needed",
                "0,1;0.1,2;0.1,3;0.2,3;0.3,3;0.4,3;0.5,9;0.6,80;0.7,3;1.4,3|time does not rise: sample 3 is at 0.1 s, the one before it at 0.1 s",
                "0,9;0.1,2;0.2,3;0.3,3;0.4,3;0.5,3;0.6,80;0.7,3;0.8,3;0.9,3|the trace lasts 0.9 s; a mean over a second needs 1 s",
                "0,0;1,-90;2,-95;3,-94;4,-93;5,-90;6,-90;7,-5;8,0;9,0|the force goes below zero, to -95 N at sample 3",
                "0,9;1,9;2,9;3,9;4,9;5,9;6,9;7,9;8,9;9,9|the force stays between 9 N and 9 N; an effort changes it by at least 5 N",
                "0,9;1,9;2,9;3,99000;4,9;5,9;6,9;7,9;8,9;9,9|sample 4 shows 99000 N, more than 10000 N",
            })
    void aTraceThatSaysNothingIsRefused(String rows, String said) throws IOException {
        Path table = file("table.csv", "t (s),F (N)\n" + rows.replace(';', '\n') + "\n");
        Ran ran = Ran.with(
                "bench",
                "import",
                table.toString(),
                "--mapping",
                file("m.yaml", MAPPING).toString());
        assertThat(plain(ran).replace('\u2009', ' ')).containsIgnoringCase(said);
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "confirmed: yes|confirmed: no|The mapping is not confirmed: look it over and write \"confirmed: yes\" in m.yaml.",
                "gravity: as shown|gravity: \"?\"|The mapping does not say the gravity.",
                "gravity: as shown|gravity: perhaps|m.yaml:10:12 whole file.gravity: \"perhaps\": it is none of: as shown, taken off",
                "is: time|is: tme|Did you mean \"time\"?",
                "unit: s|unit: furlongs|\"furlongs\" is no unit of time. One of: s, ms, min",
                "as: trace|as: rubber bands|m.yaml:3:5 as: \"rubber bands\" is none of the words for this value",
                "counterpull-mapping/1|counterpull-mapping/9|this format is not known here",
                "t (s)|time (s)|column 1 is headed \"time (s)\"; here it is \"t (s)\"",
                "decimals: point|decimals: \"?\"|The mapping does not say which decimal sign the numbers have",
                "column: 2|column: 9|whose column 9 is headed \"F (N)\"; here it is \"nothing\"",
                "is: time|is: force|2 columns are the force",
                "format|{{{|m.yaml:",
            })
    void aMappingThatDoesNotHoldIsToldApart(String old, String changed, String said) throws IOException {
        Path table = file("table.csv", "t (s),F (N)\n0,1\n1,2\n");
        Path mapping = file("m.yaml", MAPPING.replace(old, changed));
        Ran ran = Ran.with("bench", "import", table.toString(), "--mapping", mapping.toString());
        assertThat(plain(ran)).contains(said);
        assertThat(ran.code()).isEqualTo(Exit.BAD_INPUT);
    }

    @Test
    void whatIsNotThereIsSaid() throws IOException {
        assertThat(plain(Ran.with("bench", "import", folder.resolve("no.csv").toString(), "--as", "trace")))
                .contains("there is no such file");
        assertThat(plain(Ran.with("bench", "import", folder.toString(), "--as", "trace")))
                .contains("cannot be read");
        Path table = file("table.csv", "t (s),F (N)\n0,1\n");
        assertThat(plain(Ran.with("bench", "import", table.toString()))).contains("Say what the rows are, with --as");
        assertThat(plain(Ran.with("bench", "import", table.toString(), "--as", "trcae")))
                .contains("\"trcae\" is no kind of table. Did you mean \"trace\"?");
        assertThat(plain(Ran.with("bench", "import"))).contains("Missing required parameter");
        assertThat(plain(Ran.with("bench"))).contains("Missing required parameter: 'FILE'");
        assertThat(plain(Ran.with(
                        "bench", "import", table.toString(), "--as", "trace", "--write-mapping", folder.toString())))
                .contains("--write-mapping: " + folder + " cannot be written: it is a folder");
    }

    @Test
    void anotherEncodingIsSaid() throws IOException {
        Path table = folder.resolve("table.csv");
        Files.write(table, "Kr\u00e4fte (N),t (s)\n1,2\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(plain(Ran.with("bench", "import", table.toString(), "--as", "trace")))
                .contains(
                        "table.csv:1:3 this is not plain text in UTF-8. Save it from the spreadsheet as \"CSV UTF-8\"");
    }
}
