package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/**
 * Java clauses on the sheet: shown before they may run, run, edited, wrong, stopped, helped with.
 */
class JavaClauseTest extends OnTheDemonstration {
  /** Another source in every run of the tests, so that nobody has approved it. */
  private final String mark = " // " + System.nanoTime();

  /**
   * A sheet with a length, clauses j1, j2 ... that give out_1, out_2 ..., and a line that reads.
   */
  private SheetWindow open(String... sources) throws IOException {
    StringBuilder record =
        new StringBuilder(
            "{'format':'endfloat-record','version':1,'title_block':{'title':'Java'},'cells':["
                + "{'id':'w1','kind':'working','title':'Lines','text':'length [mm] = 4 mm'},");
    for (int i = 1; i <= sources.length; i++) {
      String source = sources[i - 1].replace("\n", "\\n") + mark;
      record.append(
          "{'id':'j" + i + "','kind':'java','title':'Java','gives':'out_" + i + " [mm]',");
      record.append("'text':'" + source + "'},");
    }
    record.append(
        "{'id':'w2','kind':'working','title':'Lines','text':'after [mm] = out_1 + 1 mm'}]}");
    String text = record.toString().replace('\'', '"');
    Files.writeString(server.shelf().resolve("java.json"), text);
    return SheetWindow.open(browser, server.address("/sheet/java"));
  }

  private static void press(String clause, String word) {
    WebElement button =
        browser.await(
            driver ->
                driver
                    .findElements(By.cssSelector("#clause-" + clause + " .java-state button"))
                    .stream()
                    .filter(one -> one.isDisplayed() && one.getText().equals(word))
                    .findFirst()
                    .orElse(null));
    browser.run("arguments[0].click()", button);
  }

  private static List<String> wrongLines(String clause) {
    return browser
        .driver()
        .findElements(By.cssSelector("#clause-" + clause + " .wrong-line"))
        .stream()
        .map(one -> one.getText().strip())
        .toList();
  }

  @Test
  void aSourceFromElsewhereIsShownAndNotRunUntilItIsApprovedAndAgainOnceItIsEdited()
      throws IOException {
    SheetWindow sheet = open("// twice\nout1 = length.times(2);");
    sheet.awaitText("#clause-j1 .java-state", "has not been approved on this machine");
    sheet.awaitText("#clause-j1 .java-state", "60 s, 512 MB");
    sheet.awaitText("#clause-j1 .java-source", "out1 = length.times(2);");
    sheet.awaitText("#figure-after", "waiting").awaitText("#figure-after", "on out_1, clause 2");
    press("j1", "Run");
    sheet.awaitText("#figure-out_1 .v", "8").awaitText("#figure-after .v", "9");
    sheet.awaitText("#clause-j1 .java-foot", "Reads length.");
    sheet.edit("j1").type("x").awaitText("#clause-j1 .java-state", "has not been approved");
    sheet.awaitText("#figure-after", "waiting");
    sheet.type(Keys.BACK_SPACE, Keys.ESCAPE).awaitText("#figure-after .v", "9");
  }

  @Test
  void whatIsWrongStandsAtItsLineInWordsAndTheSheetGoesOn() throws IOException {
    SheetWindow sheet =
        open(
            "double a = 1;\nout1 = lenght.times(a);",
            "double[] a = {};\n\nout2 = length.times(a[3]);",
            "System.exit(7);");
    press("j1", "Run");
    sheet.awaitText("#clause-j1 .java-wrong", "line 2 There is no variable lenght.");
    assertEquals(List.of("out1 = lenght.times(a);" + mark), wrongLines("j1"));
    press("j2", "Run");
    sheet.awaitText("#clause-j2 .java-wrong", "line 3 A place is asked for");
    assertEquals(1, wrongLines("j2").size());
    press("j3", "Run");
    sheet.awaitText("#clause-j3 .java-wrong", "The process of the run has ended with the code 7.");
    assertTrue(wrongLines("j3").isEmpty(), "it is no line's fault");
    sheet.edit("j1").retype("out1 = length;" + mark).press("j1", "run");
    sheet.awaitText("#figure-after .v", "5").type(Keys.ESCAPE).awaitKept();
    sheet.awaitText("#clause-j3 .java-source", "System.exit(7);");
  }

  @Test
  void aRunSaysHowFarItIsAndIsStoppedThoughItListensToNothing() throws IOException {
    SheetWindow sheet =
        open(
            "long begun = System.nanoTime();\n"
                + "while (System.nanoTime() - begun < 200_000_000L) { progress(0.25); }\n"
                + "while (true) { }");
    press("j1", "Run");
    sheet.awaitText("#clause-j1 .java-state", "Running, 25 %");
    sheet.awaitText("#figure-out_1", "working, 25 %");
    sheet.edit("w1").retype("length [mm] = 7 mm").awaitText("#figure-length .v", "7");
    sheet.type(Keys.ESCAPE).awaitText("#clause-j1 .java-state", "Running, 25 %");
    press("j1", "Stop");
    sheet.awaitText("#clause-j1 .java-wrong", "The run was stopped.");
    sheet.awaitText("#figure-after", "on out_1, clause 2");
  }

  @Test
  void thePadOffersNamesOfTheRecordAndSaysWhatMayBeCalled() throws IOException {
    SheetWindow sheet = open("out1 = length;");
    sheet.edit("j1").retype("out1 = leng").awaitText("#clause-j1 .pad-words", "length");
    sheet.type("th.times(").type(Keys.F1);
    sheet.awaitText("#clause-j1 .pad-foot", "times(Measured<?> other)");
    sheet.awaitText("#clause-j1 .cm-content", "out1 = length.times(").type(Keys.ESCAPE);
  }
}
