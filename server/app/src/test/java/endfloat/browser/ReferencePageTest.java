package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.catalogue.Catalogue;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** The reference in a browser: finding, reading, putting into a working. */
class ReferencePageTest extends OnTheDemonstration {
  private void open(String path) {
    browser.open(server.address(path));
    browser.find("html[data-ready]");
  }

  @Test
  void everyCalculationStandsInItAndIsFoundByTheWordOfEitherCountry() {
    open("/reference");
    assertEquals(
        Catalogue.library().all().size(),
        browser.driver().findElements(By.cssSelector(".ref-contents .rn code")).size());
    WebElement find = browser.find("#find");
    find.sendKeys("end play");
    browser.awaitText(".ref-meant", "end float");
    browser.awaitText(".ref-list .rn", "end_float");
    find.sendKeys(Keys.ENTER);
    browser.awaitText("h1", "End float of a shaft");
    browser.awaitText("#typed", "end_float(");
    assertTrue(browser.driver().getCurrentUrl().endsWith("/reference/end_float"));
    browser.driver().navigate().back();
    browser.awaitText("h1", "What was found");
    browser.find("#contents").click();
    browser.awaitText("h1", "Contents");
  }

  @Test
  void aCalculationLeadsToTheOthersUnderItsSubject() {
    open("/reference/end_float");
    browser.find(".ref-also a[href='/reference/shim_pack']").click();
    browser.awaitText("h1", "Shims for a pack");
    browser.find("#subject a").click();
    browser.awaitText("h1", "Contents");
    assertTrue(browser.driver().getCurrentUrl().endsWith("/reference"));
  }

  @Test
  void aCalculationIsReadInBothSystemsAndBothCountries() {
    open("/reference/backlash_from_axial_shift");
    browser.find(".ref-formula math");
    browser.awaitText(".worked .q", "mm");
    new Select(browser.find("#units")).selectByValue("imperial");
    browser.awaitText(".worked .q", "thou");
    open("/reference/end_float");
    browser.awaitText(".ref-summary", "loat");
    new Select(browser.find("#terms")).selectByValue("american");
    browser.awaitText(".ref-summary", "play");
    new Select(browser.find("#terms")).selectByValue("british");
    browser.awaitText(".ref-summary", "loat");
  }

  @Test
  void aListOfPartsIsShownWithItsFields() {
    open("/reference/stepped_shaft");
    List<String> names =
        browser.driver().findElements(By.cssSelector(".ref-table .part-of th")).stream()
            .map(WebElement::getText)
            .toList();
    assertTrue(names.stream().anyMatch(one -> one.contains("segment( outer: )")), names::toString);
  }

  @Test
  void theTablesNameTheSourceOfEveryValue() {
    open("/reference/tables/materials");
    browser.awaitText("h1", "Materials on file");
    browser.find(".lookup summary").click();
    browser.awaitText(".lookup details[open]", "expansion");
    open("/reference/tables/iso-grades");
    browser.awaitText(".ref-foot", "ISO 286-1");
  }

  @Test
  void aLineIsPutIntoAClauseOfARecordWithTheNamesOfItsArguments() {
    open("/reference/thermal_growth");
    browser.await(
        driver -> driver.findElements(By.cssSelector(".put-in option[value=c13]")).size() == 1);
    browser.run(
        "const clause = document.querySelectorAll('.put-in select')[1]; clause.value = 'c13'");
    browser.find(".put-in .main").click();
    browser.awaitText(".ref-said", "Written at the end");
    browser.find(".ref-said a").click();
    browser.find("html[data-revision]");
    browser.awaitText("#clause-c13 .says-err", "value is missing");
    browser.find("#clause-c13.current");
  }

  @Test
  void fromAPadTheReferenceOpensBesideItAndReturnsToTheClause() {
    SheetWindow sheet = sheet();
    sheet.edit("c13").chord(Keys.CONTROL, Keys.END).type("\ngrown [mm] = ");
    sheet.type(Keys.F1);
    browser.awaitText(".beside .ref-list", "thermal_growth");
    sheet.type("heat growth");
    browser.awaitText(".beside .ref-list .rn", "growth");
    browser.run(
        "document.querySelector(\".beside .rn[href='/reference/thermal_growth']\").click()");
    browser.awaitText(".beside h2", "Growth of a heated length");
    browser.find(".beside .put-here .main").click();
    browser.await(driver -> driver.findElements(By.cssSelector(".beside")).isEmpty());
    sheet
        .type("400 mm", Keys.TAB, "alpha_block", Keys.TAB, "60 K")
        .awaitText("[id='figure-grown']", "0.552");
    browser.awaitText(".pad-help", "Source");
  }

  @Test
  void aCallIsCompletedWithItsArgumentsAndTheLineOfHelpFollowsTheCursor() {
    SheetWindow sheet = sheet();
    sheet.edit("c13").chord(Keys.CONTROL, Keys.END).type("\ngrown [mm] = thermal_gro");
    browser.awaitText(".cm-tooltip-autocomplete", "thermal_growth");
    browser.await(
        driver ->
            driver
                .findElement(By.cssSelector(".cm-tooltip-autocomplete [aria-selected]"))
                .getText()
                .startsWith("thermal_growth"));
    pause();
    sheet.type(Keys.ENTER);
    browser.awaitText(".pad .cm-content", "expansion: ");
    browser.awaitText(".pad-help mark", "length");
    browser.awaitText(".pad-help", "[mm]");
    browser.awaitText(".pad-help", "mean coefficient");
    sheet.type("400 mm", Keys.TAB);
    browser.awaitText(".pad-help mark", "expansion");
    assertFalse(browser.find(".pad .cm-content").getText().contains("${"));
  }

  /** A completion that was only just drawn is not taken yet; the editor waits so long itself. */
  private static void pause() {
    try {
      Thread.sleep(120);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
