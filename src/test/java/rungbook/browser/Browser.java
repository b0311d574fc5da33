package rungbook.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.StreamSupport;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * Debian's Chromium, driven headless. It has to be installed: {@code apt-get install chromium chromium-driver}. A test
 * without
 * it fails and says so; it is never skipped.
 */
public final class Browser implements AutoCloseable {

  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

  static {
    // the driver's own commands are used, not the versioned ones that it misses here
    Logger.getLogger("org.openqa.selenium").setLevel(Level.SEVERE);
  }

  // a loaded machine takes its time; a wait ends as soon as it can
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  /** Between two looks. The driver's own half a second is most of what a test waits. */
  private static final Duration LOOK_AGAIN = Duration.ofMillis(30);

  /** The script of axe-core. */
  private static final String AXE = axe();

  /**
   * Its rule for 7:1 passes everything in this version, so its rule for 4.5:1 is set to 7. Only violations come back,
   * each as a line: what passes fills megabytes, and they cost more time than the analysis.
   */
  private static final String ANALYSIS = """
      const [withContrast, done] = arguments;
      const least = { expected: 7 };
      axe.configure({ checks: [{ id: 'color-contrast', options: { contrastRatio: { normal: least, large: least } } }] });
      axe.run({
        runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
        rules: { 'color-contrast': { enabled: withContrast } },
        resultTypes: ['violations']
      }).then(results => done(results.violations.map(rule => rule.id + ': '
        + rule.nodes.map(node => node.html).join(' | '))), failed => done(['axe-core failed: ' + failed]));""";

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /** The colors that the system asks for. */
  public enum Scheme { LIGHT, DARK }

  public static Browser start() {
    return start(options());
  }

  /** With a profile that outlives it, as a phone keeps what pages have stored. */
  public static Browser startIn(Path profile) {
    return start(options().addArguments("--user-data-dir=" + profile));
  }

  private static Browser start(ChromeOptions options) {
    if (!Files.isExecutable(CHROMIUM) || !Files.isExecutable(DRIVER)) {
      throw new IllegalStateException("browser tests need Chromium: apt-get install chromium chromium-driver");
    }
    var service = new ChromeDriverService.Builder().usingDriverExecutable(DRIVER.toFile()).usingAnyFreePort().build();
    var driver = new ChromeDriver(service, options);
    driver.manage().timeouts().scriptTimeout(PATIENCE);
    return new Browser(driver);
  }

  private static ChromeOptions options() {
    var logs = new LoggingPreferences();
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    logs.enable(LogType.BROWSER, Level.ALL);
    var options = new ChromeOptions();
    options.setBinary(CHROMIUM.toFile());
    options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
    return options.addArguments("--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
        "--hide-scrollbars", "--disable-ipc-flooding-protection",
        "--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-dev-shm-usage");
  }

  /** Goes on in a new tab without the size, colors and switches of the old one, and closes that: as quick as a page. */
  public Browser freshTab() {
    String old = driver.getWindowHandle();
    driver.switchTo().newWindow(WindowType.TAB);
    String fresh = driver.getWindowHandle();
    driver.switchTo().window(old);
    driver.close();
    driver.switchTo().window(fresh);
    return this;
  }

  public ChromeDriver driver() {
    return driver;
  }

  public Browser open(String url) {
    driver.get(url);
    return this;
  }

  public Browser open(Path file) {
    return open(file.toUri().toString());
  }

