package endfloat.working;

import endfloat.catalogue.Catalogue;
import java.util.List;

/**
 * What may be written at a place of a working.
 *
 * @param from offset from which an option replaces the text up to the place
 * @param options best first
 */
public record Completion(int from, List<Option> options) {

  /**
   * One thing to write.
   *
   * @param label as the list shows it
   * @param detail its unit, its arguments or what it is
   * @param apply the text to put in
   * @param kind name, function, argument, unit, word, text or field
   */
  public record Option(String label, String detail, String apply, String kind) {}

  /** An expression that stands alone is read as what a name would be given. */
  private static final String GIVEN = "given = ";

  /** What fits at a place of an expression that stands alone, as in the field of a fit. */
  public static Completion inExpression(String text, int offset, Scope scope, Catalogue catalogue) {
    Completion found = at(GIVEN + text, GIVEN.length() + offset, scope, catalogue);
    return new Completion(found.from() - GIVEN.length(), found.options());
  }

  /**
   * What fits at a place.
   *
   * @param text of the whole working
   * @param offset of the place, 0 at its beginning
   */
  public static Completion at(String text, int offset, Scope scope, Catalogue catalogue) {
    int place = Math.max(0, Math.min(offset, text.length()));
    return new CompletionPlace(text, place, scope, catalogue).completion();
  }
}
