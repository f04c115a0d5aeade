package endfloat.clause;

import java.util.ArrayList;
import java.util.List;
import tech.tablesaw.api.Table;

/** Tables as texts. */
public final class TableText {
  private static final int MOST_ROWS = 500;

  private TableText() {}

  /** At most 500 rows. */
  public static List<List<String>> rows(Table table) {
    List<List<String>> rows = new ArrayList<>();
    for (int row = 0; row < Math.min(MOST_ROWS, table.rowCount()); row++) {
      List<String> texts = new ArrayList<>();
      for (int column = 0; column < table.columnCount(); column++) {
        texts.add(table.column(column).getUnformattedString(row));
      }
      rows.add(texts);
    }
    return rows;
  }
}
