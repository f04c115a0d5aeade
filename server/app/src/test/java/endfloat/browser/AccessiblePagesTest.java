package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.deque.html.axecore.selenium.AxeBuilder;
import endfloat.http.RunningServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every page in both inks, on a desk, at 200 % and on the narrowest window: no finding of axe-core,
 * nothing wider than the window. A page is loaded once and then seen in all its looks, as by a
 * person who changes the window.
 */
class AccessiblePagesTest {
  /** Rules that can find something in one ink and nothing in the other. */
  private static final List<String> OF_COLOUR = List.of("color-contrast", "link-in-text-block");

  /** What of a look is put to the rules. */
  private enum Rules {
    ALL,
    /** For a further width of an ink that was seen already. */
    BUT_COLOUR,
    /** For the other ink of a width that was seen already. */
    COLOUR
  }

  private record Look(int width, String ink, Rules rules) {}

  /** 640 is a window of 1280 at 200 %. */
  private static final List<Look> EVERY_PAGE =
      List.of(
          new Look(1440, "paper", Rules.ALL),
          new Look(320, "blueprint", Rules.ALL),
          new Look(640, "paper", Rules.BUT_COLOUR));

  private static final List<Look> USED_MOST =
      List.of(
          new Look(1440, "blueprint", Rules.COLOUR),
          new Look(1100, "blueprint", Rules.BUT_COLOUR),
          new Look(390, "paper", Rules.ALL));

  /** Clauses of the demonstration that are entered by fields. */
  private static final Map<String, String> FIELDS =
      Map.of("fits", "c42", "findings", "c43", "causes", "c45");

  /** What a sheet in a certain state has that the plain sheet has not: colours are tried there. */
  private static final Map<String, String> OF_ITS_OWN =
      Map.of(
          "editing", "#clause-c10",
          "beside", ".beside",
          "fleet", "#clause-c5",
          "fits", "#clause-c42",
          "findings", "#clause-c43",
          "causes", "#clause-c45",
          "java", "#clause-j1");

  private static final Map<String, String> PATHS =
      Map.of(
          "shelf", "/",
          "compare", "/compare?left=w6-bevel-mesh&right=other-engine",
          "rerun", "/rerun/w6-bevel-mesh",
          "form", "/record/w6-bevel-mesh/form?limits=1",
          "reference", "/reference",
          "calculation", "/reference/stepped_shaft",
          "table", "/reference/tables/materials",
          "java", "/sheet/java",
          "figure", "/how-a-figure-is-made",
          "message", "/nothing");

  /** What stands on a page that is not a sheet once it is drawn. */
  private static final Map<String, String> READY =
      Map.of(
          "shelf", "html[data-ready] .register tbody tr",
          "compare", "html[data-ready] #compared tbody tr",
          "rerun", "html[data-ready] #rerun",
          "form", "main.form",
          "reference", "html[data-ready] .ref-list li",
          "calculation", "html[data-ready] .ref-also li",
          "table", "html[data-ready] .lookup tr",
          "figure", "html[data-ready] .made:not([hidden]) .lines",
          "message", ".message");

  private static Browser browser;
  private static RunningServer server;

  @BeforeAll
  static void start() {
    browser = Browser.start();
    server =
        RunningServer.start(
            RunningServer.DEMONSTRATION,
            RunningServer.DEMONSTRATION.resolveSibling("w6-fleet.json"));
    otherEngine();
    java();
    browser.driver().manage().timeouts().scriptTimeout(Duration.ofMinutes(3));
    browser
        .driver()
        .executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", axe()));
    browser.open(server.link());
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
    if (server != null) {
      server.close();
    }
  }

