package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Chromium without a window, at a width that a test chooses. */
record Browser(ChromeDriver driver, WebDriverWait patience, String axe) implements AutoCloseable {

    private static final int HEIGHT = 900;

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

    static Browser open() {
        ChromeOptions options = new ChromeOptions().addArguments(ARGUMENTS);
        options.setBinary(System.getProperty("twinbar.browser", "/usr/bin/chromium"));
        ChromeDriverService.Builder service = new ChromeDriverService.Builder();
        String path = System.getenv("PATH");
        for (String bin : path == null ? new String[0] : path.split(File.pathSeparator)) {
            File found = new File(bin, "chromedriver");
            if (found.canExecute()) {
                service.usingDriverExecutable(found);
                break;
            }
        }
        ChromeDriver driver = new ChromeDriver(service.usingAnyFreePort().build(), options);
        try (InputStream script = Browser.class.getResourceAsStream("/axe.min.js")) {
            assertThat(script).isNotNull();
            WebDriverWait patience = new WebDriverWait(driver, Duration.ofSeconds(30));
            // A script may put a part of the page anew between finding it and reading it.
            patience.ignoring(StaleElementReferenceException.class);
            return new Browser(
                    driver, patience, new String(script.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** How a person wants colours. */
    enum Light {
        LIGHT,
        DARK;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    void size(int width) {
        size(width, Light.LIGHT);
    }

    void size(int width, Light light) {
        // A page that scrolls slowly moves buttons away from under the pointer.
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of(
                        "features",
                        List.of(
                                Map.of("name", "prefers-reduced-motion", "value", "reduce"),
                                Map.of("name", "prefers-color-scheme", "value", light.word()))));
        metrics(width, HEIGHT);
    }

    void visit(URI page) {
        driver.get(page.toString());
    }

    /** Presses a button; where a part of the page was just exchanged, the button that came. */
    void press(String words) {
        By button = By.xpath("//button[normalize-space()='%s']".formatted(words));
        patience.until(driver -> {
            try {
                click(seen(button));
                return true;
            } catch (WebDriverException e) {
                return retry(e);
            }
        });
    }

    /** Waits for words, in whatever part of the page comes to stand there. */
    void untilText(String selector, String words) {
        patience.until(driver -> {
            try {
                return all(selector).stream().anyMatch(it -> it.getText().contains(words));
            } catch (WebDriverException e) {
                return retry(e);
            }
        });
    }

    /** Returns false where the element was exchanged before it was used; else throws. */
    private static boolean retry(WebDriverException e) {
        if (e instanceof StaleElementReferenceException
                || String.valueOf(e.getMessage()).contains("not belong to the document")) {
            return false;
        }
        throw e;
    }

    /** Clicks in the middle of the page, where nothing lies over it. */
    void click(WebElement element) {
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
        element.click();
    }

    WebElement seen(By by) {
        return patience.until(ExpectedConditions.visibilityOfElementLocated(by));
    }

    WebElement seen(String selector) {
        return seen(By.cssSelector(selector));
    }

    List<WebElement> all(String selector) {
        return driver.findElements(By.cssSelector(selector));
    }

    /** Returns what axe calls serious or worse, a line each. */
    List<String> serious() {
        driver.executeScript(axe);
        Object found = driver.executeAsyncScript("""
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

    long scrollWidth() {
        Object width = driver.executeScript("return document.documentElement.scrollWidth");
        return ((Number) Objects.requireNonNull(width)).longValue();
    }

    /** Writes the whole page as a picture below {@code target/screens}, to be looked at. */
    void picture(String name) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "screens"));
        Files.write(folder.resolve(name + ".png"), whole(Integer.MAX_VALUE));
    }

    /**
     * Returns the page as a picture, down to its end.
     *
     * @param longest in pixels; what is longer is cut off
     */
    byte[] whole(int longest) {
        int height = number("return document.documentElement.scrollHeight");
        int width = number("return innerWidth");
        metrics(width, Math.min(longest, height));
        byte[] picture = driver.getScreenshotAs(OutputType.BYTES);
        metrics(width, HEIGHT);
        return picture;
    }

    private int number(String script) {
        Object number = driver.executeScript(script);
        return ((Number) Objects.requireNonNull(number)).intValue();
    }

    private void metrics(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of(
                        "width",
                        width,
                        "height",
                        height,
                        "deviceScaleFactor",
                        1,
                        "mobile",
                        width < 700));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
