package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import endfloat.http.RunningServer;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** Two windows, and a line that is lost, on one record. */
class TwoWindowsTest {
  private static Browser browser;

  @BeforeAll
  static void startBrowser() {
    browser = Browser.start();
  }

  @AfterAll
  static void stopBrowser() {
    if (browser != null) {
      browser.close();
    }
  }

  @Test
  void theOthersEditAppearsAtOnceAndLeavesAloneWhatIsBeingTyped() {
    try (RunningServer server = RunningServer.start(RunningServer.DEMONSTRATION)) {
      String address = server.address("/sheet/w6-bevel-mesh");
      browser.open(server.link());
      SheetWindow one = SheetWindow.open(browser, address);
      SheetWindow other = SheetWindow.openAnother(browser, address);

      browser.run("arguments[0].focus(); arguments[0].select()", other.field("c6", "0/1/0"));
      other.type("0.14");
      one.take("c6", "0/0/0", "0.135").awaitKept();

      other.awaitTaken("c6", "0/0/0", "0.135").awaitTaken("c6", "0/1/0", "0.14");
      assertEquals("0/1/0", focused());
      other.type("2", Keys.ENTER).awaitKept();
      one.awaitTaken("c6", "0/1/0", "0.142");
      assertEquals(List.of(), browser.complaints());
    }
  }

  @Test
  void bothTextsAreOfferedWhereTwoWroteInOnePlace() {
    try (RunningServer server = RunningServer.start(RunningServer.DEMONSTRATION)) {
      String address = server.address("/sheet/w6-bevel-mesh");
      browser.open(server.link());
      SheetWindow one = SheetWindow.open(browser, address);
      SheetWindow other = SheetWindow.openAnother(browser, address);
      other.cut();
      other.edit("c16").type(" Written here.");
      one.edit("c16").type(" Written there.", Keys.ESCAPE).awaitKept();

      other.mend();
      other.awaitText("#clause-c16 .both", "Written here.");
      other.awaitText("#clause-c16 .both", "Written there.");
      browser.driver().findElements(By.cssSelector("#clause-c16 .both .btn")).get(0).click();
      other.awaitKept();
      one.awaitText("#clause-c16 .prose", "Written here.");
    }
  }

  @Test
  void typingGoesOnWhileTheLineIsLostAndIsSentWhenItIsBack() {
    try (RunningServer server = RunningServer.start(RunningServer.DEMONSTRATION)) {
      String address = server.address("/sheet/w6-bevel-mesh");
      browser.open(server.link());
      SheetWindow one = SheetWindow.open(browser, address);
      SheetWindow other = SheetWindow.openAnother(browser, address);
      one.cut();
      one.awaitText(".kept", "line lost");
      one.take("c6", "0/0/0", "0.136").take("c7", "0/0/0", "21.0");
      one.awaitText(".kept", "2 to send");
      other.take("c6", "0/1/0", "0.150").awaitKept();

      one.mend();
      one.awaitKept().awaitTaken("c6", "0/1/0", "0.150").awaitTaken("c6", "0/0/0", "0.136");
      other.awaitTaken("c6", "0/0/0", "0.136").awaitTaken("c7", "0/0/0", "21.0");
    }
  }

  private static String focused() {
    return browser.driver().switchTo().activeElement().getDomAttribute("data-key");
  }
}
