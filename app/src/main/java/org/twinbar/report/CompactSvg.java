package org.twinbar.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * Writes what Batik drew as small SVG: its nested groups of graphic state are folded into the few
 * attributes that each shape needs.
 */
final class CompactSvg {

    /** Marks a group that was made on purpose and must stay. */
    static final String KEPT = "kept";

    private static final List<String> SHAPE_STATE = List.of(
            "fill",
            "fill-opacity",
            "stroke",
            "stroke-opacity",
            "stroke-width",
            "stroke-dasharray",
            "stroke-linecap",
            "stroke-linejoin");
    private static final List<String> TEXT_STATE = List.of("fill", "font-weight");
    private static final Map<String, String> DEFAULTS = Map.of(
            "fill-opacity", "1",
            "stroke", "none",
            "stroke-opacity", "1",
            "stroke-width", "1",
            "stroke-dasharray", "none",
            "stroke-linecap", "butt",
            "stroke-linejoin", "miter",
            "font-weight", "normal");

    private final StringBuilder out = new StringBuilder(8_192);

    private CompactSvg() {}

    static String write(Element drawn, int width, int height, String description) {
        CompactSvg svg = new CompactSvg();
        svg.out
                .append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"figure\" viewBox=\"0 0 ")
                .append(width)
                .append(' ')
                .append(height)
                .append("\" font-family=\"Inter,'Liberation Sans',sans-serif\" font-size=\"")
                .append(Chart.TEXT)
                .append("\" role=\"group\" aria-label=\"")
                .append(escaped(description))
                .append("\">");
        svg.children(drawn, Map.of());
        return svg.out.append("</svg>").toString();
    }

    private void children(Element parent, Map<String, String> state) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                element(element, state);
            }
        }
    }

    private void element(Element element, Map<String, String> inherited) {
        switch (element.getTagName()) {
            case "g" -> group(element, inherited);
            case "title" ->
                out.append("<title>").append(escaped(element.getTextContent())).append("</title>");
            case "text" -> {
                open(element, List.of("x", "y", "transform"), TEXT_STATE, inherited);
                out.append('>').append(escaped(element.getTextContent())).append("</text>");
            }
            case "defs", "clipPath" -> {}
            default -> {
                Map<String, String> state = merged(element, inherited);
                boolean unseen = "none".equals(state.get("fill"))
                        && "none".equals(state.getOrDefault("stroke", "none"));
                if (!unseen) {
                    open(element, GEOMETRY, SHAPE_STATE, inherited);
                    out.append("/>");
                }
            }
        }
    }

    private static final List<String> GEOMETRY = List.of(
            "d",
            "points",
            "x",
            "y",
            "x1",
            "y1",
            "x2",
            "y2",
            "cx",
            "cy",
            "r",
            "rx",
            "ry",
            "width",
            "height",
            "transform");

    private void group(Element group, Map<String, String> inherited) {
        Map<String, String> state = merged(group, inherited);
        boolean kept = group.hasAttribute(KEPT);
        String transform = group.getAttribute("transform");
        if (!kept && transform.isEmpty()) {
            children(group, state);
            return;
        }
        out.append("<g");
        NamedNodeMap attributes = group.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.item(i).getNodeName();
            if ((kept && !name.equals(KEPT)) || name.equals("transform")) {
                attribute(name, attributes.item(i).getNodeValue());
            }
        }
        out.append('>');
        children(group, state);
        out.append("</g>");
    }

    private void open(
            Element element,
            List<String> own,
            List<String> stateNames,
            Map<String, String> inherited) {
        Map<String, String> state = merged(element, inherited);
        out.append('<').append(element.getTagName());
        for (String name : own) {
            if (element.hasAttribute(name)) {
                attribute(name, element.getAttribute(name));
            }
        }
        for (String name : stateNames) {
            String value = state.get(name);
            boolean ofNoStroke = name.startsWith("stroke-")
                    && "none".equals(state.getOrDefault("stroke", "none"));
            if (value != null && !value.equals(DEFAULTS.get(name)) && !ofNoStroke) {
                attribute(name, value);
            }
        }
    }

    private void attribute(String name, String value) {
        out.append(' ').append(name).append("=\"").append(escaped(value)).append('"');
    }

    private static Map<String, String> merged(Element element, Map<String, String> inherited) {
        Map<String, String> state = new LinkedHashMap<>(inherited);
        for (List<String> names : List.of(SHAPE_STATE, TEXT_STATE)) {
            for (String name : names) {
                if (element.hasAttribute(name)) {
                    state.put(name, element.getAttribute(name));
                }
            }
        }
        return state;
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
