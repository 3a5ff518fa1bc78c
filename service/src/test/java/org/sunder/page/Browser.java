package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.TimeoutException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.springframework.util.FileSystemUtils;
import org.sunder.Patience;

/**
 * A real browser, as a phone would be. Where the machine has none, tests that ask for one are skipped and say so; with
 * SUNDER_BROWSER=required they fail instead.
 */
final class Browser implements AutoCloseable {

    static final int PHONE = 390;
    static final int DESK = 1280;

    private static final Path CHROMIUM = path("SUNDER_CHROMIUM", "/usr/bin/chromium");
    private static final Path DRIVER = path("SUNDER_CHROMEDRIVER", "/usr/bin/chromedriver");
    private static final Path SCREENSHOTS = Path.of("target", "screenshots");
    private static final boolean IN_CI = "true".equals(System.getenv("CI"));
    private static final Duration GLANCE = Duration.ofMillis(40); // between two looks at a page
    private static final Duration LOOK = Duration.ofSeconds(1); // between two looks whether anything moves

    private static final Logger DRIVER_LOG = Logger.getLogger("org.openqa.selenium");

    static {
        DRIVER_LOG.setLevel(Level.SEVERE); // it warns of devtools that are not used here
    }

    private static @Nullable Browser shared;

    private final ChromeDriver driver;
    private boolean mine;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    private static Path path(String variable, String usual) {
        String given = System.getenv(variable);
        return Path.of(given == null ? usual : given);
    }

