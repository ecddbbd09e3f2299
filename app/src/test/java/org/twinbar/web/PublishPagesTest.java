package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.study.Act;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

/** What goes out of a study by its pages: what was published, and the kit. */
class PublishPagesTest {

    private static final String BARS = "specimen,group,width_mm,thickness_mm,peak_force_N\n"
            + "P1,plain,10,4,1000\nP2,plain,10,4,1010\nP3,plain,10,4,1021\n"
            + "C1,coated,10,4,1200\nC2,coated,10,4,1190\nC3,coated,10,4,1215\n";

    @TempDir
    static Path folder;

    private static Served served;

    @BeforeAll
    static void serve() {
        served = Served.in(folder);
    }

    @AfterAll
    static void close() {
        served.close();
    }

    static StudyName study(Served at, String name) {
        return at.workspace()
                .importStudy(
                        Act.by("club"), StudyFile.parse("bars.toml", """
                                study = "%s"
                                question = "Are coated bars stronger?"
                                [[test]]
                                method = "tensile"
                                specimens = "bars.csv"
                                [[claim]]
                                words = "stronger"
                                [[claim.question]]
                                method = "tensile"
                                property = "strength"
                                control = "plain"
                                expect = "higher"
                                """.formatted(name)), (Handed)
                                (file, from) ->
                                        Upload.of(file, BARS.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void whatIsPublishedStaysAndACorrectionIsDraftedWhereItIsJudgedOtherwise() {
        StudyName bars = study(served, "bars");
        String page = "/studies/" + bars.id();
        assertThat(served.get(page).body())
                .contains("keeps these verdicts as you are about to say");
        Map<String, String> form =
                Map.of("act", UUID.randomUUID().toString(), "where", "the club's page");
        assertThat(served.post(page + "/publications", form).statusCode()).isEqualTo(303);
        served.post(page + "/publications", form);
        assertThat(served.get(page).body())
                .contains("published once", "all of it still stands", "the club's page");

        served.workspace()
                .correct(Act.by("club"), bars, "tensile", "C1", "peak_force_N", "400", "misread");
        String later = served.get(page).body();
        assertThat(later)
                .contains("judged otherwise since: a correction is due", "A correction to post")
                .contains("Published otherwise", "Correction to what we published");
    }

    @Test
    void nothingIsPublishedWhereThereIsNoVerdict() {
        StudyName empty = served.workspace()
                .create(
                        Act.by("club"),
                        new StudyFile.Head(
                                "empty",
                                "Nothing yet?",
                                "",
                                org.twinbar.study.judged.JudgedStudy.Origin.MEASURED));
        HttpResponse<String> refused = served.post(
                "/studies/" + empty.id() + "/publications",
                Map.of("act", UUID.randomUUID().toString()));
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("has no verdict yet that could be published");
    }

    @Test
    void theKitIsDrawnWhileThePageTellsHowFarAndIsThenTakenAsAZip() throws IOException {
        StudyName bars = study(served, "kit");
        String page = "/studies/" + bars.id() + "/kit";
        assertThat(served.get(page).body()).contains("Draw the kit", "it needs photos");
        assertThat(served.post(page, Map.of("draw", "kit")).statusCode()).isEqualTo(303);
        HttpResponse<String> drawing = served.get(page);
        assertThat(drawing.headers().firstValue("Refresh")).hasValue("2");
        assertThat(drawing.body()).contains("<progress", "role=\"status\"");
        await().atMost(Duration.ofMinutes(2))
                .pollInterval(Duration.ofMillis(300))
                .until(() -> served.get(page).body().contains("The kit is ready."));
        HttpResponse<byte[]> zip = served.bytes(page + "?download");
        assertThat(zip.headers().firstValue("Content-Type").orElse("")).contains("zip");
        TreeSet<String> names = new TreeSet<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip.body()))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                names.add(entry.getName());
                assertThat(in.readAllBytes()).as(entry.getName()).isNotEmpty();
            }
        }
        assertThat(names)
                .contains("kit/verdict-1-16x9-light.png", "kit/description.txt")
                .contains("kit/blind/why-there-is-none.txt");

        served.workspace()
                .correct(Act.by("club"), bars, "tensile", "C1", "peak_force_N", "900", "misread");
        assertThat(served.get(page).body())
                .as("the kit of a study that has changed since")
                .contains("Draw the kit")
                .doesNotContain("is ready");
    }

    @Test
    void aStrangersPackageIsCheckedAndBroughtIn() throws Exception {
        StudyName bars = study(served, "stranger");
        byte[] zip = served.bytes("/studies/" + bars.id() + "/package.zip").body();
        try (Served elsewhere = Served.in(folder.resolve("elsewhere"))) {
            HttpResponse<String> checked = hand(elsewhere, zip);
            assertThat(checked.statusCode()).as(checked.body()).isEqualTo(200);
            assertThat(checked.body()).contains("Nothing differs", "Bring it into this workspace");
            String token =
                    checked.body().replaceAll("(?s).*name=\"package\" value=\"([^\"]+)\".*", "$1");
            assertThat(elsewhere
                            .post("/packages/bring", Map.of("package", token))
                            .statusCode())
                    .isEqualTo(303);
            assertThat(elsewhere.workspace().find("stranger")).isPresent();
            HttpResponse<String> gone =
                    elsewhere.post("/packages/bring", Map.of("package", "nothing"));
            assertThat(gone.statusCode()).isEqualTo(400);
            assertThat(gone.body()).contains("hand it in again");
        }
    }

    @Test
    void everyDifferenceIsListedAndABadPackageIsRefusedInASentence() throws Exception {
        StudyName bars = study(served, "changed");
        byte[] zip = served.bytes("/studies/" + bars.id() + "/package.zip").body();
        HttpResponse<String> differs = hand(served, rewritten(zip, "data/verdicts.csv"));
        assertThat(differs.statusCode()).as(differs.body()).isEqualTo(200);
        assertThat(differs.body())
                .contains("from what the package says.", "<th scope=\"row\">verdict</th>");
        for (byte[] bad : List.of(
                "no zip at all".getBytes(StandardCharsets.UTF_8),
                java.util.Arrays.copyOf(zip, zip.length / 2))) {
            HttpResponse<String> refused = hand(served, bad);
            assertThat(refused.statusCode()).isEqualTo(400);
            assertThat(refused.body())
                    .contains("role=\"alert\"", "package.zip")
                    .doesNotContain("twinbar-package", "Exception");
        }
    }

    /** Says "contradicted" wherever a file of the package said "supported". */
    private static byte[] rewritten(byte[] zip, String name) throws IOException {
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip));
                var to = new java.util.zip.ZipOutputStream(out)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                byte[] content = in.readAllBytes();
                if (entry.getName().endsWith(name)) {
                    content = new String(content, StandardCharsets.UTF_8)
                            .replace("supported", "contradicted")
                            .getBytes(StandardCharsets.UTF_8);
                }
                to.putNextEntry(new ZipEntry(entry.getName()));
                to.write(content);
            }
        }
        return out.toByteArray();
    }

    private static HttpResponse<String> hand(Served to, byte[] zip) {
        return to.upload("/packages/check", new Served.Part("package", "theirs.zip", zip));
    }
}
