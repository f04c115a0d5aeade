package endfloat.browser;

import java.util.List;
import java.util.Map;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.interactions.Actions;

/** One browser window with a sheet in it, driven as a person would. */
final class SheetWindow {
  /** Lets a test cut the line of a page to its server, mend it and slow it, as a network does. */
  private static final String LINE =
      "(() => {"
          + "  const Line = WebSocket;"
          + "  const lines = [];"
          + "  let held = null;"
          + "  let parked = null;"
          + "  window.holdChanges = () => { parked = []; };"
          + "  window.letOneThrough = () => parked.shift()();"
          + "  window.letAllThrough = () => { const all = parked; parked = null; all.forEach((one) => one()); };"
          + "  window.WebSocket = function (address) {"
          + "    if (held) {"
          + "      const dead = { readyState: 3, close() {} };"
          + "      held.push(dead);"
          + "      return dead;"
          + "    }"
          + "    const line = new Line(address);"
          + "    lines.push(line);"
          + "    line.addEventListener('message', (event) => {"
          + "      if (!parked || JSON.parse(event.data).type !== 'changed') return;"
          + "      event.stopImmediatePropagation();"
          + "      parked.push(() => line.onmessage(event));"
          + "    });"
          + "    return line;"
          + "  };"
          + "  window.cutLine = () => { held = []; lines.splice(0).forEach((line) => line.close()); };"
          + "  window.mendLine = () => {"
          + "    const dead = held;"
          + "    held = null;"
          + "    dead.forEach((line) => line.onclose());"
          + "  };"
          + "})();";

  private final Browser browser;
  private final String handle;

  private SheetWindow(Browser browser) {
    this.browser = browser;
    this.handle = browser.driver().getWindowHandle();
  }

  /** Opens a sheet in the present window and waits until its clauses stand. */
  static SheetWindow open(Browser browser, String address) {
    browser
        .driver()
        .executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", LINE));
    browser.open(address);
    browser.find("html[data-revision]");
    return new SheetWindow(browser);
  }

  /** The window that is in front, with whatever it shows. */
  static SheetWindow of(Browser browser) {
    return new SheetWindow(browser);
  }

  /** The same in a further window. */
  static SheetWindow openAnother(Browser browser, String address) {
    browser.driver().switchTo().newWindow(WindowType.WINDOW);
    return open(browser, address);
  }

  SheetWindow front() {
    browser.driver().switchTo().window(handle);
    return this;
  }

  /** Cuts the line to the server until it is mended. */
  SheetWindow cut() {
    front();
    browser.run("window.cutLine()");
    return awaitText(".kept", "line lost");
  }

  SheetWindow mend() {
    front();
    browser.run("window.mendLine()");
    return this;
  }

  /** Holds what the server says of changes, as a slow line does; acknowledgements come through. */
  SheetWindow holdChanges() {
    front();
    browser.run("window.holdChanges()");
    return this;
  }

  SheetWindow letOneChangeThrough() {
    front();
    browser.run("window.letOneThrough()");
    return this;
  }

  SheetWindow letAllChangesThrough() {
    front();
    browser.run("window.letAllThrough()");
    return this;
  }

  /** Opens a clause for editing by its word of action. */
  SheetWindow edit(String clause) {
    front();
    press(clause, "edit");
    browser.await(
        driver ->
            Boolean.TRUE.equals(
                browser.run("return document.activeElement.matches('.pad .cm-content')")));
    return this;
  }

  /** Presses a word in a clause. */
  SheetWindow press(String clause, String word) {
    front();
    WebElement found =
        browser.await(
            driver ->
                driver.findElements(By.cssSelector("#clause-" + clause + " .word")).stream()
                    .filter(one -> word.equals(one.getDomProperty("textContent")))
                    .findFirst()
                    .orElse(null));
    browser.run("arguments[0].click()", found);
    return this;
  }

  /** Types into what has the focus, one key after the other as a person does. */
  SheetWindow type(CharSequence... keys) {
    front();
    for (CharSequence some : keys) {
      some.codePoints()
          .forEach(
              key -> new Actions(browser.driver()).sendKeys(Character.toString(key)).perform());
    }
    return this;
  }

  /** Types one key while another is held. */
  SheetWindow chord(Keys held, CharSequence key) {
    front();
    new Actions(browser.driver()).keyDown(held).sendKeys(key).keyUp(held).perform();
    return this;
  }

  /** Replaces the whole text of the pad. */
  SheetWindow retype(String text) {
    return chord(Keys.CONTROL, "a").type(text);
  }

  /** Writes into the field of a reading, as {@code reading/entry/repeat}. */
  SheetWindow take(String clause, String field, String text) {
    WebElement input = field(clause, field);
    browser.run("arguments[0].focus(); arguments[0].select()", input);
    return type(text, Keys.ENTER);
  }

  WebElement field(String clause, String field) {
    front();
    return browser.find("#clause-" + clause + " [data-key='" + field + "']");
  }

  SheetWindow awaitTaken(String clause, String field, String text) {
    browser.await(driver -> text.equals(field(clause, field).getDomProperty("value")));
    return this;
  }

  /** Waits until the server has acknowledged everything that was typed. */
  SheetWindow awaitKept() {
    front();
    browser.await(
        driver ->
            driver.findElement(By.cssSelector(".kept")).getText().startsWith("kept")
                && driver.findElements(By.cssSelector(".pad[data-open]")).isEmpty());
    return this;
  }

  SheetWindow awaitText(String selector, String words) {
    front();
    browser.awaitText(selector, words);
    return this;
  }

  /** The numbers of all clauses from top to bottom. */
  List<String> numbers() {
    front();
    return browser.driver().findElements(By.cssSelector(".clause > .no")).stream()
        .map(WebElement::getText)
        .toList();
  }

  /** Id of the clause that is being edited. */
  String edited() {
    front();
    return browser.find(".clause.editing").getDomAttribute("id").substring("clause-".length());
  }

  SheetWindow reload() {
    front();
    browser.driver().navigate().refresh();
    browser.find("html[data-revision]");
    return this;
  }
}
