package endfloat.table;

import java.util.Arrays;

/**
 * The fields of a file: its letters, and where among them each field begins and ends, blanks around
 * it left out. No text of a field is made before someone asks for it.
 */
final class FieldGrid {
  private final char[] letters;
  private int[] bounds = new int[1 << 12];
  private int fields;
  private int[] rowStarts = new int[1 << 10];
  private int rows;

  /** Fields among these letters. */
  FieldGrid(char[] letters) {
    this.letters = letters;
  }

  FieldGrid(String text) {
    this(text.toCharArray());
  }

  /** One more field of the row that is being read. */
  void field(int from, int to) {
    int first = from;
    int end = to;
    while (first < end && letters[first] <= ' ') {
      first++;
    }
    while (end > first && letters[end - 1] <= ' ') {
      end--;
    }
    if (2 * fields + 2 > bounds.length) {
      bounds = Arrays.copyOf(bounds, 2 * bounds.length);
    }
    bounds[2 * fields] = first;
    bounds[2 * fields + 1] = end;
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

  /** Where a field begins. */
  int from(int row, int column) {
    return bounds[2 * (rowStarts[row] + column)];
  }

  /** Where a field ends. */
  int to(int row, int column) {
    return bounds[2 * (rowStarts[row] + column) + 1];
  }

  boolean isEmpty(int row, int column) {
    return from(row, column) >= to(row, column);
  }

  /** A field without blanks around it. */
  String get(int row, int column) {
    int from = from(row, column);
    return new String(letters, from, to(row, column) - from).strip();
  }

  /** The same; empty where the row ends before it. */
  String getOrEmpty(int row, int column) {
    return column < size(row) ? get(row, column) : "";
  }

  char[] letters() {
    return letters;
  }
}
