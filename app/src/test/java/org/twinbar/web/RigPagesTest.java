package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rig as a browser without script uses it. */
class RigPagesTest {

    @TempDir
    Path folder;

    private Rig rig;

    @BeforeEach
    void serve() {
        rig = Rig.in(folder);
    }

    @AfterEach
    void close() {
        rig.close();
    }

    @Test
    void leadsToTheOneTestAndToTheSpecimenThatIsNext() {
        assertThat(get("/rig").body())
                .contains("Which study is at the rig?", "Are coated cleats stronger?");
        assertThat(get(Links.rig(rig.study())).headers().firstValue("Location"))
                .hasValue(rig.path());
        assertThat(get(rig.path()).body())
                .contains("What is read on P1?", "0 of 4 done, 4 to go", "number 1 of 4")
                .contains("inputmode=\"decimal\"", "caliper", "On to C1");
    }

    @Test
    void findsASpecimenByItsCodeOrItsNumber() {
        assertThat(get(rig.path() + "?specimen=c2").body()).contains("What is read on C2?");
        assertThat(get(rig.path() + "?specimen=3").body()).contains("What is read on P2?");
        HttpResponse<String> none = get(rig.path() + "?specimen=Z9");
        assertThat(none.statusCode()).isEqualTo(404);
        assertThat(none.body()).contains("has no specimen 'Z9'; its numbers go from 1 to 4", "P1");
    }

    @Test
    void keepsWhatIsTypedAndShowsTheResultAtOnce() {
        assertThat(type("P1", "width_mm", "10,00").statusCode()).isEqualTo(303);
        type("P1", "thickness_mm", "4");
        type("P1", "peak_force_N", "2 kN");
        assertThat(get(rig.path() + "?specimen=P1").body())
                .contains("value=\"10,00\"", "1 of 4 done, 3 to go", "Tensile strength")
                // By hand: 2000 N over 40 mm².
                .containsPattern("50\\.\\d*.±");
        assertThat(get(rig.path() + "?specimen=C1").body()).contains("others: 10,00");
    }

    @Test
    void refusesAndAsksBesideTheField() {
        HttpResponse<String> refused = type("P1", "width_mm", "wide");
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("role=\"alert\"", "value=\"wide\"", "is not a number");
        HttpResponse<String> doubted = type("P1", "width_mm", "998");
        assertThat(doubted.statusCode()).isEqualTo(422);
        assertThat(doubted.body()).contains("where it usually is", "Keep 998");
        assertThat(rig.text("P1", "width_mm")).isEmpty();
        assertThat(type("P1", "width_mm", "998", Map.of("confirmed", "yes")).statusCode())
                .isEqualTo(303);
        assertThat(rig.text("P1", "width_mm")).isEqualTo("998");
    }

    @Test
    void asksWhyAndThenUndoes() {
        type("P1", "width_mm", "9.89");
        Map<String, String> seen = Map.of("seen", seen("P1", "width_mm"));
        HttpResponse<String> why = type("P1", "width_mm", "9.98", seen);
        assertThat(why.statusCode()).isEqualTo(422);
        assertThat(why.body()).contains("9.98 takes the place of 9.89. Why?", "It was a slip");
        Map<String, String> because = new HashMap<>(seen);
        because.put("why", "a slip while typing");
        assertThat(type("P1", "width_mm", "9.98", because).statusCode()).isEqualTo(303);
        assertThat(rig.text("P1", "width_mm")).isEqualTo("9.98");
        post("/undo", fields("P1", "width_mm", "", Map.of("seen", seen("P1", "width_mm"))));
        assertThat(rig.text("P1", "width_mm")).isEqualTo("9.89");
    }

    @Test
    void showsBothValuesOfTwoWindows() {
        type("P1", "width_mm", "9.98");
        HttpResponse<String> second = type("P1", "width_mm", "9.89");
        assertThat(second.statusCode()).isEqualTo(409);
        assertThat(second.body())
                .contains("entered 9.98 here; you typed 9.89", "Take 9.89", "Leave 9.98");
    }

    @Test
    void writesAFormThatIsSentTwiceOnce() {
        Map<String, String> act = Map.of("act", UUID.randomUUID().toString());
        int before = entries();
        type("P1", "width_mm", "9.98", act);
        assertThat(type("P1", "width_mm", "9.98", act).statusCode()).isEqualTo(303);
        assertThat(entries()).isEqualTo(before + 1);
    }

