package counterpull.picture;

import counterpull.engine.planar.Vec;

/**
 * Writes one SVG picture: whole-number size with a viewBox, attributes only, no identifiers (several pictures can stand in
 * one page), no links outward. Points in px, y downward.
 */
final class Svg {
    private static final String FONT = "system-ui, 'Segoe UI', Roboto, 'Helvetica Neue', 'DejaVu Sans', sans-serif";
    private final StringBuilder out = new StringBuilder(8192);
    private final Palette palette;

    Svg(View view, String label) {
        palette = view.palette();
        int width = view.size().width();
        int height = view.size().height();
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(width);
        out.append("\" height=\"")
                .append(height)
                .append("\" viewBox=\"0 0 ")
                .append(width)
                .append(' ');
        out.append(height).append("\" role=\"img\"");
        attribute("aria-label", label);
        attribute("font-family", FONT);
        out.append(" style=\"font-variant-numeric:tabular-nums\">\n<title>")
                .append(escaped(label))
                .append("</title>\n");
        rect(new Box(0, 0, width, height), Fill.of(Ink.PAPER), Pen.of(Ink.PAPER, 0));
    }

    void open(String kind) {
        out.append("<g");
        attribute("class", kind);
        out.append(">\n");
    }

    void close() {
        out.append("</g>\n");
    }

    void line(Vec from, Vec to, Pen pen) {
        out.append("<line");
        number("x1", from.x());
        number("y1", from.y());
        number("x2", to.x());
        number("y2", to.y());
        stroke(pen);
        end();
    }

    void path(PathData data, Fill fill, Pen pen) {
        out.append("<path d=\"").append(data).append('"');
        fill(fill);
        stroke(pen);
        end();
    }

    void circle(Vec centre, double radius, Fill fill, Pen pen) {
        out.append("<circle");
        number("cx", centre.x());
        number("cy", centre.y());
        number("r", radius);
        fill(fill);
        stroke(pen);
        end();
    }

    void rect(Box box, Fill fill, Pen pen) {
        out.append("<rect");
        number("x", box.left());
        number("y", box.top());
        number("width", box.width());
        number("height", box.height());
        fill(fill);
        stroke(pen);
        end();
    }

    void text(Vec at, String words, Lettering lettering) {
        turned(at, 0, words, lettering);
    }

    /** A word turned clockwise about its point, degrees. */
    void turned(Vec at, double degrees, String words, Lettering lettering) {
        out.append("<text");
        number("x", at.x());
        number("y", at.y());
        number("font-size", lettering.size());
        if (lettering.weight() == Lettering.Weight.BOLD) {
            out.append(" font-weight=\"bold\"");
        }
        if (lettering.align() != Lettering.Align.START) {
            attribute("text-anchor", lettering.align().svg);
        }
        if (degrees != 0) {
            out.append(" transform=\"rotate(")
                    .append(Numbers.coordinate(degrees))
                    .append(' ');
            out.append(Numbers.coordinate(at.x()))
                    .append(' ')
                    .append(Numbers.coordinate(at.y()))
                    .append(")\"");
        }
        attribute("fill", palette.of(lettering.ink()));
        out.append('>').append(escaped(words)).append("</text>\n");
    }

    /** The picture, finished. */
    String finish() {
        return out.append("</svg>\n").toString();
    }

    private void fill(Fill fill) {
        attribute("fill", fill.opacity() == 0 ? "none" : palette.of(fill.ink()));
        if (fill.opacity() > 0 && fill.opacity() < 1) {
            number("fill-opacity", fill.opacity());
        }
    }

    private void stroke(Pen pen) {
        if (pen.width() == 0) {
            return;
        }
        attribute("stroke", palette.of(pen.ink()));
        number("stroke-width", pen.width());
        out.append(" stroke-linejoin=\"round\"");
        if (!pen.dash().isEmpty()) {
            attribute("stroke-dasharray", pen.dash());
        }
        if (pen.opacity() < 1) {
            number("stroke-opacity", pen.opacity());
        }
    }

    private void end() {
        out.append("/>\n");
    }

    private void number(String name, double value) {
        out.append(' ')
                .append(name)
                .append("=\"")
                .append(Numbers.coordinate(value))
                .append('"');
    }

    private void attribute(String name, String value) {
        out.append(' ').append(name).append("=\"").append(escaped(value)).append('"');
    }

    static String escaped(String words) {
        StringBuilder safe = new StringBuilder(words.length());
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.append(c < ' ' ? ' ' : c);
            }
        }
        return safe.toString();
    }
}
