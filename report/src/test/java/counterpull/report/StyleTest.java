package counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Colours live in one place; nothing is loaded from outside. */
class StyleTest {
    @Test
    void theSheetHoldsNoColourValue() throws IOException {
        try (InputStream in = Style.class.getResourceAsStream("look.css")) {
            String sheet = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(sheet)
                    .doesNotContainPattern("#[0-9a-fA-F]{3}")
                    .doesNotContain("rgb(", "hsl(", "url(", "@import");
        }
    }

    @Test
    void theCardsSheetNeedsNoCustomProperties() {
        assertThat(Style.card()).doesNotContain("var(").contains("#000000");
    }

    @Test
    void everyInkThatThePageUsesIsThere() {
        String page = Style.page();
        java.util.regex.Matcher used =
                java.util.regex.Pattern.compile("var\\((--ink-[a-z]+)\\)").matcher(page);
        while (used.find()) {
            assertThat(page).contains(used.group(1) + ": #");
        }
        assertThat(page).contains("prefers-color-scheme: dark", "@media print");
    }
}
