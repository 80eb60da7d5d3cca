package counterpull.report.card;

import counterpull.report.Findings;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A card's PDF read back as a stranger would: pages, words, size of every letter. */
final class CardText {
    record Letter(String sign, double points) {}

    final int pages;
    final String words;
    final List<Letter> letters = new ArrayList<>();
    final List<String> notes;

    private CardText(byte[] pdf, List<String> notes) throws IOException {
        this.notes = notes;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            pages = document.getNumberOfPages();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition at) {
                    letters.add(new Letter(at.getUnicode(), at.getTextMatrix().getScalingFactorY()));
                    super.processTextPosition(at);
                }
            };
            words = stripper.getText(document).replace('\u00A0', ' ').replace('\u2009', ' ');
        }
    }

    static CardText of(Findings findings) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        List<String> notes = FloorCard.pdf(findings, out);
        return new CardText(out.toByteArray(), notes);
    }

    static CardText builtIn(Findings findings) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        List<String> notes = FloorCard.write(findings, findings.first(), CardFonts.foundIn(List.of()), out);
        return new CardText(out.toByteArray(), notes);
    }

    /** The line after a label. */
    String after(String label) {
        List<String> lines = words.lines().toList();
        for (int i = 0; i < lines.size() - 1; i++) {
            if (lines.get(i).startsWith(label)) {
                return lines.get(i + 1);
            }
        }
        throw new IllegalArgumentException("no label " + label + " on the card:\n" + words);
    }

    /** Smallest letters of a word that stands somewhere, pt. */
    double sizeOf(String word) {
        String plain = word.replace(" ", "");
        StringBuilder all = new StringBuilder();
        List<Double> sizes = new ArrayList<>();
        for (Letter letter : letters) {
            if (!letter.sign().replace('\u00A0', ' ').isBlank()) {
                all.append(letter.sign());
                for (int i = 0; i < letter.sign().length(); i++) {
                    sizes.add(letter.points());
                }
            }
        }
        double most = 0;
        for (int at = all.indexOf(plain); at >= 0; at = all.indexOf(plain, at + 1)) {
            double least = Double.POSITIVE_INFINITY;
            for (int i = at; i < at + plain.length(); i++) {
                least = Math.min(least, sizes.get(i));
            }
            most = Math.max(most, least);
        }
        return most;
    }
}
