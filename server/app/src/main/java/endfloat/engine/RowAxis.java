package endfloat.engine;

import static java.util.stream.Collectors.joining;

import endfloat.engine.Value.Absent;
import endfloat.engine.Value.Series;
import endfloat.working.LineProblem;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.Set;

/**
 * By what the rows of a table are told apart: their numbers, or the values of a key column. Rows of
 * two tables that are only numbered are not the same rows, so the axis has the name of its table.
 *
 * @param axis {@code wear.row}, or the head of the key column
 * @param labels one a row
 * @param wrong row, from 0, and what is wrong with its key; empty where nothing is
 */
record RowAxis(String axis, List<List<String>> labels, Optional<Wrong> wrong) {
  /** Rows named of those that find no partner. */
  private static final int SOME = 12;

  /** A key that names no row, or two. */
  record Wrong(int row, LineProblem problem) {}

  static RowAxis numbered(String table, int rows) {
    return new RowAxis(table + ".row", new RowNumbers(rows), Optional.empty());
  }

  static RowAxis keyed(String head, ColumnTexts keys) {
    List<List<String>> labels = new ArrayList<>(keys.size());
    Map<String, Integer> seen = new HashMap<>();
    Optional<Wrong> wrong = Optional.empty();
    for (int row = 0; row < keys.size(); row++) {
      String key = keys.text(row);
      labels.add(List.of(key));
      Integer before = seen.putIfAbsent(key, row);
      if (wrong.isEmpty() && (key.isEmpty() || before != null)) {
        String message =
            key.isEmpty()
                ? "Row " + (row + 1) + " has no " + head + ", by which the rows are named."
                : "Rows " + (before + 1) + " and " + (row + 1) + " have the same " + head + ".";
        wrong =
            Optional.of(
                new Wrong(
                    row,
                    LineProblem.error(
                        ColumnNode.WHOLE,
                        message,
                        "Give each row its own, or let the rows be numbered.")));
      }
    }
    return new RowAxis(head, labels, wrong);
  }

  /**
   * A series as values of these rows. One over other rows of the same axis, such as a column of
   * another table with the same key, goes by its labels: what has no value there has none here.
   */
  Series laid(Series series, Frame frame) {
    if (wrong.isPresent()) {
      throw new LineFailure(wrong.get().problem());
    }
    if (series.axes().isEmpty() && series.size() == labels.size()) {
      return new Series(List.of(axis), labels, series.elements());
    }
    if (!series.axes().equals(List.of(axis))) {
      throw new LineFailure(
          ColumnNode.WHOLE,
          "These values go by "
              + (series.axes().isEmpty() ? "place" : String.join(", ", series.axes()))
              + ", and the rows of this table by "
              + axis
              + ".",
          "Name the rows of both tables by a key column of the same head, or reduce the values.");
    }
    return matched(labels, series, frame);
  }

  /**
   * A series as values of the rows that the first column of a table has, of which all columns are
   * worked out.
   */
  static Series laidTo(Series first, Series series, Frame frame) {
    if (!series.axes().equals(first.axes())
        || first.axes().isEmpty() && series.size() != first.size()) {
      throw new LineFailure(
          ColumnNode.WHOLE,
          "These values go by "
              + by(series)
              + ", and those of the first column by "
              + by(first)
              + ".",
          "Let all columns of the table go over the same groups.");
    }
    return first.axes().isEmpty() ? series : matched(first.labels(), series, frame);
  }

  private static String by(Series series) {
    return series.axes().isEmpty() ? series.size() + " places" : String.join(", ", series.axes());
  }

  private static Series matched(List<List<String>> labels, Series series, Frame frame) {
    if (series.labels().equals(labels)) {
      return series;
    }
    Map<List<String>, Value> byLabel = new LinkedHashMap<>();
    for (int i = 0; i < series.size(); i++) {
      byLabel.put(series.labels().get(i), series.elements().get(i));
    }
    List<Value> elements = new ArrayList<>(labels.size());
    int none = 0;
    for (List<String> label : labels) {
      Value value = byLabel.remove(label);
      none += value == null ? 1 : 0;
      elements.add(value == null ? Absent.ABSENT : value);
    }
    said(none, labels.size(), series.axes(), byLabel.keySet(), frame);
    return new Series(series.axes(), labels, elements);
  }

  /** Which rows found no partner, on either side. */
  private static void said(
      int none, int rows, List<String> axes, Set<List<String>> left, Frame frame) {
    if (none > 0) {
      frame.hint(
          new LineProblem(
              ColumnNode.WHOLE,
              none + " of " + rows + " rows of this table have no value here.",
              "",
              LineProblem.Severity.HINT));
    }
    if (!left.isEmpty()) {
      String some =
          left.stream()
              .limit(SOME)
              .map(label -> String.join(" ", label))
              .sorted()
              .collect(joining(", "));
      frame.hint(
          new LineProblem(
              ColumnNode.WHOLE,
              (left.size() == 1 ? "1 value is" : left.size() + " values are")
                  + " of no row of this table: "
                  + String.join(" ", axes)
                  + " "
                  + some
                  + (left.size() > SOME ? " ..." : "")
                  + ".",
              "",
              LineProblem.Severity.HINT));
    }
  }

  /** Labels {@code 1}, {@code 2} ..., made when they are asked for. */
  private static final class RowNumbers extends AbstractList<List<String>> implements RandomAccess {
    private final int size;

    RowNumbers(int size) {
      this.size = size;
    }

    @Override
    public List<String> get(int index) {
      if (index < 0 || index >= size) {
        throw new IndexOutOfBoundsException("row " + index + " of " + size);
      }
      return List.of(Integer.toString(index + 1));
    }

    @Override
    public int size() {
      return size;
    }

    @Override
    public int indexOf(Object labels) {
      boolean one = labels instanceof List<?> list && list.size() == 1;
      String label = one ? String.valueOf(((List<?>) labels).get(0)) : "";
      int row = label.matches("[1-9][0-9]{0,8}") ? Integer.parseInt(label) : 0;
      return row > size ? -1 : row - 1;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof RowNumbers numbers ? numbers.size == size : super.equals(other);
    }

    @Override
    public int hashCode() {
      return super.hashCode();
    }
  }
}
