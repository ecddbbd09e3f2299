package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.method.Methods;

class ManualPagesTest {

    private static final Pattern LINK = Pattern.compile("(?:href|src)=\"(/manual[^\"]*)\"");

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
    void noLinkOfTheManualLeadsNowhere() {
        Map<String, String> pages = walked();
        assertThat(pages).containsKeys("/manual/first-study", "/manual/methods/tensile");
        pages.forEach((path, body) -> {
            Matcher links = LINK.matcher(body);
            while (links.find()) {
                String to = links.group(1);
                int hash = to.indexOf('#');
                String page = hash < 0 ? to : to.substring(0, hash);
                assertThat(pages).as("%s leads to %s", path, to).containsKey(page);
                if (hash >= 0) {
                    assertThat(pages.get(page))
                            .as("%s leads to %s", path, to)
                            .contains("id=\"%s\"".formatted(to.substring(hash + 1)));
                }
            }
        });
    }

    @Test
    void everyPageOfTheManualIsReachedFromItsFirst() throws IOException {
        Map<String, String> pages = walked();
        try (Stream<Path> files = Files.list(Path.of("..", "docs", "manual"))) {
            files.forEach(file -> assertThat(pages)
                    .containsKey("/manual/" + file.getFileName().toString().replace(".md", "")));
        }
    }

    @Test
    void everyMethodHasItsPage() {
        assertThat(Methods.builtIn().all())
                .isNotEmpty()
                .allSatisfy(method -> assertThat(
                                get("/manual/methods/" + method.description().name())
                                        .body())
                        .contains("<h1>" + method.description().title() + "</h1>"));
    }

    @Test
    void showsTablesPicturesAndNoMarkdown() {
        assertThat(get("/manual/methods/tensile").body())
                .contains("<div class=\"wide\"", "<table>", "<code>width_mm</code>")
                .doesNotContain("| ---", "](");
        HttpResponse<String> picture = get("/manual/pictures/run-sheet.png");
        assertThat(picture.headers().firstValue("Content-Type")).hasValue("image/png");
    }

    @Test
    void readsNothingElseFromTheJar() {
        for (String path : new String[] {
            "/manual/..%2f..%2flogback", "/manual/pictures/..%2f..%2flogback.xml", "/manual/nothing"
        }) {
            assertThat(get(path).statusCode()).as(path).isIn(400, 404);
        }
    }

    @Test
    void everyPageLeadsToTheManual() {
        assertThat(get("/").body()).contains("href=\"/manual\"");
        assertThat(get(served.study()).body()).contains("href=\"/manual/verdicts\"");
        assertThat(get("/instruments").body()).contains("href=\"/manual/instruments\"");
    }

    /** Every page and picture that links lead to from the first page, with what it holds. */
    private static Map<String, String> walked() {
        Map<String, String> pages = new LinkedHashMap<>();
        Deque<String> next = new ArrayDeque<>();
        next.add("/manual");
        while (!next.isEmpty()) {
            String path = next.remove();
            if (!pages.containsKey(path)) {
                HttpResponse<String> answer = get(path);
                assertThat(answer.statusCode()).as(path).isEqualTo(200);
                pages.put(path, answer.body());
                Matcher links = LINK.matcher(answer.body());
                while (links.find()) {
                    next.add(links.group(1).replaceFirst("#.*", ""));
                }
            }
        }
        return pages;
    }

    private static HttpResponse<String> get(String path) {
        return served.get(path);
    }
}
