package org.twinbar.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.twinbar.study.Act;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

/**
 * What a frame costs while somebody pans and zooms over 100,000 points. Asserted is the processor
 * time of the page's own thread, scripts and painting, which other work on the machine hardly
 * moves; how far apart frames came is written below {@code target} beside it, and says something
 * where the machine is quiet.
 */
@Tag("browser")
class CurveFramesInBrowserTest {

    /** Half of the 50 ms from which a hand notices that a picture lags; from experience. */
    private static final double MOST_WORK_MS = 25;

    private static final int FRAMES = 120;
    private static final int POINTS = 100_000;

    /** All over each other, where each is thinned before it is drawn. */
    private static final int CURVES = 100;

    @TempDir
    static Path folder;

    private static Served served;
    private static Browser browser;

    @BeforeAll
    static void open() {
        served = Served.in(folder.resolve("workspace"));
        browser = Browser.open();
        browser.size(1440);
        cdp("Performance.enable", Map.of("timeDomain", "threadTicks"));
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
        served.close();
    }

    @Test
    void oneCurveOfAllItsRowsFollowsTheHand() throws IOException {
        StudyName study = study("one", List.of("P1", "P2", "C1", "C2"));
        handIn(study, List.of(CurvePagesTest.pull("P1.csv", POINTS)));
        browser.visit(served.uri(Links.study(study) + "/specimens/P1?test=tensile"));
        browser.patience()
                .until(ExpectedConditions.attributeToBe(
                        By.cssSelector("[data-curve]"), "data-rows", Integer.toString(POINTS)));
        browser.driver().executeScript("document.querySelector('.live').focus()");
        Frames frames = frames("""
                const over = document.querySelector('.u-over');
                const box = over.getBoundingClientRect();
                const wheel = (turn) => over.dispatchEvent(new WheelEvent('wheel', {
                    bubbles: true, cancelable: true, clientX: box.left + box.width / 2,
                    clientY: box.top + box.height / 2, ...turn }));
                const act = (frame) => {
                    if (frame % 30 < 10) {
                        wheel({ deltaY: -100 });
                    } else if (frame % 30 < 20) {
                        wheel({ deltaY: frame % 60 < 30 ? 60 : -60, shiftKey: true });
                    } else {
                        wheel({ deltaY: 100 });
                    }
                };
                """);
        frames.write("one-curve");
        assertThat(frames.workMs()).isLessThan(MOST_WORK_MS);
    }

    @Test
    void aHundredCurvesOverEachOtherFollowTheHand() throws IOException {
        List<String> codes = IntStream.rangeClosed(1, CURVES)
                .mapToObj(it -> (it % 2 == 0 ? "P" : "C") + it)
                .toList();
        StudyName study = study("many", codes);
        handIn(
                study,
                codes.stream()
                        .map(code -> CurvePagesTest.pull(code + ".csv", POINTS / CURVES))
                        .toList());
        browser.visit(served.uri(Links.curves(study, "tensile")));
        browser.seen(".live canvas");
        Frames frames = frames("""
                const over = document.querySelector('.u-over');
                const box = over.getBoundingClientRect();
                const press = (button) => document.querySelector(`[data-do=${button}]`).click();
                const act = (frame) => {
                    over.dispatchEvent(new MouseEvent('mousemove', {
                        bubbles: true, clientX: box.left + (frame * 7) % box.width,
                        clientY: box.top + (frame * 3) % box.height }));
                    if (frame % 4 === 0) {
                        press(frame % 24 < 12 ? 'in' : 'out');
                    }
                };
                """);
        frames.write("hundred-curves");
        assertThat(frames.workMs()).isLessThan(MOST_WORK_MS);
    }

    private static StudyName study(String name, List<String> codes) {
        StringBuilder table =
                new StringBuilder("specimen,group,width_mm,thickness_mm,curve_file\n");
        codes.forEach(code -> table.append(code)
                .append(code.startsWith("P") ? ",plain" : ",coated")
                .append(",10,4,\n"));
        StudyName study = served.workspace()
                .create(
                        Act.by("the club"),
                        new StudyFile.Head(
                                name,
                                "Are coated cleats stronger?",
                                "",
                                JudgedStudy.Origin.INVENTED));
        served.workspace()
                .addTest(
                        Act.by("the club"),
                        study,
                        new StudyFile.Test(TestSheet.of("tensile"), "cleats.csv", Optional.empty()),
                        Handed.among(List.of(
                                Upload.of("cleats.csv", table.toString().getBytes(UTF_8)))));
        return study;
    }

    private static void handIn(StudyName study, List<Upload> curves) {
        served.workspace().curves().handIn(Act.by("the club"), study, "tensile", curves);
    }

    /**
     * @param workMs processor time of the page for a frame, on average
     * @param apartMs how long after the one before each frame came, from the shortest
     */
    private record Frames(double workMs, List<Double> apartMs) {

        void write(String name) throws IOException {
            Path file = Files.createDirectories(Path.of("target", "frames"));
            Files.writeString(
                    file.resolve(name + ".csv"),
                    String.format(
                            Locale.ROOT,
                            "work_ms,frame_p50_ms,frame_p95_ms%n%.2f,%.1f,%.1f%n",
                            workMs,
                            apartMs.get(apartMs.size() / 2),
                            apartMs.get((int) Math.ceil(0.95 * apartMs.size()) - 1)));
        }
    }

    /** @param script that declares what {@code act} does in a frame, by the frame's number */
    private static Frames frames(String script) {
        assertThat(browser.driver().executeAsyncScript(script + """
                        const done = arguments[arguments.length - 1];
                        const canvas = document.querySelector('.live canvas');
                        const before = canvas.toDataURL();
                        act(0);
                        requestAnimationFrame(() => requestAnimationFrame(
                            () => done(canvas.toDataURL() !== before)));
                        """))
                .as("the picture follows")
                .isEqualTo(true);
        double before = workSeconds();
        Object apart = browser.driver().executeAsyncScript(script + """
                const done = arguments[arguments.length - 1];
                const apart = [];
                let before = performance.now();
                let frame = 0;
                const next = () => {
                    const now = performance.now();
                    apart.push(now - before);
                    before = now;
                    if (frame === %s) {
                        done(apart.map(String));
                        return;
                    }
                    act(frame++);
                    requestAnimationFrame(next);
                };
                requestAnimationFrame(next);
                """.formatted(FRAMES));
        double workMs = (workSeconds() - before) * 1000 / FRAMES;
        List<Double> sorted = new ArrayList<>();
        assertThat(apart).isInstanceOf(List.class);
        ((List<?>) apart).forEach(it -> sorted.add(Double.valueOf(String.valueOf(it))));
        assertThat(sorted).hasSize(FRAMES + 1);
        sorted.sort(null);
        return new Frames(workMs, sorted);
    }

    private static double workSeconds() {
        Object metrics = cdp("Performance.getMetrics", Map.of()).get("metrics");
        for (Object each : (List<?>) Objects.requireNonNull(metrics)) {
            Map<?, ?> metric = (Map<?, ?>) each;
            if ("TaskDuration".equals(metric.get("name"))) {
                return ((Number) Objects.requireNonNull(metric.get("value"))).doubleValue();
            }
        }
        throw new AssertionError("The browser doesn't tell how long the page worked.");
    }

    private static Map<String, Object> cdp(String command, Map<String, Object> parameters) {
        return browser.driver().executeCdpCommand(command, parameters);
    }
}
