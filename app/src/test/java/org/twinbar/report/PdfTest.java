package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
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

    private static byte[] pdf;

    @BeforeAll
    static void print() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write(Sheets.sample(), out);
        pdf = out.toByteArray();
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target", "report.pdf"), pdf);
    }

    @Test
    void isPdfAForKeepingAsTheValidatorSays() throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        PDFAFlavour flavour = PDFAFlavour.PDFA_2_B;
        try (PDFAParser parser = Foundries.defaultInstance()
                        .createParser(new ByteArrayInputStream(pdf), flavour);
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
    void carriesTheWordsOfThePageAsText() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(text).contains("Stronger, pulled flat").contains("better, size open");
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("Does the clear coat do what its leaflet says?");
        }
    }
}
