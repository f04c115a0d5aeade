package endfloat.browser;

import endfloat.http.RunningServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * How long a person waits at a table of 100,000 rows, in the browser, to the painted frame; and at
 * another clause beside it. No test: it prints, and {@code server/benchmarks/table-times} runs it.
 */
class TableTimes {
  private static final int ROWS = 100_000;
  private static final int TIMES = 15;

  /** Resolves in the frame after rows for this order have come and been drawn. */
  private static final String DRAWN =
      "const [view, done] = arguments;"
          + "const { desk } = window.table.clause.page;"
          + "const start = performance.now();"
          + "const arrived = window.table.rows.arrived;"
          + "window.table.rows.arrived = () => { arrived();"
          + "  if (window.table.clause.cell.revision < asked) return;"
          + "  window.table.rows.arrived = arrived;"
          + "  requestAnimationFrame(() => setTimeout(() => done(performance.now() - start), 0)); };"
          + "const asked = window.table.clause.cell.revision + 1;"
          + "desk.put('t1', '/view', JSON.parse(view));";

  private static final String PAINTED =
      "const [figure, text, done] = arguments;"
          + "const value = document.querySelector('#figure-' + figure + ' .v');"
          + "const watch = new MutationObserver(() => { watch.disconnect();"
          + "  requestAnimationFrame(() => setTimeout(() => done(performance.now() - start), 0)); });"
          + "watch.observe(value, { childList: true, characterData: true, subtree: true });"
          + "const start = performance.now();"
          + "window.table.clause.page.desk.put('w1', '/text', text);";

  @Test
  void print() throws IOException {
    Path record = Files.createTempDirectory("endfloat-times").resolve("rows.json");
    Files.writeString(record, record());
    try (RunningServer server = RunningServer.start(record);
        Browser browser = Browser.start()) {
      browser.open(server.link());
      browser.open(server.address("/sheet/rows"));
      browser.find(".register [data-line='0'] td");
      browser.run(
          "return import('/view/table.js').then(({ TableBody }) => {"
              + "  const update = TableBody.prototype.update;"
              + "  TableBody.prototype.update = function () { window.table = this; return update.call(this); };"
              + "})");
      browser
          .driver()
          .executeAsyncScript(
              "const done = arguments[0];"
                  + "document.querySelector('#clause-t1 .acts .word').click();"
                  + "const title = document.querySelector('#clause-t1 .write');"
                  + "title.value = 'Named'; title.dispatchEvent(new Event('change'));"
                  + "const look = () => window.table ? done() : setTimeout(look, 10); look();");
      print("sorted by numbers", orders(browser, "{'sort':['lash%s']}"));
      print("sorted by texts", orders(browser, "{'sort':['serial%s']}"));
      print("in groups of a column", orders(browser, "{'group':['batch'],'sort':['lash%s']}"));
      print(
          "chosen by a condition",
          orders(browser, "{'filter':'lash > 13 thou','sort':['lash%s']}"));
      double[] other = new double[TIMES];
      for (int i = 0; i < TIMES; i++) {
        other[i] = async(browser, PAINTED, "a", "a [mm] = " + (i + 2) + " mm");
      }
      print("edit of another clause to its paint", other);
    }
  }

  private static double[] orders(Browser browser, String view) {
    double[] times = new double[TIMES];
    for (int i = 0; i < TIMES; i++) {
      String asked = String.format(Locale.ROOT, view, i % 2 == 0 ? " down" : "");
      times[i] = async(browser, DRAWN, asked.replace('\'', '"'));
    }
    return times;
  }

  private static double async(Browser browser, String script, Object... arguments) {
    return ((Number) browser.driver().executeAsyncScript(script, arguments)).doubleValue();
  }

  private static String record() {
    Random random = new Random(1);
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < ROWS; i++) {
      rows.append(i == 0 ? "" : ",").append("['W6-").append(random.nextInt(ROWS)).append("','");
      rows.append(random.nextInt(900)).append("','").append(random.nextInt(200) / 10.0);
      rows.append("','B").append(random.nextInt(8)).append("']");
    }
    return ("{'format':'endfloat-record','version':1,'title_block':{'title':'Rows'},'cells':["
            + "{'id':'t1','kind':'table','title':'','name':'wear','columns':["
            + "{'head':'serial','kind':'text'},{'head':'hours','kind':'number','unit':'h'},"
            + "{'head':'lash','kind':'number','unit':'thou'},{'head':'batch','kind':'text'}],"
            + "'rows':["
            + rows
            + "],'limits':['limit wear.lash: at most 15 thou']},"
            + "{'id':'w1','kind':'working','title':'Beside','text':'a [mm] = 1 mm'}]}")
        .replace('\'', '"');
  }

  private static void print(String what, double[] times) {
    double[] sorted = Arrays.copyOfRange(times, 3, times.length);
    Arrays.sort(sorted);
    System.out.printf(
        Locale.ROOT,
        "%-42s p50 %6.1f ms   p95 %6.1f ms   (%d)%n",
        what,
        sorted[sorted.length / 2],
        sorted[(int) Math.ceil(sorted.length * 0.95) - 1],
        sorted.length);
  }
}
