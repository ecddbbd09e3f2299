package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.twinbar.study.TypedTest;

/** The rig as somebody with a phone in one hand uses it. */
@Tag("browser")
class RigInBrowserTest {

    /** One grey pixel. */
    private static final String PNG = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nG"
            + "NoAAAAggCBd81ytgAAAABJRU5ErkJggg==";

    @TempDir
    Path folder;

    private static Browser browser;
    private Rig rig;

    @BeforeAll
    static void open() {
        browser = Browser.open();
    }

    @AfterAll
    static void quit() {
        browser.close();
    }

    @BeforeEach
    void serve() {
        rig = Rig.in(folder);
        browser.size(390);
        connect(true);
        visit("P1");
    }

    @AfterEach
    void close() {
        connect(true);
        rig.close();
    }

    @Test
    void aSpecimenIsTypedThroughByThumb() throws IOException {
        type("width_mm", "9,98");
        type("thickness_mm", "4.02");
        assertThat(focused().getDomAttribute("name")).isEqualTo("text");
        type("peak_force_N", "2011");
        until(() -> textOf("result-1").contains("MPa"));
        until(() -> textOf("progress").equals("1 of 4 done, 3 to go"));
        assertThat(rig.text("P1", "width_mm")).isEqualTo("9,98");
        browser.picture("rig-390");
        link("On to C1").click();
        assertThat(shown()).isEqualTo("C1");
        assertThat(focused()).isEqualTo(input("width_mm"));
        assertThat(browser.seen("#one-2 .others").getText()).isEqualTo("others: 9,98");
        browser.driver().navigate().back();
        assertThat(shown()).isEqualTo("P1");
        assertThat(input("width_mm").getDomProperty("value")).isEqualTo("9,98");
    }

    @Test
    void aSpecimenIsFoundByItsCode() {
        WebElement find = browser.driver().findElement(By.id("find"));
        find.sendKeys("c2", Keys.ENTER);
        assertThat(shown()).isEqualTo("C2");
        browser.driver().findElement(By.id("find")).sendKeys("2", Keys.ENTER);
        assertThat(shown()).isEqualTo("C1");
        String label = LabelAddress.of("http://192.168.1.20:8477/", rig.study(), "P2");
        browser.driver().findElement(By.id("find")).sendKeys(label, Keys.ENTER);
        assertThat(shown()).isEqualTo("P2");
    }

    @Test
    void anUnusualValueIsAskedAboutOnceAndKept() {
        input("width_mm").sendKeys("998", Keys.ENTER);
        WebElement ask = browser.seen("#f-1-0 [data-doubt]");
        assertThat(ask.getText()).contains("998 mm is unusual here. Does it stay?");
        assertThat(rig.text("P1", "width_mm")).isEmpty();
        ask.findElement(By.tagName("button")).click();
        until(() -> rig.text("P1", "width_mm").equals("998"));
        until(() -> waiting().isEmpty());
    }

    @Test
    void whatIsNoNumberIsRefusedBesideTheField() {
        input("width_mm").sendKeys("wide", Keys.ENTER);
        assertThat(browser.seen("#f-1-0 .query.asked").getText())
                .contains("'wide' is not a number");
        assertThat(input("width_mm").getDomProperty("value")).isEqualTo("wide");
        assertThat(waiting()).isEqualTo("1 needs an answer");
        visit("P1");
        assertThat(browser.seen("#f-1-0 .query.asked").getText())
                .as("it is still there when the page is loaded again")
                .contains("'wide' is not a number");
        type("width_mm", "9.98");
        until(() -> waiting().isEmpty());
    }

    @Test
    void aSavedValueIsReplacedWithAReasonAndPutBack() {
        type("width_mm", "9.89");
        until(() -> rig.text("P1", "width_mm").equals("9.89"));
        until(() -> browser.seen("#f-1-0 .state").getText().startsWith("saved"));
        type("width_mm", "9.98");
        assertThat(browser.seen("#f-1-0 .query.asked").getText())
                .contains("9.98 takes the place of 9.89. Why?");
        browser.press("It was a slip");
        until(() -> rig.text("P1", "width_mm").equals("9.98"));
        until(() -> waiting().isEmpty());
        browser.seen("#f-1-0 [name=undo]").click();
        until(() -> rig.text("P1", "width_mm").equals("9.89"));
    }

    @Test
    void twoWindowsDoNotOverwriteEachOther() {
        Set<String> first = browser.driver().getWindowHandles();
        String one = first.iterator().next();
        browser.driver().switchTo().newWindow(WindowType.TAB);
        browser.size(390);
        visit("P1");
        type("width_mm", "9.98");
        until(() -> rig.text("P1", "width_mm").equals("9.98"));
        browser.driver().close();
        browser.driver().switchTo().window(one);
        type("width_mm", "9.89");
        assertThat(browser.seen("#f-1-0 .query.asked").getText())
                .contains("entered 9.98 here; you typed 9.89");
        assertThat(rig.text("P1", "width_mm")).isEqualTo("9.98");
        browser.press("Take 9.89");
        until(() -> rig.text("P1", "width_mm").equals("9.89"));
    }

