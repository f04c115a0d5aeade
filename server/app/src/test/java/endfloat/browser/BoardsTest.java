package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** Clauses that are entered by fields: fits, findings, causes, approval, and remarks on any. */
class BoardsTest extends OnTheDemonstration {
  private SheetWindow sheet;

  @BeforeEach
  void openTheSheet() {
    sheet = sheet();
  }

  private static String clauseOf(String title) {
    WebElement clause =
        browser.await(
            driver ->
                driver.findElements(By.cssSelector(".clause")).stream()
                    .filter(one -> one.findElement(By.cssSelector(".ttl")).getText().equals(title))
                    .findFirst()
                    .orElse(null));
    return clause.getDomAttribute("id").substring("clause-".length());
  }

  private void put(String clause, String key, String text) {
    browser.run(
        "arguments[0].focus(); arguments[0].select?.()",
        browser.find("#clause-" + clause + " [data-key='" + key + "']"));
    sheet.type(text, Keys.ENTER).awaitKept();
  }

  private void choose(String clause, String key, String value) {
    browser.run(
        "arguments[0].value = arguments[1]; arguments[0].dispatchEvent(new Event('change'))",
        browser.find("#clause-" + clause + " [data-key='" + key + "']"),
        value);
    sheet.awaitKept();
  }

  @Test
  void whatAnExpressionGivesStandsBeneathItWhileItIsTyped() {
    String fits = clauseOf("Schedule of fits and clearances");
    sheet.press(fits, "edit");
    String field = "#clause-" + fits + " label:has([data-key='/rows/1/measured'])";
    browser.run("arguments[0].focus()", browser.find(field + " input"));
    browser.find(field + " .cm-content");
    String kept =
        browser.find("#clause-" + fits + " .t.fits [id='figure-" + fits + ".r2'] .v").getText();
    sheet.chord(Keys.CONTROL, "a").type("lash_loose");
    browser.awaitText(field + " .pad-words", "lash_loosest");
    sheet.type("st");
    browser.awaitText(field + " .gives", "= 0.1800 mm");
    assertEquals("kept", browser.find(".kept").getText().substring(0, 4));
    sheet.type(Keys.ESCAPE);
    browser.awaitText(field + " .gives", "= " + kept);
    sheet.type(Keys.ESCAPE);
    browser.await(driver -> driver.findElements(By.cssSelector(".clause.editing")).isEmpty());
  }

  @Test
  void whatIsKeptIsShownAlsoWhereEnterFollowsTheLastKeyAtOnce() {
    String fits = clauseOf("Schedule of fits and clearances");
    sheet.press(fits, "edit");
    String field = "#clause-" + fits + " label:has([data-key='/rows/1/measured'])";
    browser.run("arguments[0].focus()", browser.find(field + " input"));
    browser.find(field + " .cm-content");
    sheet.chord(Keys.CONTROL, "a").type("lash_loosest");
    browser.awaitText(field + " .gives", "= 0.1800 mm");
    new Actions(browser.driver()).sendKeys(" * 2", Keys.ENTER).perform();
    sheet.awaitKept();
    browser.awaitText("#clause-" + fits + " .t.fits [id='figure-" + fits + ".r2'] .v", "0.360");
  }

  /** Adds a clause with the keyboard's own way: its title, then Enter to its fields. */
  private String added(String kind) {
    sheet.press("c16", kind);
    browser.await(
        driver ->
            Boolean.TRUE.equals(
                browser.run(
                    "return document.activeElement.matches('.clause.editing .ttl .write')")));
    sheet.type("New " + kind, Keys.ENTER).awaitKept();
    return sheet.edited();
  }

  @Test
  void aReadingChangesTheFitThatRestsOnItAndWhichPartToRenew() {
    String fits = clauseOf("Schedule of fits and clearances");
    String lower = "#clause-" + fits + " [id='figure-" + fits + ".r5']";
    browser.awaitText(lower, "outside");
    browser.awaitText("#clause-" + fits + " .advice", "Renew Lower bush");
    browser.find(lower + " .ringed");
    sheet.take(clauseOf("Bushes and journals of the vertical shaft"), "2/0/0", "22.040");
    sheet.awaitKept();
    browser.awaitText(lower, "within");
    browser.await(
        driver -> driver.findElements(By.cssSelector("#clause-" + fits + " .advice")).isEmpty());
  }

