package endfloat.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Splits text into fields (RFC 4180): quotes, any line ends, one separator. */
final class SeparatedText {
  private SeparatedText() {}

  /**
   * @param grid of the fields; as far as it could be read
   * @param problem that stops the reading; empty for none
   */
  record Split(FieldGrid grid, Optional<Offence> problem) {}

  /** The separator of the first line: a tab, a semicolon or a comma, brackets left out. */
  static char separator(String text) {
    int depth = 0;
    boolean quoted = false;
    boolean semicolon = false;
    for (int i = 0; i < text.length() && (quoted || !isLineEnd(text.charAt(i))); i++) {
      char c = text.charAt(i);
      quoted ^= c == '"';
      depth += quoted ? 0 : c == '[' ? 1 : c == ']' ? -1 : 0;
      if (c == '\t' && !quoted) {
        return '\t';
      }
      semicolon |= c == ';' && !quoted && depth <= 0;
    }
    return semicolon ? ';' : ',';
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }

  static Split split(String text, char separator) {
    return text.indexOf('"') < 0
        ? new Split(plain(text, separator), Optional.empty())
        : quoted(text, separator);
  }

  /** Without a quote in it there is nothing but separators and line ends. */
  static FieldGrid plain(String text, char separator) {
    char[] letters = text.toCharArray();
    FieldGrid grid = new FieldGrid(letters);
    int from = 0;
    int length = letters.length;
    for (int i = 0; i < length; i++) {
      char c = letters[i];
      if (c == separator) {
        grid.field(from, i);
        from = i + 1;
      } else if (c == '\n' || c == '\r') {
        grid.field(from, i);
        grid.endRow();
        i += c == '\r' && i + 1 < length && letters[i + 1] == '\n' ? 1 : 0;
        from = i + 1;
      }
    }
    if (from < length || (length > 0 && letters[length - 1] == separator)) {
      grid.field(from, length);
      grid.endRow();
    }
    return grid;
  }

  static Split quoted(String text, char separator) {
    CSVFormat format =
        CSVFormat.RFC4180.builder().setDelimiter(separator).setIgnoreEmptyLines(false).get();
    StringBuilder fields = new StringBuilder(text.length());
    List<int[]> ends = new java.util.ArrayList<>();
    Optional<Offence> problem = Optional.empty();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      for (CSVRecord record : parser) {
        int[] row = new int[record.size() + 1];
        row[0] = fields.length();
        for (int i = 0; i < record.size(); i++) {
          fields.append(record.get(i));
          row[i + 1] = fields.length();
        }
        ends.add(row);
      }
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      problem =
          Optional.of(
              Offence.ofRow(
                  ends.size() + 1, "a quote is opened and not closed, or stands in a word"));
    }
    FieldGrid grid = new FieldGrid(fields.toString());
    for (int[] row : ends) {
      for (int i = 0; i + 1 < row.length; i++) {
        grid.field(row[i], row[i + 1]);
      }
      grid.endRow();
    }
    return new Split(grid, problem);
  }
}
