package org.twinbar.report.paper;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/** A text as a QR code, drawn as SVG; ISO/IEC 18004, a quarter of the signs may be spoilt. */
public final class Squares {

    /** The blank margin that readers need, in squares. */
    private static final int MARGIN = 4;

    private Squares() {}

    /**
     * A code that can be drawn at any size.
     *
     * @param size squares along a side, the blank margin included
     * @param path of the dark squares, as SVG writes it, in a box of that size
     */
    public record Drawn(int size, String path) {}

    /** Returns the picture, its side so long (mm) with the margin. */
    static String svg(String text, double side) {
        Drawn drawn = drawn(text);
        return """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %s %s" style="width:%smm;height:%smm"><title>%s</title><path fill="#000000" d="%s"/></svg>""".formatted(
                drawn.size(), drawn.size(), side, side, Setting.escaped(text), drawn.path());
    }

    /** @throws org.twinbar.exchange.InputException where the text is too long */
    public static Drawn drawn(String text) {
        ByteMatrix squares = squares(text);
        int size = squares.getWidth() + 2 * MARGIN;
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < squares.getHeight(); y++) {
            for (int x = 0; x < squares.getWidth(); x++) {
                int end = x;
                while (end < squares.getWidth() && squares.get(end, y) == 1) {
                    end++;
                }
                if (end > x) {
                    path.append('M').append(x + MARGIN).append(' ').append(y + MARGIN);
                    path.append('h')
                            .append(end - x)
                            .append("v1h")
                            .append(x - end)
                            .append('z');
                    x = end;
                }
            }
        }
        return new Drawn(size, path.toString());
    }

    private static ByteMatrix squares(String text) {
        try {
            return Encoder.encode(text, ErrorCorrectionLevel.Q).getMatrix();
        } catch (WriterException e) {
            throw new org.twinbar.exchange.InputException(
                    "the code '%s' is too long for a QR code".formatted(text));
        }
    }
}
