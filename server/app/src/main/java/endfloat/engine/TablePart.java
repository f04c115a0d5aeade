package endfloat.engine;

import endfloat.record.TableColumn;
import java.util.List;
import java.util.Optional;

/** One thing that a table gives: a column, a limit on one, the table as a whole. */
sealed interface TablePart {

  /**
   * A column of typed texts.
   *
   * @param name {@code wear.lash}; empty where the table or the column has none
   * @param at place of the column among all
   */
  record Typed(String name, int at, TableColumn column, RowAxis rows, ColumnTexts texts)
      implements TablePart {}

  /**
   * A column that is worked out.
   *
   * @param line its formula and unit, with the places where they were entered
   * @param rows of the table, to which its values are laid; empty where all columns are worked out
   * @param first where all are, the head of the first, to whose rows those of the others are laid;
   *     empty for that one
   */
  record Derived(FieldLine.Stated line, Optional<RowAxis> rows, String first)
      implements TablePart {}

  /**
   * A line with a limit on a column.
   *
   * @param at place of the line among the limits
   */
  record Limit(int at, String text) implements TablePart {}

  /** The table under its own name, all columns together. */
  record Whole(String name, List<String> heads) implements TablePart {}

  /** Something that makes no sense, and where it was entered. */
  record Wrong(String at, String message, String wayOut) implements TablePart {}
}