  /** In CSS pixels, as a phone or a desk screen would have it; narrower than a desk window can be made. */
  public Browser size(int width, int height) {
    cdp("Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 768));
    return this;
  }

  public Browser scheme(Scheme scheme) {
    return media("", scheme);
  }

  /** As on paper. */
  public Browser print() {
    return media("print", Scheme.LIGHT);
  }

  private Browser media(String medium, Scheme scheme) {
    var feature = Map.of("name", "prefers-color-scheme", "value", scheme.name().toLowerCase(java.util.Locale.ROOT));
    cdp("Emulation.setEmulatedMedia", Map.of("media", medium, "features", List.of(feature)));
    return this;
  }

  /** The page's own scripts no longer run; the test's still do. */
  public Browser scriptsOff() {
    cdp("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    return this;
  }

  public Browser scriptsOn() {
    cdp("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    return this;
  }

  public Browser networkCut() {
    cdp("Network.enable", Map.of());
    cdp("Network.emulateNetworkConditions",
        Map.of("offline", true, "latency", 0, "downloadThroughput", 0, "uploadThroughput", 0));
    return this;
  }

  /** @param factor how many times slower the processor is made to be; 1 for its own speed */
  public Browser slowedBy(int factor) {
    cdp("Emulation.setCPUThrottlingRate", Map.of("rate", factor));
    return this;
  }

  public Map<String, Object> cdp(String command, Map<String, Object> parameters) {
    return driver.executeCdpCommand(command, parameters);
  }

  /** The first such element, waited for up to a minute. */
  public WebElement find(String css) {
    return patiently().until(any -> driver.findElement(By.cssSelector(css)));
  }

  public List<WebElement> all(String css) {
    return driver.findElements(By.cssSelector(css));
  }

  /** The elements that a person can see now. */
  public List<WebElement> visible(String css) {
    return all(css).stream().filter(WebElement::isDisplayed).toList();
  }

  public Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** Waits until a script's expression is true, for a minute at most. What a page does not have yet is not true. */
  public Browser until(String expression) {
    String tried = "try { return !!(" + expression + "); } catch { return false; }";
    patiently().until(any -> Boolean.TRUE.equals(run(tried)));
    return this;
  }

  private WebDriverWait patiently() {
    return new WebDriverWait(driver, PATIENCE, LOOK_AGAIN);
  }

  /** How far the page can be scrolled sideways, in CSS pixels: 0 for a page that fits. */
  public long sidewaysPixels() {
    return (Long) run(
        "const e = document.documentElement; return Math.max(e.scrollWidth, document.body.scrollWidth) - "
            + "e.clientWidth");
  }

  /** The addresses asked for since the last call, pages themselves included; {@code data:} is none. */
  public List<String> requests() {
    return StreamSupport.stream(driver.manage().logs().get(LogType.PERFORMANCE).spliterator(), false)
        .map(entry -> entry.getMessage())
        .filter(message -> message.contains("\"Network.requestWillBeSent\""))
        .map(message -> message.replaceFirst("(?s).*?\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"))
        .filter(url -> !url.startsWith("data:"))
        .toList();
  }

  /** What the console complained about since the last call. */
  public List<String> complaints() {
    return StreamSupport.stream(driver.manage().logs().get(LogType.BROWSER).spliterator(), false)
        .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
        .map(entry -> entry.getMessage())
        .toList();
  }

  /**
   * What axe-core finds wrong, {@code rule: elements}; empty for a page without a violation. Text of any size needs a
   * contrast of 7:1.
   */
  public List<String> violations() {
    return violations(true);
  }

  /** The same without the contrast of text, which takes most of the time: for a page whose colors were looked at. */
  public List<String> violationsBesidesContrast() {
    return violations(false);
  }

  private List<String> violations(boolean withContrast) {
    run(AXE);
    return ((List<?>) driver.executeAsyncScript(ANALYSIS, withContrast)).stream().map(String::valueOf).toList();
  }

  private static String axe() {
    try (var script = Browser.class.getResourceAsStream("/axe.min.js")) {
      return new String(script.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A picture of what is on the screen, for a person to look at. */
  public Path screenshot(Path file) {
    return write(file, driver.getScreenshotAs(OutputType.BYTES));
  }

  /** The page as it would be printed, a PDF file. */
  public byte[] printed(double sheetWidthInches, double sheetHeightInches) {
    var printed = cdp("Page.printToPDF",
        Map.of("printBackground", false, "paperWidth", sheetWidthInches, "paperHeight", sheetHeightInches));
    return Base64.getDecoder().decode((String) printed.get("data"));
  }

  private static Path write(Path file, byte[] bytes) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      return Files.write(file, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** As when the battery is empty: nothing is told that it ends. */
  public void kill() {
    long browser = ((Number) driver.getCapabilities().getCapability("goog:processID")).longValue();
    ProcessHandle.of(browser).orElseThrow().destroyForcibly();
    try {
      driver.quit();
    } catch (WebDriverException expected) {
      // there is nobody left to end the session
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
