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

/** Values are worked with by pressing them, or by keys. */
class PointingTest extends OnTheDemonstration {
  private SheetWindow sheet;

  @BeforeEach
  void openTheSheet() {
    sheet = sheet();
  }

  private void press(String name) {
    WebElement value = browser.find("#figure-" + name + " button.value");
    browser.run("arguments[0].scrollIntoView({block: 'center'}); arguments[0].click()", value);
    browser.find("#figure-" + name + " .value[aria-pressed]");
    browser.find(".pointing .word");
  }

  private List<String> offered() {
    return browser.driver().findElements(By.cssSelector(".pointing .word")).stream()
        .map(one -> one.getDomProperty("textContent"))
        .toList();
  }

  private void word(String text) {
    browser.run(
        "[...document.querySelectorAll('.pointing .word')]"
            + ".find(one => one.textContent === arguments[0]).click()",
        text);
  }

  @Test
  void theDifferenceOfTwoReadingsBecomesALine() {
    press("t_block");
    press("t_cold");
    browser.await(driver -> offered().contains("t_block − t_cold"));
    assertFalse(offered().contains("t_block / t_cold"), "no ratio of two temperatures");
    word("t_block − t_cold");
    sheet.awaitText("#figure-t_block_less_t_cold .value .v", "65.0");
    browser.find(".clause.editing .cm-content");
    sheet.awaitText("#figure-t_block_less_t_cold .value .un", "K");
  }

  @Test
  void ofTwoValuesOfOneKindTheRatioIsOfferedAndOfTwoKindsNothing() {
    press("block_height");
    press("dial_radius");
    browser.await(driver -> offered().contains("block_height / dial_radius"));
    sheet.type("/");
    sheet.awaitText("#figure-block_height_over_dial_radius .v", "14.1");
    sheet.type(Keys.ESCAPE);
    press("t_block");
    press("growth");
    browser.await(driver -> offered().contains("rename"));
    assertTrue(offered().stream().noneMatch(one -> one.contains("t_block")), () -> "" + offered());
  }

  @Test
  void aLimitIsSetByPressingAValueAndTyping() {
    press("growth");
    sheet.type("m");
    browser.find(".pointing-form input");
    sheet.type("0.30", Keys.TAB, "0.40", Keys.TAB, "W6 sheet 9", Keys.ENTER);
    sheet.awaitText("#figure-growth .verdict", "within");
    sheet.type(Keys.ESCAPE);
    sheet.awaitText("#figure-growth .judged .under", "W6 sheet 9");
  }

  @Test
  void aValueIsRenamedEverywhereInOneStep() {
    press("growth");
    word("rename");
    browser.find(".pointing-form input");
    sheet.type("block_growth", Keys.ENTER);
    sheet.awaitText("#figure-block_growth .v", "0.359");
    assertEquals(List.of(), browser.driver().findElements(By.id("figure-growth")));
    sheet.awaitText(".trace h4", "growth");
    // the note that shows it, and the line that reads it
    browser.find(".prose [href='#figure-block_growth'], .prose [data-figure='block_growth']");
    sheet.awaitText("#figure-left .v", "0.359");
    browser.run("document.querySelector('[data-undo]').click()");
    sheet.awaitText("#figure-growth .v", "0.359");
  }

  @Test
  void theUnitOfAResultIsChangedByPressingIt() {
    press("growth");
    word("unit");
    browser.find(".pointing-form input[list]");
    assertTrue(
        browser.driver().findElements(By.cssSelector("#choices-unit option[value='um']")).size()
            > 0);
    sheet.type("um", Keys.ENTER);
    sheet.awaitText("#figure-growth .v", "359");
  }

  @Test
  void aNameThatIsTakenIsRefusedWithTheReason() {
    press("growth");
    sheet.type("r");
    browser.find(".pointing-form input");
    sheet.type("slip", Keys.ENTER);
    sheet.awaitText(".says", "The name slip is in use in this record.");
    sheet.awaitText("#figure-growth .v", "0.359");
  }
}
