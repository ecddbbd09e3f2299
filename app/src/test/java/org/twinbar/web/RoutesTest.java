package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.DataInputStream;
import java.io.IOException;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.study.Act;
import org.twinbar.study.Filled;
import org.twinbar.study.KeptRecipe;
import org.twinbar.study.RecipeKind;
import org.twinbar.study.RecipeSheet;
import org.twinbar.study.Typing;
import org.twinbar.study.bench.InstrumentSheet;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Photo;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

/** Walks every route, as it should be asked and as it should not. */
class RoutesTest {

    @TempDir
    static Path folder;

    static Served served;
    private static KeptInstrument instrument;
    private static Photo photo;
    private static KeptRecipe recipe;
    private static StudyName planned;

    @BeforeAll
    static void serve() {
        served = Served.in(folder);
        instrument = served.workspace()
                .instruments()
                .add(
                        Act.by("test"),
                        new InstrumentSheet("Cell A", "load cell", "", "", "", "", ""));
        planned = served.workspace()
                .importStudy(
                        Act.by("the club"),
                        StudyFile.parse("plan.toml", MakingPagesTest.PLANNED),
                        Handed.nothing());
        byte[] jpeg = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};
        Typing typing = served.workspace().typing();
        typing.photo(
                Act.by("the club"),
                served.demo(),
                "tensile",
                "FP1",
                Upload.of("break.jpg", jpeg),
                Optional.empty());
        served.workspace()
                .register()
                .mixed(Act.by("test"), served.demo(), MixPagesTest.mix(1), Optional.empty());
        recipe = served.workspace()
                .recipes()
                .add(
                        Act.by("test"),
                        new RecipeSheet(
                                RecipeKind.SANDING, "fine", new Filled(Map.of("grits", "220"))));
        served.workspace()
                .register()
                .photo(
                        Act.by("the club"),
                        planned,
                        code(),
                        Upload.of("print.jpg", jpeg),
                        Optional.empty(),
                        "");
        photo = typing.test(served.demo(), "tensile")
                .specimen("FP1")
                .orElseThrow()
                .photos()
                .get(0);
    }

    @AfterAll
    static void close() {
        served.close();
    }

    @Test
    void everyPageIsThere() {
        String trial = served.trial();
        assertThat(reading()).isNotEmpty().allSatisfy(path -> {
            String filled = filled(path, trial);
            HttpResponse<String> answer = served.get(filled);
            assertThat(answer.statusCode()).as(filled).isEqualTo(200);
            assertThat(answer.body()).isNotEmpty();
            assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
                    .contains("default-src 'none'", "frame-ancestors 'none'")
                    .doesNotContain("unsafe");
            assertThat(answer.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
        });
    }

    @Test
    void noPageHoldsStyleOrScriptThatThePolicyForbids() {
        String trial = served.trial();
        for (String path : List.of(
                "/",
                served.study(),
                served.study() + "/specimens",
                served.study() + "/specimens/FP1",
                served.study() + "/rig/tensile",
                "/rig",
                Links.plan(planned),
                Links.plan(planned) + "/form",
                Links.register(planned),
                Links.registered(planned, code()),
                trial)) {
            assertThat(served.get(path).body())
                    .as(path)
                    .doesNotContainPattern("<[^>]* style=|<style|<script>|<[^>]* on[a-z]+=");
        }
    }

    @Test
    void whatIsNotThereIsToldInASentence() {
        List<String> unknown =
                reading().stream().filter(path -> path.matches(".*[{<].*")).toList();
        assertThat(unknown).isNotEmpty().allSatisfy(path -> {
            HttpResponse<String> answer = served.get(path.replaceAll("[{<]\\w+[}>]", "nothing"));
            assertThat(answer.statusCode()).as(path).isEqualTo(404);
            assertThat(answer.body())
                    .contains("role=\"alert\"")
                    .doesNotContain("Exception", "\tat ");
        });
        assertThat(served.get("/nowhere").statusCode()).isEqualTo(404);
        assertThat(served.get(served.study() + "/specimens/FP99").statusCode()).isEqualTo(404);
        assertThat(served.get(served.study() + "/curves/WP1").body()).contains("No curve of 'WP1'");
    }

    @Test
    void nothingIsDoneForAPageFromElsewhere() {
        int studies = served.workspace().studies().size();
        assertThat(writing()).isNotEmpty().allSatisfy(path -> {
            for (String origin : List.of("http://example.org", "null", "https://127.0.0.1")) {
                HttpResponse<String> answer = Served.send(HttpRequest.newBuilder(
                                served.uri(path.replaceAll("[{<]\\w+[}>]", "nothing")))
                        .header("Origin", origin)
                        .POST(BodyPublishers.noBody()));
                assertThat(answer.statusCode()).as(path + " from " + origin).isEqualTo(403);
            }
            HttpResponse<String> unsaid = Served.send(
                    HttpRequest.newBuilder(served.uri(path.replaceAll("[{<]\\w+[}>]", "nothing")))
                            .POST(BodyPublishers.noBody()));
            assertThat(unsaid.statusCode()).as(path + " from nowhere").isEqualTo(403);
        });
        assertThat(served.workspace().studies()).hasSize(studies);
    }

    @Test
    void wrongInputIsRefusedInASentenceOnEveryRoute() {
        String trial = served.trial();
        int studies = served.workspace().studies().size();
        List<String> refusing = writing().stream()
                .filter(path -> !path.equals("/demo") && !path.endsWith("/discard"))
                .toList();
        assertThat(refusing).isNotEmpty().allSatisfy(path -> {
            HttpResponse<String> answer =
                    served.post(filled(path, trial), Map.of("subject", "nothing", "words", ""));
            assertThat(answer.statusCode()).as(path).isEqualTo(400);
            assertThat(answer.body())
                    .contains("role=\"alert\"")
                    .doesNotContain("Exception", "\tat ");
        });
        assertThat(served.workspace().studies()).hasSize(studies);
    }

    @Test
    void answersToTheNamesOfThisMachineAlone() throws IOException {
        String port = Integer.toString(served.server().address().getPort());
        assertThat(status("127.0.0.1:" + port)).contains("200");
        assertThat(status("localhost:" + port)).contains("200");
        assertThat(status("[::1]:" + port)).contains("200");
        assertThat(status("twinbar.example:" + port)).contains("403");
        assertThat(status("127.0.0.1")).contains("403");
    }

    /** A Java client sets the host by itself, so that another one must be written by hand. */
    private static String status(String host) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", served.server().address().getPort());
                DataInputStream in = new DataInputStream(socket.getInputStream())) {
            String request =
                    "GET /assets/sign.svg HTTP/1.1\r\nHost: %s\r\nConnection: close\r\n\r\n"
                            .formatted(host);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .findFirst()
                    .orElse("");
        }
    }

    static String filled(String path, String trial) {
        boolean isOfPlan = path.matches("/studies/\\{study}/(plan|register)/.*");
        StudyName study = isOfPlan ? planned : served.demo();
        String filled = path.replace("{study}", study.id().toString())
                .replace("<code>", isOfPlan ? code() : "FP1")
                .replace("{code}", code())
                .replace("{number}", "1")
                .replace("{recipe}", recipe.id().toString())
                .replace("{method}", "tensile")
                .replace("{photo}", photo.file().sha256())
                .replace("{picture}", "report.png")
                .replace("{page}", "verdicts")
                .replace("{instrument}", instrument.id().toString())
                .replace("/trials/{trial}", trial);
        assertThat(filled).as("a sample for " + path).doesNotContainPattern("[{<]");
        return filled;
    }

    private static String code() {
        return served.workspace().plans().of(planned).specimens().get(0).code();
    }

    static List<String> reading() {
        return paths("GET ");
    }

    private static List<String> writing() {
        return paths("POST ");
    }

    private static List<String> paths(String method) {
        return served.server().routes().stream()
                .filter(route -> route.startsWith(method))
                .map(route -> route.substring(method.length()))
                .toList();
    }
}
