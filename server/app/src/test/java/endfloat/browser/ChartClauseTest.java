package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** How the page shows a chart: picture, words, its numbers as a table, a problem at its place. */
class ChartClauseTest extends OnTheDemonstration {
  private static final String DRAW =
      "const done = arguments[arguments.length - 1];"
          + "import('/view/chart.js').then(({ ChartBody }) => {"
          + "  const cell = { number: '9.9', title: 'Sample', source: {}, chart: arguments[0] };"
          + "  window.sample = new ChartBody({ cell, page: {} });"
          + "  window.sample.update();"
          + "  document.querySelector('.clauses').append(...window.sample.elements);"
          + "  done(true);"
          + "});";

  @BeforeEach
  void openTheSheet() {
    sheet();
  }

  private void draw(Object chart) {
    browser.driver().executeAsyncScript(DRAW, chart);
  }

  @Test
  void thePictureComesWithItsWordsAndItsNumbersAsATable() {
    draw(
        java.util.Map.of(
            "svg",
            "<svg viewBox='0 0 9 9'><path d='M0 0L9 9'/></svg>",
            "description",
            "It grows from 1 mm to 2 mm.",
            "notes",
            java.util.List.of("Band: expanded uncertainty."),
            "heads",
            java.util.List.of("x", "y"),
            "rows",
            java.util.List.of(java.util.List.of("1 mm", "2 mm"))));
    browser.find(".clauses > .chart svg");
    assertEquals(
        "Band: expanded uncertainty.",
        browser.find(".clauses > .chart figcaption").getText(),
        "what the picture shows is not said again beneath it");
    WebElement word = browser.find(".clauses > .chart .set-out");
    assertEquals("false", word.getDomAttribute("aria-expanded"));
    word.click();
    browser.awaitText(".clauses > .chart td", "2 mm");
    assertEquals(
        "row",
        browser.find(".clauses > .chart tbody th").getDomAttribute("scope"),
        "a head for each row");
  }

  @Test
  void aProblemStandsInItsPlaceWithTheWayOut() {
    draw(
        java.util.Map.of(
            "problem", java.util.Map.of("message", "No such value.", "wayOut", "Name another.")));
    browser.awaitText(".clauses > .chart .chart-problem", "No such value. Name another.");
    assertEquals(0, browser.driver().findElements(By.cssSelector(".clauses > .chart svg")).size());
  }

  @Test
  void aChartIsWrittenAndDrawnAndFollowsItsFields() {
    SheetWindow sheet = SheetWindow.of(browser);
    sheet.press("c13", "chart");
    browser.await(
        driver ->
            Boolean.TRUE.equals(
                browser.run(
                    "return document.activeElement.matches('.clause.editing .ttl .write')")));
    sheet.type("Of my own", Keys.ENTER).awaitKept();
    String id = sheet.edited();
    write(id, "/of", "hot_loosest");
    write(id, "/input", "t_block");
    write(id, "/from", "20 degC");
    write(id, "/to", "110 degC");
    browser.find("#clause-" + id + " .chart-picture svg");
    browser.find("#clause-" + id + " .chart .set-out").click();
    browser.find("#clause-" + id + " .chart-numbers td");
    write(id, "/input", "no_such_name");
    browser.awaitText("#clause-" + id, "no_such_name");
    browser.await(
        driver -> driver.findElements(By.cssSelector("#clause-" + id + " .chart svg")).isEmpty());
  }

  private void write(String id, String key, String text) {
    browser.run(
        "arguments[0].value = arguments[1]; arguments[0].dispatchEvent(new Event('change'))",
        browser.find("#clause-" + id + " [data-key='" + key + "']"),
        text);
    SheetWindow.of(browser).awaitKept();
  }

  @Test
  void whatIsDrawnIsWrittenInFieldsThatGoWithTheKindOfChart() {
    SheetWindow sheet = SheetWindow.of(browser);
    String id = "c20";
    sheet.press(id, "edit");
    browser.find("#clause-" + id + " [data-key='/input']");
    browser.run(
        "const kind = document.querySelector('#clause-' + arguments[0] + ' [data-key=\"/chart\"]');"
            + "kind.value = 'round'; kind.dispatchEvent(new Event('change'))",
        id);
    browser.find("#clause-" + id + " [data-key='/axis']");
    browser.await(
        driver ->
            driver
                .findElements(By.cssSelector("#clause-" + id + " [data-key='/input']"))
                .isEmpty());
  }
}
