package counterpull.report.card;

import counterpull.report.Findings;
import counterpull.report.Setup;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;

/** Writes the floor card: one A4 page for each chosen setup, in letters that can be read at arm's length. */
public final class FloorCard {

    private FloorCard() {}

    /**
     * The card of the first chosen setup.
     *
     * @param findings what it shows
     * @param to where the PDF goes; left open
     * @return notes for whoever asked for it; usually none
     */
    public static List<String> pdf(Findings findings, OutputStream to) throws IOException {
        return pdf(findings, findings.first(), to);
    }

    /** The card of one of the chosen setups. */
    public static List<String> pdf(Findings findings, Setup setup, OutputStream to) throws IOException {
        return write(findings, setup, CardFonts.found(), to);
    }

    static List<String> write(Findings findings, Setup setup, Optional<CardFonts> fonts, OutputStream to)
            throws IOException {
        return CardPdf.write(
                density -> CardPage.of(findings, setup, density, CardFigure.of(setup, density)),
                findings.heading(),
                fonts,
                to);
    }
}
