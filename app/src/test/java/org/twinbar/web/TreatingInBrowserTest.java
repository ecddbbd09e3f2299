package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.twinbar.study.judged.StudyName;

/** Specimens are treated with a phone in one hand: mixed, coated, timed, and told when to test. */
@Tag("browser")
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class TreatingInBrowserTest {

    @TempDir
    static Path folder;

    private static Served served;
    private static Browser browser;
    private static StudyName study;

    @BeforeAll
    static void open() {
        served = Served.in(folder.resolve("workspace"));
        study = Cleats.in(served);
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
    @Order(1)
    void aMixIsFollowedWhileItIsPouredAndSaved() throws IOException {
        browser.size(390);
        browser.visit(served.uri(Links.weigh(study)));
        type("part_0", "2");
        type("part_1", "1");
        type("density_0", "1,15");
        type("density_1", "0.98");
        type("total", "20");
        type("step", "0.1");
        browser.picture("mix-recipe-390");
        browser.press("Tell the weights");
        until("#now", "Pour 14.0");
        type("shown_0", "9,3");
        until("#now", "Pour another 4.7");
        type("shown_0", "14.0");
        until("#now", "of B");
        type("shown_1", "6.8");
        until("#now", "too much of B");
        browser.picture("mix-over-390");
        browser.press("A field for more of A");
        type("more_0", "2.0");
        until("#now", "Enough of each");
        browser.picture("mix-enough-390");
        browser.press("Note the mix, start its clock");
        browser.patience().until(ExpectedConditions.titleContains("How long can mix 1 be worked?"));
        assertThat(served.workspace().plans().forTreating(study).mixes()).hasSize(1);
    }

    @Test
    @Order(2)
    void aRecipeIsChosenKeptAndDoneStepByStep() throws IOException {
        browser.size(390);
        browser.visit(served.uri(Links.treating(study)));
        browser.picture("treating-before-390");
        click("Choose how 'coated' is treated");
        click("A coating, in one or more coats");
        type("coats", "2");
        type("name", "our clear coat");
        browser.picture("choose-recipe-390");
        browser.press("Treat them so");
        browser.patience().until(ExpectedConditions.titleContains("What is done next"));
        assertThat(served.workspace().recipes().all()).hasSize(1);
        browser.click(browser.all(".ticked .option").get(0));
        browser.press("Step 1 is done");
        until(".recipe-steps", "Step 2 is done");
        browser.press("Start step 3");
        browser.seen(".countdown");
        browser.picture("steps-390");
        until(".recipe-steps", "Stop step 3");
        browser.press("Stop step 3");
        until("#differs + .sentences", "was not noted for");
        browser.press("The ticked ones are treated");
        browser.patience().until(ExpectedConditions.urlContains("/steps"));
        browser.visit(served.uri(Links.treating(study)));
        until(".say", "still curing");
        assertThat(served.workspace().plans().forTreating(study).steps()).hasSize(2);
    }

    @Test
    @Order(3)
    void aCoatIsReckonedAndItsMixWeighedOut() throws IOException {
        browser.size(390);
        browser.visit(served.uri(Links.coat(study)));
        type("film", "150");
        type("density", "1,1");
        until("#coat", "Mix ");
        browser.picture("coat-390");
        browser.click(browser.seen("#coat a.button"));
        browser.patience().until(ExpectedConditions.titleContains("How much of each"));
        assertThat(browser.seen(By.id("total")).getDomProperty("value")).isNotEmpty();
    }

    @Test
    @Order(4)
    void whatCanBeDoneTodayStandsOnTheFirstPage() throws IOException {
        browser.size(390);
        browser.visit(served.uri("/"));
        until("#today", "still curing");
        browser.picture("home-today-390");
    }

    @Test
    @Order(5)
    void evidenceIsAttachedToACondition() throws IOException {
        browser.size(390);
        browser.visit(served.uri(Links.conditions(study)));
        browser.click(browser.seen(".conditions summary"));
        type("c0-1", "migration test 12/26 of the laboratory, passed");
        browser.press("Attach it to condition 1");
        until(".conditions", "migration test 12/26");
    }

    @Test
    @Order(9)
    void nothingSeriousStandsInAnybodysWay() throws IOException {
        for (Browser.Light light : Browser.Light.values()) {
            for (int width : new int[] {1440, 390}) {
                browser.size(width, light);
                for (String page : pages()) {
                    browser.visit(served.uri(page));
                    assertThat(browser.serious())
                            .as("%s at %s %s", page, width, light)
                            .isEmpty();
                }
            }
        }
    }

    @Test
    @Order(10)
    void noPageIsWiderThanASmallPhone() throws IOException {
        for (int width : new int[] {320, 390, 1440}) {
            browser.size(width);
            for (String page : pages()) {
                browser.visit(served.uri(page));
                assertThat(browser.scrollWidth()).as(page).isLessThanOrEqualTo(width);
                browser.picture("treat-"
                        + page.replaceAll("^.*/studies/[^/]*/", "").replaceAll("[^a-z0-9]+", "-")
                        + "-" + width);
            }
        }
    }

    private static List<String> pages() {
        String sheet = Links.study(study);
        return List.of(
                "/today",
                "/recipes",
                "/recipes/new?kind=mix",
                "/recipes/" + served.workspace().recipes().all().get(0).id(),
                sheet,
                sheet + "/treating",
                sheet + "/recipe?group=coated",
                sheet + "/recipe?group=coated&kind=annealing",
                sheet + "/steps?group=coated",
                sheet + "/coat?film=150&density=1.1",
                sheet + "/conditions",
                sheet + "/mix",
                sheet + "/mix?number=2&by=volume&part_0=2&part_1=1&density_0=1.15&density_1=0.98"
                        + "&total=120&step=0.1&life=30&spreading=2&thinner=5&shown_0=90",
                sheet + "/mixes/1");
    }

    private static void click(String link) {
        browser.click(browser.seen(By.linkText(link)));
    }

    private static void type(String field, String text) {
        WebElement into = browser.seen(By.id(field));
        into.clear();
        into.sendKeys(text);
    }

    private static void until(String where, String words) {
        browser.untilText(where, words);
    }
}
