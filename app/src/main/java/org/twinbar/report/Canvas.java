package org.twinbar.report;

import java.awt.Color;
import java.util.Map;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.svggen.DefaultExtensionHandler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGPaintDescriptor;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** What charts draw on: colours become tokens, and what belongs together can be named. */
final class Canvas extends SVGGraphics2D {

    private Canvas(SVGGeneratorContext context) {
        super(context, false);
    }

    static Canvas blank() {
        Document document = SVGDOMImplementation.getDOMImplementation()
                .createDocument(SVGDOMImplementation.SVG_NAMESPACE_URI, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(1);
        context.setExtensionHandler(new Tokens());
        return new Canvas(context);
    }

    /** Draws into a group of its own, with these attributes; a "title" becomes the group's name. */
    void group(Map<String, String> attributes, Runnable drawing) {
        Element around = getTopLevelGroup(false);
        Document document = getDOMFactory();
        Element group = document.createElementNS(SVG_NAMESPACE_URI, SVG_G_TAG);
        group.setAttribute(CompactSvg.KEPT, "");
        attributes.forEach((name, value) -> {
            if (name.equals("title")) {
                Element title = document.createElementNS(SVG_NAMESPACE_URI, "title");
                title.appendChild(document.createTextNode(value));
                group.appendChild(title);
            } else {
                group.setAttribute(name, value);
            }
        });
        around.appendChild(group);
        setTopLevelGroup(group);
        drawing.run();
        setTopLevelGroup(around);
    }

    /** Returns what was drawn as one SVG element that stands by itself. */
    String svg(int width, int height, String description) {
        return CompactSvg.write(getTopLevelGroup(false), width, height, description);
    }

    /** Gives a token's colour out as the style sheet's variable. */
    private static final class Tokens extends DefaultExtensionHandler {
        @Override
        public SVGPaintDescriptor handlePaint(
                java.awt.Paint paint, SVGGeneratorContext generatorContext) {
            if (!(paint instanceof Color color)) {
                throw new IllegalArgumentException("a picture is drawn in tokens, not " + paint);
            }
            String name = Theme.of(color)
                    .map(token -> "var(" + token.variable() + ")")
                    // Batik asks for its own defaults too, which nothing is drawn with.
                    .orElse("none");
            return new SVGPaintDescriptor(name, Float.toString(color.getAlpha() / 255f));
        }
    }
}
