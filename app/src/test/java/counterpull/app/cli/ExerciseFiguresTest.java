package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every exercise of the library can be reported, with the person and what pulls on them drawn. */
class ExerciseFiguresTest {
    static List<String> names() {
        return LibraryExercises.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void theReportHasAFigure(String name, @TempDir Path folder) throws IOException {
        Path page = folder.resolve("report.html");
        Ran ran = Ran.with("report", "-o", page.toString(), name, "../demo/dunlin.yaml");
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(Files.readString(page))
                .containsPattern("<svg [^>]*aria-label=\"Person (and|on) [^\"]+\"")
                .doesNotContain("NaN", "Infinity");
    }
}
