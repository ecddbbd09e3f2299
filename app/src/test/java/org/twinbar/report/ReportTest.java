package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.method.Property;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;

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
        Report.pdf(STUDY, List.of(), out);
        Files.write(Path.of("target", "study.pdf"), out.toByteArray());
        assertThat(out.size()).isGreaterThan(20_000);
    }

    @Test
    void showsYesAndNoAndTimesAsPointsOfEachSpecimen() throws Exception {
        JudgedStudy cups = Studies.watertight();
        String page = Report.html(cups);
        Files.writeString(Path.of("target", "cups.html"), page);
        for (JudgedSpecimen cup : cups.specimens()) {
            assertThat(page).contains("<title>" + cup.code() + ": ");
        }
        assertThat(page).contains("<title>C5: not known");
        assertThat(page).contains("<title>P1: no").contains("<title>P3: yes");
        try (OutputStream out = Files.newOutputStream(Path.of("target", "cups.pdf"))) {
            Report.pdf(cups, List.of(), out);
        }
    }

    @Test
    void drawsTimesAsStepsWithATickWhereWatchingEnded() {
        JudgedStudy cups = Studies.watertight();
        Answer.Compared answer =
                (Answer.Compared) cups.claims().get(0).answers().get(0);
        Property time =
                cups.methods().get(0).description().property("time_to_leak").orElseThrow();
        Compared compared = new Compared(
                "time to the leak",
                time,
                cups.specimens(),
                answer.comparison(),
                Compared.Curves.SHOWN_BEFORE);
        String svg = new GroupPictures(compared).values().orElseThrow().svg();
        assertThat(svg).contains("<title>P1: between 1 and 2<").contains("<title>C5: not by 20<");
    }

    @Test
    void saysTheSameAsBefore() {
        Snapshot.matches("report.txt", Snapshot.words(Report.html(Studies.pulled(4, 400))));
    }

    /** Issue 7 asks for 200 specimens with curves in under 5 s and 300 MB. */
    @Test
    void makesPageAndPdfOfTwoHundredCurvesInSeconds() throws Exception {
        JudgedStudy large = Studies.pulled(100, 2_000);
        double before = cpuSeconds();
        String page = Report.html(large);
        double afterPage = cpuSeconds();
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Report.pdf(large, List.of(), pdf);
        double afterPdf = cpuSeconds();
        assertThat(afterPage - before).as("seconds for the page").isLessThan(5);
        assertThat(afterPdf - afterPage).as("seconds for the PDF").isLessThan(8);
        assertThat(page.length()).isLessThan(2_000_000);
    }

    /** Time on a processor, so that other work on the machine does not count. */
    private static double cpuSeconds() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
    }
}
