package counterpull.report.card;

import java.io.File;
import java.util.List;
import java.util.Optional;

/** DejaVu Sans where a system has it: it has every sign that a card needs. */
record CardFonts(File regular, File bold) {
    private static final List<String> USUAL_FOLDERS = List.of(
            "/usr/share/fonts/truetype/dejavu",
            "/usr/share/fonts/dejavu",
            "/usr/share/fonts/dejavu-sans-fonts",
            "/usr/share/fonts/TTF",
            "/usr/local/share/fonts",
            "/Library/Fonts",
            "C:/Windows/Fonts");

    /** The fonts of the first usual folder that has both weights. */
    static Optional<CardFonts> found() {
        return foundIn(USUAL_FOLDERS);
    }

    static Optional<CardFonts> foundIn(List<String> folders) {
        for (String folder : folders) {
            File regular = new File(folder, "DejaVuSans.ttf");
            File bold = new File(folder, "DejaVuSans-Bold.ttf");
            if (regular.canRead() && bold.canRead()) {
                return Optional.of(new CardFonts(regular, bold));
            }
        }
        return Optional.empty();
    }
}
