package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** The pages as a person at a desk and one with a phone meet them. */
@Tag("browser")
class PagesInBrowserTest {

    /** Without these a browser that runs as root or without a network doesn't start, or waits. */
    private static final List<String> ARGUMENTS = List.of(
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    @TempDir
    static Path folder;

    private static Served served;
    private static ChromeDriver browser;
    private static WebDriverWait wait;
    private static String axe;

    @BeforeAll
    static void open() throws IOException {
        served = Served.in(folder.resolve("workspace"));
        ChromeOptions options = new ChromeOptions().addArguments(ARGUMENTS);
        options.setBinary(System.getProperty("twinbar.browser", "/usr/bin/chromium"));
        ChromeDriverService.Builder driver = new ChromeDriverService.Builder();
        String path = System.getenv("PATH");
        for (String bin : path == null ? new String[0] : path.split(File.pathSeparator)) {
            File found = new File(bin, "chromedriver");
            if (found.canExecute()) {
                driver.usingDriverExecutable(found);
                break;
            }
        }
        browser = new ChromeDriver(driver.usingAnyFreePort().build(), options);
        wait = new WebDriverWait(browser, Duration.ofSeconds(30));
        try (InputStream script = PagesInBrowserTest.class.getResourceAsStream("/axe.min.js")) {
            assertThat(script).isNotNull();
            axe = new String(script.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.quit();
        }
        served.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {1440, 390})
    void readingsBecomeASentenceAPictureAndAStudy(int width) throws IOException {
        size(width);
        visit("/");
        Path bars = Files.writeString(folder.resolve("bars.csv"), Served.BARS);
        browser.findElement(By.id("table")).sendKeys(bars.toString());
        press("Read the files");
        wait.until(ExpectedConditions.titleContains("What do these readings say?"));
        browser.findElement(By.id("worth")).sendKeys("5 %");
        press("Compare the groups");
        WebElement sentence = wait.until(
                ExpectedConditions.visibilityOfElementLocated(By.cssSelector("#found .say")));
        assertThat(sentence.getText()).contains("coated than in plain specimens");
        assertThat(browser.findElements(By.cssSelector("#found svg.figure"))).isNotEmpty();
        assertThat(serious()).isEmpty();
        WebElement name = browser.findElement(By.id("name"));
        name.clear();
        name.sendKeys("bars " + width);
        press("Keep it as a study");
        wait.until(ExpectedConditions.titleContains("Is the tensile strength higher"));
        assertThat(served.workspace().find("bars " + width)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(ints = {1440, 390})
    void aClaimBecomesAnEmptyStudy(int width) {
        size(width);
        visit("/");
        browser.findElement(By.id("words")).sendKeys("Stays dry, seen at " + width);
        press("Begin a study");
        wait.until(ExpectedConditions.titleContains("Is it so: Stays dry, seen at " + width));
    }

    @ParameterizedTest
    @ValueSource(ints = {1440, 390})
    void theDemoSaysThatItIsInvented(int width) {
        size(width);
        visit("/");
        press("Open the demo");
        wait.until(ExpectedConditions.titleContains("Does the clear coat"));
        assertThat(browser.findElement(By.cssSelector("header .invented")).getText())
                .isEqualTo("invented data");
    }

    @Test
    void aWrongUploadIsToldBesideTheForm() throws IOException {
        size(390);
        visit("/");
        Path empty = Files.writeString(folder.resolve("empty.csv"), "");
        browser.findElement(By.id("table")).sendKeys(empty.toString());
        press("Read the files");
        WebElement trouble = wait.until(
                ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".door .trouble")));
        assertThat(trouble.getText()).isEqualTo("empty.csv: is empty.");
    }

    @Test
    void aWrongSizeIsToldWithoutLosingWhatWasChosen() {
        size(1440);
        browser.get(served.uri(served.trial()).toString());
        browser.findElement(By.id("worth")).sendKeys("5 parsecs");
        press("Compare the groups");
        wait.until(
                ExpectedConditions.visibilityOfElementLocated(By.cssSelector("#found .trouble")));
        assertThat(browser.findElement(By.id("worth")).getDomProperty("value"))
                .isEqualTo("5 parsecs");
    }

    @Test
    void aCurveIsReadByKeys() {
        size(1440);
        visit(served.study() + "/specimens/FP1?test=tensile");
        WebElement curve = wait.until(ExpectedConditions.visibilityOfElementLocated(
                        By.cssSelector(".live canvas")))
                .findElement(By.xpath("./ancestor::*[contains(@class,'live')]"));
        curve.sendKeys("m");
        WebElement readout = browser.findElement(By.cssSelector(".readout"));
        assertThat(readout.getText()).startsWith("Start of the loading: ").contains("mm");
        curve.sendKeys(Keys.END);
        String last = readout.getText();
        curve.sendKeys(Keys.ARROW_LEFT);
        assertThat(readout.getText()).isNotEqualTo(last).contains("N at travel");
    }

    @Test
    void nothingSeriousStandsInAnybodysWay() {
        for (int width : new int[] {1440, 390}) {
            size(width);
            for (String page : pages()) {
                visit(page);
                assertThat(serious()).as(page + " at " + width).isEmpty();
            }
        }
    }

    @Test
    void noPageIsWiderThanASmallPhone() {
        size(320);
        for (String page : pages()) {
            visit(page);
            assertThat(browser.executeScript("return document.documentElement.scrollWidth"))
                    .as(page)
                    .isEqualTo(320L);
        }
    }

    private static List<String> pages() {
        return List.of(
                "/",
                "/nowhere",
                served.study(),
                served.study() + "/specimens",
                served.study() + "/specimens/FP1?test=tensile",
                served.study() + "/report",
                served.trial());
    }

    private static void size(int width) {
        // A page that scrolls slowly moves buttons away from under the pointer.
        browser.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "features",
                        List.of(Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of(
                        "width",
                        width,
                        "height",
                        900,
                        "deviceScaleFactor",
                        1,
                        "mobile",
                        width < 700));
    }

    private static void visit(String page) {
        browser.get(served.uri(page).toString());
    }

    private static void press(String words) {
        browser.findElement(By.xpath("//button[normalize-space()='%s']".formatted(words)))
                .click();
    }

    /** Returns what axe calls serious or worse, a line each. */
    private static List<String> serious() {
        browser.executeScript(axe);
        Object found = browser.executeAsyncScript("""
                const done = arguments[arguments.length - 1];
                axe.run().then(found => done(found.violations
                    .filter(it => it.impact === 'serious' || it.impact === 'critical')
                    .map(it => it.id + ': ' + it.nodes.map(node => node.html.slice(0, 120)).join(' | '))),
                    failure => done([String(failure)]));
                """);
        List<String> lines = new ArrayList<>();
        assertThat(found).isInstanceOf(List.class);
        ((List<?>) found).forEach(line -> lines.add(String.valueOf(line)));
        return lines;
    }
}
