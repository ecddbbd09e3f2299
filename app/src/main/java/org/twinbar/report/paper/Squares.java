package org.twinbar.report.paper;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/** A text as a QR code, drawn as SVG; ISO/IEC 18004, a quarter of the signs may be spoilt. */
final class Squares {

    /** The blank margin that readers need, in squares. */
    private static final int MARGIN = 4;

    private Squares() {}

    /** Returns the picture, its side so long (mm) with the margin. */
    static String svg(String text, double side) {
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
        return """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %s %s" style="width:%smm;height:%smm"><title>%s</title><path fill="#000000" d="%s"/></svg>""".formatted(size, size, side, side, Setting.escaped(text), path);
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
