package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.Select;

/** An instrument is added, calibrated by hand and looked at, at the desk and on a phone. */
@Tag("browser")
class InstrumentsInBrowserTest {

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

    @Test
    void pairsThatAreTypedBecomeALine() {
        browser.size(390);
        browser.driver().get(served.uri("/instruments").toString());
        find("name").sendKeys("Cell A");
        new Select(find("kind")).selectByVisibleText("load cell");
        browser.press("Add the instrument");
        assertThat(browser.seen(".say").getText()).startsWith("Nothing is known of it");
        find("against").sendKeys("weights");
        find("pairs").sendKeys("0 0.3\n50 50.6\n100 101.1\n150 151.5\n200 201.7");
        browser.press("Fit the line");
        browser.seen("svg.figure");
        assertThat(browser.seen(".say").getText()).startsWith("It shows");
        String instrument = browser.driver().getCurrentUrl();
        for (int width : new int[] {1440, 390}) {
            browser.size(width);
            for (String page : pages(instrument)) {
                browser.driver().get(page);
                assertThat(browser.serious()).as(page + " at " + width).isEmpty();
            }
        }
        browser.size(320);
        for (String page : pages(instrument)) {
            browser.driver().get(page);
            assertThat(browser.scrollWidth()).as(page).isEqualTo(320);
        }
    }

    private static List<String> pages(String instrument) {
        return List.of(
                served.uri("/instruments").toString(),
                String.valueOf(instrument),
                served.uri("/references").toString(),
                served.uri("/packages").toString(),
                served.uri("/archive").toString(),
                served.uri("/bench").toString(),
                served.uri("/bench?method=impact&worth=5+%25").toString());
    }

    private static org.openqa.selenium.WebElement find(String id) {
        return browser.driver().findElement(By.id(id));
    }
}