  /** The rules themselves; each page has them from its start. */
  private static String axe() {
    try (InputStream in = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The demonstration with one reading taken on another engine, to be compared with it. */
  private static void otherEngine() {
    try {
      String record = Files.readString(RunningServer.DEMONSTRATION);
      Files.writeString(
          server.shelf().resolve("other-engine.json"),
          record.replace("\"W6-0031\"", "\"W6-0048\"").replace("\"0.134\"", "\"0.142\""));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Java that nobody has approved, Java that is wrong, and some that gives and shows all it can.
   */
  private static void java() {
    String mark = " // " + System.nanoTime();
    String shows =
        "out = length; twice = MeasuredSeries.list(List.of(length));\\n"
            + "at = Table.create(\\\"at\\\", DoubleColumn.create(\\\"lash\\\", 1, 3));\\n"
            + "System.out.println(out); System.err.println(out);\\n"
            + "chart(new Plot(\\\"angle [deg]\\\", \\\"lash [mm]\\\").curve(0, 9, a -> a));";
    String record =
        "{'format':'endfloat-record','version':1,'title_block':{'title':'Java'},'cells':["
            + "{'id':'w1','kind':'working','title':'Given','text':'length [mm] = 4 mm'},"
            + javaClause("j1", "unread [mm]", "int \\u202e i = 3;" + mark)
            + javaClause("j2", "wrong [mm]", "wrong = lenght;" + mark)
            + javaClause("j3", "out [mm], twice [mm]: series, at: table(lash [mm])", shows + mark)
            + "{'id':'n1','kind':'note','title':'','text':'The end.'}]}";
    try {
      Files.writeString(server.shelf().resolve("java.json"), record.replace('\'', '"'));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String javaClause(String id, String gives, String text) {
    return "{'id':'"
        + id
        + "','kind':'java','title':'"
        + id
        + "','gives':'"
        + gives
        + "','text':'"
        + text
        + "'},";
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "shelf",
        "reference",
        "calculation",
        "table",
        "figure",
        "compare",
        "rerun",
        "message",
        "form",
        "sheet",
        "editing",
        "beside",
        "fits",
        "causes",
        "findings",
        "fleet",
        "java"
      })
  void everyPageInBothInksAndAtEveryWidth(String page) {
    List<Look> looks = new ArrayList<>(EVERY_PAGE);
    if (List.of("shelf", "sheet", "calculation").contains(page)) {
      looks.addAll(USED_MOST);
    }
    open(page);
    List<String> found = new ArrayList<>();
    for (Look look : looks) {
      browser.resize(look.width(), look.width() < 700 ? 844 : 1000);
      browser.run("document.documentElement.dataset.ink = arguments[0]", look.ink());
      browser
          .driver()
          .executeAsyncScript(
              "const done = arguments[0];"
                  + "document.fonts.ready.then(() =>"
                  + " requestAnimationFrame(() => requestAnimationFrame(() => done())))");
      browser.picture(page + "-" + look.ink() + "-" + look.width());
      findings(page, look).forEach(one -> found.add(look.ink() + " " + look.width() + ": " + one));
      Object beyond =
          browser.run(
              "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
      if (!beyond.equals(0L)) {
        found.add(look.width() + ": " + beyond + " pixels beyond the width of the window");
      }
    }
    List<String> complaints = browser.complaints();
    if (!page.equals("message")) {
      found.addAll(complaints);
    }
    assertEquals("", String.join("\n", found));
  }

  /** Loads a page on a desk and brings it into the state that its name says. */
  private static void open(String page) {
    browser.resize(1440, 1000);
    browser.open(
        server.address(
            PATHS.getOrDefault(
                page, page.equals("fleet") ? "/sheet/w6-fleet" : "/sheet/w6-bevel-mesh")));
    browser.find(READY.getOrDefault(page, "html[data-revision]"));
    if (page.equals("editing") || page.equals("beside")) {
      browser.run("document.querySelector('#clause-c10 .acts .word').click()");
      browser.find(".cm-focused");
    }
    if (page.equals("beside")) {
      browser.run("document.querySelector('.pad-foot .word').click()");
      browser.find(".beside .rn").click();
      browser.find(".beside .put-here .main");
    }
    if (page.equals("fleet")) {
      browser.find("#clause-c5 .register tbody td");
      browser.run("document.querySelectorAll('#clause-c5 .register .head')[3].click()");
      browser.find(".register-line .word");
    }
    if (page.equals("java")) {
      browser.run(
          "document.querySelectorAll('#clause-j2 .btn, #clause-j3 .btn')"
              + ".forEach((one) => one.textContent === 'Run' && one.click())");
      browser.find("#clause-j2 .java-wrong .problem");
      browser.find("#clause-j3 .java-shown svg");
      browser.find("#figure-out .v");
    }
    if (FIELDS.containsKey(page)) {
      browser.run(
          "[...document.querySelectorAll('#clause-' + arguments[0] + ' .acts .word')]"
              + ".find((word) => word.textContent === 'edit').click()",
          FIELDS.get(page));
      browser.find(".entry fieldset");
    }
  }

  /** What the rules find, in words with the places. */
  private static List<String> findings(String page, Look look) {
    List<String> found = new ArrayList<>();
    if (look.rules() != Rules.COLOUR) {
      String but =
          "{ rules: Object.fromEntries(colour.map((rule) => [rule, { enabled: false }])) }";
      found.addAll(run("html", but));
    }
    if (look.rules() != Rules.BUT_COLOUR) {
      found.addAll(
          run(
              OF_ITS_OWN.getOrDefault(page, "html"),
              "{ preload: false, runOnly: { type: 'rule', values: colour } }"));
    }
    return found;
  }

  @SuppressWarnings("unchecked")
  private static List<String> run(String context, String options) {
    return (List<String>)
        browser
            .driver()
            .executeAsyncScript(
                "const [context, colour, done] = arguments;"
                    + "const words = (rule) => `${rule.id}: ${rule.help}`"
                    + " + rule.nodes.map((node) => `\\n  ${node.html}`).join('');"
                    + "axe.run(context === 'html' ? document : context,"
                    + " { resultTypes: ['violations'], ..."
                    + options
                    + " }).then((run) => done(run.violations.map(words)), (e) => done([String(e)]))",
                context,
                OF_COLOUR);
  }
}
