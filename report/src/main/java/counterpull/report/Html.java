package counterpull.report;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes a page as well-formed XML that browsers read as HTML too. Everything that is given as text is escaped; elements
 * close in order. A tag may carry one class: {@code p.lead}.
 */
public final class Html {
    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element. */
    public Html open(String tag) {
        return open(tag, "", "");
    }

    /** Opens an element with one more attribute; none where its name is empty. */
    public Html open(String tag, String attribute, String value) {
        String name = start(tag, attribute, value);
        out.append('>');
        open.push(name);
        return this;
    }

    private String start(String tag, String attribute, String value) {
        int dot = tag.indexOf('.');
        String name = dot < 0 ? tag : tag.substring(0, dot);
        out.append('<').append(name);
        if (dot >= 0) {
            attribute("class", tag.substring(dot + 1));
        }
        if (!attribute.isEmpty()) {
            attribute(attribute, value);
        }
        return name;
    }

    private void attribute(String name, String value) {
        out.append(' ').append(name).append("=\"").append(escaped(value)).append('"');
    }

    /** Closes the element that was opened last. */
    public Html close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** Text inside the open element. */
    public Html text(String text) {
        out.append(escaped(text));
        return this;
    }

    /** A whole element with text in it. */
    public Html put(String tag, String text) {
        return open(tag).text(text).close();
    }

    /** A whole element with one more attribute and text in it. */
    public Html put(String tag, String attribute, String value, String text) {
        return open(tag, attribute, value).text(text).close();
    }

    /** An element without content that HTML knows as such ({@code br}, {@code meta}). */
    public Html empty(String tag, String attribute, String value) {
        start(tag, attribute, value);
        out.append("/>");
        return this;
    }

    /** A line break in the source, for people who read it. */
    public Html line() {
        out.append('\n');
        return this;
    }

    /** Markup that this program made itself: pictures and style sheets, never what a person typed. */
    public Html own(String markup) {
        out.append(markup);
        return this;
    }

    /** The page; refuses while an element is open. */
    public String done() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("element " + open.peek() + " is still open");
        }
        return out.toString();
    }

    /** Text with what markup would read as its own replaced, and characters that XML forbids left out. */
    public static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().filter(Html::allowed).forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(c);
            }
        });
        return safe.toString();
    }

    private static boolean allowed(int c) {
        boolean control = c < 0x20 && c != '\t' && c != '\n' && c != '\r';
        boolean halfPair = c >= 0xD800 && c <= 0xDFFF;
        return !control && !halfPair && c != 0xFFFE && c != 0xFFFF;
    }
}
