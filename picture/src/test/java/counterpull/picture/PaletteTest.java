package counterpull.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Contrast between ink and ground: WCAG 2.1, success criteria 1.4.3 (text 4.5:1) and 1.4.11 (graphics 3:1), relative luminance
 * as defined there.
 */
class PaletteTest {
    private static final Map<String, Palette> PALETTES =
            Map.of("light", Palette.LIGHT, "dark", Palette.DARK, "print", Palette.PRINT);
    private static final Ink[] TEXT = {Ink.INK, Ink.QUIET, Ink.ACCENT};
    private static final Ink[] LINES = {
        Ink.HIP, Ink.KNEE, Ink.ANKLE, Ink.TODAY, Ink.LIMIT, Ink.WEIGHT, Ink.RUBBER, Ink.FRICTION, Ink.INERTIA
    };

    @Test
    void textStandsOutFromEveryGround() {
        PALETTES.forEach((name, palette) -> {
            for (Ink ink : TEXT) {
                for (Ink ground : new Ink[] {Ink.PAPER, Ink.STEEL}) {
                    assertThat(contrast(palette, ink, ground))
                            .as(name + " " + ink + " on " + ground)
                            .isGreaterThan(4.5);
                }
            }
        });
    }

    @Test
    void linesWithMeaningStandOut() {
        PALETTES.forEach((name, palette) -> {
            for (Ink ink : LINES) {
                assertThat(contrast(palette, ink, Ink.PAPER))
                        .as(name + " " + ink)
                        .isGreaterThan(3);
            }
        });
    }

    @Test
    void blackOnWhiteIsTwentyOneToOne() {
        assertThat(contrast(Palette.PRINT, Ink.INK, Ink.PAPER)).isCloseTo(21, within(1e-9));
    }

    @Test
    void aPageWithTwoGroundsSetsProperties() {
        assertThat(Palette.themed().of(Ink.FRICTION))
                .isEqualTo("var(--ink-friction," + Palette.LIGHT.of(Ink.FRICTION) + ")");
    }

    private static double contrast(Palette palette, Ink ink, Ink ground) {
        double a = luminance(palette.of(ink));
        double b = luminance(palette.of(ground));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String hex) {
        return 0.2126 * channel(hex, 1) + 0.7152 * channel(hex, 3) + 0.0722 * channel(hex, 5);
    }

    private static double channel(String hex, int from) {
        double c = Integer.parseInt(hex.substring(from, from + 2), 16) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