    /** Skips the calling test, or fails it, where there is no browser. */
    static void need() {
        boolean there = Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER);
        String message = "no browser at " + CHROMIUM + " with its driver at " + DRIVER + " (.ci/browser installs them)";
        if (!there && "required".equals(System.getenv("SUNDER_BROWSER"))) {
            throw new AssertionError(message);
        }
        Assumptions.assumeTrue(there, message);
    }

    /**
     * The browser that tests share, as wide as a phone. Each has a {@link Weather} of its own and thereby an origin of its
     * own, whose stores are empty; field.test is a name of the machine that is no secure context.
     */
    static synchronized Browser shared() {
        if (shared == null) {
            Path profile = Path.of("target", "browser-" + System.nanoTime());
            Browser opened = open(profile, "--host-resolver-rules=MAP field.test 127.0.0.1");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> {
                opened.close();
                forget(profile);
            }));
            opened.mine = true;
            shared = opened;
        }
        shared.likeNew();
        return shared;
    }

    /** The browser may write on for a moment after it was told to go. */
    private static void forget(Path profile) {
        for (int i = 0; i < 20 && Files.exists(profile); i++) {
            try {
                Thread.sleep(100);
                FileSystemUtils.deleteRecursively(profile);
            } catch (IOException | InterruptedException e) {
                // once more
            }
        }
    }

    private void likeNew() {
        List<String> tabs = List.copyOf(driver.getWindowHandles());
        for (String tab : tabs.subList(1, tabs.size())) {
            driver.switchTo().window(tab).close();
        }
        driver.switchTo().window(tabs.get(0));
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of(), "media", ""));
        width(PHONE);
        driver.get("about:blank");
        blocked();
    }

    /**
     * Opens a browser of a phone's width.
     *
     * @param profile folder of its memory, which a later browser may open again
     * @param more further switches
     */
    static Browser open(Path profile, String... more) {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM.toString());
        options.addArguments("--headless=new", "--no-sandbox", "--disable-dev-shm-usage", "--hide-scrollbars");
        options.addArguments("--disable-component-update", "--disable-background-networking", "--no-first-run");
        options.addArguments("--user-data-dir=" + profile.toAbsolutePath());
        options.addArguments(more);
        options.setPageLoadTimeout(Patience.LAST_NET);
        options.setScriptTimeout(Patience.LAST_NET);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .usingAnyFreePort()
                .build();
        Browser browser = new Browser(new ChromeDriver(service, options));
        browser.width(PHONE);
        return browser;
    }

    boolean isShared() {
        return mine;
    }

    WebDriver driver() {
        return driver;
    }

    void width(int pixels) {
        driver.manage().window().setSize(new Dimension(pixels, 844));
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", pixels, "height", 844, "deviceScaleFactor", 1, "mobile", false));
    }

    /** Sets what the system prefers, such as prefers-color-scheme: dark. */
    void prefer(String feature, String value) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia", Map.of("features", List.of(Map.of("name", feature, "value", value))));
    }

    /** Lays pages out as on a medium, such as print; the empty word is the screen again. */
    void medium(String medium) {
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", medium));
    }

    Browser go(String url) {
        driver.get(url);
        return this;
    }

    WebElement find(String css) {
        return until(
                css,
                d -> d.findElements(By.cssSelector(css)).stream().findFirst().orElse(null));
    }

    List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    void click(String css) {
        on(css, WebElement::click);
    }

    /** Presses "Send now", unless what waited has been sent by itself before the finger was there. */
    void sendWhatWaits() {
        until("Send now", d -> {
            List<WebElement> buttons = all("#unsent button");
            if (!buttons.isEmpty()) {
                buttons.get(0).click();
                return true;
            }
            return d.findElement(By.id("unsent")).getText().contains("Nothing waits") ? true : null;
        });
    }

    /** Replaces what an input holds. */
    void type(String css, String text) {
        on(css, input -> {
            input.clear();
            input.sendKeys(text);
        });
    }

    String text(String css) {
        return until("text of " + css, d -> d.findElement(By.cssSelector(css)).getText());
    }

    String value(String css) {
        return until("value of " + css, d -> d.findElement(By.cssSelector(css)).getDomProperty("value"));
    }

    /** A list may be drawn anew at any time, so an element that went stale is looked for again. */
    private void on(String css, Consumer<WebElement> action) {
        until("a place to act: " + css, d -> {
            WebElement element = d.findElement(By.cssSelector(css));
            driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
            action.accept(element);
            return true;
        });
    }

    /** Waits until an element says something. */
    void says(String css, String words) {
        until(
                css + " says " + words,
                d -> d.findElements(By.cssSelector(css)).stream()
                                .anyMatch(e -> e.getText().contains(words))
                        ? true
                        : null);
    }

    /** Waits until a condition has a value, for as long as the page or what it asked for moves. */
    <T> T until(String what, Function<WebDriver, @Nullable T> condition) {
        Patience patience = new Patience(this::movement);
        Instant looked = Instant.now();
        WebDriverException last = null;
        while (true) {
            try {
                T value = condition.apply(driver);
                if (value != null) {
                    return value;
                }
            } catch (WebDriverException e) {
                last = e;
            }
            if (Duration.between(looked, Instant.now()).compareTo(LOOK) > 0) {
                looked = Instant.now();
                if (!patience.lasts()) {
                    throw new TimeoutException(what + "; the page says: " + shown(), last);
                }
            }
            sleep();
        }
    }

    private static void sleep() {
        try {
            Thread.sleep(GLANCE.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** Where the page is, how much stands on it, and what it asked for. */
    private List<Object> movement() {
        Object page;
        try {
            page = driver.executeScript(
                    "return location.href + ' ' + document.readyState + ' '"
                            + " + document.documentElement.innerHTML.length + ' ' + performance.getEntriesByType('resource').length");
        } catch (WebDriverException e) {
            page = ""; // between two pages
        }
        return List.of(String.valueOf(page), Weather.movement());
    }

    private String shown() {
        try {
            return driver.findElement(By.tagName("body")).getText();
        } catch (WebDriverException e) {
            return e.getMessage();
        }
    }

    Object script(String code, Object... values) {
        return driver.executeScript(code, values);
    }

    Object later(String code, Object... values) {
        return driver.executeAsyncScript(code, values);
    }

    /** Writes the whole page as a picture to target/screenshots; not in CI, where nobody looks at it and it takes a fifth of a second. */
    void picture(String name) {
        if (IN_CI) {
            return;
        }
        Number height = (Number) script("return document.documentElement.scrollHeight");
        Number width = (Number) script("return window.innerWidth");
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of(
                        "width",
                        width.intValue(),
                        "height",
                        Math.max(844, height.intValue()),
                        "deviceScaleFactor",
                        1,
                        "mobile",
                        false));
        byte[] png = driver.getScreenshotAs(OutputType.BYTES);
        width(width.intValue());
        try {
            Files.createDirectories(SCREENSHOTS);
            Files.write(SCREENSHOTS.resolve(name + ".png"), png);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        assertThat(png).isNotEmpty();
    }

    /** What the window shows of a page, without what must be scrolled to. */
    byte[] view() {
        return driver.getScreenshotAs(OutputType.BYTES);
    }

    /** The page as it prints on a paper of that size in inches. */
    byte[] printed(double width, double height) {
        Map<String, Object> answer = driver.executeCdpCommand(
                "Page.printToPDF", Map.of("paperWidth", width, "paperHeight", height, "preferCSSPageSize", false));
        return Base64.getDecoder().decode(String.valueOf(answer.get("data")));
    }

    /** Everything that the browser's console complains of, since it was last asked. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }

    /** What the browser blocked because a page's policy forbids it, since this was last asked. */
    List<String> blocked() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .filter(message -> message.contains("Content Security Policy"))
                .toList();
    }

    /** Ends the browser at once, as an empty battery would. */
    void kill() {
        try {
            driver.executeCdpCommand("Browser.crash", Map.of());
        } catch (WebDriverException expected) {
            // it cannot answer any more
        }
        close();
    }

    @Override
    public void close() {
        try {
            driver.quit();
        } catch (WebDriverException e) {
            // it is gone already
        }
    }
}
