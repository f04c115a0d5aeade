package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.http.RunningServer;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** The shelf lists what there is, finds it, and begins new records from patterns. */
class ShelfPageTest {
  private static final String RECORD =
      """
      {"format":"endfloat-record","version":1,
       "title_block":{"title":"%s","subtitle":"%s","engine_serial":"%s","state":"%s"},
       "cells":[{"id":"r","kind":"readings","title":"Thrust","readings":[
         {"name":"float_crank","unit":"mm","entries":[{"taken":[%s]}]}]}]}
      """;

  private static Browser browser;
  private RunningServer server;

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

  @BeforeEach
  void serve() throws IOException {
    server = RunningServer.start(RunningServer.DEMONSTRATION);
    put("thrust", RECORD.formatted("Crankshaft end float", "", "W6-109", "draft", ""));
    put(
        "pattern-float",
        RECORD.formatted("End float", "Thrust bearing, float cold and hot", "", "pattern", ""));
    put("broken", "{\"format\":\"endfloat-record\",");
    browser.open(server.link());
    browser.find("html[data-ready]");
  }

  @AfterEach
  void stopServing() {
    assertEquals(List.of(), browser.complaints(), "errors and violations of the content policy");
    browser.open("about:blank");
    server.close();
  }

  private void put(String id, String json) throws IOException {
    Files.writeString(server.shelf().resolve(id + ".json"), json);
  }

  private List<String> listed() {
    return browser.driver().findElements(By.cssSelector(".register tbody tr")).stream()
        .map(WebElement::getText)
        .toList();
  }

  private void choose(String list, String word) {
    new Select(browser.find(list)).selectByVisibleText(word);
  }

  @Test
  void aRecordThatCannotBeReadIsListedWithTheReason() {
    browser.awaitText(".register .reason", "Cannot be read:");
    choose("#show", "what is in error");
    assertEquals(1, listed().size());
    assertTrue(listed().get(0).startsWith("broken"));
    browser.picture("shelf");
  }

  @Test
  void recordsAreFoundByWordByEngineAndByWhatIsStillToTake() {
    assertEquals(3, listed().size(), "a pattern is no record of an engine");
    choose("#engine", "W6-109");
    assertEquals(1, listed().size());
    assertTrue(listed().get(0).contains("0 of 1"), listed().get(0));
    choose("#engine", "any engine");
    choose("#show", "what has readings to take");
    assertTrue(listed().stream().anyMatch(one -> one.contains("Crankshaft end float")));
    choose("#show", "every record");
    browser.find("#find").sendKeys("thrust");
    browser.await(driver -> listed().size() == 1);
    assertEquals("1 of 3.", browser.find("#listed").getText());
  }

  @Test
  void aNewRecordIsBegunFromAPatternWhoseLineSaysWhatItIsFor() {
    browser.awaitText("#patterns li", "Thrust bearing, float cold and hot");
    browser.find("#new-title").sendKeys("Float of engine 121");
    browser.run("document.querySelector('#patterns button').click()");
    browser.find("html[data-revision] .clause");
    assertEquals("Float of engine 121", browser.find("#tb-title").getDomProperty("value"));
    assertEquals("Thrust", browser.find(".clause .ttl").getText());
  }
}
