package endfloat.review;

import endfloat.engine.Figure;
import endfloat.engine.GraphSettings;
import endfloat.engine.Shown;
import endfloat.engine.Value;
import endfloat.record.Cell;
import endfloat.review.Comparison.Point;
import endfloat.review.Comparison.Row;
import endfloat.review.Comparison.Side;
import endfloat.review.Comparison.Standing;
import endfloat.working.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The values of two records, each beside that of the same name, field and station. */
final class ComparedFigures {
  private static final double SAME = 1e-9;

  private final Side left;
  private final Side right;
  private final SharedRoots roots;

  private ComparedFigures(Side left, Side right, SharedRoots roots) {
    this.left = left;
    this.right = right;
    this.roots = roots;
  }

  static ComparedFigures of(Side left, Side right, SharedRoots roots) {
    return new ComparedFigures(left, right, roots);
  }

  /** All but the columns of tables, which are compared row by row. */
  List<Row> rows() {
    Map<String, Figure> ours = left.graph().figures();
    Map<String, Figure> theirs = right.graph().figures();
    Map<String, Figure> all = new LinkedHashMap<>(ours);
    theirs.forEach(all::putIfAbsent);
    all.keySet().removeAll(ComparedTable.columnsOf(left));
    all.keySet().removeAll(ComparedTable.columnsOf(right));
    List<Row> rows = new ArrayList<>();
    for (String name : all.keySet()) {
      Map<List<Object>, Point> from = points(ours.get(name), left.settings());
      Map<List<Object>, Point> to = points(theirs.get(name), right.settings());
      Map<List<Object>, Point> both = new LinkedHashMap<>(from);
      to.forEach(both::putIfAbsent);
      both.keySet()
          .forEach(
              place ->
                  rows.add(
                      beside(
                          Optional.ofNullable(from.get(place)),
                          Optional.ofNullable(to.get(place)))));
    }
    return rows;
  }

  /** The values of a figure by field and station; of a plain list by place. */
  private static Map<List<Object>, Point> points(Figure figure, GraphSettings settings) {
    Map<List<Object>, Point> points = new LinkedHashMap<>();
    if (figure == null || figure.value().isEmpty()) {
      return points;
    }
    Value value = figure.value().get();
    if (!(value instanceof Value.Series) && !(value instanceof Value.Fields)) {
      text(value, Shown.of(figure, settings))
          .ifPresent(
              text -> points.put(List.of(), new Point(figure, Optional.empty(), value, text)));
      return points;
    }
    int at = 0;
    for (Figure.Element element : figure.elements()) {
      Object station =
          element.labels().isEmpty() && element.field().isEmpty() ? at : element.labels();
      Optional<String> text = text(element.value(), Shown.of(figure, element, settings));
      if (text.isPresent()) {
        points.put(
            List.of(element.field(), station),
            new Point(figure, Optional.of(element), element.value(), text.get()));
      }
      at++;
    }
    return points;
  }

  /** One element of a series of a side, where it has a value. */
  Optional<Point> point(Figure figure, Figure.Element element, boolean ofLeft) {
    GraphSettings settings = (ofLeft ? left : right).settings();
    return text(element.value(), Shown.of(figure, element, settings))
        .map(text -> new Point(figure, Optional.of(element), element.value(), text));
  }

  /** Two points of one thing; empty where either side has none. */
  Optional<Row> row(Optional<Point> from, Optional<Point> to) {
    return from.isPresent() && to.isPresent() ? Optional.of(beside(from, to)) : Optional.empty();
  }

  /** U of right less left [SI]. */
  double expanded(Value.Scalar from, Value.Scalar to) {
    double u = roots.ofDifference(from.gradient(), to.gradient());
    double degrees = roots.degreesOfDifference(from.gradient(), to.gradient(), u);
    return Math.max(left.settings().expanded(u, degrees), right.settings().expanded(u, degrees));
  }

