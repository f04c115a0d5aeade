package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** What a newcomer is told on the demonstration, and how a figure of it is made. */
class FirstStepsTest extends OnTheDemonstration {
  private static final String NOTE = ".first-step";

  private int notes() {
    return browser.driver().findElements(By.cssSelector(NOTE)).size();
  }

  @Test
  void fiveHintsLeadByKeyboardFromAReadingToTheEnd() {
    SheetWindow sheet = sheet();
    browser.awaitText("#clause-c2 " + NOTE, "1 OF 5");
    browser.run("document.querySelector('.first-step button').focus()");
    sheet.type(Keys.ENTER);
    browser.awaitText("#clause-c6 " + NOTE, "2 OF 5");
    sheet.take("c6", "0/0/0", "0.136").awaitKept();
    browser.awaitText(NOTE, "follow already");
    browser.run("document.querySelector('.first-step button').focus()");
    sheet.type(Keys.ENTER);
    browser.awaitText("#clause-c10 " + NOTE, "3 OF 5");
    sheet.type(Keys.ENTER);
    browser.awaitText(NOTE, "4 OF 5");
    sheet.type(Keys.ENTER);
    browser.awaitText(NOTE, "5 OF 5");
    assertEquals(
        server.address("/record/w6-bevel-mesh/report"),
        browser.driver().switchTo().activeElement().getAttribute("href"));
    sheet.type(Keys.TAB, Keys.ENTER);
    browser.await(driver -> notes() == 0);
  }

  @Test
  void theyArePutAwayForEverAndShownAgainFromTheListOfKeys() {
    sheet();
    browser.find(NOTE);
    browser.run("document.querySelectorAll('.first-step button')[1].click()");
    assertEquals(0, notes());
    SheetWindow sheet = sheet();
    browser.find(".toc a");
    assertEquals(0, notes());
    sheet.type("?");
    browser.awaitText("dialog", "Show first steps again");
    browser.run(
        "[...document.querySelectorAll('dialog .word')]"
            + ".find((word) => word.textContent === 'Show first steps again').click()");
    browser.awaitText(NOTE, "1 OF 5");
  }

  @Test
  void anotherRecordIsLeftAlone() {
    browser.find("html[data-ready] .register tbody tr");
    browser.find("#new-title").sendKeys("Of my own", Keys.ENTER);
    browser.find("html[data-revision]");
    // as long as the page itself needs to learn which record is the demonstration
    browser.run("return fetch('/api/shelf').then(() => new Promise((r) => setTimeout(r, 300)))");
    assertEquals(0, notes());
  }

  /** The page repeats what the record comes to, also after a reading has changed. */
  @Test
  void thePageOfAFigureTellsWhatTheRecordComesToNow() {
    SheetWindow sheet = sheet();
    String figure = "[id='figure-hot_loosest'] .v";
    String before = browser.find(figure).getText();
    sheet.take("c6", "0/4/0", "0.220").awaitKept();
    browser.await(driver -> !browser.find(figure).getText().equals(before));
    String hot = browser.find(figure).getText();
    browser.open(server.address("/how-a-figure-is-made"));
    browser.find("html[data-ready]");
    browser.awaitText("#made .ref-summary", hot);
    browser.awaitText("#made [data-reading]", "0.220");
    browser.awaitText("#made [data-verdict]", "outside");
    browser.awaitText("#made [data-notes]", hot);
    browser.awaitText("#made [data-shares]", "%");
    String text = browser.find("#made").getText();
    assertTrue(!text.contains("(no figure)") && !text.contains("has no reading"), text);
  }
}