  @Test
  void aFitIsEnteredByFieldsAndJudged() {
    String id = added("fits");
    put(id, "/rows/0/what", "Backlash between the wheels");
    put(id, "/rows/0/measured", "lash_loosest");
    put(id, "/rows/0/new/low", "0.10");
    put(id, "/rows/0/new/high", "0.20");
    put(id, "/rows/0/worn/high", "0.30");
    browser.awaitText("[id='figure-" + id + ".r1']", "within");
    put(id, "/rows/0/worn/high", "0.11");
    browser.awaitText("[id='figure-" + id + ".r1']", "outside");
    browser.awaitText(".toc a[href='#clause-" + id + "']", "outside");
  }

  @Test
  void whatIsTypedInAFieldOutlivesANameThatComesForItsNeighbours() {
    String id = added("fits");
    String field = "#clause-" + id + " [data-key='/rows/0/what']";
    browser.find(field);
    sheet.holdChanges();
    choose(id, "/rows/0/part", "p1");
    browser.run("arguments[0].focus()", browser.find(field));
    sheet.type("Float of ").letAllChangesThrough();
    String name = "#clause-" + id + " [data-key='/rows/0/part'] option:checked";
    browser.awaitText(
        "#clause-" + id + " .entry",
        "Size measured, " + browser.find(name).getText().split(",")[0]);
    sheet.type("the shaft");
    assertEquals("Float of the shaft", browser.find(field).getDomProperty("value"));
  }

  @Test
  void anErrorInAFieldStandsAtItWithTheWayOutAndGoesWhenItIsPutRight() {
    String fits = clauseOf("Schedule of fits and clearances");
    sheet.press(fits, "edit");
    put(fits, "/rows/2/measured", "end_float_shaft + 1 deg");
    String field = "#clause-" + fits + " [data-key='/rows/2/measured']";
    browser.find(field + "[aria-invalid=true]");
    String said = browser.find(field).getDomAttribute("aria-describedby");
    assertFalse(browser.find("[id='" + said + "']").getText().isBlank());
    browser.awaitText("#clause-" + fits + " .says-err", "measured");
    put(fits, "/rows/2/measured", "end_float_shaft");
    browser.await(
        driver -> driver.findElements(By.cssSelector("#clause-" + fits + " .says-err")).isEmpty());
    browser.awaitText("[id='figure-" + fits + ".r3']", "within");
  }

  /**
   * A drive gear is read tooth by tooth: a label, its value, the next label, and the hands stay on
   * the keys.
   */
  @Test
  void readingsRoundAWheelAreWrittenWithEnterAlone() {
    String id = added("readings");
    browser.await(
        driver ->
            Boolean.TRUE.equals(
                browser.run("return document.activeElement.closest('.particulars') !== null")));
    sheet.type("lash drive", Keys.TAB, "Backlash", Keys.TAB, "mm");
    String stations = "#clause-" + id + " .particulars label:last-of-type input";
    browser.run("arguments[0].focus()", browser.find(stations));
    sheet.type("tooth", Keys.ENTER).awaitKept();
    browser.run("arguments[0].focus()", browser.find("#clause-" + id + " th .label"));
    sheet.type("1", Keys.ENTER, "0.31", Keys.ENTER).awaitKept();
    browser.run("arguments[0].focus()", browser.find("#clause-" + id + " [data-further]"));
    for (String[] read : new String[][] {{"51", "0.33"}, {"9", "0.36"}}) {
      sheet.type(read[0], Keys.ENTER);
      sheet.awaitText("#clause-" + id + " .labels", read[0]);
      browser.await(
          driver ->
              Boolean.TRUE.equals(
                  browser.run("return document.activeElement.dataset.key !== undefined")));
      sheet.type(read[1], Keys.ENTER).awaitKept();
    }
    sheet.awaitTaken(id, "0/1/0", "0.33");
    // a label that was mistyped is put right where its value is in use
    browser.run("arguments[0].focus()", sheet.field(id, "0/1/0"));
    browser.run("arguments[0].select()", browser.find("#clause-" + id + " .place input"));
    sheet.type("5", Keys.ENTER).awaitKept();
    browser.await(
        driver ->
            browser
                .find("#clause-" + id + " .labels")
                .getText()
                .matches("(?s)tooth\\s+1\\s+5\\s+9"));
    browser.awaitText("#clause-" + id + " .answers .value", "0.31");
  }

