package endfloat.table;

import java.util.Arrays;

/**
 * The fields of a file: one text, and where in it each field begins and ends. No text of a field is
 * made before someone asks for it.
 */
final class FieldGrid {
  private final String text;
  private int[] ends = new int[1 << 12];
  private int fields;
  private int[] rowStarts = new int[1 << 10];
  private int rows;

  /** Fields of this text; each end is stored with the beginning before it. */
  FieldGrid(String text) {
    this.text = text;
  }

  /** One more field of the row that is being read. */
  void field(int from, int to) {
    if (2 * fields + 2 > ends.length) {
      ends = Arrays.copyOf(ends, 2 * ends.length);
    }
    ends[2 * fields] = from;
    ends[2 * fields + 1] = to;
    fields++;
  }

  /** The row that is being read is whole. */
  void endRow() {
    if (rows + 2 > rowStarts.length) {
      rowStarts = Arrays.copyOf(rowStarts, 2 * rowStarts.length);
    }
    rowStarts[++rows] = fields;
  }

  int rows() {
    return rows;
  }

  int size(int row) {
    return rowStarts[row + 1] - rowStarts[row];
  }

  private int at(int row, int column) {
    return rowStarts[row] + column;
  }

  /** Where a field begins, blanks before it left out. */
  int from(int row, int column) {
    int from = ends[2 * at(row, column)];
    int to = ends[2 * at(row, column) + 1];
    while (from < to && text.charAt(from) <= ' ') {
      from++;
    }
    return from;
  }

  /** Where a field ends, blanks behind it left out. */
  int to(int row, int column) {
    int from = ends[2 * at(row, column)];
    int to = ends[2 * at(row, column) + 1];
    while (to > from && text.charAt(to - 1) <= ' ') {
      to--;
    }
    return to;
  }

  /** A field without blanks around it. */
  String get(int row, int column) {
    int from = from(row, column);
    return text.substring(from, Math.max(from, to(row, column)));
  }

  /** A field without blanks around it; empty where the row ends before it. */
  String getOrEmpty(int row, int column) {
    return column < size(row) ? get(row, column).strip() : "";
  }

  String text() {
    return text;
  }
}
