package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** A person edits a sheet; what was typed is in the record afterwards. */
class SheetEditingTest extends OnTheDemonstration {

  private String onDisk() {
    return browser.await(
        driver -> {
          try {
            return Files.readString(server.shelf().resolve("w6-bevel-mesh.json"));
          } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
          }
        });
  }

  @Test
  void theShelfLeadsToTheSheet() {
    browser.find(".register .rt a").click();
    browser.awaitText(".clauses", "Growth left to the mesh");
    assertTrue(browser.driver().getTitle().contains("W6-0031"), browser.driver().getTitle());
  }

  @Test
  void aNoteIsTypedAndStandsAfterAReload() {
    SheetWindow sheet = sheet().edit("c16").type(" Typed in the page.", Keys.ESCAPE).awaitKept();
    sheet.reload().edit("c16").awaitText("#clause-c16 .cm-content", "Typed in the page.");
  }

  @Test
  void whatIsTypedReachesTheFile() {
    sheet().edit("c16").type(" Reaches the file.", Keys.ESCAPE).awaitKept();
    browser.await(driver -> onDisk().contains("Reaches the file."));
  }

  @Test
  void typingGoesOnInOrderWhileTheSheetLagsBehindItsAcknowledgements() {
    SheetWindow sheet = sheet().edit("c16").holdChanges();
    sheet.type(" One").awaitKept().type(" two").awaitKept();
    sheet.letOneChangeThrough().type(" three");
    sheet.letAllChangesThrough().type(" four", Keys.ESCAPE).awaitKept();
    browser.await(driver -> onDisk().contains(" One two three four"));
  }

  @Test
  void whatMayFollowAClauseIsSetOutByAWordAndStandsBehindTheLast() {
    SheetWindow sheet = sheet();
    assertEquals(
        1,
        browser.driver().findElements(By.cssSelector(".clauses > * > .after:not([hidden])")).size(),
        "behind the last clause");
    sheet.press("c7", "write next");
    browser.find("#clause-c7 > .after:not([hidden]) .word:focus");
    sheet.type(Keys.ESCAPE);
    browser.find("#clause-c7 > .after[hidden]");
    sheet.press("c7", "write next").type(Keys.ENTER);
    browser.find(".clause.editing .ttl .write:focus");
    browser.find("#clause-c7 > .after[hidden]");
  }

  @Test
  void aReadingNotYetTakenIsToTakeAndNoFault() {
    sheet().take("c7", "0/0/0", " ").awaitKept().awaitText("#figure-t_cold .result", "to take");
    browser.awaitText("#figure-t_cold .lim", "waiting");
    browser.awaitText("#clause-c7 .state", "1 waiting");
    assertEquals(
        List.of(),
        browser.driver().findElements(By.cssSelector("#clause-c7 :is(strong, .refused, .error)")));
  }

  @Test
  void aSeriesIsShownByItsLeastAndItsGreatest() {
    sheet().awaitText("#figure-dial .q", "0.134").awaitText("#figure-dial .q", "0.170");
    browser.awaitText("#figure-lash_cold .numbers", "0.134");
  }

  @Test
  void aReadingIsTakenWithItsDigitsAndEnterLeadsToTheNext() {
    SheetWindow sheet = sheet().take("c6", "0/0/0", "0.1350").awaitKept();
    assertEquals("0/1/0", browser.driver().switchTo().activeElement().getDomAttribute("data-key"));
    sheet.reload().awaitTaken("c6", "0/0/0", "0.1350");
    browser.await(driver -> onDisk().contains("\"0.1350\""));
  }

  @Test
  void aReadingThatTheRecordRefusesStaysInItsFieldToBeMended() {
    String typed = "0." + "1".repeat(220);
    SheetWindow sheet = sheet().take("c6", "0/0/0", typed);
    browser.awaitText(".says", "200");
    sheet.awaitTaken("c6", "0/0/0", typed);
    browser.find("#clause-c6 [data-key='0/0/0'].refused");
    sheet.take("c6", "0/0/0", "0.1355").awaitKept();
    browser.await(driver -> onDisk().contains("\"0.1355\""));
  }

  @Test
  void undoTakesBackAfterAReloadAndRedoPutsAgain() {
    SheetWindow sheet = sheet().take("c6", "0/0/0", "0.199").awaitKept().reload();
    sheet.awaitTaken("c6", "0/0/0", "0.199");
    browser.find("[data-undo]:not([disabled])").click();
    sheet.awaitTaken("c6", "0/0/0", "0.134");
    browser.find("[data-redo]:not([disabled])").click();
    sheet.awaitTaken("c6", "0/0/0", "0.199");
  }

  @Test
  void aClauseIsWrittenMovedDeletedAndBroughtBack() {
    SheetWindow sheet = sheet();
    List<String> before = sheet.numbers();
    sheet.press("c7", "note");
    String clause = sheet.edited();
    sheet.type("What was seen", Keys.ENTER).type("Blueing at the heel.", Keys.ESCAPE).awaitKept();
    sheet.awaitText("#number-" + clause, "2.3");

    sheet.press(clause, "move").press(clause, "up").awaitText("#number-" + clause, "2.2");

    sheet.press(clause, "done").press(clause, "delete");
    browser.await(driver -> sheet.numbers().equals(before));
    browser.awaitText(".says", "deleted");
    browser.driver().findElement(By.cssSelector(".says .word")).click();
    sheet.awaitText("#number-" + clause, "2.2");
    assertFalse(browser.driver().findElements(By.id("clause-" + clause)).isEmpty());
  }

  @Test
  void aReadingIsStruckThroughWithItsReasonAndStandsAgain() {
    SheetWindow sheet = sheet();
    browser.run("arguments[0].focus()", sheet.field("c6", "0/2/0"));
    sheet.press("c6", "strike through").type("stylus slipped", Keys.ENTER).awaitKept();
    sheet.awaitText("#clause-c6 .station-words", "stylus slipped");
    browser.find("#clause-c6 [data-key='0/2/0'].struck");
    browser.await(
        driver ->
            onDisk().contains("\"reason\" : \"stylus slipped\"")
                || onDisk().contains("\"reason\": \"stylus slipped\""));
    sheet.press("c6", "let it stand").awaitKept();
    browser.find("#clause-c6 [data-key='0/2/0']:not(.struck)");
  }

  @Test
  void keysLeadThroughTheSheetWithoutAMouse() {
    SheetWindow sheet = sheet().type("G").type("3.1", Keys.ENTER);
    assertEquals("clause-c10", browser.driver().switchTo().activeElement().getDomAttribute("id"));
    sheet.type(Keys.ENTER);
    browser.find("#clause-c10 .cm-focused");
    sheet.type(Keys.ESCAPE);
    browser.await(driver -> driver.findElements(By.cssSelector(".cm-editor")).isEmpty());
    assertEquals("clause-c10", browser.driver().switchTo().activeElement().getDomAttribute("id"));
    sheet.chord(Keys.ALT, Keys.ARROW_DOWN);
    assertEquals("clause-c11", browser.driver().switchTo().activeElement().getDomAttribute("id"));
  }

  @Test
  void unitsAndTitleAreWrittenInTheTitleBlock() {
    SheetWindow sheet = sheet().type("U").awaitText(".choice [aria-pressed=true]", "imperial");
    browser.run("const t = document.querySelector('#tb-revision'); t.focus(); t.select()");
    sheet.type("C", Keys.ENTER).awaitKept().reload();
    assertEquals("C", browser.find("#tb-revision").getDomProperty("value"));
    browser.awaitText(".choice [aria-pressed=true]", "imperial");
  }
}
