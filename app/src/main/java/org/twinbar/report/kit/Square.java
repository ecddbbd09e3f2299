package org.twinbar.report.kit;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;
import org.twinbar.report.Fonts;

/**
 * The middle of a photo as a square with a number in its corner. It is drawn anew from the dots
 * alone, so that nothing else that the file told (place, camera, time, a small picture of the
 * whole) goes along.
 */
final class Square {

    static final int SIDE = 1080;

    /** No camera makes more; common practice, no source. */
    private static final long MOST_DOTS = 400_000_000;

    private static final float QUALITY = 0.9f;
    private static final int BEGIN_OF_SCAN = 0xDA;
    private static final int EXIF = 0xE1;
    private static final int ORIENTATION = 0x0112;

    private Square() {}

    /** Returns the square; empty where this Java can't read such photos. */
    static Optional<BufferedImage> of(byte[] photo) {
        try (ImageInputStream in =
                ImageIO.createImageInputStream(new ByteArrayInputStream(photo))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return Optional.empty();
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                return read(reader).map(it -> cropped(it, orientation(photo)));
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException e) {
            // Readers of pictures answer a damaged file with whatever they stumble over.
            return Optional.empty();
        }
    }

    /** Reads no more dots of a large photo than are needed, and none of one that is no photo. */
    private static Optional<BufferedImage> read(ImageReader reader) throws IOException {
        long width = reader.getWidth(0);
        long height = reader.getHeight(0);
        if (width * height > MOST_DOTS) {
            return Optional.empty();
        }
        int every = (int) Math.max(1, Math.min(width, height) / (4L * SIDE));
        ImageReadParam how = reader.getDefaultReadParam();
        how.setSourceSubsampling(every, every, 0, 0);
        return Optional.of(reader.read(0, how));
    }

    private static BufferedImage cropped(BufferedImage photo, int orientation) {
        BufferedImage square = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = square.createGraphics();
        try {
            canvas.setRenderingHint(
                    RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            AffineTransform place = new AffineTransform();
            place.translate(SIDE / 2.0, SIDE / 2.0);
            place.concatenate(upright(orientation));
            BufferedImage near = halved(photo);
            double scale = SIDE / (double) Math.min(near.getWidth(), near.getHeight());
            place.scale(scale, scale);
            place.translate(-near.getWidth() / 2.0, -near.getHeight() / 2.0);
            canvas.drawImage(near, place, null);
        } finally {
            canvas.dispose();
        }
        return square;
    }

    /** Halves a large photo step by step: one large step would drop most of its dots. */
    private static BufferedImage halved(BufferedImage photo) {
        BufferedImage now = photo;
        while (Math.min(now.getWidth(), now.getHeight()) >= 2 * SIDE) {
            BufferedImage half = new BufferedImage(
                    now.getWidth() / 2, now.getHeight() / 2, BufferedImage.TYPE_INT_RGB);
            Graphics2D canvas = half.createGraphics();
            canvas.setRenderingHint(
                    RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            canvas.drawImage(now, 0, 0, half.getWidth(), half.getHeight(), null);
            canvas.dispose();
            now = half;
        }
        return now;
    }

    /** Returns what turns dots as they were stored into the picture as it was seen. */
    private static AffineTransform upright(int orientation) {
        double turn = switch (orientation) {
            case 3, 4 -> Math.PI;
            case 6, 7 -> Math.PI / 2;
            case 5, 8 -> -Math.PI / 2;
            default -> 0;
        };
        AffineTransform upright = AffineTransform.getRotateInstance(turn);
        if (orientation == 2 || orientation == 4 || orientation == 5 || orientation == 7) {
            upright.scale(-1, 1);
        }
        return upright;
    }

    /**
     * Reads which side of a JPEG is up, 1 to 8; 1 where it doesn't say. Source: CIPA DC-008 (Exif),
     * tag 0x0112.
     */
    static int orientation(byte[] jpeg) {
        int at = 2;
        while (at + 4 <= jpeg.length && (jpeg[at] & 0xff) == 0xff) {
            int marker = jpeg[at + 1] & 0xff;
            int length = (jpeg[at + 2] & 0xff) << 8 | jpeg[at + 3] & 0xff;
            if (marker == EXIF && at + 18 < jpeg.length && jpeg[at + 4] == 'E') {
                return inTiff(jpeg, at + 10, Math.min(jpeg.length, at + 2 + length));
            }
            if (marker == BEGIN_OF_SCAN) {
                return 1;
            }
            at += 2 + length;
        }
        return 1;
    }

    private static int inTiff(byte[] file, int start, int end) {
        boolean littleEnd = file[start] == 'I';
        long offset = number(file, start + 4, 4, end, littleEnd);
        long entries = number(file, start + offset, 2, end, littleEnd);
        for (int i = 0; i < entries; i++) {
            long entry = start + offset + 2 + 12L * i;
            if (number(file, entry, 2, end, littleEnd) == ORIENTATION) {
                long said = number(file, entry + 8, 2, end, littleEnd);
                return said >= 1 && said <= 8 ? (int) said : 1;
            }
        }
        return 1;
    }

    /** What would lie beyond the end is none: such files come from everywhere. */
    private static long number(byte[] file, long from, int bytes, int end, boolean littleEnd) {
        if (from < 0 || from + bytes > end) {
            return 0;
        }
        long number = 0;
        for (int i = 0; i < bytes; i++) {
            int at = (int) from + (littleEnd ? bytes - 1 - i : i);
            number = number << 8 | file[at] & 0xff;
        }
        return number;
    }

    /** Returns the square with its number, as JPEG. */
    static byte[] numbered(BufferedImage square, int number) {
        BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = image.createGraphics();
        try {
            canvas.drawImage(square, 0, 0, null);
            number(canvas, number, 0, 0, SIDE);
        } finally {
            canvas.dispose();
        }
        return jpeg(image);
    }

    /** Writes a number into the corner of a square that was drawn there. */
    static void number(Graphics2D canvas, int number, double x, double y, double side) {
        canvas.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        double high = side / 7;
        Font font = Fonts.of(Fonts.Weight.BOLD, (float) (high * 0.72));
        String text = Integer.toString(number);
        double wide = Math.max(
                high,
                font.getStringBounds(text, canvas.getFontRenderContext()).getWidth() + high / 2);
        canvas.setColor(Color.WHITE);
        canvas.fill(new RoundRectangle2D.Double(
                x + high / 4, y + high / 4, wide, high, high / 5, high / 5));
        canvas.setColor(Color.BLACK);
        canvas.setStroke(new BasicStroke((float) (high / 30)));
        canvas.draw(new RoundRectangle2D.Double(
                x + high / 4, y + high / 4, wide, high, high / 5, high / 5));
        double width = font.getStringBounds(text, canvas.getFontRenderContext()).getWidth();
        canvas.setFont(font);
        canvas.drawString(
                text, (float) (x + high / 4 + (wide - width) / 2), (float) (y + high * 1.01));
    }

    private static byte[] jpeg(BufferedImage image) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(300_000);
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), how);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
