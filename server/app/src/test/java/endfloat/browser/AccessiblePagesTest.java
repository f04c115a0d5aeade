package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import endfloat.http.RunningServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every page in both inks and at every width: no finding of axe-core, nothing wider than the
 * window.
 */
class AccessiblePagesTest {
  /** Clauses of the demonstration that are entered by fields. */
  private static final Map<String, String> FIELDS =
      Map.of("fits", "c42", "findings", "c43", "causes", "c45");

  private static final Map<String, String> PATHS =
      Map.of(
          "shelf", "/",
          "compare", "/compare?left=w6-bevel-mesh&right=other-engine",
          "rerun", "/rerun/w6-bevel-mesh",
          "reference", "/reference",
          "calculation", "/reference/stepped_shaft",
          "table", "/reference/tables/materials",
          "figure", "/how-a-figure-is-made");

  /** What stands on a page that is not a sheet once it is drawn. */
  private static final Map<String, String> READY =
      Map.of(
          "shelf", "html[data-ready] .register tbody tr",
          "compare", "html[data-ready] #compared tbody tr",
          "rerun", "html[data-ready] #rerun",
          "reference", "html[data-ready] .ref-list li",
          "calculation", "html[data-ready] .ref-clause",
          "table", "html[data-ready] .lookup tr",
          "figure", "html[data-ready] .made:not([hidden]) .lines");

  private static Browser browser;
  private static RunningServer server;

  @BeforeAll
  static void start() {
    browser = Browser.start();
    server = RunningServer.start(RunningServer.DEMONSTRATION);
    otherEngine();
    browser.open(server.link());
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

  /** The demonstration with one reading taken on another engine, to be compared with it. */
  private static void otherEngine() {
    try {
      String record = Files.readString(RunningServer.DEMONSTRATION);
      Files.writeString(
          server.shelf().resolve("other-engine.json"),
          record.replace("\"W6-0031\"", "\"W6-0048\"").replace("\"0.134\"", "\"0.142\""));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "reference, paper, 1440",
    "reference, blueprint, 320",
    "calculation, paper, 1440",
    "calculation, blueprint, 1100",
    "calculation, blueprint, 390",
    "calculation, paper, 320",
    "table, paper, 1440",
    "table, blueprint, 320",
    "figure, paper, 1440",
    "figure, blueprint, 320",
    "beside, paper, 1440",
    "beside, blueprint, 390",
    "compare, paper, 1440",
    "compare, blueprint, 390",
    "compare, paper, 320",
    "rerun, paper, 1440",
    "rerun, blueprint, 320",
    "shelf, paper, 1440",
    "shelf, blueprint, 1100",
    "shelf, paper, 390",
    "shelf, blueprint, 320",
    "sheet, paper, 1440",
    "sheet, blueprint, 1440",
    "sheet, paper, 1100",
    "sheet, blueprint, 390",
    "sheet, paper, 320",
    "editing, paper, 1440",
    "editing, blueprint, 390",
    "fits, paper, 1440",
    "causes, blueprint, 390",
    "findings, blueprint, 1440",
  })
  void everyPageInBothInksAndAtEveryWidth(String page, String ink, int width) {
    browser.resize(width, width < 700 ? 844 : 1000);
    String path = PATHS.getOrDefault(page, "/sheet/w6-bevel-mesh");
    browser.open(server.address(path));
    browser.run("localStorage.setItem('endfloat.ink', arguments[0])", ink);
    browser.driver().navigate().refresh();
    browser.find(READY.getOrDefault(page, "html[data-revision]"));
    if (page.equals("editing") || page.equals("beside")) {
      browser.run("document.querySelector('#clause-c10 .acts .word').click()");
      browser.find(".cm-focused");
    }
    if (page.equals("beside")) {
      browser.run("document.querySelector('.pad-foot .word').click()");
      browser.find(".beside .rn").click();
      browser.find(".beside .put-here .main");
    }
    if (FIELDS.containsKey(page)) {
      browser.run(
          "[...document.querySelectorAll('#clause-' + arguments[0] + ' .acts .word')]"
              + ".find((word) => word.textContent === 'edit').click()",
          FIELDS.get(page));
      browser.find(".entry fieldset");
    }
    browser.run("return document.fonts.ready.then(() => true)");
    browser.picture(page + "-" + ink + "-" + width);

    List<Rule> found = new AxeBuilder().analyze(browser.driver()).getViolations();
    assertTrue(
        found.isEmpty(),
        () -> found.stream().map(AccessiblePagesTest::words).collect(Collectors.joining("\n")));
    Object beyond =
        browser.run(
            "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
    assertEquals(0L, beyond, "pixels beyond the width of the window");
    assertEquals(List.of(), browser.complaints());
  }

  private static String words(Rule rule) {
    return rule.getId()
        + ": "
        + rule.getHelp()
        + rule.getNodes().stream()
            .map(node -> "\n  " + node.getHtml())
            .collect(Collectors.joining());
  }
}
