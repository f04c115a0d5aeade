package endfloat.browser;

import endfloat.http.RunningServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * How long a person waits at a sheet of 500 lines, in the browser, to the frame in which the figure
 * is painted. No test: it prints, and {@code server/benchmarks/sheet-edit} runs it.
 */
class SheetEditTimes {
  private static final int WARM = 10;
  private static final int TIMES = 100;

  /** Resolves in the frame after the figure's text has become another one. */
  private static final String PAINTED =
      "const [figure, done] = arguments;"
          + "const value = document.querySelector('#figure-' + figure + ' .v');"
          + "const watch = new MutationObserver(() => {"
          + "  watch.disconnect();"
          + "  requestAnimationFrame(() => setTimeout(() => done(performance.now() - start), 0));"
          + "});"
          + "watch.observe(value, { childList: true, characterData: true, subtree: true });"
          + "const start = performance.now();";

  @Test
  void print() throws IOException {
    Path record =
        SheetOfManyLines.write(Files.createTempDirectory("endfloat-times").resolve("lines.json"));
    try (RunningServer server = RunningServer.start(record);
        Browser browser = Browser.start()) {
      browser.open(server.link());
      String address = server.address("/sheet/lines");
      double[] opened = new double[10];
      for (int i = 0; i < opened.length; i++) {
        browser.open(address);
        browser.find("html[data-revision]");
        opened[i] =
            ((Number)
                    browser.run("return performance.getEntriesByName('sheet drawn')[0].startTime"))
                .doubleValue();
      }
      print("open to figures standing", opened);
      print("reading taken, 10 figures follow", readings(browser, 1, "step_0_9"));
      print("reading taken, 500 figures follow", readings(browser, 0, "step_49_9"));
      print("typed in a working, 10 figures follow", typing(browser));
      print("frames while scrolling from end to end", scrolling(browser));
    }
  }

  private static double[] readings(Browser browser, int reading, String figure) {
    double[] times = new double[WARM + TIMES];
    for (int i = 0; i < times.length; i++) {
      String act =
          "const field = document.querySelector('[data-key=\""
              + reading
              + "/0/0\"]');"
              + "field.focus(); field.value = '0.2"
              + (i % 9 + 1)
              + "';"
              + "field.dispatchEvent(new KeyboardEvent('keydown', {key: 'Enter', bubbles: true}));";
      times[i] = painted(browser, figure, act);
    }
    return Arrays.copyOfRange(times, WARM, times.length);
  }

  /** From the change in the pad to the preview's paint; 60 ms of it are waited on purpose. */
  private static double[] typing(Browser browser) {
    browser.run("document.querySelector('#clause-w3 .acts .word').click()");
    browser.find(".cm-content");
    browser.run(
        "return import('@codemirror/view').then(({ EditorView }) => {"
            + "  window.pad = EditorView.findFromDOM(document.querySelector('.cm-editor'));"
            + "})");
    double[] times = new double[WARM + TIMES];
    for (int i = 0; i < times.length; i++) {
      String act =
          "const { to, text } = pad.state.doc.line(1);"
              + "const from = to - text.length;"
              + "const insert = 'step_3_0 [mm] = taken_3 + shared + 0.0"
              + (i % 9 + 1)
              + " mm';"
              + "pad.dispatch({ changes: { from, to, insert } });";
      times[i] = painted(browser, "step_3_9", act);
    }
    return Arrays.copyOfRange(times, WARM, times.length);
  }

  private static double painted(Browser browser, String figure, String act) {
    return ((Number) browser.driver().executeAsyncScript(PAINTED + act, figure)).doubleValue();
  }

  private static double[] scrolling(Browser browser) {
    Object frames =
        browser
            .driver()
            .executeAsyncScript(
                "const done = arguments[0]; const frames = []; let last = performance.now();"
                    + "let at = 0; const end = document.documentElement.scrollHeight;"
                    + "const step = (now) => { frames.push(now - last); last = now; at += 120;"
                    + "  scrollTo(0, at); at < end ? requestAnimationFrame(step) : done(frames); };"
                    + "requestAnimationFrame(step);");
    return ((java.util.List<?>) frames)
        .stream().mapToDouble(one -> ((Number) one).doubleValue()).toArray();
  }

  private static void print(String what, double[] times) {
    double[] sorted = times.clone();
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