    @Test
    void entriesWaitForTheConnectionAndAreSentOnceInOrder() throws IOException {
        int before = rig.served().workspace().entries(rig.study());
        until(this::pageIsKept);
        connect(false);
        type("width_mm", "9.98");
        type("thickness_mm", "4.02");
        link("On to C1").click();
        type("width_mm", "10.01");
        until(() -> waiting().equals("No connection, 3 wait to be sent"));
        browser.picture("rig-offline-390");
        browser.driver().navigate().refresh();
        until(() -> waiting().equals("No connection, 3 wait to be sent"));
        assertThat(shown()).as("the page loads without a connection").isEqualTo("C1");
        assertThat(input("width_mm").getDomProperty("value")).isEqualTo("10.01");
        assertThat(rig.served().workspace().entries(rig.study())).isEqualTo(before);
        connect(true);
        until(() -> rig.served().workspace().entries(rig.study()) == before + 3);
        until(() -> waiting().isEmpty());
        assertThat(List.of(
                        rig.cell("P1", "width_mm"),
                        rig.cell("P1", "thickness_mm"),
                        rig.cell("C1", "width_mm")))
                .extracting(TypedTest.Cell::text)
                .containsExactly("9.98", "4.02", "10.01");
    }

    @Test
    void aPhotoIsKeptWithItsSpecimen() throws IOException {
        Path png = Files.write(folder.resolve("break.png"), Base64.getDecoder().decode(PNG));
        browser.driver().findElement(By.id("photo-1")).sendKeys(png.toString());
        browser.seen("#photos-1 img");
        assertThat(rig.test().specimen("P1").orElseThrow().photos()).hasSize(1);
    }

    @Test
    void aSpecimenIsLeftOutWithItsReason() {
        browser.click(browser.seen("#out-1 summary"));
        browser.seen(By.id("why-1")).sendKeys("it fell on the floor");
        browser.click(browser.seen("#out-1 .choice"));
        browser.press("Leave it out");
        until(() -> textOf("out-1").contains("before its value was seen: it fell on the floor"));
        assertThat(textOf("line-1")).contains("left out");
    }

    @Test
    void nothingSeriousStandsInAnybodysWayInEitherLight() throws IOException {
        type("width_mm", "9.98");
        input("thickness_mm").sendKeys("thick", Keys.ENTER);
        browser.seen("#f-1-1 .query.asked");
        for (Browser.Light light : Browser.Light.values()) {
            for (int width : new int[] {390, 1440}) {
                browser.size(width, light);
                for (String page : List.of("/rig", rig.path())) {
                    browser.visit(rig.served().uri(page));
                    assertThat(browser.serious())
                            .as("%s at %s, %s", page, width, light)
                            .isEmpty();
                }
            }
        }
        browser.size(1440);
        browser.picture("rig-1440");
        browser.size(320);
        for (String page : List.of("/rig", rig.path())) {
            browser.visit(rig.served().uri(page));
            assertThat(browser.scrollWidth()).as(page).isEqualTo(320);
        }
    }

    @Test
    void aPhoneComesInByTheCodeThatTheDeskShows() throws IOException {
        browser.size(1440);
        browser.visit(rig.served().uri("/phones"));
        assertThat(browser.serious()).isEmpty();
        browser.press("Let phones in");
        String code = browser.seen(".sign-code").getText();
        String address = browser.seen(".about").getText().replaceAll(".* (http\\S+) .*", "$1");
        for (Browser.Light light : Browser.Light.values()) {
            browser.size(1440, light);
            assertThat(browser.serious()).as(light.name()).isEmpty();
        }
        browser.size(1440);
        browser.picture("phones-1440");
        browser.size(390);
        browser.driver().get(address + "join?code=" + code);
        assertThat(browser.serious()).isEmpty();
        browser.driver().findElement(By.id("name")).sendKeys("Ida's phone");
        browser.picture("join-390");
        browser.press("Come in");
        browser.seen(By.linkText("Are coated cleats stronger?")).click();
        browser.patience().until(driver -> !browser.all("html.live").isEmpty());
        type("width_mm", "9.98");
        until(() -> rig.text("P1", "width_mm").equals("9.98"));
        assertThat(rig.cell("P1", "width_mm").who()).hasValue("Ida's phone");
        browser.visit(rig.served().uri("/phones"));
        browser.press("Shut it out");
        browser.seen(By.xpath("//p[starts-with(normalize-space(), 'None yet')]"));
        browser.driver().get(address + "rig");
        browser.seen(By.id("code"));
    }

    private void visit(String specimen) {
        browser.visit(rig.served().uri(Links.at(rig.path(), specimen)));
        browser.patience().until(driver -> !browser.all("html.live").isEmpty());
    }

    private boolean pageIsKept() {
        return Boolean.TRUE.equals(browser.driver().executeAsyncScript("""
                const done = arguments[arguments.length - 1];
                Promise.all([navigator.serviceWorker.ready, caches.match(location.href)])
                    .then(([, page]) => done(Boolean(page)), () => done(false));
                """));
    }

    private static void connect(boolean connected) {
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

    private String shown() {
        return browser.seen(".one:not([hidden])").getDomAttribute("data-code");
    }

    private static WebElement focused() {
        return browser.driver().switchTo().activeElement();
    }

    private static WebElement input(String column) {
        return browser.seen(
                By.xpath("//article[not(@hidden)]//input[@value='%s']/..//input[@name='text']"
                        .formatted(column)));
    }

    private static void type(String column, String text) {
        until(() -> {
            input(column).sendKeys(Keys.chord(Keys.CONTROL, "a"), text, Keys.ENTER);
            return true;
        });
    }

    private static String textOf(String id) {
        return browser.driver().findElement(By.id(id)).getText();
    }

    private static WebElement link(String words) {
        return browser.seen(By.linkText(words));
    }

    private static String waiting() {
        return textOf("waiting");
    }

    private static void until(BooleanSupplier holds) {
        browser.patience().until(driver -> holds.getAsBoolean());
    }
}
