package org.twinbar.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.EnumSet;

/** Prints a page as PDF/A-2b, its fonts inside. */
public final class Pdf {

    public static final String FAMILY = "Liberation Sans";

    private Pdf() {}

    static void write(Sheet sheet, OutputStream to) throws IOException {
        print(Typeset.print(sheet), to);
    }

    /**
     * Prints well-formed XHTML, whose only typeface is {@value #FAMILY}; the stream stays open.
     *
     * @throws IOException where the stream can't be written
     */
    public static void print(String page, OutputStream to) throws IOException {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_2_B);
        builder.useColorProfile(ColourProfile.sRgb());
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.withProducer("Twinbar");
        for (Fonts.Weight weight : Fonts.Weight.values()) {
            byte[] file = Fonts.print(weight);
            builder.useFont(
                    () -> new ByteArrayInputStream(file),
                    FAMILY,
                    weight == Fonts.Weight.BOLD ? 700 : 400,
                    FontStyle.NORMAL,
                    true,
                    EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG));
        }
        builder.withHtmlContent(page, null);
        builder.toStream(to);
        builder.run();
    }
}
