package endfloat.review;

import endfloat.engine.Figure;
import endfloat.engine.Value;
import endfloat.engine.Verdict;
import endfloat.review.Comparison.Point;
import endfloat.review.Comparison.Row;
import endfloat.review.Comparison.Standing;
import java.util.Optional;

/** A column that both of two tables have. */
final class ComparedColumn {
  /** Two typed numbers are one only where they are one to the last digits of a double. */
  private static final double SAME_TYPED = 1e-15;

  private final String head;
  private final Half left;
  private final Half right;
  private final boolean byTexts;
  private final Optional<String> notice;
  private final ComparedFigures figures;

  /** One side of it. */
  private record Half(
      ComparedTable table,
      int at,
      Optional<Value.Series> series,
      Optional<Figure> figure,
      boolean isJudged) {

    static Half of(ComparedTable table, int at) {
      Optional<Figure> figure = table.figure(at);
      return new Half(
          table,
          at,
          table.series(at),
          figure,
          figure.filter(one -> !one.judgements().isEmpty()).isPresent());
    }

    Value value(int row) {
      return series.orElseThrow().elements().get(row);
    }

    String typed(int row) {
      return table.typed(row, at);
    }

    boolean isTyped() {
      return table.isTyped(at);
    }

    Optional<Verdict> verdict(int row) {
      return isJudged && row >= 0 && row < figure.orElseThrow().elements().size()
          ? figure.orElseThrow().elements().get(row).verdict()
          : Optional.empty();
    }

    /** What a reader sees: as typed, with the unit of the column where none was typed. */
    String text(int row, ComparedFigures figures, boolean ofLeft) {
      if (row < 0) {
        return "";
      }
      if (isTyped()) {
        String typed = typed(row);
        String unit = table.column(at).unit().strip();
        boolean bare = typed.matches("[-+\u2212]?[0-9.]+(?:[eE][-+]?[0-9]+)?");
        return table.column(at).isNumber() && bare && !unit.isEmpty() && !unit.equals("1")
            ? typed + " " + unit
            : typed;
      }
      return figure
          .filter(one -> series.isPresent())
          .flatMap(one -> figures.point(one, one.elements().get(row), ofLeft))
          .map(Point::text)
          .orElse("");
    }
  }

  ComparedColumn(
      String head,
      ComparedTable left,
      int atLeft,
      ComparedTable right,
      int atRight,
      ComparedFigures figures) {
    this.head = head;
    this.left = Half.of(left, atLeft);
    this.right = Half.of(right, atRight);
    this.figures = figures;
    boolean values = this.left.series().isPresent() && this.right.series().isPresent();
    boolean alike =
        values
            && ComparedFigures.isSameKind(
                ComparedFigures.elementKind(this.left.figure().orElseThrow()),
                ComparedFigures.elementKind(this.right.figure().orElseThrow()));
    this.byTexts = !alike;
    this.notice = notice(values, alike);
  }

  private Optional<String> notice(boolean values, boolean alike) {
    boolean oneHas = left.series().isPresent() != right.series().isPresent();
    if (alike || (!values && !oneHas)) {
      return Optional.empty();
    }
    if (values) {
      return Optional.of(head + " is of another kind on either side");
    }
    String side = left.series().isPresent() ? "right" : "left";
    return Optional.of(
        left.isTyped() && right.isTyped()
            ? head + " cannot be read on the " + side + " side, so it was compared as typed"
            : head + " has no value on the " + side + " side");
  }

  Optional<String> notice() {
    return notice;
  }

  /** How the values of two rows stand to one another. */
  Standing standing(int here, int there) {
    if (byTexts) {
      boolean typed = left.isTyped() && right.isTyped();
      return !typed || left.typed(here).equals(right.typed(there))
          ? Standing.NONE
          : Standing.NOT_COMPARABLE;
    }
    Value from = left.value(here);
    Value to = right.value(there);
    if (from instanceof Value.Scalar a && to instanceof Value.Scalar b) {
      boolean typed = left.isTyped() && right.isTyped();
      double moved = Math.abs(b.si() - a.si());
      if (typed && moved > SAME_TYPED * Math.max(Math.abs(a.si()), Math.abs(b.si()))) {
        return moved > figures.expanded(a, b) ? Standing.CLEAR : Standing.NOT_CLEAR;
      }
      return figures.standing(a, b);
    }
    boolean fromAbsent = from instanceof Value.Absent;
    boolean toAbsent = to instanceof Value.Absent;
    if (fromAbsent || toAbsent) {
      return fromAbsent && toAbsent
          ? Standing.NONE
          : fromAbsent ? Standing.ONLY_RIGHT : Standing.ONLY_LEFT;
    }
    return from.equals(to) ? Standing.NONE : Standing.CLEAR;
  }

  /** Whether two values that are the same were typed otherwise. */
  boolean isWrittenOtherwise(int here, int there) {
    return left.isTyped() && right.isTyped() && !left.typed(here).equals(right.typed(there));
  }

  /** Whether the verdict is another; on a side that does not have the row, -1, there is none. */
  boolean isJudgedOtherwise(int here, int there) {
    return (left.isJudged() || right.isJudged())
        && !left.verdict(here).equals(right.verdict(there));
  }

  /** What is told of the values; of a row that one side does not have, -1. */
  TableDifference.Cell cell(int here, int there) {
    boolean both = here >= 0 && there >= 0;
    Optional<Row> row =
        both && !byTexts
            ? figures.row(point(left, here, true), point(right, there, false))
            : Optional.empty();
    return new TableDifference.Cell(
        head,
        left.text(here, figures, true),
        right.text(there, figures, false),
        both ? standing(here, there) : here < 0 ? Standing.ONLY_RIGHT : Standing.ONLY_LEFT,
        row.flatMap(Row::difference),
        left.verdict(here),
        right.verdict(there));
  }

  private Optional<Point> point(Half half, int row, boolean ofLeft) {
    Figure figure = half.figure().orElseThrow();
    return figures.point(figure, figure.elements().get(row), ofLeft);
  }
}
