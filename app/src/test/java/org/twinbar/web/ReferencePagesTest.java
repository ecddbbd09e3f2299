package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.study.bench.KeptReference;

class ReferencePagesTest {

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

    private static KeptReference begun(String name) {
        served.post("/instruments", Map.of("name", "Cell A", "kind", "load cell"));
        HttpResponse<String> begun = served.post(
                "/references",
                Map.of(
                        "name",
                        name,
                        "instrument",
                        "Cell A",
                        "method",
                        "tensile",
                        "property",
                        "strength_MPa",
                        "first",
                        "5"));
        assertThat(begun.statusCode()).as(begun.body()).isEqualTo(303);
        return served.workspace().references().get(name);
    }

    private static HttpResponse<String> note(KeptReference of, String value, String date) {
        return served.post(
                "/references/values",
                Map.of(
                        "reference",
                        of.id().toString(),
                        "value",
                        value,
                        "date",
                        date,
                        "act",
                        UUID.nameUUIDFromBytes((value + date).getBytes()).toString()));
    }

    @Test
    void aReferenceIsBegunChartedAndReadInWords() {
        KeptReference bars = begun("bars");
        assertThat(served.get("/references").body()).contains("0 values so far; a chart needs 4");
        for (int day = 1; day <= 5; day++) {
            note(bars, day % 2 == 0 ? "50,5" : "50." + day, "2026-04-0" + day);
        }
        note(bars, "50.1", "2026-04-01");
        assertThat(served.get("/references").body())
                .contains("The bench reads as it did.", "<svg", "Eight in a row on one side")
                .doesNotContain("href=\"#advice\">What to do</a>");
        assertThat(served.workspace().references().get("bars").values())
                .as("a form that was sent twice was done once")
                .hasSize(5);
        assertThat(note(bars, "70", "2026-05-01").statusCode()).isEqualTo(303);
        String page = served.get("/references").body();
        assertThat(page)
                .contains("Test nothing until it is found", "href=\"#advice\">What to do</a>")
                .contains("beyond the limits", "since the last value in control (2026-04-05)");
        KeptReference.Value last =
                served.workspace().references().get("bars").values().get(5);
        served.post(
                "/references/withdrawals",
                Map.of(
                        "reference",
                        bars.id().toString(),
                        "value",
                        last.id().toString(),
                        "why",
                        "wrong spool"));
        assertThat(served.get("/references").body())
                .contains("withdrawn, wrong spool", "The bench reads as it did.");
    }

    @Test
    void wrongInputIsToldAndWhatWasTypedStays() {
        KeptReference bars = begun("others");
        HttpResponse<String> wrong = note(bars, "much", "2026-04-01");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body()).contains("role=\"alert\"", "value=\"much\"");
        HttpResponse<String> property = served.post(
                "/references",
                Map.of(
                        "name",
                        "third",
                        "instrument",
                        "Cell A",
                        "method",
                        "tensile",
                        "property",
                        "shine"));
        assertThat(property.statusCode()).isEqualTo(400);
        assertThat(property.body()).contains("yields no", "shine", "value=\"third\"");
    }

    @Test
    void isReachedFromInstrumentsAndArchive() {
        assertThat(served.get("/instruments").body()).contains("href=\"/references\"");
        assertThat(served.get("/archive").body()).contains("href=\"/references\"");
    }
}
