package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The floor card of every exercise of the library. */
class ExerciseCardTest {
    private static final String PERSON = "../demo/dunlin.yaml";

    @TempDir
    private Path folder;

    static Stream<String> names() {
        return Library.names().stream();
    }

    private String text(String... arguments) throws Exception {
        Path card = folder.resolve("card.pdf");
        List<String> all = Stream.concat(Stream.of("card", PERSON, "-o", card.toString()), Stream.of(arguments))
                .toList();
        Ran ran = Ran.with(all.toArray(String[]::new));
        assertThat(ran.err()).as("notes of the card").isEmpty();
        assertThat(ran.code()).isEqualTo(Exit.GOOD);
        assertThat(Files.size(card)).isPositive();
        try (PDDocument document = Loader.loadPDF(card.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            return new PDFTextStripper().getText(document).replaceAll("[\\s\\u00A0]+", " ");
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void isOnePageWithItsCautions(String name) throws Exception {
        assertThat(text("-e", name))
                .contains("Dunlin", "Stop when", "Averages are not this person")
                .doesNotContain("NaN");
    }

    @Test
    void holdsWhatSomebodySets() throws Exception {
        assertThat(text("-e", "knee-extension-lever"))
                .contains("Chosen weight", "25 kg", "Start, knee flexion", "90°", "10°", "Down", "3 s");
        assertThat(text("-e", "knee-extension-tubing")).contains("Check at the start", "loose by");
    }
}
