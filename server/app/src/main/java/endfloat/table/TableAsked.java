package endfloat.table;

import java.nio.charset.Charset;
import java.util.Map;
import java.util.Optional;

/**
 * What is said of a file before it is read.
 *
 * @param decimal mark of its numbers; a comma only where this says so
 * @param separator between fields; empty: found in the heads
 * @param encoding of its bytes; empty: found by its mark, else UTF-8, else Latin-1, which is said
 * @param sheet of a workbook by its name; empty: the only one with anything in it
 * @param kinds of columns by their heads as the file has them; others are found by their fields
 */
public record TableAsked(
    DecimalMark decimal,
    Optional<Character> separator,
    Optional<Charset> encoding,
    Optional<String> sheet,
    Map<String, FieldKind> kinds) {

  /** Decimal points, and all else found in the file. */
  public static final TableAsked PLAIN =
      new TableAsked(
          DecimalMark.POINT, Optional.empty(), Optional.empty(), Optional.empty(), Map.of());

  public TableAsked with(DecimalMark mark) {
    return new TableAsked(mark, separator, encoding, sheet, kinds);
  }

  public TableAsked withKinds(Map<String, FieldKind> given) {
    return new TableAsked(decimal, separator, encoding, sheet, Map.copyOf(given));
  }

  public TableAsked separatedBy(char mark) {
    return new TableAsked(decimal, Optional.of(mark), encoding, sheet, kinds);
  }

  public TableAsked in(Charset charset) {
    return new TableAsked(decimal, separator, Optional.of(charset), sheet, kinds);
  }

  /** With the sheet of a workbook named; blank: none. */
  public TableAsked ofSheet(String name) {
    Optional<String> named = Optional.of(name.strip()).filter(text -> !text.isEmpty());
    return new TableAsked(decimal, separator, encoding, named, kinds);
  }
}
