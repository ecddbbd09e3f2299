package org.twinbar.report.kit;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import org.twinbar.report.Theme;

/**
 * Pictures that follow each other in one GIF file (GIF89a), which every program for films and every
 * forum takes.
 *
 * <p>Its 256 colours are those of the palette in steps towards paper, so that edges stay smooth and
 * no colour flickers from one picture to the next.
 */
final class Film implements AutoCloseable {

    private static final Theme[] DRAWN = {
        Theme.INK, Theme.SOFT, Theme.TREATED, Theme.WARN, Theme.LINE, Theme.SHEET
    };
    private static final int STEPS = 42;
    private static final String FORMAT = "javax_imageio_gif_image_1.0";

    private final IndexColorModel colours;
    private final byte[] nearest = new byte[1 << 18];
    private final boolean[] known = new boolean[1 << 18];
    private final ImageWriter writer;
    private final ImageOutputStream out;
    private boolean begun;

    Film(OutputStream file, Palette palette) {
        this.colours = colours(palette);
        this.writer = ImageIO.getImageWritersByFormatName("gif").next();
        try {
            this.out = ImageIO.createImageOutputStream(file);
            writer.setOutput(out);
            writer.prepareWriteSequence(null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static IndexColorModel colours(Palette palette) {
        int paper = Integer.parseInt(palette.of(Theme.PAPER).substring(1), 16);
        int[] all = new int[256];
        Arrays.fill(all, paper);
        int at = 1;
        for (Theme token : DRAWN) {
            int colour = Integer.parseInt(palette.of(token).substring(1), 16);
            for (int step = 1; step <= STEPS && at < all.length; step++) {
                all[at++] = blend(paper, colour, (double) step / STEPS);
            }
        }
        return new IndexColorModel(8, all.length, all, 0, false, -1, 0);
    }

    private static int blend(int from, int to, double share) {
        int mixed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int a = from >> shift & 0xFF;
            int b = to >> shift & 0xFF;
            mixed |= (int) Math.round(a + share * (b - a)) << shift;
        }
        return mixed;
    }

    void add(BufferedImage picture, int milliseconds) {
        BufferedImage indexed = indexed(picture);
        ImageWriteParam how = writer.getDefaultWriteParam();
        IIOMetadata about = writer.getDefaultImageMetadata(new ImageTypeSpecifier(indexed), how);
        try {
            describe(about, milliseconds);
            writer.writeToSequence(new IIOImage(indexed, null, about), how);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        begun = true;
    }

    private void describe(IIOMetadata about, int milliseconds) throws IOException {
        IIOMetadataNode root = (IIOMetadataNode) about.getAsTree(FORMAT);
        IIOMetadataNode control = child(root, "GraphicControlExtension");
        control.setAttribute("disposalMethod", "none");
        control.setAttribute("userInputFlag", "FALSE");
        control.setAttribute("transparentColorFlag", "FALSE");
        control.setAttribute("transparentColorIndex", "0");
        control.setAttribute("delayTime", Integer.toString(milliseconds / 10));
        if (!begun) {
            IIOMetadataNode extensions = child(root, "ApplicationExtensions");
            IIOMetadataNode loop = new IIOMetadataNode("ApplicationExtension");
            loop.setAttribute("applicationID", "NETSCAPE");
            loop.setAttribute("authenticationCode", "2.0");
            loop.setUserObject(new byte[] {1, 0, 0});
            extensions.appendChild(loop);
        }
        about.setFromTree(FORMAT, root);
    }

    private static IIOMetadataNode child(IIOMetadataNode root, String name) {
        for (int i = 0; i < root.getLength(); i++) {
            if (root.item(i).getNodeName().equals(name)) {
                return (IIOMetadataNode) root.item(i);
            }
        }
        IIOMetadataNode child = new IIOMetadataNode(name);
        root.appendChild(child);
        return child;
    }

    private BufferedImage indexed(BufferedImage picture) {
        int width = picture.getWidth();
        int height = picture.getHeight();
        BufferedImage indexed =
                new BufferedImage(width, height, BufferedImage.TYPE_BYTE_INDEXED, colours);
        int[] row = new int[width];
        byte[] places = new byte[width];
        for (int y = 0; y < height; y++) {
            picture.getRGB(0, y, width, 1, row, 0, width);
            for (int x = 0; x < width; x++) {
                places[x] = nearest(row[x]);
            }
            indexed.getRaster().setDataElements(0, y, width, 1, places);
        }
        return indexed;
    }

    private byte nearest(int rgb) {
        int coarse = rgb >> 6 & 0x3F000 | rgb >> 4 & 0xFC0 | rgb >> 2 & 0x3F;
        if (!known[coarse]) {
            known[coarse] = true;
            int best = 0;
            int least = Integer.MAX_VALUE;
            for (int i = 0; i < colours.getMapSize(); i++) {
                int red = colours.getRed(i) - (rgb >> 16 & 0xFF);
                int green = colours.getGreen(i) - (rgb >> 8 & 0xFF);
                int blue = colours.getBlue(i) - (rgb & 0xFF);
                int far = red * red + green * green + blue * blue;
                if (far < least) {
                    least = far;
                    best = i;
                }
            }
            nearest[coarse] = (byte) best;
        }
        return nearest[coarse];
    }

    @Override
    public void close() {
        try {
            writer.endWriteSequence();
            out.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
    }
}
