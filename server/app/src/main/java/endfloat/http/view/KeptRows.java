package endfloat.http.view;

import endfloat.engine.Question;
import endfloat.engine.QuestionRefusedException;
import endfloat.engine.Value;
import endfloat.engine.ValueGraph;
import endfloat.record.TableClause;
import endfloat.review.GroupedTable;
import java.util.Optional;

/** Which rows of a table a condition of the language keeps; a head alone stands for the column. */
final class KeptRows {
  private KeptRows() {}

  /**
   * For each row whether the condition holds.
   *
   * @throws RefusedOrderException if it cannot be understood, or says nothing of single rows
   */
  static Optional<Value.Series> where(
      ValueGraph graph, TableClause table, int rows, String condition) {
    if (condition.isBlank()) {
      return Optional.empty();
    }
    if (table.name().isBlank()) {
      throw new RefusedOrderException(
          "The table has no name yet, by which a condition could name its columns.",
          "Give it one.");
    }
    String asked = GroupedTable.inColumns(table, condition);
    try {
      Value value = Question.of(graph, "/view/filter", asked).value();
      if (value instanceof Value.Series series && series.size() == rows) {
        return Optional.of(series);
      }
    } catch (QuestionRefusedException e) {
      throw new RefusedOrderException(e.problem().message(), e.problem().wayOut());
    }
    throw new RefusedOrderException(
        "This is true or false of no single row.",
        "Write a condition on a column, such as "
            + table.columns().get(0).head()
            + " = \"...\" or one with < or >.");
  }
}
