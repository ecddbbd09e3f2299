package org.twinbar.report.paper;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** What a camera reads from squares on paper. */
public final class Scanned {

    private Scanned() {}

    /** Returns what the squares on a paper say, from its top, from left to right. */
    public static List<String> codes(byte[] pdf, int dotsPerInch) throws IOException {
        List<String> codes = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage image = renderer.renderImageWithDPI(page, dotsPerInch);
                Stream.of(decoded(image))
                        .sorted((a, b) -> Double.compare(place(a, image), place(b, image)))
                        .map(Result::getText)
                        .forEach(codes::add);
            }
        }
        return codes;
    }

    private static double place(Result result, BufferedImage image) {
        double row = Math.rint(result.getResultPoints()[1].getY() / image.getHeight() * 60);
        return row * image.getWidth() + result.getResultPoints()[1].getX();
    }

    private static Result[] decoded(BufferedImage image) {
        int[] pixels =
                image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        RGBLuminanceSource source =
                new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
        try {
            return new QRCodeMultiReader()
                    .decodeMultiple(
                            new BinaryBitmap(new HybridBinarizer(source)),
                            Map.of(DecodeHintType.TRY_HARDER, true));
        } catch (com.google.zxing.NotFoundException e) {
            throw new AssertionError("no squares were found", e);
        }
    }
}
