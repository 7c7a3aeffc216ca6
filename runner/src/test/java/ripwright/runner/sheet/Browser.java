package ripwright.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A Chromium without a window, as the operating system's packages have it. Where there is none, tests are skipped. */
final class Browser implements AutoCloseable {
    /** Where pictures and printouts go. */
    static final Path TO_LOOK_AT = Path.of("target/sheets");

    private static final List<String> WHERE = List.of("/usr/bin", "/usr/local/bin", "/snap/bin", "/opt/google/chrome");

    private static final Logger VERSIONS = Logger.getLogger("org.openqa.selenium.devtools");

    static {
        VERSIONS.setLevel(Level.SEVERE); // only commands that any version has are sent
    }

    private final ChromeDriver driver;

    /** With what it keeps in {@code profile} and what is saved in {@code downloads}. */
    Browser(Path profile, Path downloads) throws IOException {
        Files.createDirectories(TO_LOOK_AT);
        Optional<Path> browser = installed("chromium", "chromium-browser", "google-chrome");
        Optional<Path> steering = installed("chromedriver");
        assumeTrue(
                browser.isPresent() && steering.isPresent(),
                "no Chromium: install the packages chromium and chromium-driver to test the sheet in a browser");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.orElseThrow().toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox", // tests may run as root
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--lang=en-US",
                "--user-data-dir=" + profile);
        options.setExperimentalOption(
                "prefs",
                Map.of("download.default_directory", downloads.toString(), "download.prompt_for_download", false));
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(steering.orElseThrow().toFile())
                .usingAnyFreePort()
                .build();
        driver = new ChromeDriver(service, options);
    }

    private static Optional<Path> installed(String... names) {
        return Stream.of(names)
                .flatMap(name -> WHERE.stream().map(folder -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Opens a file as a person would, without a server. */
    void open(Path page) {
        driver.get(page.toUri().toString());
    }

    /** Shows pages on a screen so many pixels wide. */
    void width(int pixels) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", pixels, "height", 900, "deviceScaleFactor", 1, "mobile", pixels < 600));
    }

    WebElement find(String css) {
        return driver.findElement(By.cssSelector(css));
    }

    List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    void press(CharSequence... keys) {
        driver.switchTo().activeElement().sendKeys(keys);
    }

    void accept() {
        driver.switchTo().alert().accept();
    }

    Object run(String script, Object... arguments) {
        Object answer = driver.executeScript(script, arguments);
        assertThat(answer).as("what %s gives", script).isNotNull();
        return Objects.requireNonNull(answer);
    }

    /** All that the page and the browser complained about since this was last asked. */
    List<String> complaints() {
        return StreamSupport.stream(driver.manage().logs().get(LogType.BROWSER).spliterator(), false)
                .map(LogEntry::toString)
                .toList();
    }

    /** Prints the page as a person would, on paper of that size in inches; pages may ask to be turned sideways. */
    byte[] printed(double width, double height) {
        Map<String, Object> answer = driver.executeCdpCommand(
                "Page.printToPDF", Map.of("paperWidth", width, "paperHeight", height, "preferCSSPageSize", true));
        return Base64.getDecoder().decode(String.valueOf(answer.get("data")));
    }

    /** A picture of what is on the screen, to be looked at. */
    void picture(String name) throws IOException {
        Map<String, Object> answer = driver.executeCdpCommand("Page.captureScreenshot", Map.of("format", "png"));
        Files.write(TO_LOOK_AT.resolve(name + ".png"), Base64.getDecoder().decode(String.valueOf(answer.get("data"))));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