  @Test
  void notInspectedIsAStateAndNoIndicationAsksForItsMethod() {
    String id = added("findings");
    browser.awaitText("#clause-" + id + " .found-state", "not inspected");
    choose(id, "/findings/0/state", "no indication");
    browser.awaitText("#clause-" + id + " .gap", "method");
    put(id, "/findings/0/method", "magnetic particles");
    browser.awaitText("#clause-" + id + " .gap", "smallest");
    put(id, "/findings/0/smallest", "1.5 mm");
    browser.await(
        driver -> driver.findElements(By.cssSelector("#clause-" + id + " .gap")).isEmpty());
  }

  @Test
  void causesSayWhetherTheyAreBigEnoughAndWhatIsLeftUnexplained() {
    String id = added("causes");
    put(id, "/observed", "0.20");
    put(id, "/needed", "0.12");
    put(id, "/causes/0/name", "Coupling seized");
    put(id, "/causes/0/contribution", "opening");
    browser.awaitText("#clause-" + id + " .enough", "yes");
    put(id, "/needed", "0.19");
    browser.awaitText("#clause-" + id + " .enough", "not proven");
    put(id, "/needed", "0.30");
    browser.awaitText("#clause-" + id + " .enough", "no");
    browser.awaitText("[id='figure-" + id + ".unexplained']", "mm");
    choose(id, "/causes/0/standing", "ruled out");
    browser.awaitText("#clause-" + id + " .standing td", "open");
    browser.awaitText("#clause-" + id + " .board-problems", "decisive fact");
    put(id, "/causes/0/fact", "It slides freely");
    browser.awaitText("#clause-" + id + " .standing td", "ruled out");
    assertFalse(browser.find("#clause-" + id + " .board-frame").getText().contains("%"));
  }

  @Test
  void theBoardListsWhatHasNotBeenMeasured() {
    String board = "#clause-" + clauseOf("Candidate causes");
    List<WebElement> lists =
        browser.driver().findElements(By.cssSelector(board + " .reasons caption"));
    assertEquals("Not measured yet", lists.get(0).getText());
    browser.awaitText(board + " .reasons", "Line of the bushes");
  }

  @Test
  void aRemarkIsAddedAnsweredAndTakenBack() {
    sheet.press("c12", "remark");
    sheet.type("Was this read hot?", Keys.TAB, "Second inspector", Keys.ENTER).awaitKept();
    browser.awaitText("#clause-c12 .remark", "open; Second inspector");
    browser.find("#clause-c12 .remark:not(.settled)");
    sheet.press("c12", "answer");
    sheet.type("No, worked out.").chord(Keys.CONTROL, Keys.ENTER).awaitKept();
    browser.awaitText("#clause-c12 .remark.settled", "No, worked out.");
    browser.find("[data-undo]").click();
    browser.find("#clause-c12 .remark:not(.settled)");
    assertTrue(sheet.awaitKept().numbers().size() > 10);
  }

  @Test
  void anApprovalBeginsWithItsThreeRolesAndLocksNothing() {
    String id = added("approval");
    put(id, "/roles/1/name", "A. Checker");
    browser.awaitText("#clause-" + id + " .approval tbody tr:nth-child(2)", "A. Checker");
    browser.awaitText("#clause-" + id + " .approval tbody tr:nth-child(3)", "not yet");
  }
}
