package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
import org.openqa.selenium.support.ui.ExpectedConditions;

/** The pages as a person at a desk and one with a phone meet them. */
@Tag("browser")
class PagesInBrowserTest {

    @TempDir
    static Path folder;

    private static Served served;
    private static Browser browser;

    @BeforeAll
    static void open() {
        served = Served.in(folder.resolve("workspace"));
        browser = Browser.open();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
        served.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {1440, 390})
    void readingsBecomeASentenceAPictureAndAStudy(int width) throws IOException {
        browser.size(width);
        visit("/");
        Path bars = Files.writeString(folder.resolve("bars.csv"), Served.BARS);
        find("table").sendKeys(bars.toString());
        browser.press("Read the files");
        untilTitle("What do these readings say?");
        find("worth").sendKeys("5 %");
        browser.press("Compare the groups");
        WebElement sentence = browser.seen("#found .say");
        assertThat(sentence.getText()).contains("coated than in plain specimens");
        assertThat(browser.all("#found svg.figure")).isNotEmpty();
        assertThat(browser.serious()).isEmpty();
        WebElement name = find("name");
        name.clear();
        name.sendKeys("bars " + width);
        browser.press("Keep it as a study");
        untilTitle("Is the tensile strength higher");
        assertThat(served.workspace().find("bars " + width)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(ints = {1440, 390})
    void aClaimBecomesAnEmptyStudy(int width) {
        browser.size(width);
        visit("/");
        find("words").sendKeys("Stays dry, seen at " + width);
        browser.press("Begin a study without them");
        untilTitle("Is it so: Stays dry, seen at " + width);
    }

    @ParameterizedTest
    @ValueSource(ints = {1440, 390})
    void theDemoSaysThatItIsInvented(int width) {
        browser.size(width);
        visit("/");
        browser.press("Open the demo");
        untilTitle("Does the clear coat");
        assertThat(browser.seen("header .invented").getText()).isEqualTo("invented data");
    }

    @Test
    void aWrongUploadIsToldBesideTheForm() throws IOException {
        browser.size(390);
        visit("/");
        Path empty = Files.writeString(folder.resolve("empty.csv"), "");
        find("table").sendKeys(empty.toString());
        browser.press("Read the files");
        WebElement trouble = browser.seen(".door .trouble");
        assertThat(trouble.getText()).isEqualTo("empty.csv: is empty.");
    }

    @Test
    void aWrongSizeIsToldWithoutLosingWhatWasChosen() {
        browser.size(1440);
        visit(served.trial());
        find("worth").sendKeys("5 parsecs");
        browser.press("Compare the groups");
        browser.seen("#found .trouble");
        assertThat(find("worth").getDomProperty("value")).isEqualTo("5 parsecs");
    }

    @Test
    void aCurveIsReadByKeys() {
        browser.size(1440);
        visit(served.study() + "/specimens/FP1?test=tensile");
        WebElement curve = browser.seen(".live canvas")
                .findElement(By.xpath("./ancestor::*[contains(@class,'live')]"));
        curve.sendKeys("m");
        WebElement readout = browser.driver().findElement(By.cssSelector(".readout"));
        assertThat(readout.getText()).startsWith("Start of the loading: ").contains("mm");
        curve.sendKeys(Keys.END);
        String last = readout.getText();
        curve.sendKeys(Keys.ARROW_LEFT);
        assertThat(readout.getText()).isNotEqualTo(last).contains("N at travel");
    }

    @Test
    void nothingSeriousStandsInAnybodysWay() throws IOException {
        for (int width : new int[] {1440, 390}) {
            browser.size(width);
            for (String page : pages()) {
                visit(page);
                assertThat(browser.serious()).as(page + " at " + width).isEmpty();
                if (page.contains("/add-")) {
                    browser.picture(page.replaceAll(".*/|\\?.*", "") + "-" + width);
                }
            }
        }
    }

    @Test
    void noPageIsWiderThanASmallPhone() {
        browser.size(320);
        for (String page : pages()) {
            visit(page);
            assertThat(browser.scrollWidth()).as(page).isEqualTo(320);
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
                served.study() + "/add-test?method=flexure",
                served.study() + "/add-claim",
                "/phones",
                "/archive",
                "/claims/guide?words=At+least+10+%25+stronger",
                served.trial());
    }

    private static void visit(String page) {
        browser.visit(served.uri(page));
    }

    private static WebElement find(String id) {
        return browser.driver().findElement(By.id(id));
    }

    private static void untilTitle(String words) {
        browser.patience().until(ExpectedConditions.titleContains(words));
    }
}
