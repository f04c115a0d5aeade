package endfloat.clause;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/** Tables as texts. */
public final class TableText {
  private static final int MOST_ROWS = 500;
  private static final int DIGITS = 6;

  private TableText() {}

  /** At most 500 rows. */
  public static List<List<String>> rows(Table table) {
    List<List<String>> rows = new ArrayList<>();
    for (int row = 0; row < Math.min(MOST_ROWS, table.rowCount()); row++) {
      List<String> texts = new ArrayList<>();
      for (int column = 0; column < table.columnCount(); column++) {
        texts.add(text(table.column(column), row));
      }
      rows.add(texts);
    }
    return rows;
  }

  /** Six digits of a number are enough to look at; its figure has them all. */
  private static String text(Column<?> column, int row) {
    return column instanceof DoubleColumn numbers && !numbers.isMissing(row)
        ? new BigDecimal(numbers.getDouble(row))
            .round(new MathContext(DIGITS))
            .stripTrailingZeros()
            .toPlainString()
        : column.getUnformattedString(row);
  }
}
