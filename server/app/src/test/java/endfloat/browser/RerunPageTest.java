package endfloat.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.Select;

/** A record is run on another engine in the page, and both stand side by side. */
class RerunPageTest extends OnTheDemonstration {
  private static final Path READINGS = Path.of("../../notebooks/w6-bevel-mesh.second-engine.csv");

  private void choose(Path file) {
    browser
        .driver()
        .findElement(By.cssSelector("[name=readings]"))
        .sendKeys(file.toAbsolutePath().normalize().toString());
  }

  @Test
  void theShelfLeadsToARerunAndThatToTheComparison() {
    browser.find(".ways a[href='/rerun/w6-bevel-mesh']").click();
    browser.awaitText("#from", "bevel");
    browser.find("[name=engine_serial]").sendKeys("W6-204");
    choose(READINGS);
    browser.find(".rerun .btn.main").click();
    browser.awaitText("h1", "W6-204");
    browser.awaitText("#compared", "hot_loosest");
    new Select(browser.find("#show")).selectByValue("verdicts");
    browser.await(
        driver ->
            driver.findElements(By.cssSelector("#compared tbody tr")).size() > 0
                && driver.findElements(By.cssSelector("#compared .strip-before")).size() > 0);
    assertTrue(
        browser.find("#compared .pair").getText().matches("(?s)\\w[\\w ]*\\s*→\\s*\\w[\\w ]*"),
        browser.find("#compared .pair").getText());
  }

  @Test
  void aFileThatDoesNotFitIsRefusedWithAllThatIsWrongAndTheFormStays() throws IOException {
    Path file = Files.createTempFile("readings", ".csv");
    Files.writeString(file, "dail [mm],t_cold [mm]\n0.1,20\n");
    browser.open(server.address("/rerun/w6-bevel-mesh"));
    browser.awaitText("#from", "bevel");
    browser.find("[name=engine_serial]").sendKeys("W6-204");
    choose(file);
    browser.find(".rerun .btn.main").click();
    browser.awaitText(".problems", "dail");
    browser.awaitText(".problems", "nothing was made");
    assertEquals("W6-204", browser.find("[name=engine_serial]").getDomProperty("value"));
    // the refusal itself is told by the browser too
    browser.complaints();
  }
}
