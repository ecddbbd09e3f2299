package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.twinbar.decision.Verdict;
import org.twinbar.method.Methods;
import org.twinbar.study.Workspace;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.StudyName;

/**
 * The sailing club's question from an empty workspace to the report, by mouse and thumb alone:
 * claim, plan, seal, mix, readings at the rig in phone width, key, verdict, report. On the way
 * somebody goes back, presses twice, types nonsense and loses the connection. Each page is held to
 * axe and recorded below {@code target/screens/whole-job}.
 */
@Tag("browser")
class WholeJobInBrowserTest {

    private static final Clock NOON =
            Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneId.of("Europe/Rome"));
    private static final Path RECORDED = Path.of("target", "screens", "whole-job");

    @TempDir
    Path folder;

    private Workspace workspace;
    private WebServer server;
    private Browser browser;
    private int recorded;

    @BeforeEach
    void open() {
        Methods methods = Methods.builtIn();
        workspace = Workspace.open(folder.resolve("workspace"), methods, NOON, "Twinbar test");
        server = WebServer.start(workspace, methods, 0, List::of);
        browser = Browser.open();
    }

    @AfterEach
    void close() {
        browser.close();
        server.close();
        workspace.close();
    }

    @Test
    void isDoneFromAClaimToAReport() throws IOException {
        browser.size(1440);
        browser.visit(server.address());
        aBadFileIsRefused();
        StudyName study = theClaimBecomesAQuestion();
        theStudyIsPlanned(study);
        thePlanIsSealed(study);
        aMixIsWeighedOut(study);
        theBarsAreRead(study);
        theKeyIsOpened(study);
        theVerdictIsReported(study);
    }

    private void aBadFileIsRefused() throws IOException {
        record("start");
        Path empty = Files.writeString(folder.resolve("empty.csv"), "");
        id("table").sendKeys(empty.toString());
        browser.press("Read the files");
        assertThat(browser.seen(".door .trouble").getText()).isEqualTo("empty.csv: is empty.");
        assertThat(workspace.studies()).isEmpty();
    }

    private StudyName theClaimBecomesAQuestion() throws IOException {
        id("words").sendKeys("At least 10 % stronger");
        id("said_by").sendKeys("the coat's leaflet");
        browser.press("Find its questions");
        title("What would answer this claim?");
        choose("a.stronger.how", "tensile.strength");
        browser.press("Go on");
        record("guide");
        browser.driver().navigate().back();
        choose("a.stronger.how", "tensile.strength");
        browser.press("Go on");
        choose("a.stronger.per", "peak_force");
        choose("a.stronger.orientation", "flat");
        fill("a.stronger.worth", "5 parsecs");
        pressForAPage("Go on");
        assertThat(browser.all("[role=alert]")).as("nonsense is told").isNotEmpty();
        assertThat(id("a.stronger.worth").getDomProperty("value")).isEqualTo("5 parsecs");
        choose("a.stronger.per", "peak_force");
        choose("a.stronger.orientation", "flat");
        fill("a.stronger.worth", "5 %");
        browser.press("Change it");
        record("guide-whole");
        twice("Begin a study with it");
        title("At least 10 % stronger");
        assertThat(workspace.studies()).as("pressed twice, begun once").hasSize(1);
        record("study-begun");
        return workspace.studies().get(0);
    }

    private void theStudyIsPlanned(StudyName study) throws IOException {
        browser.click(browser.seen("#plan .actions a"));
        title("What is to be made?");
        fill("treated", "coated");
        fill("treated_words", "one coat of clear resin");
        fill("s0.n", "3");
        fill("s0.expected", "25 %");
        fill("s0.scatter", "a lot");
        fill("runs", "1");
        fill("mixes", "1");
        pressForAPage("Deal the specimens");
        assertThat(browser.all("[role=alert]")).as("nonsense is told").isNotEmpty();
        assertThat(id("treated_words").getDomProperty("value"))
                .as("nothing typed is lost")
                .isEqualTo("one coat of clear resin");
        record("plan-refused");
        fill("s0.scatter", "4 %");
        browser.press("Deal the specimens");
        title("Which specimens answer it?");
        assertThat(specimens(study)).hasSize(6);
    }

    private void thePlanIsSealed(StudyName study) throws IOException {
        record("plan");
        twice("Seal the plan");
        until(() -> workspace.plans().of(study).seal().isPresent());
        browser.visit(server.address().resolve(Links.plan(study)));
        assertThat(id("h-seal").getText()).startsWith("Sealed");
        record("plan-sealed");
    }

    private void aMixIsWeighedOut(StudyName study) throws IOException {
        browser.size(390);
        browser.visit(server.address().resolve(Links.study(study) + "/mix"));
        Map.of(
                        "part_0", "2",
                        "part_1", "1",
                        "density_0", "1,15",
                        "density_1", "0.98",
                        "total", "20",
                        "step", "0.1")
                .forEach(this::fill);
        browser.press("Tell the weights");
        until(() -> text("now").contains("Pour 14.0"));
        fill("shown_0", "14.0");
        until(() -> text("now").contains("of B"));
        fill("shown_1", "6.0");
        until(() -> text("now").contains("Enough of each"));
        record("mix");
        browser.press("Note the mix, start its clock");
        title("How long can mix");
        record("mix-noted");
        browser.size(1440);
    }

    private void theBarsAreRead(StudyName study) throws IOException {
        browser.visit(server.address().resolve(Links.plan(study)));
        browser.press("Begin this test");
        browser.patience().until(driver -> !browser.all("html.live").isEmpty());
        browser.size(390);
        browser.driver().navigate().refresh();
        browser.patience().until(driver -> !browser.all("html.live").isEmpty());
        record("rig");
        List<Registered> bars = workspace.plans().forTreating(study).specimens();
        int number = 0;
        for (String code : order(study)) {
            find(code);
            boolean coated = bars.stream()
                    .filter(it -> it.code().equals(code))
                    .anyMatch(it -> it.group().orElseThrow().name().equals("coated"));
            double force = (coated ? 1520 : 1200) + 9 * number;
            if (number == 1) {
                nonsenseIsRefused(study, code);
            }
            if (number == 2) {
                connect(false);
            }
            read("width_mm", "10," + (10 + number));
            read("thickness_mm", "4.0" + number);
            read("peak_force_N", Double.toString(force));
            if (number == 2) {
                until(() -> text("waiting").contains("wait to be sent"));
                record("rig-without-connection");
                connect(true);
            }
            until(() -> text("waiting").isEmpty());
            until(() -> cell(study, code, "peak_force_N").equals(Double.toString(force)));
            number++;
        }
        until(() -> text("progress").equals("all 6 done"));
        record("rig-done");
        browser.size(1440);
    }

    private void nonsenseIsRefused(StudyName study, String code) throws IOException {
        read("width_mm", "wide");
        assertThat(browser.seen(".one:not([hidden]) .query.asked").getText())
                .contains("'wide' is not a number");
        record("rig-refused");
        assertThat(cell(study, code, "width_mm")).isEmpty();
    }

    private void theKeyIsOpened(StudyName study) throws IOException {
        browser.visit(server.address().resolve(Links.plan(study)));
        assertThat(browser.seen("#key").getText()).contains("All specimens have a result");
        browser.press("Open the key");
        until(() -> !workspace.plans().of(study).keyClosed());
    }

    private void theVerdictIsReported(StudyName study) throws IOException {
        browser.visit(server.address().resolve(Links.study(study)));
        record("verdict");
        JudgedStudy judged = workspace.judge(study, Progress.SILENT);
        assertThat(judged.compared())
                .singleElement()
                .satisfies(
                        it -> assertThat(it.comparison().verdict()).isEqualTo(Verdict.SUPPORTED));
        assertThat(judged.making().seal()).isPresent();
        browser.click(browser.seen(By.linkText("Read the report")));
        assertThat(browser.seen("body").getText())
                .contains("higher in coated than in plain", "supported");
        record("report");
        browser.size(390);
        record("report-on-a-phone");
    }

    private List<Registered> specimens(StudyName study) {
        return workspace.plans().of(study).specimens();
    }

    /** In the order in which they are to be tested. */
    private List<String> order(StudyName study) {
        return workspace.typing().test(study, "tensile").specimens().stream()
                .map(it -> it.code())
                .toList();
    }

    private String cell(StudyName study, String code, String column) {
        return workspace
                .typing()
                .test(study, "tensile")
                .specimen(code)
                .orElseThrow()
                .cells()
                .get(column)
                .text();
    }

    private void find(String code) {
        WebElement find = id("find");
        find.clear();
        find.sendKeys(code, Keys.ENTER);
        until(() -> code.equals(browser.seen(".one:not([hidden])").getDomAttribute("data-code")));
    }

    private void read(String column, String text) {
        until(() -> {
            WebElement input = browser.seen(
                    By.xpath("//article[not(@hidden)]//input[@value='%s']/..//input[@name='text']"
                            .formatted(column)));
            input.sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.ENTER);
            return true;
        });
    }

    private void connect(boolean connected) {
        browser.driver().executeCdpCommand("Network.enable", Map.of());
        browser.driver()
                .executeCdpCommand(
                        "Network.emulateNetworkConditions",
                        Map.of(
                                "offline",
                                !connected,
                                "latency",
                                0,
                                "downloadThroughput",
                                -1,
                                "uploadThroughput",
                                -1));
    }

    private void record(String name) throws IOException {
        if (!name.equals("rig-without-connection")) {
            assertThat(browser.serious()).as(name).isEmpty();
        }
        Files.createDirectories(RECORDED);
        String number = (recorded < 9 ? "0" : "") + ++recorded;
        Files.write(RECORDED.resolve(number + "-" + name + ".png"), browser.whole(4000));
    }

    /** Somebody presses twice since nothing seems to happen. */
    private void twice(String words) {
        WebElement button =
                browser.seen(By.xpath("//button[normalize-space()='%s']".formatted(words)));
        browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
        new Actions(browser.driver()).doubleClick(button).perform();
    }

    /** Chooses an option, and opens the fold that it lies in. */
    private void choose(String field, String value) {
        WebElement option = browser.patience()
                .until(ExpectedConditions.presenceOfElementLocated(
                        By.cssSelector("input[name='%s'][value='%s']".formatted(field, value))));
        if (!option.isDisplayed()) {
            browser.click(option.findElement(By.xpath("./ancestor::details/summary")));
        }
        if (!option.isSelected()) {
            browser.click(option);
        }
    }

    private void fill(String id, String text) {
        WebElement field = id(id);
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.TAB);
    }

    private WebElement id(String id) {
        return browser.seen(By.id(id));
    }

    private String text(String id) {
        return browser.driver().findElement(By.id(id)).getText();
    }

    /** Presses a button and waits until another page has come in place of this one. */
    private void pressForAPage(String words) {
        WebElement main = browser.seen("main");
        browser.press(words);
        until(() -> {
            try {
                return !main.isEnabled();
            } catch (WebDriverException e) {
                return true;
            }
        });
        browser.seen("main");
    }

    private void title(String words) {
        browser.patience().until(ExpectedConditions.titleContains(words));
    }

    private void until(BooleanSupplier holds) {
        browser.patience().until(driver -> holds.getAsBoolean());
    }
}