  /** How two numbers stand to one another. */
  Standing standing(Value.Scalar from, Value.Scalar to) {
    return from.si() == to.si() ? Standing.NONE : standing(from.si(), to.si(), expanded(from, to));
  }

  private static Optional<String> text(Value value, Optional<Shown> shown) {
    if (value instanceof Value.Words words) {
      return Optional.of(words.text());
    }
    if (value instanceof Value.Truth truth) {
      return Optional.of(truth.holds() ? "yes" : "no");
    }
    return shown.map(Shown::text);
  }

  private Row beside(Optional<Point> from, Optional<Point> to) {
    Point any = from.or(() -> to).orElseThrow();
    Side side = from.isPresent() ? left : right;
    Optional<Cell> cell = side.record().cell(any.figure().clause());
    Map<String, String> station = any.element().map(Figure.Element::labels).orElse(Map.of());
    Optional<Shown> difference = Optional.empty();
    Standing standing;
    if (from.isEmpty() || to.isEmpty()) {
      standing = from.isEmpty() ? Standing.ONLY_RIGHT : Standing.ONLY_LEFT;
    } else if (from.get().value() instanceof Value.Scalar a
        && to.get().value() instanceof Value.Scalar b) {
      if (!isSameKind(kind(from.get()), kind(to.get()))) {
        standing = Standing.NOT_COMPARABLE;
      } else {
        double moved = b.si() - a.si();
        double expanded = expanded(a, b);
        standing = standing(a.si(), b.si(), expanded);
        difference =
            Optional.of(Shown.difference(moved, expanded, to.get().unit(right.settings())));
      }
    } else if (from.get().value().getClass() != to.get().value().getClass()) {
      standing = Standing.NOT_COMPARABLE;
    } else {
      standing = from.get().value().equals(to.get().value()) ? Standing.NONE : Standing.CLEAR;
    }
    return new Row(
        any.figure().name(),
        label(any, station),
        cell.map(Cell::number).orElse(""),
        cell.filter(one -> one.kind().equals("readings")).isPresent(),
        station,
        from,
        to,
        difference,
        standing);
  }

  private static Standing standing(double from, double to, double expanded) {
    double moved = Math.abs(to - from);
    if (moved <= SAME * Math.max(Math.abs(from), Math.abs(to))) {
      return Standing.NONE;
    }
    return moved > expanded ? Standing.CLEAR : Standing.NOT_CLEAR;
  }

  private static String label(Point point, Map<String, String> station) {
    Figure figure = point.figure();
    // the figures of fields have names that nobody writes
    boolean inner = figure.name().indexOf('.') >= 0 && !figure.given().isEmpty();
    String label = inner ? figure.given() : figure.name();
    String field = point.element().map(Figure.Element::field).orElse("");
    label += field.isEmpty() ? "" : "." + field;
    return station.isEmpty()
        ? label
        : label
            + station.entrySet().stream()
                .map(one -> one.getKey() + " " + one.getValue())
                .collect(Collectors.joining(", ", " at ", ""));
  }

  /** What a point is before it has a value. */
  static Optional<Kind> kind(Point point) {
    return point
        .figure()
        .kind()
        .map(
            kind ->
                kind instanceof Kind.Series series
                    ? series.element()
                    : kind instanceof Kind.Fields fields && point.element().isPresent()
                        ? fields.fields().get(point.element().get().field())
                        : kind);
  }

  /** What the values of a column are. */
  static Optional<Kind> elementKind(Figure figure) {
    return figure.kind().map(kind -> kind instanceof Kind.Series of ? of.element() : kind);
  }

  static boolean isSameKind(Optional<Kind> left, Optional<Kind> right) {
    if (left.orElse(null) instanceof Kind.Quantity a
        && right.orElse(null) instanceof Kind.Quantity b) {
      return a.dimension().same(b.dimension());
    }
    return left.isPresent() && left.equals(right);
  }
}
