package org.twinbar.report.kit;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

import javax.imageio.ImageIO;

/** Pictures as dots. */
final class Bitmap {

    private Bitmap() {}

    static byte[] png(String svg, int width, int height) {
        try {
            ByteArrayOutputStream png = new ByteArrayOutputStream(400_000);
            if (!ImageIO.write(drawn(svg, width, height), "png", png)) {
                throw new IllegalStateException("this Java can't write PNG");
            }
            return png.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static BufferedImage drawn(String svg, int width, int height) {
        SVGDocument document = new SVGLoader()
                .load(
                        new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
                        null,
                        LoaderContext.createDefault());
        if (document == null) {
            throw new IllegalStateException("a picture of the kit is no SVG");
        }
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = image.createGraphics();
        try {
            canvas.setRenderingHint(
                    RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            canvas.setRenderingHint(
                    RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            document.render(null, canvas, new ViewBox(0, 0, width, height));
        } finally {
            canvas.dispose();
        }
        return image;
    }
}
