package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.http.RunningServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;

/**
 * The pictures of the tour in README. {@code -Dendfloat.tour=FOLDER} writes them there; without it
 * they go among the output of the tests.
 */
class TourPicturesTest {
  /** So that a reader on a slow line can look at them. */
  private static final int MOST_BYTES = 200_000;

  private static Browser browser;
  private static RunningServer server;

  @BeforeAll
  static void start() {
    browser = Browser.start();
    server = RunningServer.start(RunningServer.DEMONSTRATION);
    browser.open(server.link());
    browser.resize(1180, 720);
    browser.run("localStorage.setItem('endfloat.ink', 'paper')");
    browser.run("localStorage.setItem('endfloat.first-steps', 'away')");
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
    if (server != null) {
      server.close();
    }
  }

  private static void keep(String name) throws IOException {
    browser.run("return document.fonts.ready.then(() => true)");
    byte[] picture = browser.driver().getScreenshotAs(OutputType.BYTES);
    assertTrue(picture.length < MOST_BYTES, () -> name + " has " + picture.length + " bytes");
    Path folder = Path.of(System.getProperty("endfloat.tour", "target/pictures/tour"));
    Files.write(Files.createDirectories(folder).resolve(name + ".png"), picture);
  }

  private static void sheetAt(String clause) {
    browser.open(server.address("/sheet/w6-bevel-mesh"));
    browser.find("html[data-revision]");
    browser.run("document.querySelector('#clause-' + arguments[0]).scrollIntoView()", clause);
  }

  @Test
  void theFinding() throws IOException {
    sheetAt("c2");
    browser.run("scrollTo(0, 0)");
    keep("1-finding");
  }

  @Test
  void theReadings() throws IOException {
    sheetAt("c6");
    keep("2-readings");
  }

  @Test
  void theWorkingsAndVerdicts() throws IOException {
    sheetAt("c12");
    keep("3-workings");
  }

  @Test
  void whereAFigureComesFrom() throws IOException {
    browser.resize(1440, 600);
    sheetAt("c12");
    browser.run(
        "document.querySelector(\"[id='figure-hot_loosest'] .value\").focus();"
            + "document.querySelector('#clause-c12').scrollIntoView()");
    SheetWindow.of(browser).type("t");
    browser.find("#clause-c12 .trace");
    keep("4-origin");
    browser.resize(1180, 720);
  }

  @Test
  void aResultAgainstAnInput() throws IOException {
    sheetAt("c20");
    browser.find("#clause-c20 svg.chart");
    browser.run("document.querySelector('#clause-c20').scrollIntoView()");
    keep("6-chart");
  }

  @Test
  void theReference() throws IOException {
    browser.open(server.address("/reference/backlash_from_axial_shift"));
    browser.find("html[data-ready] .ref-clause");
    browser.await(driver -> driver.findElements(By.cssSelector(".put-in option")).size() > 1);
    keep("5-reference");
  }
}
