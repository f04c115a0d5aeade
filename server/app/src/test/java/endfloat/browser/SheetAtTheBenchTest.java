package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/** Readings are taken on a phone, magnified, and without anything moving under the hand. */
class SheetAtTheBenchTest extends OnTheDemonstration {
  @AfterEach
  void asWideAsBefore() {
    browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
    browser.resize(1440, 1000);
  }

  /** On A4, less its margins, a sheet is 180 mm wide: 680 px at 96 to the inch. */
  @Test
  void onPaperNoFormulaAndNoTableRunsIntoItsNeighbour() {
    sheet();
    browser.find("#clause-c14 .further");
    browser.run("dispatchEvent(new Event('beforeprint'))");
    Number widest =
        (Number)
            browser.run(
                "return Math.max(...[...document.querySelectorAll('.lines .work math')].map((one) =>"
                    + "  [...one.querySelectorAll('*')].reduce((right, inner) =>"
                    + "    Math.max(right, inner.getBoundingClientRect().right), 0)"
                    + "  - one.closest('.work').getBoundingClientRect().left))");
    browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
    browser.resize(680, 1000);
    Number room =
        (Number)
            browser.run(
                "const work = document.querySelector('.lines .work');"
                    + "return work.clientWidth - parseFloat(getComputedStyle(work).paddingRight)");
    // formulas are four fifths of their size on paper: css/print.css against css/ground.css
    double onPaper = widest.doubleValue() * 14 / 17.5;
    assertTrue(onPaper <= room.doubleValue(), onPaper + " px of formula in " + room + " px");
    assertEquals(
        List.of(),
        browser.run(
            "const frame = document.querySelector('.frame').getBoundingClientRect().right;"
                + "return [...document.querySelectorAll('table, .chart svg, .prose, td, th')]"
                + ".filter((one) => one.getClientRects().length > 0)"
                + ".filter((one) => one.getBoundingClientRect().right > frame + 1)"
                + ".map((one) => one.outerHTML.slice(0, 120))"),
        "runs past the frame");
  }

  @ParameterizedTest
  @ValueSource(ints = {390, 320})
  void readingsAreTakenOnAPhone(int width) {
    browser.resize(width, 844);
    SheetWindow sheet = sheet();
    assertEquals(
        List.of(),
        browser.run(
            "return [...document.querySelectorAll('input[data-key], .takes .word, .choice button')]"
                + ".filter((one) => one.getClientRects().length > 0)"
                + ".filter((one) => one.getBoundingClientRect().height < 44)"
                + ".map((one) => one.outerHTML.slice(0, 90))"),
        "targets less than 44 px high");
    assertTrue(fits(width), "the page scrolls sideways");
    Number first =
        (Number)
            browser.run("return document.querySelector('.clauses').getBoundingClientRect().top");
    assertTrue(first.intValue() < 844, "clauses begin at " + first + ", below the first screen");
    browser.find(".rail .lengthen").click();
    browser.awaitText(".toc a[href='#clause-c7']", "Warm-up");
    sheet.take("c7", "1/0/0", "86.5").awaitText("#figure-t_block .value .v", "86.5");
  }

  /** A window of 1440 px magnified twice lays out as one of 720 px. */
  @Test
  void magnifiedTwiceNothingRunsOffTheSheet() {
    browser.resize(720, 500);
    sheet();
    assertTrue(fits(720), "the page scrolls sideways");
    browser.picture("sheet-200-percent");
  }

  @ParameterizedTest
  @ValueSource(ints = {1440, 1180})
  void everyFormulaOfTheDemonstrationIsReadWhole(int width) {
    browser.resize(width, 1000);
    sheet();
    browser.find("#clause-c14 .further");
    browser.await(driver -> cutFormulas().isEmpty());
  }

  private static List<?> cutFormulas() {
    return (List<?>)
        browser.run(
            "return [...document.querySelectorAll('.formula, .numbers')]"
                + ".filter((one) => one.scrollWidth > one.clientWidth + 1)"
                + ".map((one) => one.textContent)");
  }

  /** What a record leads to stands in the head of its sheet, and each of it is there. */
  @Test
  void theHeadLeadsToTheReportAndTheBlankForm() {
    sheet();
    assertEquals(
        // the PDF takes a while to make: ReportRoutesTest asks for it
        List.of(),
        browser.run(
            "return Promise.all([...document.querySelectorAll('.onwards a:not([href$=\".pdf\"])')]"
                + ".map((one) => fetch(one.href).then((answer) => (answer.ok ? '' : one.href))))"
                + ".then((refused) => refused.filter(Boolean))"));
    browser.find(".onwards a[href$='/report']");
    browser.find(".onwards a[href$='/report.pdf']");
    browser.find(".onwards a[href$='/form']");
  }

  private static boolean fits(int width) {
    Object wide = browser.run("return document.documentElement.scrollWidth");
    return ((Number) wide).intValue() <= width;
  }

  @Test
  void nothingMovesWhileFiguresChange() {
    SheetWindow sheet = sheet();
    // What is typed moves inside its own field, which is no node of the page: that is no shift.
    browser.run(
        "document.querySelector('#clause-c7').scrollIntoView();"
            + "window.shifts = [];"
            + "new PerformanceObserver((list) => list.getEntries().flatMap((one) => one.sources)"
            + ".filter((source) => source.node)"
            + ".forEach((source) => window.shifts.push(String(source.node.textContent))))"
            + ".observe({ type: 'layout-shift' })");
    for (String taken : List.of("86.0", "87.0", "84.5")) {
      sheet.take("c7", "1/0/0", taken).awaitText("#figure-t_block .value .v", taken);
      sheet.awaitKept();
    }
    sheet.type(Keys.ESCAPE);
    assertEquals(List.of(), browser.run("return window.shifts"), "layout shifts");
  }

  @Test
  void anInstrumentWithoutACertificateTakesTheErrorLimitOfItsStandard() {
    SheetWindow sheet = sheet();
    browser.run("document.querySelector('.register-of-instruments').scrollIntoView()");
    browser.run("document.querySelector('.registers select').focus()");
    browser.find(".registers select option[value='micrometer, up to 50 mm']");
    browser.run("document.querySelector('.registers select').value = 'micrometer, up to 50 mm'");
    browser.run("document.querySelector('.registers .station-words input').focus()");
    sheet.type("MC-50", Keys.ENTER);
    browser.await(
        driver ->
            Boolean.TRUE.equals(
                browser.run(
                    "return [...document.querySelectorAll('.r-certificate textarea')]"
                        + ".some((one) => one.value.includes('DIN 863-1'))")));
  }
}
