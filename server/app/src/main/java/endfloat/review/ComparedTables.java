package endfloat.review;

import endfloat.review.Comparison.Side;
import endfloat.review.Comparison.Standing;
import endfloat.review.TableDifference.Change;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The tables of two records, row by row: by what their key column holds where both have one, else
 * by their number. All rows are compared and counted, a few are told.
 */
final class ComparedTables {
  /** Rows told of a table. */
  static final int FIRST = 50;

  private final ComparedTable left;
  private final ComparedTable right;
  private final List<ComparedColumn> columns = new ArrayList<>();
  private final List<String> notices = new ArrayList<>();
  private final List<Found> judged = new ArrayList<>();
  private final List<Found> others = new ArrayList<>();
  private int added;
  private int gone;
  private int changed;
  private long cells;
  private long written;
  private long clear;
  private long judgedOtherwise;

  /** A row that differs; -1 on a side that does not have it. */
  private record Found(String key, int left, int right) {}

  private ComparedTables(ComparedTable left, ComparedTable right, ComparedFigures figures) {
    this.left = left;
    this.right = right;
    for (String head : left.heads()) {
      int there = right.heads().indexOf(head);
      if (!head.isEmpty() && there >= 0) {
        ComparedColumn column =
            new ComparedColumn(head, left, left.heads().indexOf(head), right, there, figures);
        if (left.rows() > 0 && right.rows() > 0) {
          column.notice().ifPresent(notices::add);
        }
        columns.add(column);
      }
    }
  }

  /** Each table of the left side beside that of the same name on the right, then the others. */
  static List<TableDifference> of(Side left, Side right, ComparedFigures figures) {
    List<ComparedTable> ours = ComparedTable.of(left);
    List<ComparedTable> theirs = ComparedTable.of(right);
    List<TableDifference> all = new ArrayList<>();
    Set<ComparedTable> met = new HashSet<>();
    for (ComparedTable one : ours) {
      Optional<ComparedTable> same = one.in(theirs).filter(met::add);
      all.add(
          same.isPresent()
              ? new ComparedTables(one, same.get(), figures).difference()
              : alone(one, true));
    }
    theirs.stream().filter(one -> !met.contains(one)).forEach(one -> all.add(alone(one, false)));
    return List.copyOf(all);
  }

  /** A table that only one side has: its rows are counted, not told. */
  private static TableDifference alone(ComparedTable table, boolean isLeft) {
    return new TableDifference(
        table.clause(),
        table.name(),
        "row number",
        List.of("Only the " + (isLeft ? "left" : "right") + " side has this table"),
        List.of(),
        List.of(),
        isLeft ? table.rows() : 0,
        isLeft ? 0 : table.rows(),
        0,
        0,
        0,
        0,
        0,
        0,
        0,
        List.of());
  }

  private TableDifference difference() {
    List<String> keys = left.keyHeads();
    boolean named = !keys.isEmpty() && keys.equals(right.keyHeads());
    Optional<Map<String, Integer>> ours = named ? left.byKey(keys) : Optional.empty();
    Optional<Map<String, Integer>> theirs = named ? right.byKey(keys) : Optional.empty();
    String by = "row number";
    if (ours.isPresent() && theirs.isPresent()) {
      by = String.join(", ", keys);
      compare(ours.get(), theirs.get());
    } else {
      if (named) {
        notices.add(
            String.join(", ", keys)
                + " is missing in a row or the same in two, so rows were compared by their number");
      }
      compare(numbered(left.rows()), numbered(right.rows()));
    }
    return new TableDifference(
        left.clause(),
        left.name(),
        by,
        List.copyOf(notices),
        missing(right, left),
        missing(left, right),
        left.rows(),
        right.rows(),
        added,
        gone,
        changed,
        cells,
        written,
        clear,
        judgedOtherwise,
        told());
  }

  /** Heads of a table that the other does not have. */
  private static List<String> missing(ComparedTable of, ComparedTable in) {
    List<String> heads = new ArrayList<>(of.heads());
    heads.removeAll(in.heads());
    return List.copyOf(heads);
  }

  private static Map<String, Integer> numbered(int rows) {
    Map<String, Integer> all = new LinkedHashMap<>();
    for (int row = 0; row < rows; row++) {
      all.put(Integer.toString(row + 1), row);
    }
    return all;
  }

  private void compare(Map<String, Integer> ours, Map<String, Integer> theirs) {
    for (Map.Entry<String, Integer> one : inOrder(ours)) {
      Integer there = theirs.get(one.getKey());
      if (there == null) {
        gone++;
        columns.forEach(c -> judgedOtherwise += c.isJudgedOtherwise(one.getValue(), -1) ? 1 : 0);
        others.add(new Found(one.getKey(), one.getValue(), -1));
      } else {
        compare(new Found(one.getKey(), one.getValue(), there));
      }
    }
    for (Map.Entry<String, Integer> one : inOrder(theirs)) {
      if (!ours.containsKey(one.getKey())) {
        added++;
        columns.forEach(c -> judgedOtherwise += c.isJudgedOtherwise(-1, one.getValue()) ? 1 : 0);
        others.add(new Found(one.getKey(), -1, one.getValue()));
      }
    }
  }

  private static List<Map.Entry<String, Integer>> inOrder(Map<String, Integer> rows) {
    return rows.entrySet().stream().sorted(Map.Entry.comparingByValue()).toList();
  }

  private void compare(Found row) {
    boolean differs = false;
    boolean otherwise = false;
    for (ComparedColumn column : columns) {
      Standing standing = column.standing(row.left(), row.right());
      if (standing != Standing.NONE) {
        differs = true;
        cells++;
        clear += standing == Standing.CLEAR ? 1 : 0;
      } else if (column.isWrittenOtherwise(row.left(), row.right())) {
        written++;
      }
      if (column.isJudgedOtherwise(row.left(), row.right())) {
        otherwise = true;
        judgedOtherwise++;
      }
    }
    if (otherwise) {
      judged.add(row);
    } else if (differs) {
      others.add(row);
    }
    changed += differs || otherwise ? 1 : 0;
  }

  private List<TableDifference.Row> told() {
    List<TableDifference.Row> rows = new ArrayList<>();
    List<Found> all = new ArrayList<>(judged);
    all.addAll(others);
    for (Found found : all.subList(0, Math.min(FIRST, all.size()))) {
      List<TableDifference.Cell> told = new ArrayList<>();
      for (ComparedColumn column : columns) {
        boolean both = found.left() >= 0 && found.right() >= 0;
        if (!both
            || column.standing(found.left(), found.right()) != Standing.NONE
            || column.isJudgedOtherwise(found.left(), found.right())) {
          TableDifference.Cell cell = column.cell(found.left(), found.right());
          if (both || !(cell.left() + cell.right()).isEmpty()) {
            told.add(cell);
          }
        }
      }
      Change change =
          found.right() < 0 ? Change.GONE : found.left() < 0 ? Change.ADDED : Change.CHANGED;
      rows.add(new TableDifference.Row(found.key(), change, List.copyOf(told)));
    }
    return List.copyOf(rows);
  }
}
