package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What the title block says of the figures, and how it switches their words and units. */
class TitleBlockTest extends OnTheDemonstration {

  /** Closes the sheet, which writes its file. */
  private String written() throws IOException {
    browser.open(server.address("/"));
    Path file = server.shelf().resolve("w6-bevel-mesh.json");
    browser.await(
        driver -> {
          try {
            return Files.readString(file).contains("\"name\": \"left_twice\"");
          } catch (IOException e) {
            return false;
          }
        });
    return Files.readString(file);
  }

  @Test
  void figuresSavedAgreeOrAreSaidToDifferOneByOne() throws IOException {
    SheetWindow sheet = sheet();
    sheet.press("c10", "edit");
    String growth = "left_twice [mm] = 2 * left";
    browser.find("#clause-c10 .cm-content");
    sheet.chord(org.openqa.selenium.Keys.CONTROL, org.openqa.selenium.Keys.END);
    sheet.type("\n" + growth, org.openqa.selenium.Keys.ESCAPE).awaitKept();
    String file = written();

    sheet().awaitText(".integrity .f", "Figures agree with the readings");
    browser.open(server.address("/"));

    int results = file.indexOf("\"results\"");
    int figure = file.indexOf("\"name\": \"left_twice\"", results);
    int value = file.indexOf("\"value\": ", figure) + "\"value\": ".length();
    int end = value;
    while ("-.0123456789eE".indexOf(file.charAt(end)) >= 0) {
      end++;
    }
    String altered = file.substring(0, value) + "0.5" + file.substring(end);
    assertNotEquals(file, altered);
    Files.writeString(server.shelf().resolve("altered.json"), altered);
    SheetWindow.open(browser, server.address("/sheet/altered"))
        .awaitText(".integrity .f", "1 figure differs from those saved");
    browser.find(".which li a[href='#figure-left_twice']");
    SheetWindow.of(browser).awaitText("#figure-left_twice .oldword", "saved value out of date");
    browser.find("#figure-left_twice .old .v");
  }

  @Test
  void labelsReadInTheTermsOfTheSheetsCountry() {
    SheetWindow sheet = sheet();
    browser.awaitText("table.fits thead", "WORN");
    browser.run(
        "[...document.querySelectorAll('.choice button')]"
            + ".find(one => one.textContent === 'American').click()");
    sheet.awaitText("table.fits thead", "SERVICE");
    browser.find(".choice button[aria-pressed='true']");
    sheet.awaitKept().reload();
    sheet.awaitText("table.fits thead", "SERVICE");
  }
}
