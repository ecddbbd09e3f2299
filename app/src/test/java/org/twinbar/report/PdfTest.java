package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

class PdfTest {

    private static final byte[] ZIP = {80, 75, 5, 6, 0, 1, 2, 3, 4};

    private static byte[] pdf;

    @BeforeAll
    static void print() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write(Sheets.sample(), List.of(Attachment.dataPackage("package.zip", ZIP)), out);
        pdf = out.toByteArray();
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target", "report.pdf"), pdf);
    }

    @Test
    void isPdfAForKeepingAsTheValidatorSays() throws Exception {
        requireValid(pdf, PDFAFlavour.PDFA_3_B);
    }

    @Test
    void isValidWithoutAttachmentToo() throws Exception {
        ByteArrayOutputStream plain = new ByteArrayOutputStream();
        Pdf.write(Sheets.sample(), List.of(), plain);
        requireValid(plain.toByteArray(), PDFAFlavour.PDFA_2_B);
    }

    private static void requireValid(byte[] document, PDFAFlavour flavour) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser = Foundries.defaultInstance()
                        .createParser(new ByteArrayInputStream(document), flavour);
                PDFAValidator validator =
                        Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            assertThat(result.getTestAssertions())
                    .filteredOn(a -> !a.getStatus().toString().equals("passed"))
                    .isEmpty();
            assertThat(result.isCompliant()).isTrue();
        }
    }

    @Test
    void carriesThePackageInside() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            var catalog = document.getDocumentCatalog();
            var file = catalog.getNames().getEmbeddedFiles().getNames().get("package.zip");
            assertThat(file.getEmbeddedFile().toByteArray()).isEqualTo(ZIP);
            assertThat(file.getEmbeddedFile().getSubtype()).isEqualTo("application/zip");
            assertThat(file.getCOSObject().getNameAsString("AFRelationship")).isEqualTo("Data");
            assertThat(catalog.getCOSObject().getCOSArray(COSName.getPDFName("AF")))
                    .hasSize(1);
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(text).contains("Inside this document lies package.zip");
        }
    }

    @Test
    void numbersItsPagesAndSaysInventedOnEachAfterTheFirst() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            int pages = document.getNumberOfPages();
            assertThat(pages).isGreaterThan(3);
            PDFTextStripper text = new PDFTextStripper();
            for (int page = 1; page <= pages; page++) {
                text.setStartPage(page);
                text.setEndPage(page);
                assertThat(text.getText(document))
                        .contains(page + " of " + pages)
                        .contains("invented data");
            }
        }
    }

    @Test
    void spellsWordsLetterByLetterWithoutLigatures() throws IOException {
        for (Fonts.Weight weight : Fonts.Weight.values()) {
            try (var whole = new TTFParser().parse(new RandomAccessReadBuffer(original(weight)));
                    var ours = new TTFParser()
                            .parse(new RandomAccessReadBuffer(Fonts.print(weight)))) {
                assertThat(whole.getGsub()).isNotNull();
                assertThat(ours.getGsub()).isNull();
                assertThat(ours.getNumberOfGlyphs()).isEqualTo(whole.getNumberOfGlyphs());
                assertThat(ours.getAdvanceWidth(ours.nameToGID("f")))
                        .isEqualTo(whole.getAdvanceWidth(whole.nameToGID("f")));
            }
        }
    }

    private static byte[] original(Fonts.Weight weight) throws IOException {
        String name = weight == Fonts.Weight.BOLD ? "Bold" : "Regular";
        try (var file = Fonts.class.getResourceAsStream(
                "/liberation/LiberationSans-%s.ttf".formatted(name))) {
            return file.readAllBytes();
        }
    }

    @Test
    void carriesTheWordsOfThePageAsText() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(text).contains("Stronger, pulled flat").contains("better, size open");
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("Does the clear coat do what its leaflet says?");
        }
    }
}
