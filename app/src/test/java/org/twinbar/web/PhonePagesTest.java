package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.DataInputStream;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The local network: closed until somebody opens it, and then open to the rig's pages alone. */
class PhonePagesTest {

    private static final Pattern CODE = Pattern.compile("sign-code\">([A-Z0-9]{4}-[A-Z0-9]{4})<");
    private static final Pattern ADDRESS = Pattern.compile("reach the rig at (http://[0-9.:]+/)");

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
    void opensNothingUntilThePersonDoes() {
        assertThat(desk()).contains("No other machine can reach this one now.", "Let phones in");
        assertThat(rig.served().post("/phones/code", Map.of()).body())
                .contains("Turn the local network on first.");
        assertThat(rig.served()
                        .post("/phones/open", Map.of("address", "8.8.8.8"))
                        .statusCode())
                .isEqualTo(400);
    }

    @Test
    void showsACodeAsAPictureAndInLetters() {
        URI phone = open();
        assertThat(phone.getPort()).isNotEqualTo(rig.served().server().address().getPort());
        assertThat(desk())
                .containsPattern(CODE)
                .contains(
                        "Good for one phone and 5 more minutes.", "<path fill=\"#000\" d=\"M4 4h7");
    }

    @Test
    void letsAPhoneInToTheRigAndNothingElse() {
        URI phone = open();
        assertThat(get(phone, "/rig", "").headers().firstValue("Location")).hasValue("/join");
        assertThat(get(phone, rig.path(), "").statusCode()).isEqualTo(403);
        assertThat(get(phone, "/join?code=ABCD-EFGH", "").body())
                .contains("What is this phone called?", "value=\"ABCD-EFGH\"");
        HttpResponse<String> wrong = post(phone, "/join", "", "name=Ida&code=ABCD-EFGH");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body()).contains("not the code that the desk shows now", "value=\"Ida\"");
        String token = join(phone, "Ida");
        assertThat(get(phone, "/rig", token).body()).contains("Are coated cleats stronger?");
        assertThat(get(phone, rig.path(), token).body()).contains("What is read on P1?");
        for (String closed : List.of(
                Links.study(rig.study()),
                "/phones",
                "/archive",
                "/studies/x/report",
                "/trials/x")) {
            assertThat(get(phone, closed, token).statusCode()).as(closed).isEqualTo(404);
        }
        assertThat(post(phone, "/demo", token, "").statusCode()).isEqualTo(404);
        assertThat(post(phone, "/phones/close", token, "").statusCode()).isEqualTo(404);
    }

    @Test
    void hasTheManualOfTheRigAndNoOtherPageOfIt() {
        URI phone = open();
        assertThat(get(phone, "/manual/rig", "").statusCode()).isEqualTo(403);
        String token = join(phone, "Ida");
        assertThat(get(phone, rig.path(), token).body()).contains("href=\"/manual/rig\"");
        assertThat(get(phone, "/manual/rig", token).body())
                .contains("Type what the instrument shows", "href=\"/rig\"")
                .doesNotContain("href=\"/archive\"");
        for (String page : List.of("pictures-and-film", "safety")) {
            assertThat(get(phone, "/manual/" + page, token).statusCode()).isEqualTo(200);
        }
        for (String closed : List.of("/manual", "/manual/plan", "/manual/methods/tensile")) {
            assertThat(get(phone, closed, token).statusCode()).as(closed).isEqualTo(404);
        }
    }

    @Test
    void entersWhatIsTypedUnderThePhonesName() {
        URI phone = open();
        String token = join(phone, "Ida's phone");
        assertThat(type(phone, token, "9.98").statusCode()).isEqualTo(303);
        assertThat(rig.cell("P1", "width_mm").who()).hasValue("Ida's phone");
    }

    @Test
    void shutsAPhoneOutAtOnce() {
        URI phone = open();
        String token = join(phone, "Ida");
        Matcher id = find(Pattern.compile("name=\"phone\" value=\"([0-9a-f-]+)\""), desk());
        assertThat(rig.served()
                        .post("/phones/shut-out", Map.of("phone", id.group(1)))
                        .statusCode())
                .isEqualTo(303);
        HttpResponse<String> refused = type(phone, token, "9.98");
        assertThat(refused.statusCode()).isEqualTo(403);
        assertThat(refused.body()).contains("was shut out; what waits on it is kept");
        assertThat(rig.text("P1", "width_mm")).isEmpty();
    }

    @Test
    void answersNobodyOnceItIsTurnedOff() {
        URI phone = open();
        assertThat(rig.served().post("/phones/close", Map.of()).statusCode()).isEqualTo(303);
        assertThatThrownBy(() -> get(phone, "/join", "")).hasCauseInstanceOf(IOException.class);
        assertThat(desk()).contains("No other machine can reach this one now.");
    }

    @Test
    void keepsOutOtherNamesAndOtherPages() throws IOException {
        URI phone = open();
        String token = join(phone, "Ida");
        try (Socket socket = new Socket(phone.getHost(), phone.getPort());
                DataInputStream in = new DataInputStream(socket.getInputStream())) {
            String request =
                    "GET /join HTTP/1.1\r\nHost: club.example:%s\r\nConnection: close\r\n\r\n"
                            .formatted(phone.getPort());
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8)).contains(" 403 ");
        }
        HttpResponse<String> elsewhere =
                Served.send(HttpRequest.newBuilder(phone.resolve(rig.path() + "/readings"))
                        .header("Cookie", "twinbar-phone=" + token)
                        .header("Origin", "http://club.example")
                        .POST(BodyPublishers.noBody()));
        assertThat(elsewhere.statusCode()).isEqualTo(403);
    }

    private String desk() {
        return rig.served().get("/phones").body();
    }

    private URI open() {
        assertThat(rig.served()
                        .post("/phones/open", Map.of("address", "127.0.0.1"))
                        .statusCode())
                .isEqualTo(303);
        return URI.create(find(ADDRESS, desk()).group(1));
    }

    private String join(URI phone, String name) {
        HttpResponse<String> in = post(
                phone,
                "/join",
                "",
                "name=%s&code=%s"
                        .formatted(name.replace(' ', '+'), find(CODE, desk()).group(1)));
        assertThat(in.statusCode()).isEqualTo(303);
        String cookie = in.headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(cookie).contains("HttpOnly", "SameSite=Strict");
        return find(Pattern.compile("twinbar-phone=([^;]+)"), cookie).group(1);
    }

    private HttpResponse<String> type(URI phone, String token, String text) {
        return post(
                phone,
                rig.path() + "/readings",
                token,
                "specimen=P1&column=width_mm&text=%s&act=%s".formatted(text, UUID.randomUUID()));
    }

    private static Matcher find(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        assertThat(matcher.find()).as(pattern + " in " + text).isTrue();
        return matcher;
    }

    private static HttpResponse<String> get(URI phone, String path, String token) {
        return Served.send(HttpRequest.newBuilder(phone.resolve(path))
                .header("Cookie", "twinbar-phone=" + token));
    }

    private static HttpResponse<String> post(URI phone, String path, String token, String form) {
        return Served.send(HttpRequest.newBuilder(phone.resolve(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Cookie", "twinbar-phone=" + token)
                .header("Origin", "http://" + phone.getAuthority())
                .POST(BodyPublishers.ofString(form)));
    }
}
