package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
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
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;
import org.twinbar.study.Act;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Plan;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;

/** From a claim to a register of specimens, by mouse at a desk and by thumb on a phone. */
@Tag("browser")
class PlanInBrowserTest {

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
    void aClaimBecomesASealedPlanAndPrintedSpecimens(int width) {
        String name = "thwarts " + width;
        browser.size(width);
        StudyName study = claimed(name);
        browser.visit(served.uri(Links.study(study)));
        browser.click(browser.seen(By.linkText("Plan the specimens")));
        untilTitle("What is to be made?");
        String before = browser.seen("#told-0 .say").getText();
        type("s0.n", "9");
        browser.seen(By.id("s0.worth")).click();
        browser.patience().until(it -> !browser.seen("#told-0 .say").getText().equals(before));
        assertThat(browser.seen("#told-0 .say").getText()).startsWith("With 9 in each group");
        new Select(browser.seen(By.id("sort"))).selectByVisibleText("annealing");
        browser.seen(By.cssSelector("input[name='with.dried']"));
        new Select(browser.seen(By.id("sort"))).selectByVisibleText("coating");
        browser.click(browser.seen(By.cssSelector("input[name='with.sanded']")));
        type("runs", "3");
        browser.press("Deal the specimens");
        untilTitle("Which specimens answer it?");
        assertThat(browser.all(".run svg")).hasSize(3);
        browser.press("Seal the plan");
        browser.seen(By.xpath("//h2[starts-with(., 'Sealed')]"));
        Plan plan = served.workspace().plans().of(study).plan().orElseThrow();
        assertThat(plan.allocation().specimens()).hasSize(27);
        browser.click(browser.seen(By.linkText("Note what was done")));
        untilTitle("What was done to each?");
        new Select(browser.seen(By.id("which"))).selectByVisibleText("run 1");
        browser.press("Note it");
        browser.patience()
                .until(ExpectedConditions.textToBe(
                        By.cssSelector(".about"), "Sealed; 9 of 27 printed."));
        browser.driver().navigate().back();
        browser.driver().navigate().forward();
        browser.click(browser.seen(By.cssSelector(".register a")));
        WebElement first = browser.seen(By.name("v0"));
        first.sendKeys("5,02");
        browser.all("#width input[name=v1]").get(0).sendKeys("4,98");
        browser.patience()
                .until(ExpectedConditions.textToBePresentInElementLocated(
                        By.cssSelector("#width .readout"), "spread 0.04"));
        browser.press("Keep the width");
        browser.seen(By.id("why-width"));
        assertThat(served.get(Links.study(study) + "/state").body())
                .startsWith("sealed; 9 of 27 printed; ");
    }

    @Test
    void everyPageIsForEverybodyInBothLights() throws IOException {
        StudyName study = served.workspace()
                .importStudy(
                        Act.by("the club"),
                        StudyFile.parse("plan.toml", MakingPagesTest.PLANNED + """
                                [[claim]]
                                words = "At least 10 % stronger"
                                [[claim.question]]
                                name = "strength"
                                method = "tensile"
                                property = "strength"
                                control = "plain"
                                claimed = "10 %"
                                worth = "5 %"
                                """),
                        Handed.nothing());
        String code = served.workspace().plans().of(study).specimens().get(0).code();
        List<String> pages = List.of(
                Links.plan(study) + "/form",
                Links.plan(study),
                Links.register(study),
                Links.registered(study, code));
        for (String page : pages) {
            for (Browser.Light light : Browser.Light.values()) {
                browser.size(1440, light);
                browser.visit(served.uri(page));
                browser.driver()
                        .executeScript(
                                "document.querySelectorAll('details').forEach(it => it.open = true)");
                assertThat(browser.serious()).as(page + " in " + light).isEmpty();
            }
            for (int width : new int[] {320, 390, 1440}) {
                browser.size(width);
                browser.visit(served.uri(page));
                assertThat(browser.scrollWidth())
                        .as(page + " at " + width)
                        .isLessThanOrEqualTo(width);
                browser.picture("plan-" + pages.indexOf(page) + "-" + width);
            }
        }
    }

    private static StudyName claimed(String name) {
        StudyFile file = StudyFile.parse("claim.toml", """
                study = "%s"
                question = "Does the coat make our thwarts stronger?"
                [[claim]]
                words = "At least 10 %% stronger"
                [[claim.question]]
                name = "strength"
                method = "tensile"
                property = "strength"
                control = "plain"
                claimed = "15 %%"
                worth = "5 %%"
                """.formatted(name));
        return served.workspace().importStudy(Act.by("the club"), file, Handed.nothing());
    }

    private static void type(String field, String text) {
        WebElement element = browser.seen(By.id(field));
        element.clear();
        element.sendKeys(text);
    }

    private static void untilTitle(String words) {
        browser.patience().until(ExpectedConditions.titleContains(words));
    }
}
