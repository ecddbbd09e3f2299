package org.twinbar.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.exchange.InputException;
import org.twinbar.study.Act;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

class CurvePagesTest {

    private static final JsonMapper JSON = new JsonMapper();
    private static final String TABLE = "specimen,group,width_mm,thickness_mm,curve_file\n"
            + "P1,plain,10,4,\nP2,plain,10,4,\nC1,coated,10,4,\nC2,coated,10,4,\n";

    @TempDir
    Path folder;

    private Served served;
    private StudyName study;

    @BeforeEach
    void serve() {
        served = Served.in(folder);
        study = served.workspace()
                .create(
                        Act.by("the club"),
                        new StudyFile.Head(
                                "cleats",
                                "Are coated cleats stronger?",
                                "",
                                JudgedStudy.Origin.INVENTED));
        served.workspace()
                .addTest(
                        Act.by("the club"),
                        study,
                        new StudyFile.Test(TestSheet.of("tensile"), "cleats.csv", Optional.empty()),
                        Handed.among(List.of(Upload.of("cleats.csv", TABLE.getBytes(UTF_8)))));
    }

    @AfterEach
    void close() {
        served.close();
    }

    @Test
    void laysAllCurvesOfATestOverEachOther() throws IOException {
        assertThat(served.get(served.study() + "/curves").body())
                .contains("Do the curves look alike?", "<svg", "48 curves");
        JsonNode all = JSON.readTree(
                served.get(served.study() + "/overlay?test=tensile").body());
        assertThat(all.path("curves")).hasSize(48);
        JsonNode first = all.path("curves").get(0);
        assertThat(first.path("code").asText()).isEqualTo("FP1");
        assertThat(first.path("control").asBoolean()).isTrue();
        assertThat(served.get(first.path("link").asText()).statusCode()).isEqualTo(200);
        assertThat(first.path("x")).hasSameSizeAs(first.path("y"));
        assertThat(largest(first.path("y"))).isEqualTo(largest(curve("FP1", "").path("y")));
    }

    @Test
    void givesEveryRowOfACurve() throws IOException {
        served.workspace()
                .curves()
                .handIn(Act.by("the club"), study, "tensile", List.of(pull("P1.csv", 50_000)));
        String page = Links.study(study) + "/curves/P1?test=tensile";
        JsonNode thin = JSON.readTree(served.get(page).body());
        JsonNode whole = JSON.readTree(served.get(page + "&rows=all").body());
        assertThat(thin.path("rows").asInt()).isEqualTo(50_000);
        assertThat(thin.path("x").size()).isLessThan(2000);
        assertThat(whole.path("x")).hasSize(50_000);
        assertThat(whole.path("marks")).isEqualTo(thin.path("marks"));
    }

    @Test
    void takesCurvesByTheNamesOfTheirSpecimens() {
        int handed = served.workspace()
                .curves()
                .handIn(
                        Act.by("the club"),
                        study,
                        "tensile",
                        List.of(
                                pull("p1.csv", 300),
                                pull("2026-05-04 P2 pull.csv", 300),
                                pull("pulls/C1.csv", 300)));
        assertThat(handed).isEqualTo(3);
        assertThat(withCurve()).containsExactly("P1", "P2", "C1");
        assertThat(served.get(Links.study(study) + "/curves").body())
                .contains("1 of 4 specimens have no curve yet.");
    }

    @Test
    void refusesWhatBelongsToNoSpecimenBeforeAnythingIsKept() {
        int entries = served.workspace().entries(study);
        refused("belongs to no specimen", pull("P1.csv", 300), pull("P9.csv", 300));
        refused("may belong to P1 or to P2", pull("P1 and P2.csv", 300));
        refused("both belong to P1", pull("P1.csv", 300), pull("a P1.csv", 300));
        refused("none of the columns", Upload.of("P1.csv", "a,b\n1,2\n3,4\n".getBytes(UTF_8)));
        assertThat(served.workspace().entries(study)).isEqualTo(entries);
        served.workspace()
                .curves()
                .handIn(Act.by("the club"), study, "tensile", List.of(pull("P1.csv", 300)));
        refused("P1 has the curve", pull("P1.csv", 300));
    }

    @Test
    void aFormThatIsSentTwiceIsDoneOnce() {
        Act act = new Act(UUID.randomUUID(), "the club");
        served.workspace().curves().handIn(act, study, "tensile", List.of(pull("P1.csv", 300)));
        int entries = served.workspace().entries(study);
        served.workspace().curves().handIn(act, study, "tensile", List.of(pull("P1.csv", 300)));
        assertThat(served.workspace().entries(study)).isEqualTo(entries);
    }

    @Test
    void saysOnThePageWhatWasWrong() {
        HttpResponse<String> answer = served.post(
                Links.study(study) + "/curves",
                java.util.Map.of("act", UUID.randomUUID().toString(), "test", "tensile"));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("Choose the curves first.", "name=\"curves\"");
    }

    private void refused(String sentence, Upload... files) {
        assertThatThrownBy(() -> served.workspace()
                        .curves()
                        .handIn(Act.by("the club"), study, "tensile", List.of(files)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(sentence);
    }

    private List<String> withCurve() {
        return served.workspace().judge(study, Progress.SILENT).specimens().stream()
                .filter(it -> it.curve().isPresent())
                .map(JudgedSpecimen::code)
                .toList();
    }

    private JsonNode curve(String code, String more) throws IOException {
        return JSON.readTree(served.get(served.study() + "/curves/" + code + "?test=tensile" + more)
                .body());
    }

    private static double largest(JsonNode numbers) {
        double largest = Double.NEGATIVE_INFINITY;
        for (JsonNode number : numbers) {
            largest = Math.max(largest, number.asDouble());
        }
        return largest;
    }

    /** An invented pull that bends off and breaks. */
    static Upload pull(String name, int rows) {
        StringBuilder text = new StringBuilder("time_s,force_N,displacement_mm\n");
        for (int row = 0; row < rows; row++) {
            double along = 4.0 * row / rows;
            double force = along > 3.9 ? 40 : 1200 * (1 - StrictMath.exp(-1.3 * along));
            text.append("%s,%s,%s\n".formatted(row / 100.0, force, along));
        }
        return Upload.of(name, text.toString().getBytes(UTF_8));
    }
}
