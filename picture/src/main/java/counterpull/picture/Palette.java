package counterpull.picture;

/**
 * A colour for each {@link Ink}. The only place with colour values. Series hues are those of Okabe and Ito 2008 ("Color
 * Universal Design"), darkened or lightened where the ground would leave a line under 3:1; text has 4.5:1 and more.
 */
public final class Palette {
    /** Warm off-white paper. */
    public static final Palette LIGHT = new Palette(new String[] {
        "#faf7f0", "#1b1f24", "#59606a", "#cfcabd", "#7a2e62", "#efe6d6", "#e0ddd4", "#0072b2", "#d55e00", "#00825f",
        "#7d838c", "#8c1d18", "#1b1f24", "#b0527f", "#6b5a2e", "#a86f00"
    });

    /** Deep blue-grey ground. */
    public static final Palette DARK = new Palette(new String[] {
        "#17212b", "#e8ebee", "#a9b3bd", "#3c4955", "#e3a6cf", "#2b3844", "#243240", "#56b4e9", "#e9803a", "#19b88c",
        "#8b96a1", "#ff9a8f", "#e8ebee", "#cc79a7", "#c9b378", "#e69f00"
    });

    /** Black on white paper. */
    public static final Palette PRINT = new Palette(new String[] {
        "#ffffff", "#000000", "#4a4a4a", "#c4c4c4", "#5f1f4b", "#f3f3f3", "#e4e4e4", "#0072b2", "#c75500", "#00795a",
        "#777777", "#7a1612", "#000000", "#a3456f", "#5c4c22", "#935f00"
    });

    private static final String[] PROPERTY = properties();
    private final String[] colour;

    private Palette(String[] colour) {
        this.colour = colour;
    }

    /**
     * For a page that has both grounds: each colour is the page's custom property {@code --ink-NAME} (for instance
     * {@code --ink-hip}), the light value where the page does not set it. Not for the PDF library, which knows none.
     */
    public static Palette themed() {
        String[] colour = new String[PROPERTY.length];
        for (int i = 0; i < colour.length; i++) {
            colour[i] = "var(" + PROPERTY[i] + "," + LIGHT.colour[i] + ")";
        }
        return new Palette(colour);
    }

    private static String[] properties() {
        String[] names = new String[Ink.values().length];
        for (Ink ink : Ink.values()) {
            names[ink.ordinal()] = property(ink);
        }
        return names;
    }

    /** Name of the custom property that {@link #themed} reads for an ink. */
    public static String property(Ink ink) {
        StringBuilder name = new StringBuilder("--ink-");
        for (char c : ink.name().toCharArray()) {
            // not toLowerCase(): its answer depends on where it runs
            name.append((char) (c - 'A' + 'a'));
        }
        return name.toString();
    }

    /** The colour of an ink, as an SVG attribute's value. */
    public String of(Ink ink) {
        return colour[ink.ordinal()];
    }
}
