package endfloat.engine;

import endfloat.record.TableClause;

/** What was typed in a column of a table. Equal where every text is, wherever the column stands. */
final class ColumnTexts {
  private final TableClause table;
  private final int place;

  ColumnTexts(TableClause table, int place) {
    this.table = table;
    this.place = place;
  }

  int size() {
    return table.size();
  }

  /** Without blanks around it; empty where there is no value. */
  String text(int row) {
    return table.text(row, place).strip();
  }

  /** As it was typed, by which it is told whether it is another. */
  private String raw(int row) {
    return table.text(row, place);
  }

  /** Place of the text in its row. */
  int place() {
    return place;
  }

  @Override
  @SuppressWarnings("ReferenceEquality") // the same rows first, which they mostly are
  public boolean equals(Object other) {
    if (!(other instanceof ColumnTexts texts) || texts.size() != size() || texts.place != place) {
      return false;
    }
    if (texts.table.rows() == table.rows()) {
      return true;
    }
    for (int row = 0; row < size(); row++) {
      boolean sameRow = table.rows().get(row) == texts.table.rows().get(row);
      if (!sameRow && !raw(row).equals(texts.raw(row))) {
        return false;
      }
    }
    return true;
  }

  @Override
  public int hashCode() {
    return 31 * size() + place;
  }
}
