package endfloat.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;

/**
 * Columns of text, each as wide as its widest cell within reason; a longer cell pushes its own row
 * only.
 */
final class TextTable {
  private static final int WIDEST = 40;

  private final List<String[]> rows = new ArrayList<>();
  private String indent = "";

  TextTable indent(String blanks) {
    indent = blanks;
    return this;
  }

  TextTable row(String... cells) {
    rows.add(cells);
    return this;
  }

  void print(PrintStream out) {
    int columns = rows.stream().mapToInt(row -> row.length).max().orElse(0);
    int[] widths = new int[columns];
    for (String[] row : rows) {
      for (int i = 0; i < row.length; i++) {
        widths[i] = Math.max(widths[i], Math.min(WIDEST, width(row[i])));
      }
    }
    for (String[] row : rows) {
      StringBuilder line = new StringBuilder(indent);
      for (int i = 0; i < row.length; i++) {
        line.append(row[i]);
        // An empty column takes no room.
        int gap = widths[i] == 0 ? 0 : Math.max(0, widths[i] - width(row[i])) + 2;
        line.append(" ".repeat(gap));
      }
      out.println(line.toString().stripTrailing());
    }
  }

  private static int width(String text) {
    return text.codePointCount(0, text.length());
  }
}
