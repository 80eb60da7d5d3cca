package counterpull.engine.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Java that a how-to quotes stands in the file that the page names before it, line for line; the name is alone on its line, in backquotes.
 * Indentation does not count.
 */
class QuotedCodeTest {
    private static final Path ROOT =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath().getParent();

    @Test
    void everyQuoteIsThere() throws IOException {
        List<Quote> quotes = new ArrayList<>();
        try (Stream<Path> pages = Files.list(ROOT.resolve("docs/howto"))) {
            for (Path page : pages.sorted().toList()) {
                quotes.addAll(quotes(Files.readString(page)));
            }
        }
        assertThat(quotes).as("quotes of Java").hasSizeGreaterThan(5);
        for (Quote quote : quotes) {
            String file = plain(Files.readString(ROOT.resolve(quote.file)));
            assertThat(file).as("%s, as a how-to quotes it", quote.file).contains(plain(quote.code));
        }
    }

    /** The control: a changed letter is not there. */
    @Test
    void aChangedQuoteIsFound() {
        Quote quote = quotes("`a/B.java`\n\n```java\n  int x;\n  int y;\n```\n").get(0);
        assertThat(quote.file).isEqualTo("a/B.java");
        assertThat(plain("class B {\n    int x;\n    int y;\n}")).contains(plain(quote.code));
        assertThat(plain("class B {\n    int x;\n    int z;\n}")).doesNotContain(plain(quote.code));
    }

    private record Quote(String file, String code) {}

    private static List<Quote> quotes(String page) {
        List<Quote> quotes = new ArrayList<>();
        String file = "";
        StringBuilder code = null;
        for (String line : page.split("\n")) {
            if (line.equals("```java")) {
                code = new StringBuilder();
            } else if (line.equals("```") && code != null) {
                quotes.add(new Quote(file, code.toString()));
                code = null;
            } else if (code != null) {
                code.append(line).append('\n');
            } else if (line.matches("`[\\w./]+\\.java`")) {
                file = line.substring(1, line.length() - 1);
            }
        }
        return quotes;
    }

    private static String plain(String code) {
        return code.strip().replaceAll("\\s+", " ");
    }
}
