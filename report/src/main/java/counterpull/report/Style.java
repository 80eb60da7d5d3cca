package counterpull.report;

import counterpull.picture.Ink;
import counterpull.picture.Palette;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The one style sheet, with the picture's inks in front: as custom properties for browsers, as plain values for the card. */
public final class Style {
    private static final String PAGE = "/* ==== page ==== */";
    private static final String CARD = "/* ==== card ==== */";

    private Style() {}

    /** For a page in a browser: light, dark where the reader's system is, black on white in print. */
    public static String page() {
        String sheet = sheet();
        return properties(Palette.LIGHT)
                + "@media (prefers-color-scheme: dark) { " + properties(Palette.DARK) + "}\n"
                + "@media print { " + properties(Palette.PRINT) + "}\n"
                + sheet.substring(sheet.indexOf(PAGE), sheet.indexOf(CARD));
    }

    /** For the card: a PDF library that knows no custom properties. */
    public static String card() {
        String sheet = sheet();
        String card = sheet.substring(sheet.indexOf(CARD));
        for (Ink ink : Ink.values()) {
            card = card.replace("var(" + Palette.property(ink) + ")", Palette.PRINT.of(ink));
        }
        return card;
    }

    private static String properties(Palette palette) {
        StringBuilder out = new StringBuilder(":root { ");
        for (Ink ink : Ink.values()) {
            out.append(Palette.property(ink))
                    .append(": ")
                    .append(palette.of(ink))
                    .append("; ");
        }
        return out.append("}\n").toString();
    }

    private static String sheet() {
        try (InputStream in = Style.class.getResourceAsStream("look.css")) {
            if (in == null) {
                throw new IllegalStateException("look.css is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
