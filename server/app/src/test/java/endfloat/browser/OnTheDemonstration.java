package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import endfloat.http.RunningServer;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;

/** One browser for a class of tests; for each test a server with the demonstration as shipped. */
abstract class OnTheDemonstration {
  static Browser browser;
  RunningServer server;

  @BeforeAll
  static void startBrowser() {
    browser = Browser.start();
  }

  @AfterAll
  static void stopBrowser() {
    if (browser != null) {
      browser.close();
      browser = null;
    }
  }

  @BeforeEach
  void serve() {
    server = RunningServer.start(RunningServer.DEMONSTRATION);
    browser.open(server.link());
  }

  @AfterEach
  void stopServing() {
    try {
      assertEquals(List.of(), browser.complaints(), "errors and violations of the content policy");
      // another server may get the same port, and with it what the browser keeps for that
      browser.run("try { localStorage.clear() } catch { /* a page without any */ }");
      browser.open("about:blank");
    } finally {
      server.close();
    }
  }

  /** The sheet of the demonstration, its clauses drawn. */
  SheetWindow sheet() {
    return SheetWindow.open(browser, server.address("/sheet/w6-bevel-mesh"));
  }
}
