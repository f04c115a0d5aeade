package endfloat.table;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;

/**
 * A table as read from a file or pasted.
 *
 * @param columns in the order of the file, as far as they were understood; empty where its heads or
 *     its rows could not be
 * @param problems all that is wrong with it; where there are any, nothing may be used of it
 * @param more how many problems there are beyond those
 * @param notices what the reader should know, such as an encoding that was guessed
 */
public record ReadTable(
    List<ReadColumn> columns, List<Offence> problems, int more, List<String> notices) {

  /** How many rows, the heads not counted. */
  public int rows() {
    return columns.isEmpty() ? 0 : columns.get(0).texts().size();
  }

  /** Whether it may be taken in. */
  public boolean isWhole() {
    return problems.isEmpty();
  }

  /**
   * One column.
   *
   * @param head a name of the working language
   * @param written the head as the file has it
   * @param unit of its numbers; empty for none
   * @param missing how many fields are empty
   * @param texts of the fields: numbers with a decimal point, their digits as typed; empty where
   *     nothing was; made when they are asked for
   */
  public record ReadColumn(
      String head, String written, String unit, FieldKind kind, int missing, List<String> texts) {

    /** How many letters all of its fields have. */
    public long letters() {
      if (texts instanceof Texts fields) {
        return fields.letters();
      }
      return texts.stream().mapToLong(String::length).sum();
    }

    /** The number of each row in the unit of the column; NaN for a missing one. */
    public double[] numbers() {
      if (texts instanceof Texts fields && kind == FieldKind.NUMBER) {
        return fields.numbers();
      }
      throw new IllegalStateException(head + " is no column of numbers");
    }
  }

  /** The fields of one column of a grid. */
  static final class Texts extends AbstractList<String> implements RandomAccess {
    private final FieldGrid grid;
    private final int[] rows;
    private final int column;
    private final boolean number;
    private final DecimalMark decimal;

    /**
     * @param rows of the grid that are rows of the table
     */
    Texts(FieldGrid grid, int[] rows, int column, boolean number, DecimalMark decimal) {
      this.grid = grid;
      this.rows = rows;
      this.column = column;
      this.number = number;
      this.decimal = decimal;
    }

    @Override
    public String get(int index) {
      String text = grid.getOrEmpty(rows[index], column);
      return number && !text.isEmpty() ? StrictNumber.read(text, decimal) : text;
    }

    @Override
    public int size() {
      return rows.length;
    }

    private long letters() {
      long letters = 0;
      for (int row : rows) {
        letters += column < grid.size(row) ? grid.to(row, column) - grid.from(row, column) : 0;
      }
      return letters;
    }

    private double[] numbers() {
      double[] numbers = new double[rows.length];
      char[] letters = grid.letters();
      for (int i = 0; i < numbers.length; i++) {
        int row = rows[i];
        numbers[i] =
            StrictNumber.value(letters, grid.from(row, column), grid.to(row, column), decimal);
      }
      return numbers;
    }
  }
}
