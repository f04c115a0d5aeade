package endfloat.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** What a note may hold, and what never reaches the page. */
class NoteMarkupTest {
  private static final NoteMarkup.References REFERENCES =
      references(Map.of("lash", "0.150 mm"), Map.of("c5", "2.1"));

  @Test
  void putsFiguresAndClauseNumbersIn() {
    assertEquals(
        "<p>Lash is <a class=\"live\" data-figure=\"lash\" href=\"#figure-lash\">0.150 mm</a>, see"
            + " <a class=\"clause\" data-clause=\"c5\" href=\"#clause-c5\">2.1</a>.</p>\n",
        html("Lash is {lash}, see {#c5}."));
  }

  @Test
  void marksReferencesThatLeadNowhere() {
    assertEquals(
        "<p><a class=\"live missing\" data-figure=\"slack\" href=\"#figure-slack\">slack</a> <a"
            + " class=\"clause missing\" data-clause=\"c9\" href=\"#clause-c9\">c9</a></p>\n",
        html("{slack} {#c9}"));
  }

  @Test
  void tellsWhatANoteRefersTo() {
    assertEquals(
        List.of(
            new NoteMarkup.Reference("lash", false),
            new NoteMarkup.Reference("pair.zone", false),
            new NoteMarkup.Reference("3.2", true)),
        NoteMarkup.references("Lash *{lash}*.\n\n- {pair.zone}, {a b}, see {#3.2}"));
  }

  @Test
  void leavesOtherBracesAsText() {
    assertEquals("<p>{ } {1} { and {a b}</p>\n", html("{ } {1} { and {a b}"));
  }

  @Test
  void writesEmphasisListsQuotationsAndSmallHeadings() {
    assertEquals(
        "<h4>Finding</h4>\n<p><em>five</em> <strong>teeth</strong></p>\n<ul>\n<li>heel</li>\n</ul>\n"
            + "<blockquote>\n<p>as found</p>\n</blockquote>\n",
        html("# Finding\n*five* **teeth**\n\n- heel\n\n> as found"));
  }

  @Test
  void showsMarkupTypedByHandAsText() {
    String html = html("<script>alert(1)</script>\n\n<img src=x onerror=alert(1)> ok");
    assertFalse(html.contains("<script"), html);
    assertFalse(html.contains("<img"), html);
  }

  @Test
  void takesNoLinkThatRunsCode() {
    String html = html("[a](javascript:alert(1)) [b](data:text/html,x) [c](vbscript:x)");
    assertFalse(html.contains("script:"), html);
    assertFalse(html.contains("data:text"), html);
  }

  @Test
  void keepsLinksToPagesAndSendsNothingAlong() {
    assertEquals(
        "<p><a rel=\"noopener noreferrer nofollow\" href=\"https://example.org/a\""
            + " target=\"_blank\">sheet 3</a></p>\n",
        html("[sheet 3](https://example.org/a)"));
  }

  @Test
  void leavesPicturesOutButKeepsTheirWords() {
    assertEquals("<p>the wheel</p>\n", html("![the wheel](https://example.org/a.png)"));
  }

  @Test
  void standsTenThousandNestedQuotations() {
    assertTrue(html(">".repeat(10_000) + " deep").contains("deep"));
  }

  @Property(tries = 300)
  void opensNoElementButItsOwn(@ForAll String text) {
    String html = html(text);
    String rest =
        html.replaceAll("</?(p|em|strong|ul|ol|li|blockquote|h[456]|code|br|a)( [^<>]*)?/?>", "");
    assertFalse(rest.contains("<"), html);
  }

  private static String html(String text) {
    return NoteMarkup.html(text, REFERENCES);
  }

  private static NoteMarkup.References references(
      Map<String, String> figures, Map<String, String> clauses) {
    return new NoteMarkup.References() {
      @Override
      public Optional<String> figure(String name) {
        return Optional.ofNullable(figures.get(name));
      }

      @Override
      public Optional<String> clauseNumber(String id) {
        return Optional.ofNullable(clauses.get(id));
      }
    };
  }
}
