package org.twinbar.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.study.judged.StudyName;

/** The three doors, as a browser without script goes through them. */
class DoorsTest {

    private static final Map<String, String> FORCE = Map.of(
            "subject", "results\tpeak_force",
            "control", "group\tplain",
            "by", "orientation");
    private static final Map<String, String> STRENGTH = Map.of(
            "subject", "tensile\tstrength",
            "control", "group\tplain",
            "expect", "higher",
            "worth", "5 %",
            "by", "orientation");

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

    @Test
    void offersWhatATableCanBeAsked() {
        String page = served.get(served.trial()).body();
        assertThat(page)
                .contains("Tensile test, calculated from the readings", "peak force in N")
                .contains("bars.csv: read as specimen")
                .containsPattern("value=\"group\tplain\" selected")
                .containsPattern("value=\"tensile\tstrength\" selected");
    }

    @Test
    void answersInASentenceAndAPictureAndKeepsNothing() throws IOException {
        long before = files();
        HttpResponse<String> answer = served.post(served.trial(), STRENGTH);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body())
                .contains("Tensile strength, flat", "Tensile strength, upright")
                .contains("higher in coated than in plain specimens", "class=\"figure\"")
                .contains("Why, and what would settle it", "Keep it as a study");
        assertThat(files()).isEqualTo(before);
        assertThat(served.workspace().find("bars")).isEmpty();
    }

    @Test
    void keepsATrialAsAStudy() {
        String trial = served.trial();
        Map<String, String> form = new HashMap<>(STRENGTH);
        form.put("name", "kept bars");
        HttpResponse<String> kept = served.post(trial + "/keep", form);
        assertThat(kept.statusCode()).isEqualTo(303);
        StudyName study = served.workspace().study("kept bars");
        assertThat(kept.headers().firstValue("Location")).hasValue(Links.study(study));
        assertThat(served.get(Links.study(study)).body())
                .contains("Is the tensile strength higher than that of the plain ones?")
                .contains("12 specimens");
        assertThat(served.get(trial).statusCode()).as("its files are gone").isEqualTo(404);
    }

    @Test
    void comparesResultsThatSomebodyElseCalculated() {
        HttpResponse<String> answer = served.post(served.trial(), FORCE);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains("higher in coated than in plain", "Keep it as a study");
    }

    @Test
    void keepsResultsThatSomebodyElseCalculated() {
        Map<String, String> form = new HashMap<>(FORCE);
        form.put("name", "kept forces");
        assertThat(served.post(served.trial() + "/keep", form).statusCode()).isEqualTo(303);
        StudyName study = served.workspace().study("kept forces");
        assertThat(served.get(Links.study(study)).body())
                .contains(
                        "peak force, flat", "peak force, upright", "Results calculated elsewhere");
        assertThat(served.get(Links.study(study) + "/specimens/C4").body())
                .contains("peak_force_N", "1010");
        assertThat(served.get(Links.study(study) + "/report").body())
                .contains("how they were had from readings is not known here");
    }

    @Test
    void takesASpreadsheetAndItsCurves() throws IOException {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(written, "Test", "1.0")) {
            Worksheet sheet = workbook.newWorksheet("May");
            String[] headers = {"specimen", "group", "area_mm2", "curve_file"};
            for (int column = 0; column < headers.length; column++) {
                sheet.value(0, column, headers[column]);
            }
            for (int row = 1; row <= 4; row++) {
                sheet.value(row, 0, "S" + row);
                sheet.value(row, 1, row < 3 ? "plain" : "coated");
                sheet.value(row, 2, 40);
                sheet.value(row, 3, "S" + row + ".csv");
            }
        }
        List<Served.Part> parts = new ArrayList<>();
        parts.add(new Served.Part("table", "bars.xlsx", written.toByteArray()));
        for (int curve = 1; curve <= 4; curve++) {
            StringBuilder rows = new StringBuilder("time_s,force_N\n");
            for (int row = 0; row <= 20; row++) {
                rows.append(row).append(',').append(row * (100 + 10 * curve)).append('\n');
            }
            rows.append("21,0\n22,0\n");
            parts.add(new Served.Part(
                    "curves", "folder/S" + curve + ".csv", rows.toString().getBytes(UTF_8)));
        }
        String trial = served.upload(parts.toArray(Served.Part[]::new))
                .headers()
                .firstValue("Location")
                .orElseThrow();
        assertThat(served.get(trial).body()).contains("With 4 curves");
        Map<String, String> form = Map.of(
                "subject", "tensile\tstrength",
                "control", "group\tplain",
                "expect", "higher",
                "name", "from a spreadsheet");
        assertThat(served.post(trial + "/keep", form).statusCode()).isEqualTo(303);
        StudyName study = served.workspace().study("from a spreadsheet");
        assertThat(served.get(Links.study(study) + "/curves/S4").body()).contains("2800");
    }

    @Test
    void refusesAFileThatIsTooLarge() throws IOException {
        long before = files();
        HttpResponse<String> answer = served.upload(new Served.Part(
                "table", "huge.csv", new byte[(Received.LARGEST_FILE_MB << 20) + 1]));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("a file may have 64 MB");
        assertThat(files()).isEqualTo(before);
    }

    @Test
    void throwsReadingsAway() throws IOException {
        String trial = served.trial();
        assertThat(served.post(trial + "/discard", Map.of()).statusCode()).isEqualTo(303);
        assertThat(served.get(trial).body()).contains("no longer here; hand them in again");
    }

    @Test
    void refusesAFileThatIsNoTableBesideTheForm() {
        HttpResponse<String> answer = served.upload("photo.csv", "\0\1\2\0\0\3");
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("photo.csv: is not a text file", "Read the files");
        assertThat(served.upload("empty.csv", "").body()).contains("is empty");
        assertThat(served.upload("one.csv", "specimen,width_mm\nA,3\n").body())
                .contains("no column that tells groups apart");
    }

    @Test
    void keepsWhatWasTypedWhereItIsRefused() {
        Map<String, String> form = new HashMap<>(STRENGTH);
        form.put("worth", "5 parsecs");
        HttpResponse<String> answer = served.post(served.trial(), form);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("role=\"alert\"", "value=\"5 parsecs\"");
    }

    @Test
    void beginsAStudyWithAClaim() {
        HttpResponse<String> begun = served.post(
                "/claims", Map.of("words", "Stays dry for a day", "said_by", "the tin"));
        assertThat(begun.statusCode()).isEqualTo(303);
        String page =
                served.get(begun.headers().firstValue("Location").orElseThrow()).body();
        assertThat(page).contains("Is it so: Stays dry for a day?", "no verdict yet");
        HttpResponse<String> again = served.post("/claims", Map.of("words", "Stays dry for a day"));
        assertThat(again.statusCode()).isEqualTo(400);
        assertThat(again.body()).contains("value=\"Stays dry for a day\"", "already");
    }

    @Test
    void opensTheDemoOnceHoweverOftenItIsAsked() {
        int studies = served.workspace().studies().size();
        for (String asked : List.of("first", "again")) {
            HttpResponse<String> demo = served.post("/demo", Map.of());
            assertThat(demo.headers().firstValue("Location")).as(asked).hasValue(served.study());
        }
        assertThat(served.workspace().studies()).hasSize(studies);
    }

    private static long files() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> file.startsWith(folder.resolve("files")))
                    .count();
        }
    }
}
