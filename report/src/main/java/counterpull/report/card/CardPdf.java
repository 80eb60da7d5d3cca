package counterpull.report.card;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import counterpull.report.Heading;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** Turns a card's markup into a PDF: the roomiest layout that is one page. */
final class CardPdf {
    private static final String BUILT_IN =
            "The card uses the PDF's built-in fonts, because DejaVu Sans was not found: a few signs stand as words.";
    private static final String TOO_LONG =
            "The card did not fit on one page: shorten the longest names of seat, row, rubber, anchors or machines.";

    private CardPdf() {}

    /**
     * Writes a card.
     *
     * @param markup the card's markup for a density
     * @param heading what stands in the document's properties
     * @param fonts the fonts, if they were found
     * @param to where the PDF goes; left open
     * @return notes for whoever asked for it; usually none
     */
    static List<String> write(
            Function<Density, String> markup, Heading heading, Optional<CardFonts> fonts, OutputStream to)
            throws IOException {
        // it talks through handlers of its own, so that silencing the root logger is not enough
        XRLog.setLoggingEnabled(false);
        List<String> notes = new ArrayList<>();
        if (fonts.isEmpty()) {
            notes.add(BUILT_IN);
        }
        Card card = roomiest(markup, heading, fonts);
        if (card.pages() > 1) {
            notes.add(TOO_LONG);
        }
        to.write(card.pdf());
        return notes;
    }

    private record Card(byte[] pdf, int pages) {}

    /** The roomiest card that is one page; the fullest one where none is. */
    private static Card roomiest(Function<Density, String> markup, Heading heading, Optional<CardFonts> fonts)
            throws IOException {
        Card card = new Card(new byte[0], Integer.MAX_VALUE);
        for (Density density : Density.values()) {
            if (card.pages() > 1) {
                String page = markup.apply(density);
                card = stamped(rendered(fonts.isEmpty() ? PlainSigns.of(page) : page, fonts), heading);
            }
        }
        return card;
    }

    private static byte[] rendered(String markup, Optional<CardFonts> fonts) throws IOException {
        // the library would tell its own story on standard error
        XRLog.setLoggingEnabled(false);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withHtmlContent(markup, "");
        fonts.ifPresent(found -> {
            builder.useFont(found.regular(), "Card", 400, PdfRendererBuilder.FontStyle.NORMAL, true);
            builder.useFont(found.bold(), "Card", 700, PdfRendererBuilder.FontStyle.NORMAL, true);
        });
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            builder.useSVGDrawer(drawer).toStream(out).run();
        }
        return out.toByteArray();
    }

    /** Title, program and the day it was made in place of the library's own clock: the same input gives the same bytes. */
    private static Card stamped(byte[] pdf, Heading heading) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDDocumentInformation information = new PDDocumentInformation();
            information.setTitle("Floor card: " + heading.client());
            information.setProducer("Counterpull " + heading.version());
            information.setCreationDate(GregorianCalendar.from(heading.made().atStartOfDay(ZoneOffset.UTC)));
            document.setDocumentInformation(information);
            document.getDocument().getTrailer().removeItem(COSName.ID);
            document.setDocumentId(heading.made().toEpochDay());
            document.save(out);
            return new Card(out.toByteArray(), document.getNumberOfPages());
        }
    }
}
