package endfloat.browser;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * A headless Chromium for one test class. Both executables are named, so that nothing is looked up
 * or fetched; where one is missing the tests are skipped and say so.
 */
public final class Browser implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(30);
  private static final Duration POLL = Duration.ofMillis(10);

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /** Starts one, or skips the test where Chromium or its driver is missing. */
  public static Browser start() {
    Optional<File> chromium =
        executable("ENDFLOAT_CHROMIUM", "chromium", "chromium-browser", "google-chrome");
    Optional<File> chromedriver = executable("ENDFLOAT_CHROMEDRIVER", "chromedriver");
    assumeTrue(
        chromium.isPresent() && chromedriver.isPresent(),
        "BROWSER TEST SKIPPED: no chromium with chromedriver on the PATH; ./check installs them as"
            + " root on Debian, or name them in ENDFLOAT_CHROMIUM and ENDFLOAT_CHROMEDRIVER");
    ChromeDriverService service =
        new ChromeDriverService.Builder().usingDriverExecutable(chromedriver.get()).build();
    return new Browser(new ChromeDriver(service, options(chromium.get())));
  }

  private static ChromeOptions options(File chromium) {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(chromium);
    // The sandbox does not start for root, as in most build containers; the rest keeps Chromium
    // from the network.
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--disable-features=OptimizationHints,MediaRouter,Translate",
        "--window-size=1440,1000");
    LoggingPreferences logging = new LoggingPreferences();
    logging.enable(LogType.BROWSER, java.util.logging.Level.ALL);
    options.setCapability(ChromeOptions.LOGGING_PREFS, logging);
    return options;
  }

  private static Optional<File> executable(String variable, String... names) {
    String named = System.getenv(variable);
    if (named != null && !named.isEmpty()) {
      return Optional.of(new File(named)).filter(File::canExecute);
    }
    List<File> found = new ArrayList<>();
    for (String name : names) {
      for (String folder : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1)) {
        File file = new File(folder, name);
        if (file.isFile() && file.canExecute()) {
          found.add(file);
        }
      }
    }
    return found.stream().findFirst();
  }

  /** The driver itself, for what this class does not offer. */
  public ChromeDriver driver() {
    return driver;
  }

  /** Opens an address and returns once the document is loaded. */
  public Browser open(String address) {
    driver.get(address);
    return this;
  }

  /** Waits until the condition gives something other than null and false. */
  public <T> T await(Function<ChromeDriver, T> condition) {
    WebDriverWait wait = new WebDriverWait(driver, PATIENCE);
    wait.pollingEvery(POLL);
    wait.ignoring(org.openqa.selenium.StaleElementReferenceException.class);
    wait.ignoring(org.openqa.selenium.NoSuchElementException.class);
    return wait.until(d -> condition.apply(driver));
  }

  /** The first element of a CSS selector, waited for. */
  public WebElement find(String selector) {
    return await(d -> d.findElement(By.cssSelector(selector)));
  }

  /** Waits until the element's text holds these words. */
  public void awaitText(String selector, String words) {
    try {
      await(d -> d.findElement(By.cssSelector(selector)).getText().contains(words));
    } catch (org.openqa.selenium.TimeoutException e) {
      throw new AssertionError(
          "waited for \"" + words + "\" in " + selector + ", found: " + textOrNothing(selector), e);
    }
  }

  private String textOrNothing(String selector) {
    List<WebElement> found = driver.findElements(By.cssSelector(selector));
    return found.isEmpty() ? "no such element" : '"' + found.get(0).getText() + '"';
  }

  /** Runs a script in the page. */
  public Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /** Size of the page in CSS pixels, also below the least width of a window. */
  public void resize(int width, int height) {
    driver.manage().window().setSize(new Dimension(width, height));
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /** Errors and violations of the content security policy since the last call. */
  public List<String> complaints() {
    List<String> complaints = new ArrayList<>();
    for (LogEntry entry : driver.manage().logs().get(LogType.BROWSER)) {
      if (entry.getLevel().intValue() >= java.util.logging.Level.WARNING.intValue()) {
        complaints.add(entry.getMessage());
      }
    }
    return complaints;
  }

  /** Keeps a picture of the window among the test's output, to be looked at. */
  public void picture(String name) {
    try {
      Path folder = Files.createDirectories(Path.of("target", "pictures"));
      Files.write(folder.resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    driver.quit();
  }
}
