package org.twinbar.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
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
import org.openqa.selenium.support.ui.Select;
import org.twinbar.method.Yield;
import org.twinbar.study.Act;
import org.twinbar.study.TypedTest;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

/** A photo and a film of known geometry, measured in a browser and found as readings. */
@Tag("browser")
class PicturesInBrowserTest {

    private static final String IMPACT =
            "specimen,group,moment_Nm,release_angle_deg,rise_angle_deg,"
                    + "thickness_mm,remaining_width_mm\nI1,plain,2.5,150,,,\nI2,coated,2.5,150,,,\n";
    private static final String OVEN =
            "specimen,group,arm_mm,onset_from_C,onset_to_C,curve_file\nO1,plain,,,,\nO2,coated,,,,\n";

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
        add("impact", IMPACT);
        add("oven", OVEN);
    }

    @AfterEach
    void close() {
        rig.close();
    }

    private void add(String method, String table) {
        String name = method + ".csv";
        TestSheet sheet = TestSheet.of(method);
        rig.served()
                .workspace()
                .addTest(
                        Act.by("the club"),
                        rig.study(),
                        new StudyFile.Test(sheet, name, Optional.empty()),
                        Handed.among(List.of(Upload.of(name, table.getBytes(UTF_8)))));
    }

    /** A bar 200 px thick, 20 mm on a ruler of 10 px to the millimetre, and an arm at 30°. */
    private Path picture() throws IOException {
        BufferedImage image = new BufferedImage(1200, 800, BufferedImage.TYPE_INT_RGB);
        Graphics2D ink = image.createGraphics();
        ink.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        ink.setColor(new Color(0xe8, 0xe4, 0xda));
        ink.fillRect(0, 0, 1200, 800);
        ink.setColor(Color.DARK_GRAY);
        for (int mm = 0; mm <= 100; mm++) {
            ink.fillRect(100 + 10 * mm - 1, 700, 2, mm % 10 == 0 ? 60 : 30);
        }
        ink.fillRect(100, 100, 500, 200);
        ink.setStroke(new BasicStroke(6));
        ink.draw(new Line2D.Double(700, 500, 1000, 500));
        ink.draw(new Line2D.Double(
                700,
                500,
                700 + 300 * StrictMath.cos(StrictMath.toRadians(30)),
                500 - 300 * StrictMath.sin(StrictMath.toRadians(30))));
        ink.dispose();
        Path file = folder.resolve("bar.png");
        ImageIO.write(image, "png", file.toFile());
        return file;
    }

    @Test
    void aLengthAndAnAngleAreMeasuredByMouseAndKept() throws IOException {
        browser.size(1440);
        choosePicture("impact", "I1");
        press("Set its two ends");
        tap(100, 700);
        tap(1100, 700);
        browser.seen(By.id("distance")).sendKeys("100");
        browser.seen(By.id("known")).sendKeys("0.3");
        until(() -> found("scale-found").contains("One pixel shows 0.1 mm"));
        press("A length");
        tap(350, 100);
        tap(350, 300);
        until(() -> !values().isEmpty() && values().get(0).startsWith("20.0"));
        press("Look again");
        tap(420, 100);
        tap(420, 300);
        until(() -> figure(0).contains("Mean of 2 looks"));
        press("An angle");
        tap(1000, 500);
        tap(700, 500);
        tap(960, 350);
        until(() -> values().size() == 2 && values().get(1).startsWith("29.9")
                || values().size() == 2 && values().get(1).startsWith("30"));
        browser.picture("picture-1440");
        keep(0, "thickness_mm");
        until(() -> status(0).contains("is kept as"));
        TypedTest.Cell cell = cell("impact", "I1", "thickness_mm");
        assertThat(Double.parseDouble(cell.text())).isCloseTo(20, within(0.1));
        assertThat(cell.picture().orElseThrow().share()).isCloseTo(0.003, within(3e-4));
        keep(1, "rise_angle_deg");
        until(() -> status(1).contains("is kept as"));
        assertThat(Double.parseDouble(cell("impact", "I1", "rise_angle_deg").text()))
                .isCloseTo(30, within(0.2));
        press("Undo");
        until(() -> cell("impact", "I1", "thickness_mm").isBlank());
        assertThat(browser.serious()).isEmpty();
        browser.size(1440, Browser.Light.DARK);
        assertThat(browser.serious()).isEmpty();
        browser.size(1440);
    }

    @Test
    void aPlaceIsSetAndMovedByKeysAlone() throws IOException {
        browser.size(1440);
        choosePicture("impact", "I1");
        press("An angle");
        for (int i = 0; i < 3; i++) {
            press("Put a place in the middle");
            WebElement spot = browser.driver().switchTo().activeElement();
            Keys to = List.of(Keys.ARROW_RIGHT, Keys.ARROW_UP, Keys.ARROW_LEFT).get(i);
            for (int times = 0; times < 10; times++) {
                spot.sendKeys(Keys.chord(Keys.SHIFT, to));
                spot = browser.driver().switchTo().activeElement();
            }
        }
        // From 100 right of the middle over 100 above it to 100 left of it: a right angle.
        until(() -> !values().isEmpty() && values().get(0).startsWith("90.0"));
        assertThat(browser.seen(By.id("glass")).isDisplayed()).isTrue();
        visit("impact", "I1");
        browser.seen(By.id("file")).sendKeys(folder.resolve("bar.png").toString());
        until(() -> !values().isEmpty() && values().get(0).startsWith("90.0"));
    }

    @Test
    void aCameraThatStayedHasTheScaleOfThePictureBefore() throws IOException {
        browser.size(1440);
        choosePicture("impact", "I1");
        press("Set its two ends");
        tap(100, 700);
        tap(1100, 700);
        type("distance", "100");
        until(() -> found("scale-found").contains("One pixel shows 0.1 mm"));
        Path second = Files.copy(folder.resolve("bar.png"), folder.resolve("second.png"));
        browser.seen(By.id("file")).sendKeys(second.toString());
        until(() -> found("scale-found").isEmpty());
        new Select(browser.seen(By.id("specimen"))).selectByVisibleText("I2");
        press("Use the scale of bar.png again");
        until(() -> found("scale-found").contains("One pixel shows 0.1 mm"));
        press("A length");
        tap(350, 100);
        tap(350, 300);
        until(() -> !values().isEmpty());
        keep(0, "thickness_mm");
        until(() -> status(0).contains("is kept as"));
        TypedTest.Cell cell = cell("impact", "I2", "thickness_mm");
        assertThat(cell.picture().orElseThrow().scale().orElseThrow()).endsWith("of bar.png");
        assertThat(cell.picture().orElseThrow().file()).isEqualTo("second.png");
    }

    @Test
    void aThumbSetsPlacesUnderAMagnifier() throws IOException {
        for (int width : List.of(320, 390)) {
            browser.size(width);
            choosePicture("impact", "I2");
            press("Set its two ends");
            tap(100, 700);
            tap(1100, 700);
            browser.seen(By.id("distance")).sendKeys("100");
            until(() -> found("scale-found").contains("One pixel"));
            press("A length");
            hold(350, 100);
            assertThat(browser.seen(By.id("glass")).isDisplayed()).isTrue();
            if (width == 390) {
                browser.picture("picture-thumb-390");
            }
            letGo();
            tap(350, 300);
            until(() -> !values().isEmpty());
            assertThat(browser.scrollWidth()).isLessThanOrEqualTo(width);
            assertThat(browser.serious()).isEmpty();
            browser.picture("picture-" + width);
        }
    }

    @Test
    void aFilmOfABarThatSagsGivesItsOnsetItsDropAndItsCurve() throws IOException {
        browser.size(1440);
        visit("oven", "O1");
        makeFilm(60);
        until(() -> found("frame").startsWith("frame 0"));
        type("rate", "25" + Keys.TAB);
        note("clock", "10:00:00");
        note("thermometer", "20.0");
        step("+10", 5);
        until(() -> found("frame").equals("frame 50, 2.00 s"));
        note("clock", "10:50:00");
        note("thermometer", "70,0");
        until(() -> found("clock-found").contains("one second of film is 1500 s of the clock"));
        step("−10", 2);
        until(() -> found("frame").startsWith("frame 30,"));
        mark("last straight");
        browser.driver().findElement(By.id("pane")).sendKeys(Keys.ARROW_RIGHT);
        until(() -> found("frame").startsWith("frame 31,"));
        mark("first sagging");
        until(() -> browser.all("#marked > li").size() == 2);
        until(() -> found("marked").contains("10:31:00"));
        keepMark(0, "onset_from_C");
        keepMark(1, "onset_to_C");
        assertThat(Double.parseDouble(cell("oven", "O1", "onset_from_C").text()))
                .isCloseTo(50, within(0.05));
        assertThat(Double.parseDouble(cell("oven", "O1", "onset_to_C").text()))
                .isCloseTo(51, within(0.05));
        press("Set its two ends");
        tap(100, 300);
        tap(600, 300);
        type("distance", "100");
        step("+10", 1);
        until(() -> found("frame").startsWith("frame 41,"));
        press("A height over a line");
        tap(100, 120);
        tap(300, 120);
        tap(500, tipAt(41));
        // 11 frames of 3 px, 0.2 mm each.
        until(() -> !values().isEmpty() && values().get(0).startsWith("6.60"));
        assertThat(lowestInk(500))
                .as("the frame that is shown")
                .isCloseTo(tipAt(41) + 30, within(2.5));
        followTheTip();
        until(() -> found("curve").contains("11 rows, from 20 to 70"));
        browser.picture("film-1440");
        press("Keep it as the curve of O1");
        until(() -> found("curve").contains("is kept as that of O1"));
        press("Keep a small still");
        until(() -> found("still-found").startsWith("Kept beside O1: frame 50 at 2.000 s"));
        assertThat(specimen("oven", "O1").photos().get(0).words())
                .isEqualTo("frame 50 at 2.000 s of oven.webm");
        assertThat(browser.serious()).isEmpty();
        browser.size(390, Browser.Light.DARK);
        assertThat(browser.serious()).isEmpty();
        assertThat(browser.scrollWidth()).isLessThanOrEqualTo(390);
        browser.size(390);
        browser.picture("film-390");
        Yield onset = onset("O1");
        assertThat(onset)
                .isInstanceOfSatisfying(
                        Yield.Fitted.class,
                        fitted -> assertThat(fitted.value()).isCloseTo(50, within(2.0)));
    }

    @Test
    void theRateOfAFilmIsFoundByPlayingIt() throws IOException {
        browser.size(390);
        visit("oven", "O2");
        makeFilm(60);
        until(() -> found("frame").startsWith("frame 0"));
        press("Find it by playing");
        until(() -> found("task").contains("25 frames a second"));
        assertThat(browser.driver().findElement(By.id("rate")).getDomProperty("value"))
                .isEqualTo("25");
    }

    @Test
    void aFileThatIsNoPictureIsToldBesideTheField() throws IOException {
        browser.size(390);
        visit("oven", "O1");
        Path notes = Files.writeString(folder.resolve("notes.png"), "no picture");
        browser.seen(By.id("file")).sendKeys(notes.toString());
        assertThat(browser.seen("#unread").getText())
                .startsWith("This browser can't show notes.png");
    }

    /** The tip's row on a frame, as the film is drawn: 3 px a frame from frame 30 on. */
    private static double tipAt(int frame) {
        return 120 + 3 * Math.max(0, frame - 30);
    }

    private void makeFilm(int frames) throws IOException {
        browser.seen(By.id("file"));
        try (InputStream script = PicturesInBrowserTest.class.getResourceAsStream("made-film.js")) {
            assertThat(script).isNotNull();
            String words = new String(script.readAllBytes(), UTF_8);
            browser.driver().executeAsyncScript(words, frames, 25, 30, 3);
        }
        browser.seen(By.id("filmed"));
    }

    /** Returns the lowest dark row of a column above the ruler, as the video shows it now. */
    private static double lowestInk(int column) {
        Object row = browser.driver().executeScript("""
                const film = document.getElementById("film");
                const canvas = Object.assign(document.createElement("canvas"), { width: 640, height: 360 });
                const context = canvas.getContext("2d");
                context.drawImage(film, 0, 0);
                const column = context.getImageData(arguments[0], 0, 1, 290).data;
                for (let y = 289; y > 0; y--) {
                    if (column[4 * y] < 120) {
                        return y;
                    }
                }
                return -1;
                """, column);
        return ((Number) Objects.requireNonNull(row)).doubleValue();
    }

    private void followTheTip() {
        step("−10", 5);
        until(() -> found("frame").startsWith("frame 0,"));
        type("stride", "5");
        press("Follow the tip");
        for (int frame = 0; frame <= 50; frame += 5) {
            String now = "frame " + frame + ",";
            until(() -> found("frame").startsWith(now));
            tap(500, tipAt(frame));
        }
        press("Stop");
        step("−1", 5);
        until(() -> found("frame").startsWith("frame 50,"));
    }

    private static void type(String id, String text) {
        WebElement field = browser.seen(By.id(id));
        field.clear();
        field.sendKeys(text);
    }

    private void note(String kind, String shows) {
        type(kind, shows);
        By button = By.cssSelector("[data-note=%s]".formatted(kind));
        until(() -> {
            if (found(kind + "-noted").contains(shows)) {
                return true;
            }
            // A frame that is still being sought takes no note; a person presses again.
            browser.click(browser.driver().findElement(button));
            return false;
        });
    }

    private void mark(String what) {
        new Select(browser.seen(By.id("what"))).selectByValue(what);
        press("Mark this frame");
    }

    private static void step(String words, int times) {
        for (int i = 0; i < times; i++) {
            String before = found("frame");
            browser.press(words);
            until(() -> !found("frame").equals(before));
        }
    }

    private void keepMark(int number, String column) {
        WebElement row = browser.all("#marked > li").get(number);
        WebElement form = row.findElement(By.tagName("form"));
        WebElement select = form.findElement(By.tagName("select"));
        assertThat(new Select(select).getFirstSelectedOption().getDomProperty("value"))
                .as("a column that suits the mark is chosen")
                .isEqualTo(column);
        browser.click(form.findElement(By.tagName("button")));
        until(() -> form.getText().contains("is kept as"));
    }

    private TypedTest.Specimen specimen(String method, String code) {
        return rig.served()
                .workspace()
                .typing()
                .test(rig.study(), method)
                .specimen(code)
                .orElseThrow();
    }

    private Yield onset(String code) {
        return rig
                .served()
                .workspace()
                .typing()
                .result(rig.study(), "oven", code)
                .result()
                .yields()
                .entrySet()
                .stream()
                .filter(it -> it.getKey().name().equals("onset_temperature"))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
    }

    private void choosePicture(String method, String specimen) throws IOException {
        visit(method, specimen);
        browser.seen(By.id("file")).sendKeys(picture().toString());
        browser.seen("#places");
        until(() -> browser.seen("#plate").getSize().getWidth() > 100);
    }

    private void visit(String method, String specimen) {
        browser.visit(rig.served().uri(Links.picture(Links.rig(rig.study(), method), specimen)));
    }

    /** Taps a place of the picture, wherever the page shows it. */
    private void tap(double x, double y) {
        hold(x, y);
        letGo();
    }

    private void hold(double x, double y) {
        pointer("pointerdown", x, y);
    }

    private void letGo() {
        pointer("pointerup", 0, 0);
    }

    /** Pointer events as a finger or a mouse makes them, at a place of the picture. */
    private void pointer(String event, double x, double y) {
        browser.driver().executeScript("""
                const svg = document.getElementById("places");
                svg.setPointerCapture = () => {};
                const box = svg.getBoundingClientRect();
                const whole = svg.viewBox.baseVal;
                svg.dispatchEvent(new PointerEvent(arguments[0], { bubbles: true, cancelable: true, pointerId: 1,
                    clientX: box.left + arguments[1] / whole.width * box.width,
                    clientY: box.top + arguments[2] / whole.height * box.height }));
                """, event, x, y);
    }

    private void press(String words) {
        browser.press(words);
    }

    private List<String> values() {
        return browser.all("#found .value").stream().map(WebElement::getText).toList();
    }

    private String figure(int number) {
        return browser.all("#found > li").get(number).getText();
    }

    private static String found(String id) {
        return browser.driver().findElement(By.id(id)).getText();
    }

    private void keep(int number, String column) {
        WebElement row = browser.all("#found > li").get(number);
        new Select(row.findElement(By.tagName("select"))).selectByValue(column);
        browser.click(row.findElement(By.cssSelector("form button")));
    }

    private String status(int number) {
        return browser.all("#found > li")
                .get(number)
                .findElement(By.cssSelector("form [role=status]"))
                .getText();
    }

    private TypedTest.Cell cell(String method, String specimen, String column) {
        return specimen(method, specimen).cells().get(column);
    }

    private static void until(BooleanSupplier seen) {
        browser.patience().until(driver -> seen.getAsBoolean());
    }
}
