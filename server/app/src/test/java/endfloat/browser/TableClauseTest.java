package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** A table on the sheet, by keyboard: values entered, a block pasted, undo, thousands of rows. */
class TableClauseTest extends OnTheDemonstration {
  private static final int ROWS = 5_000;

  private SheetWindow open() throws IOException {
    String rows =
        IntStream.rangeClosed(1, ROWS)
            .mapToObj(row -> "['" + row + "','" + (10 + row % 5) + "']")
            .collect(Collectors.joining(","));
    String record =
        "{'format':'endfloat-record','version':1,'title_block':{'title':'Fleet'},'cells':["
            + "{'id':'t1','kind':'table','title':'Wear','name':'wear','columns':["
            + "{'head':'hours','kind':'number','unit':'h'},{'head':'lash','kind':'number','unit':'mm'}],"
            + "'rows':["
            + rows
            + "]},{'id':'w1','kind':'working','text':'worst [mm] = max(wear.lash)'}]}";
    Files.writeString(server.shelf().resolve("rows.json"), record.replace('\'', '"'));
    SheetWindow sheet = SheetWindow.open(browser, server.address("/sheet/rows"));
    return sheet.awaitText("[data-line='0'] [data-column='1'] .v", "11");
  }

  private static void focus(int line, int column) {
    browser.run(
        "arguments[0].focus()",
        browser.find("[data-line='" + line + "'] [data-column='" + column + "']"));
  }

  @Test
  void valuesAreEnteredPastedAndTakenBackByKeys() throws IOException {
    SheetWindow sheet = open().awaitText("#figure-worst .v", "14");
    focus(0, 1);
    sheet.type("19", Keys.ENTER).awaitText("#figure-worst .v", "19");
    sheet.awaitText("[data-line='0'] [data-column='1'] .v", "19");
    focus(1, 0);
    browser.run(
        "const block = new DataTransfer();"
            + "block.setData('text/plain', '7\\t21\\n8\\t22\\n');"
            + "document.activeElement.dispatchEvent(new ClipboardEvent('paste',"
            + " { clipboardData: block, bubbles: true, cancelable: true }))");
    sheet.awaitText("#figure-worst .v", "22").awaitKept();
    sheet.awaitText("[data-line='2'] [data-column='1'] .v", "22");
    sheet.chord(Keys.CONTROL, "z").awaitText("#figure-worst .v", "19");
    sheet.chord(Keys.CONTROL, "z").awaitText("#figure-worst .v", "14");
  }

  @Test
  void ofThousandsOfRowsThoseInViewAreDrawnAndKeysReachTheLast() throws IOException {
    SheetWindow sheet = open();
    Object drawn = browser.run("return document.querySelectorAll('.register [data-line]').length");
    assertTrue((Long) drawn < 100, drawn + " rows are drawn");
    focus(0, 0);
    sheet.chord(Keys.CONTROL, Keys.END);
    browser.find("[data-line='" + ROWS + "'].fresh");
    sheet.type(Keys.ARROW_UP);
    sheet.awaitText("[data-line='" + (ROWS - 1) + "'] .rn", String.valueOf(ROWS));
    // a line beneath the last takes a new row
    sheet.type(Keys.ARROW_DOWN, "33", Keys.ENTER).awaitText("#figure-worst .v", "33");
    sheet.awaitText(".register-caption", "5\u202f001 rows");
  }
}
