package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Walks every page that the server has, so that a new one can't be forgotten: each has its sample
 * in {@link RoutesTest}, or that test fails.
 */
@Tag("browser")
class EveryPageInBrowserTest {

    private static final int[] WIDTHS = {390, 834, 1440};
    private static final int LONGEST_PICTURE = 5000;

    /** Pages that say more when they are asked something. */
    private static final Map<String, List<String>> ASKED = Map.of(
            "/bench", List.of("?method=tensile"),
            "/claims/guide", List.of("?words=At+least+10+%25+stronger", "?words=Food+safe"),
            "/archive", List.of("?where=orientation+%3D+upright", "?where=nothing"),
            "/studies/{study}/add-test", List.of("?method=flexure"),
            "/studies/{study}/specimens/<code>", List.of("?test=tensile"),
            "/studies/{study}/rig/{method}", List.of("?specimen=FP2", "?specimen=nobody"));

    @TempDir
    static Path folder;

    private static Browser browser;
    private static Map<String, String> pages;

    @BeforeAll
    static void open() {
        RoutesTest.folder = folder.resolve("workspace");
        RoutesTest.serve();
        pages = pages();
        browser = Browser.open();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
        RoutesTest.close();
    }

    @Test
    void nothingStandsInAnybodysWayOnAnyPage() {
        assertThat(pages).hasSizeGreaterThan(20);
        SoftAssertions all = new SoftAssertions();
        pages.forEach((name, path) -> {
            browser.size(320);
            browser.visit(RoutesTest.served.uri(path));
            all.assertThat(browser.scrollWidth())
                    .as(name + " is as wide as a small phone")
                    .isLessThanOrEqualTo(320);
            browser.size(390, Browser.Light.LIGHT);
            all.assertThat(browser.serious()).as(name + ", light").isEmpty();
            browser.size(1440, Browser.Light.DARK);
            all.assertThat(browser.serious()).as(name + ", dark").isEmpty();
        });
        all.assertAll();
    }

    /** What {@code ./check --screenshots FOLDER} runs. */
    @Test
    @EnabledIfSystemProperty(named = "twinbar.screenshots", matches = ".+")
    void takesPictures() throws IOException {
        Path to = Files.createDirectories(Path.of(System.getProperty("twinbar.screenshots")));
        for (Map.Entry<String, String> page : pages.entrySet()) {
            browser.size(WIDTHS[0]);
            browser.visit(RoutesTest.served.uri(page.getValue()));
            for (int width : WIDTHS) {
                for (Browser.Light light : Browser.Light.values()) {
                    browser.size(width, light);
                    String file = "%s.%s.%s.png".formatted(page.getKey(), width, light.word());
                    Files.write(to.resolve(file), browser.whole(LONGEST_PICTURE));
                }
            }
        }
    }

    /** Where each page is, by a name that may be one of a file. */
    private static Map<String, String> pages() {
        String trial = RoutesTest.served.trial();
        Map<String, String> found = new LinkedHashMap<>();
        for (String route : RoutesTest.reading()) {
            List<String> asked = new ArrayList<>(List.of(""));
            asked.addAll(ASKED.getOrDefault(route, List.of()));
            for (int i = 0; i < asked.size(); i++) {
                String path = RoutesTest.filled(route, trial) + asked.get(i);
                HttpResponse<String> answer = RoutesTest.served.get(path);
                String type = answer.headers().firstValue("Content-Type").orElse("");
                if (type.startsWith("text/html") && answer.body().contains("<html")) {
                    found.put(name(route) + (i == 0 ? "" : "-asked-" + i), path);
                }
            }
        }
        found.put("no-such-page", "/nowhere");
        return found;
    }

    private static String name(String route) {
        String name = route.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
        return name.isEmpty() ? "start" : name;
    }
}
