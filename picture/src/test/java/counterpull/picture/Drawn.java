package counterpull.picture;

import counterpull.engine.planar.Vec;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A picture read back as XML, which it has to be well-formed for. */
final class Drawn {
    private final Element root;

    private Drawn(Element root) {
        this.root = root;
    }

    static Drawn of(String svg) {
        try {
            byte[] bytes = svg.getBytes(StandardCharsets.UTF_8);
            return new Drawn(DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(bytes))
                    .getDocumentElement());
        } catch (Exception notWellFormed) {
            throw new AssertionError("not well-formed: " + svg, notWellFormed);
        }
    }

    Element root() {
        return root;
    }

    List<Element> all(String tag) {
        return below(root, tag);
    }

    /** Elements of a kind inside the first group of a class. */
    List<Element> in(String group, String tag) {
        for (Element g : all("g")) {
            if (g.getAttribute("class").equals(group)) {
                return below(g, tag);
            }
        }
        throw new AssertionError("no group " + group);
    }

    private static List<Element> below(Element from, String tag) {
        NodeList found = from.getElementsByTagName(tag);
        List<Element> list = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            list.add((Element) found.item(i));
        }
        return list;
    }

    static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    /** The box of every word that is not turned, with the picture's own estimate of its width. */
    List<Word> words() {
        List<Word> words = new ArrayList<>();
        for (Element text : all("text")) {
            if (!text.hasAttribute("transform")) {
                words.add(new Word(text.getTextContent(), box(text)));
            }
        }
        return words;
    }

    record Word(String text, Box box) {}

    private static Box box(Element text) {
        Lettering.Weight weight = text.hasAttribute("font-weight") ? Lettering.Weight.BOLD : Lettering.Weight.NORMAL;
        Lettering.Align align = switch (text.getAttribute("text-anchor")) {
            case "middle" -> Lettering.Align.MIDDLE;
            case "end" -> Lettering.Align.END;
            default -> Lettering.Align.START;
        };
        Lettering lettering = new Lettering(number(text, "font-size"), weight, Ink.INK, align);
        Vec at = new Vec(number(text, "x"), number(text, "y"));
        return Box.of(at, text.getTextContent(), lettering);
    }
}
