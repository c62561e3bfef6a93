package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.scalepan.web.RunningScalepan;
import org.scalepan.web.http.WebJar;

/** Headless Chromium, as Debian packages it, driven without downloads. */
final class DrivenBrowser implements AutoCloseable {
    private static final File CHROMIUM = new File("/usr/bin/chromium");
    private static final File DRIVER = new File("/usr/bin/chromedriver");
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final Pattern REQUESTED = Pattern.compile("\"request\":\\{.*?\"url\":\"([^\"]+)\"");
    private static final String AXE =
            "/META-INF/resources/webjars/axe-core/" + WebJar.version("org.webjars.npm", "axe-core") + "/axe.min.js";

    private final ChromeDriver driver;
    private final Path downloads;

    /** Starts one; the test is skipped where Chromium is not installed. */
    DrivenBrowser() {
        RealClients.skipUnless(
                CHROMIUM.canExecute() && DRIVER.canExecute(),
                "needs a real Chromium: apt-get install chromium chromium-driver");
        try {
            this.downloads = Files.createTempDirectory("scalepan-downloads");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM);
        options.addArguments("--headless=new", "--no-sandbox", "--lang=en-GB", "--disable-dev-shm-usage");
        options.setCapability("goog:loggingPrefs", logs);
        options.setExperimentalOption(
                "prefs", Map.of("download.default_directory", downloads.toString(), "intl.accept_languages", "en-GB"));
        ChromeDriverService service =
                new ChromeDriverService.Builder().usingDriverExecutable(DRIVER).build();
        this.driver = new ChromeDriver(service, options);
        desk();
    }

    DrivenBrowser desk() {
        return sized(1280, 900);
    }

    DrivenBrowser phone() {
        return sized(360, 780);
    }

    private DrivenBrowser sized(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
        return this;
    }

    DrivenBrowser dark(boolean dark) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
        return this;
    }

    DrivenBrowser open(String address) {
        // Via an empty page, so that an address that differs only in its fragment is loaded too.
        driver.get("about:blank");
        driver.get(RunningScalepan.uri(address).toString());
        return this;
    }

    String address() {
        return driver.getCurrentUrl();
    }

    WebElement at(String css) {
        return driver.findElement(By.cssSelector(css));
    }

    List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    String text(String css) {
        return at(css).getText();
    }

    /** Types into the focused element. */
    void press(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    /** Replaces the text of the focused field. */
    void typeOver(String text) {
        new Actions(driver)
                .keyDown(Keys.CONTROL)
                .sendKeys("a")
                .keyUp(Keys.CONTROL)
                .sendKeys(text)
                .perform();
    }

    WebElement focused() {
        return driver.switchTo().activeElement();
    }

    ChromeDriver driver() {
        return driver;
    }

    Object run(String script, Object... given) {
        return ((JavascriptExecutor) driver).executeScript(script, given);
    }

    /** Waits until a condition holds; fails with its description. */
    void await(String what, Supplier<Boolean> so) {
        new WebDriverWait(driver, PATIENCE)
                .withMessage(() -> what + "; the page says "
                        + all("main").stream().map(WebElement::getText).toList())
                .ignoring(org.openqa.selenium.StaleElementReferenceException.class)
                .ignoring(org.openqa.selenium.NoSuchElementException.class)
                .until(ignored -> so.get());
    }

    /** Waits for a download by the end of its name, and returns its bytes. */
    byte[] download(String ending) {
        List<Path> found = new ArrayList<>();
        await("a download " + ending, () -> {
            try (var files = Files.list(downloads)) {
                found.clear();
                files.filter(file -> file.getFileName().toString().endsWith(ending))
                        .forEach(found::add);
                return !found.isEmpty() && Files.size(found.get(0)) > 0;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        try {
            byte[] bytes = Files.readAllBytes(found.get(0));
            Files.delete(found.get(0));
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Number of A4 pages in print. */
    int printedPages() {
        Map<String, Object> printed =
                driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", true));
        String pdf = new String(
                java.util.Base64.getDecoder().decode((String) printed.get("data")), StandardCharsets.ISO_8859_1);
        return (int) Pattern.compile("/Type /Page\\b").matcher(pdf).results().count();
    }

    /** Violations of axe-core's accessibility rules on the current page. axe-core itself writes to the console. */
    List<String> accessibilityFaults() {
        assertQuiet();
        run(resource(AXE) + "; return true;");
        driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(60));
        Object faults = driver.executeAsyncScript("const done = arguments[0];"
                + "axe.run(document, {resultTypes: ['violations']}).then(found => done(found.violations.flatMap("
                + "rule => rule.nodes.map(node => rule.id + ': ' + node.html.slice(0, 200) + ' ' + node.failureSummary))),"
                + " fault => done([String(fault)]));");
        List<String> texts = new ArrayList<>();
        ((List<?>) faults).forEach(fault -> texts.add(String.valueOf(fault)));
        driver.manage().logs().get(LogType.BROWSER);
        return texts;
    }

    /** The console is empty and no other host was called. */
    void assertQuiet() {
        List<String> said = driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
        assertEquals(List.of(), said, "console");
        List<String> elsewhere = new ArrayList<>();
        String own = RunningScalepan.uri("/").toString();
        for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
            if (!entry.getMessage().contains("\"Network.requestWillBeSent\"")) {
                continue;
            }
            Matcher matcher = REQUESTED.matcher(entry.getMessage());
            while (matcher.find()) {
                String url = matcher.group(1);
                if (!url.startsWith(own) && !url.startsWith("data:") && !url.startsWith("blob:")) {
                    elsewhere.add(url);
                }
            }
        }
        assertEquals(List.of(), elsewhere, "requests to others");
    }

    private static String resource(String name) {
        try (InputStream in = DrivenBrowser.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("there is no " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        driver.quit();
        try (var files = Files.walk(downloads)) {
            files.sorted(java.util.Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
