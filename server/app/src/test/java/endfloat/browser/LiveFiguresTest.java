package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** What is typed changes all that rests on it, before the eyes of whoever typed it. */
class LiveFiguresTest extends OnTheDemonstration {

  private static String text(String selector) {
    return browser.find(selector).getText();
  }

  @Test
  void aReadingChangesTheFigureThatRestsOnItItsVerdictAndTheNotes() {
    SheetWindow sheet = sheet();
    browser.awaitText("#figure-lash_loosest .lim", "within");
    String before = text("#clause-c2 [data-figure=lash_loosest]");
    // 0.310 mm at the dial is more at the pitch circle, and the cold limit is 0.30 mm.
    sheet.take("c6", "0/4/0", "0.310").awaitKept();
    browser.awaitText("#figure-lash_loosest .lim", "outside");
    browser.awaitText(".toc a[href='#clause-c11']", "outside");
    browser.await(driver -> !text("#clause-c2 [data-figure=lash_loosest]").equals(before));
    browser.find("[data-undo]").click();
    browser.awaitText("#figure-lash_loosest .lim", "within");
    browser.await(driver -> text("#clause-c2 [data-figure=lash_loosest]").equals(before));
  }

  @Test
  void typingInAWorkingIsShownBeforeItIsKept() {
    SheetWindow sheet = sheet().edit("c11");
    String now = text("#figure-pitch_radius .v");
    sheet.retype("pitch_radius [mm] = 40.0 mm");
    assertNotEquals("40.0", now);
    // what is typed slowly is 40 m before it is 40 mm
    browser.awaitText("#figure-pitch_radius .v", "40.0");
    sheet.type(Keys.ESCAPE).awaitKept();
    assertEquals("40.0", text("#figure-pitch_radius .v"));
  }

  @Test
  void whatIsTypedAndTakenBackInOneGoLeavesTheFigureAsItWas() {
    SheetWindow sheet = sheet().edit("c11");
    String before = text("#clause-c11 .cm-content");
    sheet.retype("pitch_radius [mm] = 40.0 mm");
    browser.awaitText("#figure-pitch_radius .v", "40.0");
    // what was typed slowly is taken back in several steps
    browser.await(
        driver -> {
          sheet.chord(Keys.CONTROL, "z");
          return text("#clause-c11 .cm-content").equals(before);
        });
    browser.awaitText("#figure-pitch_radius .v", "36.0");
    browser.awaitText("#figure-lash_loosest .lim", "within");
  }

  @Test
  void aUnitErrorIsSaidAtItsColumnWithTheWayOutAndGoesWhenItIsPutRight() {
    SheetWindow sheet = sheet().edit("c13");
    sheet.type(Keys.chord(Keys.CONTROL, Keys.END));
    sheet.retype("wrong [mm] = 1 mm + 1 deg" + Keys.ENTER + "rests [mm] = wrong * 2");
    browser.find(".pad .wrong-here");
    browser.awaitText(".pad-foot .problem", "line 1");
    browser.awaitText("#figure-wrong", "no result");
    browser.awaitText("#clause-c13 .says-err", "1 mm + 1 deg");
    browser.awaitText("#figure-rests .lim", "on wrong");
    sheet.type(Keys.ESCAPE).awaitKept();
    browser.awaitText("#clause-c13 .state", "1 in error, 1 waiting");
    browser.awaitText(".toc a[href='#clause-c13']", "error");

    sheet.edit("c13").retype("wrong [mm] = 1 mm + 2 mm" + Keys.ENTER + "rests [mm] = wrong * 2");
    sheet.type(Keys.ESCAPE).awaitKept();
    browser.awaitText("#figure-rests .v", "6");
    browser.awaitText("#clause-c13 .state", "fresh");
    browser.await(d -> d.findElements(By.cssSelector("#clause-c13 .says-err")).isEmpty());
  }

  @Test
  void everyFigureIsTracedToItsReadingsAndTheirInstruments() {
    sheet();
    browser.find("#figure-hot_loosest .value");
    browser.run("document.querySelector('#figure-hot_loosest .value').focus()");
    browser.driver().switchTo().activeElement().sendKeys("t");
    browser.awaitText(".trace", "DG-07");
    browser.awaitText(".trace", "calibrated 2026-03-02");
    assertEquals(
        browser.run("return [...document.querySelectorAll('.chain > li')].map((one) => one.value)"),
        browser.run(
            "return [...document.querySelectorAll('.chain > li > .item-no')]"
                + ".map((one) => Number(one.textContent))"));
    browser.awaitText(".chain", "worked out in 3.2 from");
    browser.find(".ties .tie-no");
    browser.find("#figure-hot_loosest.traced");
    assertFalse(browser.driver().findElements(By.cssSelector(".ties .tie")).isEmpty());
    browser.driver().switchTo().activeElement().sendKeys("t");
    browser.await(driver -> driver.findElements(By.cssSelector(".trace")).isEmpty());
  }

  @Test
  void unitsOfTheWholeSheetAreSwitched() {
    sheet().type("U");
    browser.awaitText("#figure-growth .result", "thou");
    browser.awaitText("#figure-t_block .result", "°F");
  }

  @Test
  void nothingMovesWhileAFigureChanges() {
    SheetWindow sheet = sheet();
    browser.find("#figure-hot_loosest .value");
    browser.run("return document.fonts.ready.then(() => true)");
    // The text inside a field is reported when it is selected, at the place where it was.
    browser.run(
        "window.moved = [];"
            + "new PerformanceObserver((list) => list.getEntries().forEach((entry) => {"
            + "  for (const { node, previousRect, currentRect } of entry.sources) {"
            + "    const [was, is] = [previousRect, currentRect].map((rect) => JSON.stringify(rect));"
            + "    if (was !== is) window.moved.push((node?.textContent ?? '') + was + is);"
            + "  }"
            + "})).observe({ type: 'layout-shift', buffered: false });");
    sheet.take("c6", "0/4/0", "0.171").awaitKept().take("c6", "0/4/0", "0.172").awaitKept();
    browser.run("return new Promise((done) => requestAnimationFrame(() => setTimeout(done, 50)))");
    assertEquals(List.of(), browser.run("return window.moved"));
  }
}
