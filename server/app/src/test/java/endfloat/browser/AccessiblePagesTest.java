package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import endfloat.http.RunningServer;
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

  private static Browser browser;
  private static RunningServer server;

  @BeforeAll
  static void start() {
    browser = Browser.start();
    server = RunningServer.start(RunningServer.DEMONSTRATION);
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

  @ParameterizedTest
  @CsvSource({
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
    browser.open(server.address(page.equals("shelf") ? "/" : "/sheet/w6-bevel-mesh"));
    browser.run("localStorage.setItem('endfloat.ink', arguments[0])", ink);
    browser.driver().navigate().refresh();
    browser.find(
        page.equals("shelf") ? "html[data-ready] .register tbody tr" : "html[data-revision]");
    if (page.equals("editing")) {
      browser.run("document.querySelector('#clause-c10 .acts .word').click()");
      browser.find(".cm-focused");
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
