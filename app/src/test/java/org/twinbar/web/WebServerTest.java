package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.method.Methods;
import org.twinbar.study.Demo;
import org.twinbar.study.Workspace;

class WebServerTest {

    private static final Clock NOON =
            Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneId.of("Europe/Rome"));

    @TempDir
    static Path folder;

    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static Workspace workspace;
    private static WebServer server;
    private static String study;

    @BeforeAll
    static void serve() {
        workspace = Workspace.open(folder, Methods.builtIn(), NOON, "Twinbar test");
        study = Links.study(Demo.into(workspace));
        server = WebServer.start(workspace, Methods.builtIn(), 0);
    }

    @AfterAll
    static void close() {
        server.close();
        workspace.close();
    }

    @Test
    void showsTheDoorsAndTheStudies() throws Exception {
        HttpResponse<String> home = get("/");
        assertThat(home.statusCode()).isEqualTo(200);
        assertThat(home.body()).contains("Show me", "href=\"" + study + "\"", "invented data");
    }

    @Test
    void showsAStudyFromItsClaimsToItsVerdicts() throws Exception {
        assertThat(get(study).body()).contains("Makes prints at least 10 % stronger", "supported");
    }

    @Test
    void servesTheReportUnderAPolicyThatAllowsItsOwnStyleAlone() throws Exception {
        HttpResponse<String> report = get(study + "/report");
        assertThat(report.headers().firstValue("Content-Security-Policy").orElseThrow())
                .contains("style-src 'sha256-")
                .doesNotContain("unsafe");
        assertThat(report.body()).doesNotContain(" style=\"");
    }

    private static HttpResponse<String> get(String path) throws Exception {
        URI uri = server.address().resolve(path);
        return CLIENT.send(
                HttpRequest.newBuilder(uri).build(), HttpResponse.BodyHandlers.ofString());
    }
}
