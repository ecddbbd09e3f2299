package org.twinbar.report.kit;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.twinbar.report.Fonts;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A picture of the report with its text turned into outlines, and what only a page shows left away.
 *
 * @param width of the picture, in its own units
 * @param height of the picture, in its own units
 * @param inside what it is made of, as SVG
 * @param words what it shows, for who can't see it
 */
record Outlined(double width, double height, String inside, String words) {

    static Outlined of(String svg) {
        Element root = parse(svg).getDocumentElement();
        String[] box = root.getAttribute("viewBox").split(" ");
        double size = root.hasAttribute("font-size")
                ? Double.parseDouble(root.getAttribute("font-size"))
                : 0;
        StringBuilder inside = new StringBuilder(svg.length() * 2);
        children(root, size, inside);
        return new Outlined(
                Double.parseDouble(box[2]),
                Double.parseDouble(box[3]),
                inside.toString(),
                root.getAttribute("aria-label"));
    }

    private static Document parse(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalStateException("a picture of the report is no SVG", e);
        }
    }

    private static void children(Element parent, double size, StringBuilder out) {
        NodeList children = parent.getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            if (children.item(i) instanceof Element element) {
                element(element, size, out);
            }
        }
    }

    private static void element(Element element, double size, StringBuilder out) {
        String name = element.getTagName();
        if (name.equals("title") || element.getAttribute("class").equals("tip")) {
            return;
        }
        if (name.equals("text")) {
            text(element, size, out);
            return;
        }
        out.append('<').append(name);
        for (String attribute : drawn(element)) {
            out.append(attribute);
        }
        if (element.getFirstChild() == null) {
            out.append("/>");
            return;
        }
        out.append('>');
        children(element, size, out);
        out.append("</").append(name).append('>');
    }

    /** Names and roles are a page's; the frame has words of its own. */
    private static List<String> drawn(Element element) {
        List<String> drawn = new ArrayList<>();
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Node attribute = attributes.item(i);
            String name = attribute.getNodeName();
            if (!name.startsWith("aria-") && !name.equals("role") && !name.equals("class")) {
                drawn.add(" %s=\"%s\"".formatted(name, attribute.getNodeValue()));
            }
        }
        return drawn;
    }

    private static void text(Element text, double size, StringBuilder out) {
        Fonts.Weight weight = isBold(text) ? Fonts.Weight.BOLD : Fonts.Weight.REGULAR;
        String path = Lettering.path(
                text.getTextContent(),
                Double.parseDouble(text.getAttribute("x")),
                Double.parseDouble(text.getAttribute("y")),
                size,
                weight);
        out.append("<path fill=\"").append(text.getAttribute("fill")).append('"');
        if (text.hasAttribute("transform")) {
            out.append(" transform=\"").append(text.getAttribute("transform")).append('"');
        }
        out.append(" d=\"").append(path).append("\"/>");
    }

    private static boolean isBold(Element text) {
        for (Node at = text; at instanceof Element element; at = at.getParentNode()) {
            String weight = element.getAttribute("font-weight");
            if (!weight.isEmpty()) {
                return weight.equals("600") || weight.equals("bold");
            }
        }
        return false;
    }
}