    @Test
    void knowsAnEntryByTheActThatMadeIt() {
        String act = UUID.randomUUID().toString();
        type("P1", "width_mm", "9.98", Map.of("act", act));
        assertThat(type("P1", "width_mm", "9.99", Map.of("seen", "act:" + act, "why", "a slip"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(rig.text("P1", "width_mm")).isEqualTo("9.99");
    }

    @Test
    void givesAScriptThePartsThatChanged() {
        HttpResponse<String> part =
                Served.send(HttpRequest.newBuilder(rig.served().uri(rig.path() + "/readings"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .header("Origin", rig.served().origin())
                        .header(RigEntries.PART, "rig")
                        .POST(BodyPublishers.ofString(
                                "specimen=P1&column=width_mm&text=9.98&act=" + UUID.randomUUID())));
        assertThat(part.statusCode()).isEqualTo(200);
        assertThat(part.headers().firstValue(RigEntries.PART)).isPresent();
        assertThat(part.body())
                .contains("id=\"f-1-0\"", "id=\"result-1\"", "id=\"progress\"", "saved 12:00")
                .doesNotContain("<html");
    }

    @Test
    void leavesASpecimenOutWithItsReasonAndTakesItBack() {
        assertThat(post("/left-out", Map.of("specimen", "P1", "act", id(), "why", "it fell"))
                        .body())
                .contains("Say whether the specimen's value had been seen");
        post(
                "/left-out",
                Map.of(
                        "specimen",
                        "P1",
                        "act",
                        id(),
                        "why",
                        "it fell",
                        "sight",
                        "BEFORE_VALUE_WAS_SEEN"));
        assertThat(get(rig.path() + "?specimen=P1").body())
                .contains("before its value was seen: it fell", "Let it count again");
        post("/counts", Map.of("specimen", "P1", "act", id(), "why", "it was another one"));
        assertThat(rig.test().specimen("P1").orElseThrow().leftOut()).isEmpty();
    }

    @Test
    void showsAPhotoAndNothingElseUnderItsDigest() {
        String boundary = "----cleats";
        String body = ("--%s\r\nContent-Disposition: form-data; name=\"specimen\"\r\n\r\nP1\r\n"
                        + "--%s\r\nContent-Disposition: form-data; name=\"act\"\r\n\r\n%s\r\n"
                        + "--%s\r\nContent-Disposition: form-data; name=\"photo\";"
                        + " filename=\"break.png\"\r\n\r\n%s\r\n--%s--\r\n")
                .formatted(boundary, boundary, id(), boundary, "\u0089PNG\r\n", boundary);
        HttpResponse<String> kept = Served.send(HttpRequest.newBuilder(
                        rig.served().uri(rig.path() + "/photos"))
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .header("Origin", rig.served().origin())
                .POST(BodyPublishers.ofString(body, java.nio.charset.StandardCharsets.ISO_8859_1)));
        assertThat(kept.statusCode()).isEqualTo(303);
        String photo = Links.photo(
                rig.path(), rig.test().specimen("P1").orElseThrow().photos().get(0));
        assertThat(get(rig.path() + "?specimen=P1").body()).contains(photo);
        assertThat(get(photo).headers().firstValue("Content-Type")).hasValue("image/png");
        assertThat(get(rig.path() + "/photos/0000").statusCode()).isEqualTo(404);
        assertThat(post("/photos", Map.of("specimen", "P1", "act", id())).body())
                .contains("Choose or take a photo first.");
    }

    private HttpResponse<String> get(String path) {
        return rig.served().get(path);
    }

    private HttpResponse<String> post(String path, Map<String, String> fields) {
        return rig.served().post(rig.path() + path, fields);
    }

    private HttpResponse<String> type(String specimen, String column, String text) {
        return type(specimen, column, text, Map.of());
    }

    private HttpResponse<String> type(
            String specimen, String column, String text, Map<String, String> more) {
        return post("/readings", fields(specimen, column, text, more));
    }

    private static Map<String, String> fields(
            String specimen, String column, String text, Map<String, String> more) {
        Map<String, String> fields = new HashMap<>(Map.of(
                "specimen", specimen, "column", column, "text", text, "seen", "", "act", id()));
        fields.putAll(more);
        return fields;
    }

    private static String id() {
        return UUID.randomUUID().toString();
    }

    private String seen(String specimen, String column) {
        return rig.cell(specimen, column).entry().orElseThrow().toString();
    }

    private int entries() {
        return rig.served().workspace().entries(rig.study());
    }
}
