package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InstrumentPagesTest {

    private static final String PAIRS =
            "0 0.31\n50 50.62\n100 101.17\n150 151.55\n200 201.68\n150 151.98\n100 101.52\n"
                    + "50 50.93\n0 0,42";

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

    private static String add(String name) {
        HttpResponse<String> added = served.post(
                "/instruments",
                Map.of("name", name, "kind", "load cell", "resolution", "0.01 N", "limit", "0.1%"));
        assertThat(added.statusCode()).as(added.body()).isEqualTo(303);
        return added.headers().firstValue("Location").orElseThrow();
    }

    @Test
    void anInstrumentIsAddedCalibratedAndShown() {
        String page = add("Cell A");
        assertThat(served.get(page).body()).contains("Nothing is known of it but its display");
        HttpResponse<String> fitted = served.post(
                page + "/calibrations",
                Map.of("pairs", PAIRS, "against", "weights", "date", "2026-05-01"));
        assertThat(fitted.statusCode()).as(fitted.body()).isEqualTo(303);
        String shown = served.get(page).body();
        assertThat(shown)
                .contains("How well is Cell A known?", "It shows 0.8", "too much")
                .contains("On the way down it shows 0.30 more", "allowed: 0.1% of the range")
                .contains("calibrated on 2026-05-01 against weights");
        assertThat(shown.split("<svg", -1).length - 1).isGreaterThanOrEqualTo(3);
        assertThat(served.get("/instruments").body())
                .contains("Cell A", "calibrated on 2026-05-01");
    }

    @Test
    void aFormThatIsSentTwiceIsDoneOnce() {
        String page = add("Cell G");
        Map<String, String> form = Map.of(
                "pairs",
                PAIRS,
                "date",
                "2026-05-01",
                "act",
                "0b0a7000-0000-4000-8000-000000000001");
        served.post(page + "/calibrations", form);
        served.post(page + "/calibrations", form);
        assertThat(served.workspace().instruments().get("Cell G").calibrations())
                .hasSize(1);
    }

    @Test
    void aCalibrationThatWasWrongIsWithdrawnWithAReason() {
        String page = add("Cell H");
        served.post(page + "/calibrations", Map.of("pairs", PAIRS, "date", "2026-05-01"));
        String id = served.workspace()
                .instruments()
                .get("Cell H")
                .calibrations()
                .get(0)
                .id()
                .toString();
        HttpResponse<String> unsaid =
                served.post(page + "/withdrawals", Map.of("calibration", id, "why", " "));
        assertThat(unsaid.statusCode()).isEqualTo(400);
        assertThat(unsaid.body()).contains("Say why the calibration is withdrawn");
        served.post(page + "/withdrawals", Map.of("calibration", id, "why", "the wrong cell"));
        assertThat(served.get(page).body())
                .contains("never calibrated", "Withdrawn: the wrong cell");
    }

    @Test
    void aZeroIsNoted() {
        String page = add("Cell B");
        served.post(page + "/zeros", Map.of("zero", "0,7"));
        assertThat(served.get(page).body()).contains("2026-05-04: 0.7");
    }

    @Test
    void whatItIsCanBeSaidAnewWithAReason() {
        String page = add("Cell C");
        HttpResponse<String> changed = served.post(
                page, Map.of("name", "Cell D", "resolution", "0.5 N", "why", "a new display"));
        assertThat(changed.statusCode()).as(changed.body()).isEqualTo(303);
        assertThat(served.get(page).body()).contains("How well is Cell D known?", "0.5");
    }

    @Test
    void wrongInputIsToldAndKept() {
        String page = add("Cell E");
        HttpResponse<String> pairs = served.post(
                page + "/calibrations", Map.of("pairs", "0 0\n50\n100 101", "against", "weights"));
        assertThat(pairs.statusCode()).isEqualTo(400);
        assertThat(pairs.body())
                .contains("Line 2, ", "must be two numbers", "value=\"weights\"", "100 101");
        assertThat(served.post(page + "/calibrations", Map.of("against", "x")).body())
                .contains("or type the pairs");
        assertThat(served.post(page + "/zeros", Map.of("zero", "much")).body())
                .contains("role=\"alert\"", "much");
        HttpResponse<String> again = served.post(
                "/instruments", Map.of("name", "cell e", "kind", "load cell", "note", "mine"));
        assertThat(again.statusCode()).isEqualTo(400);
        assertThat(again.body()).contains("already", "value=\"mine\"");
        assertThat(served.get("/instruments/nothing").statusCode()).isEqualTo(404);
    }

    @Test
    void aBenchIsLookedAt() {
        add("Cell F");
        String page = served.get("/bench?method=impact&per_group=6&worth=2+%25").body();
        assertThat(page)
                .contains("Pendulum impact test", "rise angle resolution", "12 specimens per group")
                .contains("no number of specimens makes up for that");
        assertThat(served.get("/bench?method=tensile").body())
                .contains("Which load cell", "Cell F", "Tensile modulus");
        HttpResponse<String> wrong = served.get("/bench?method=tensile&per_group=two");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body()).contains("role=\"alert\"", "must be a whole number");
        assertThat(served.get("/bench?method=tensile&set=span").body())
                .contains("write it as name = value");
        assertThat(served.get("/bench?method=tensile&tool_load_cell=Cell+F").body())
                .contains("Cell F: steps of 0.01");
        assertThat(served.get("/bench").body()).contains("choose it").doesNotContain("alert");
    }

    @Test
    void saysOnTheStudyWhatATestWasReadOn() {
        String cell = add("Cell of the frame");
        served.post(
                cell + "/calibrations",
                Map.of("pairs", PAIRS, "against", "weights", "date", "2026-05-01"));
        assertThat(served.get(served.study()).body())
                .contains("/read-on/tensile\"", "Say what it was read on: Tensile test");
        String page = served.study() + "/read-on/tensile";
        assertThat(served.get(page).body())
                .contains("What was it read on?", "load cell: its figures were given")
                .contains("Cell of the frame: calibrated on 2026-05-01");
        Map<String, String> form = new HashMap<>(Map.of(
                "act", UUID.randomUUID().toString(),
                "load-cell", "Cell of the frame",
                "date", "2026-05-04",
                "why", "not noted at first"));
        HttpResponse<String> said = served.post(page, form);
        assertThat(said.statusCode()).as(said.body()).isEqualTo(303);
        assertThat(served.get(page).body())
                .contains("Cell of the frame: readings are corrected by the")
                .contains("value=\"2026-05-04\"");
        assertThat(served.get(served.study()).body())
                .contains("Cell of the frame", "the tensile test was read on 2026-05-04 on");
        form.put("act", UUID.randomUUID().toString());
        form.put("load-cell", "Cell that nobody has");
        HttpResponse<String> wrong = served.post(page, form);
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body())
                .contains("There is no instrument 'Cell that nobody has'")
                .contains("value=\"not noted at first\"");
        assertThat(served.get(served.study() + "/read-on/creep").statusCode()).isEqualTo(404);
    }
}
