package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Methods;

class WebServerTest {

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
    void showsTheDoorsAndTheStudies() {
        assertThat(served.get("/").body())
                .contains("I have readings", "I have a claim", "Show me")
                .contains("href=\"" + served.study() + "\"", "invented data");
        assertThat(served.get(served.study() + "/state").body())
                .startsWith("88 specimens, 6 questions: ");
    }

    @Test
    void showsAStudyFromItsClaimsToItsVerdicts() {
        assertThat(served.get(served.study()).body())
                .contains("Makes prints at least 10 % stronger", "supported", "invented data")
                .contains("What was left out", "1 specimen");
    }

    @Test
    void showsASpecimenWithItsFilesAndItsNeighbours() {
        String page = served.get(served.study() + "/specimens/FC1?test=tensile").body();
        assertThat(page)
                .contains("What was read on FC1?", "print run R1", "thickness_before_1_mm")
                .contains("curves/FC1.csv", "SHA-256")
                .contains("FP1 before it", "FP2 after it")
                .contains("class=\"figure\"");
        assertThat(served.get(served.study() + "/specimens/FC4").body())
                .contains("Left out by the club");
    }

    @Test
    void givesACurveFromLeftToRightWithItsMarks() throws IOException {
        JsonNode curve = new JsonMapper()
                .readTree(
                        served.get(served.study() + "/curves/FP1?test=tensile").body());
        assertThat(curve.get("control").asBoolean()).isTrue();
        assertThat(curve.get("up").get("unit").asText()).isEqualTo("N");
        JsonNode x = curve.get("x");
        assertThat(x.size()).isEqualTo(curve.get("y").size()).isGreaterThan(100);
        for (int i = 1; i < x.size(); i++) {
            assertThat(x.get(i).asDouble()).isGreaterThanOrEqualTo(x.get(i - 1).asDouble());
        }
        assertThat(curve.get("marks")).isNotEmpty();
        assertThat(curve.get("marks").get(0).get("number").asInt()).isEqualTo(1);
    }

    @Test
    void servesTheReportUnderAPolicyThatAllowsItsOwnStyleAlone() {
        HttpResponse<String> report = served.get(served.study() + "/report");
        assertThat(report.headers().firstValue("Content-Security-Policy").orElseThrow())
                .contains("style-src 'sha256-")
                .doesNotContain("unsafe");
        assertThat(report.body()).doesNotContain(" style=\"");
        assertThat(served.get(served.study() + "/report.pdf").body()).startsWith("%PDF-");
        HttpResponse<String> zip = served.get(served.study() + "/package.zip");
        assertThat(zip.body()).startsWith("PK");
        assertThat(zip.headers().firstValue("Content-Type")).hasValue("application/zip");
    }

    @Test
    void saysThatAPortIsTaken() {
        int taken = served.server().address().getPort();
        assertThatThrownBy(() -> WebServer.start(served.workspace(), Methods.builtIn(), taken))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("port " + taken + " is taken");
    }

    @Test
    void movesAMarkAndShowsWhatWasTypedWhereItIsRefused() {
        String page = served.study() + "/specimens/FP1?test=tensile";
        assertThat(served.get(page).body()).contains("Marks on it", "Move it", "Put it there");
        java.util.Map<String, String> form = new java.util.HashMap<>(java.util.Map.of(
                "act", java.util.UUID.randomUUID().toString(),
                "test", "tensile",
                "mark", "peak",
                "at", "900 mm",
                "why", "a spike",
                "do", "put"));
        java.net.http.HttpResponse<String> refused =
                served.post(served.study() + "/marks/FP1", form);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("lies off the curve", "value=\"900 mm\"", "a spike");
        form.put("at", "0,5 mm");
        assertThat(served.post(served.study() + "/marks/FP1", form).statusCode())
                .isEqualTo(303);
        assertThat(served.get(page).body()).contains("put there by hand", "Let the method find it");
        form.put("do", "find");
        form.put("act", java.util.UUID.randomUUID().toString());
        assertThat(served.post(served.study() + "/marks/FP1", form).statusCode())
                .isEqualTo(303);
        assertThat(served.get(page).body()).doesNotContain("put there by hand");
    }
}
