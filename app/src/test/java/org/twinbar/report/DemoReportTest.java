package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.method.Methods;
import org.twinbar.study.Demo;
import org.twinbar.study.Workspace;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;

/** The report of the demo study, made from its raw readings as a person would make it. */
class DemoReportTest {

    @TempDir
    private static Path folder;

    private static JudgedStudy study;
    private static String page;

    @BeforeAll
    static void judge() throws Exception {
        Clock clock = Clock.fixed(Instant.parse("2026-05-12T10:00:00Z"), ZoneOffset.UTC);
        try (Workspace workspace =
                Workspace.open(folder, Methods.builtIn(), clock, "Twinbar 0.1.0")) {
            study = workspace.judge(Demo.into(workspace), Progress.SILENT);
        }
        page = Report.html(study);
        Files.writeString(Path.of("target", "demo.html"), page);
    }

    @Test
    void saysThatItsReadingsAreInvented() {
        assertThat(page).contains("<span class=\"invented\">invented data</span>");
    }

    @Test
    void hasAnAnswerForEveryQuestionOfEveryClaim() {
        Sheet sheet = Report.sheet(study);
        assertThat(sheet.claims()).hasSameSizeAs(study.claims());
        assertThat(sheet.answers()).hasSizeGreaterThan(3).allSatisfy(answer -> {
            assertThat(answer.verdict()).isNotBlank();
            assertThat(answer.sentence()).endsWith(".");
        });
        assertThat(sheet.answers())
                .extracting(Sheet.Answer::verdict)
                .contains("supported", "not for this bench")
                .doesNotContain("no verdict yet");
    }

    @Test
    void listsEverySpecimenAndEveryFile() {
        for (JudgedSpecimen specimen : study.specimens()) {
            assertThat(page).contains(">" + specimen.code() + "</td>");
        }
        for (KeptFile file : study.files()) {
            assertThat(page).contains(file.sha256());
        }
    }

    @Test
    void staysBelowAMegabyte() {
        assertThat(page.length()).isLessThan(1_000_000);
    }

    /** Every letter of the demo's document lies between its margins: nothing is cut off. */
    @Test
    void nothingOfTheDemoLeavesThePage() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Report.pdf(study, List.of(), bytes);
        try (PDDocument pdf = Loader.loadPDF(bytes.toByteArray())) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    PDPage page = getCurrentPage();
                    double right = page.getMediaBox().getWidth() - 18 * 72 / 25.4;
                    assertThat((double) text.getXDirAdj() + text.getWidthDirAdj())
                            .as("'%s' on page %s", text.getUnicode(), getCurrentPageNo())
                            .isLessThan(right + 1);
                }
            }.getText(pdf);
        }
    }
}
