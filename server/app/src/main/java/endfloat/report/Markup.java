package endfloat.report;

import endfloat.working.typeset.Typeset;
import endfloat.working.typeset.XmlText;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes markup that is HTML and well-formed XML at once. Texts are escaped; there is no way to
 * write a style or a script.
 */
final class Markup {
  private final StringBuilder out = new StringBuilder(1 << 16);
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Begins an element.
   *
   * @param attributes names and values by turns; one whose value is null is left out
   */
  Markup start(String name, String... attributes) {
    tag(name, attributes);
    out.append('>');
    open.push(name);
    return this;
  }

  /**
   * Begins a table that stands by itself: where it is wider than the screen it scrolls in a place
   * of its own, which the keys reach and which has a name.
   *
   * @param captionLook class of the caption, or empty
   */
  Markup table(String look, String captionLook, String caption) {
    tag("div", "class", "wide", "tabindex", "0", "role", "region", "aria-label", caption);
    out.append('>');
    tag("table", "class", look);
    out.append('>');
    open.push("table></div");
    return element("caption", captionLook, caption);
  }

  Markup end() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /** An element that has no content in HTML, such as a line break. */
  Markup empty(String name, String... attributes) {
    tag(name, attributes);
    out.append("/>");
    return this;
  }

  /** An element with a text in it. */
  Markup element(String name, String className, String text) {
    return start(name, "class", className.isEmpty() ? null : className).text(text).end();
  }

  /** The same where there is a text; else nothing. */
  Markup some(String name, String className, String text) {
    return text.isBlank() ? this : element(name, className, text);
  }

  Markup text(String text) {
    out.append(XmlText.escaped(text));
    return this;
  }

  /** A name as it is set in a formula, which a narrow column may break after an underscore. */
  Markup name(String name) {
    return made(Typeset.nameHtml(name).replace("_", "_<wbr/>"));
  }

  /** A text that holds names of the record: it may be broken after their underscores. */
  Markup words(String text) {
    return made(XmlText.escaped(text).replace("_", "_<wbr/>"));
  }

  /** Markup that the program itself made. */
  Markup made(String markup) {
    out.append(markup);
    return this;
  }

  /** All of it; every element must be ended. */
  String finished() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("still open: " + open);
    }
    return out.toString();
  }

  private void tag(String name, String... attributes) {
    out.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      if (attributes[i + 1] != null) {
        out.append(' ').append(attributes[i]).append("=\"");
        out.append(XmlText.escaped(attributes[i + 1])).append('"');
      }
    }
  }
}
