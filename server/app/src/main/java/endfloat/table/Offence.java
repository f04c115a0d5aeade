package endfloat.table;

/**
 * Something in a file that keeps it from being taken in.
 *
 * @param row of the file, from 1, the heads being row 1; 0 where it is no matter of a row
 * @param column from 1; 0 where it is no matter of a column
 * @param head of the column; empty where it is no matter of one
 * @param message what is wrong and what to do
 */
public record Offence(int row, int column, String head, String message) {

  static Offence ofFile(String message) {
    return new Offence(0, 0, "", message);
  }

  static Offence ofRow(int row, String message) {
    return new Offence(row, 0, "", message);
  }

  /** {@code row 7, column 3, lash: ...}. */
  public String text() {
    StringBuilder place = new StringBuilder();
    if (row > 0) {
      place.append("row ").append(row);
    }
    if (column > 0) {
      place.append(row > 0 ? ", " : "").append("column ").append(column);
      place.append(head.isEmpty() ? "" : ", " + head);
    }
    return place.isEmpty() ? message : place + ": " + message;
  }
}
