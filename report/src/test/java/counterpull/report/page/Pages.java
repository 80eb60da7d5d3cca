package counterpull.report.page;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A page read back by a parser that forgives nothing. */
final class Pages {
    private Pages() {}

    static Document read(String page) {
        try {
            byte[] bytes = page.replace("<!DOCTYPE html>", "").getBytes(StandardCharsets.UTF_8);
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
        } catch (Exception e) {
            throw new AssertionError("the page is not well-formed", e);
        }
    }

    static List<Element> all(Document page, String tag) {
        return list(page.getElementsByTagName(tag));
    }

    static List<Element> all(Element within, String tag) {
        return list(within.getElementsByTagName(tag));
    }

    private static List<Element> list(NodeList nodes) {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    static List<String> texts(Document page, String tag) {
        return all(page, tag).stream().map(Element::getTextContent).toList();
    }

    /** The cells of a table's row, counted from 0. */
    static List<String> row(Element table, int row) {
        return all(all(all(table, "tbody").get(0), "tr").get(row), "td").stream()
                .map(Element::getTextContent)
                .toList();
    }

    static Element table(Document page, String caption) {
        return all(page, "table").stream()
                .filter(table -> all(table, "caption").get(0).getTextContent().equals(caption))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no table " + caption));
    }
}
