package org.twinbar.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/**
 * Prints a page as PDF/A-2b, its fonts inside; as PDF/A-3b where files that belong to it lie inside
 * too.
 */
public final class Pdf {

    public static final String FAMILY = "Liberation Sans";

    private Pdf() {}

    static void write(Sheet sheet, List<Attachment> attachments, OutputStream to)
            throws IOException {
        print(Typeset.print(with(sheet, attachments)), attachments, to);
    }

    /**
     * Prints well-formed XHTML, whose only typeface is {@value #FAMILY}; the stream stays open.
     *
     * @throws IOException where the stream can't be written
     */
    public static void print(String page, OutputStream to) throws IOException {
        print(page, List.of(), to);
    }

    private static void print(String page, List<Attachment> attachments, OutputStream to)
            throws IOException {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePdfAConformance(
                attachments.isEmpty() ? PdfAConformance.PDFA_2_B : PdfAConformance.PDFA_3_B);
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
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
                PDDocument document = renderer.createPDFKeepOpen()) {
            attach(document, attachments);
            document.save(to);
        }
    }

    private static Sheet with(Sheet sheet, List<Attachment> attachments) {
        String names = attachments.stream().map(Attachment::name).collect(Collectors.joining(", "));
        return attachments.isEmpty()
                ? sheet
                : sheet.made(sheet.made()
                        + " Inside this document lies %s: every reading, to be checked or"
                                .formatted(names)
                        + " calculated again.");
    }

    /**
     * Puts files into a document as ISO 19005-3 has it: in the list of files by name, and among the
     * files associated with the whole document.
     */
    private static void attach(PDDocument document, List<Attachment> attachments)
            throws IOException {
        if (attachments.isEmpty()) {
            return;
        }
        Map<String, PDComplexFileSpecification> byName = new TreeMap<>();
        COSArray associated = new COSArray();
        for (Attachment attachment : attachments) {
            PDEmbeddedFile file = new PDEmbeddedFile(
                    document,
                    new ByteArrayInputStream(attachment.bytes()),
                    // A zip is dense already.
                    (COSName) null);
            file.setSubtype(attachment.mediaType());
            file.setSize(attachment.bytes().length);
            PDComplexFileSpecification specification = new PDComplexFileSpecification();
            specification.setFile(attachment.name());
            specification.setFileUnicode(attachment.name());
            specification.setFileDescription(attachment.says());
            specification.setEmbeddedFile(file);
            specification.setEmbeddedFileUnicode(file);
            specification.getCOSObject().setName("AFRelationship", "Data");
            byName.put(attachment.name(), specification);
            associated.add(specification);
        }
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(byName);
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(catalog);
        names.setEmbeddedFiles(tree);
        catalog.setNames(names);
        catalog.getCOSObject().setItem(COSName.getPDFName("AF"), associated);
    }
}
