package endfloat.review;

import endfloat.engine.Shown;
import endfloat.engine.Verdict;
import endfloat.review.Comparison.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;

/**
 * A table of two records: which rows and values are others.
 *
 * @param clause number of the clause on the side that has it, the left one first
 * @param name by which the working language knows the table, else its title
 * @param by what rows are told by: {@code row number}, or the heads of the columns that name them
 * @param notices why rows or a column were compared otherwise than one would expect
 * @param columnsAdded heads that only the right side has
 * @param columnsGone heads that only the left side has
 * @param leftRows how many rows the left side has
 * @param rightRows how many rows the right side has
 * @param added rows that only the right side has
 * @param gone rows that only the left side has
 * @param changed rows of both sides in which a value or a verdict is another one
 * @param cells values that are others, in those rows
 * @param written values that are the same but were typed otherwise
 * @param clear values that differ by more than their own uncertainty
 * @param judgedOtherwise values whose verdict is another one
 * @param first the first of the rows that differ, those judged otherwise before all
 */
public record TableDifference(
    String clause,
    String name,
    String by,
    List<String> notices,
    List<String> columnsAdded,
    List<String> columnsGone,
    int leftRows,
    int rightRows,
    int added,
    int gone,
    int changed,
    long cells,
    long written,
    long clear,
    long judgedOtherwise,
    List<Row> first) {

  /** How a row differs. */
  public enum Change {
    CHANGED("changed"),
    GONE("only left"),
    ADDED("only right");

    private final String word;

    Change(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /**
   * A row that differs.
   *
   * @param key its number, or what its key columns hold
   * @param cells the values that are others; of a row of one side all that it has
   */
  public record Row(String key, Change change, List<Cell> cells) {
    /** All that a row of one side has: {@code lash 0.15 mm, batch B}. */
    public String text() {
      return cells.stream()
          .map(cell -> cell.head() + " " + (cell.left().isEmpty() ? cell.right() : cell.left()))
          .collect(Collectors.joining(", "));
    }
  }

  /**
   * A value that differs.
   *
   * @param left as typed or shown; empty where it is missing
   * @param difference right less left, where both are numbers
   * @param was verdict on the left
   * @param verdict on the right
   */
  public record Cell(
      String head,
      String left,
      String right,
      Standing standing,
      Optional<Shown> difference,
      Optional<Verdict> was,
      Optional<Verdict> verdict) {}

  /** How many rows and values differ, in words. */
  public String counts() {
    StringJoiner words = new StringJoiner(", ");
    words.add(leftRows == rightRows ? rows(leftRows) : leftRows + " and " + rows(rightRows));
    counted(changed, "changed", words);
    counted(gone, "only left", words);
    counted(added, "only right", words);
    if (changed + gone + added == 0) {
      words.add("none of them another");
    }
    String rows = words.toString();
    StringJoiner values = new StringJoiner(", ");
    if (cells > 0) {
      values.add(cells == 1 ? "1 value is another" : cells + " values are others");
      values.add(clear + " of them clearly");
    }
    counted(judgedOtherwise, "judged otherwise", values);
    counted(written, "the same but written otherwise", values);
    return rows + (values.length() > 0 ? "; " + values : "");
  }

  private static String rows(int count) {
    return count == 1 ? "1 row" : count + " rows";
  }

  private static void counted(long count, String words, StringJoiner into) {
    if (count > 0) {
      into.add(count + " " + words);
    }
  }

  /** What else is to be said: columns of one side, and why something was compared otherwise. */
  public List<String> said() {
    List<String> said = new ArrayList<>();
    if (first.stream().anyMatch(row -> !row.key().isEmpty())) {
      said.add("Rows are told by " + by);
    }
    if (!columnsGone.isEmpty()) {
      said.add("Only the left side has the column " + String.join(", ", columnsGone));
    }
    if (!columnsAdded.isEmpty()) {
      said.add("Only the right side has the column " + String.join(", ", columnsAdded));
    }
    said.addAll(notices);
    return said;
  }

  /** How many rows differ beyond those listed. */
  public int more() {
    return added + gone + changed - first.size();
  }

  /** Whether rows, columns and values are the same; how a value is written does not count. */
  public boolean isEqual() {
    return added + gone + changed == 0
        && columnsAdded.isEmpty()
        && columnsGone.isEmpty()
        && notices.isEmpty();
  }
}
