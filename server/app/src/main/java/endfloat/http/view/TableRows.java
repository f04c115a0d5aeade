package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.ClauseProblem;
import endfloat.engine.Figure;
import endfloat.engine.GraphSettings;
import endfloat.engine.Shown;
import endfloat.engine.Value;
import endfloat.engine.Verdict;
import endfloat.record.TableClause;
import endfloat.record.TableColumn;
import endfloat.table.TypedTable;
import endfloat.units.Size;
import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * The rows of a table as they stood at one revision, told line by line. Safe for threads: nothing
 * of it changes, so that rows are put in order and told while the sheet goes on.
 */
public final class TableRows {
  private final TableClause table;
  private final long revision;
  private final List<Optional<Figure>> columns;
  private final Optional<Value.Series> kept;
  private final GraphSettings settings;

  private final Map<Integer, TypedTable> means = new ConcurrentHashMap<>();

  /** What is wrong with single values: message by row and place in it. */
  private final Map<List<Integer>, String> wrong = new HashMap<>();

  TableRows(
      TableClause table,
      long revision,
      List<Optional<Figure>> columns,
      List<ClauseProblem> problems,
      Optional<Value.Series> kept,
      GraphSettings settings) {
    this.table = table;
    this.kept = kept;
    this.revision = revision;
    this.columns = columns;
    this.settings = settings;
    for (ClauseProblem problem : problems) {
      String[] steps = problem.at().split("/", -1);
      if (steps.length == 4 && steps[1].equals("rows")) {
        String way = problem.problem().wayOut();
        String message = problem.problem().message() + (way.isEmpty() ? "" : " " + way);
        wrong.put(List.of(Integer.valueOf(steps[2]), Integer.valueOf(steps[3])), message);
      }
    }
  }

  public TableClause table() {
    return table;
  }

  /** How many rows there are. */
  int size() {
    return TableHead.rows(table, columns);
  }

  private boolean isTyped(int column) {
    return TableHead.isTyped(table, table.columns().get(column));
  }

  /** Of the clause, when these were its rows. */
  public long revision() {
    return revision;
  }

  /** The figures of the columns, in their order; empty for one that has none. */
  List<Optional<Figure>> figures() {
    return columns;
  }

  /**
   * Place of a column by its head.
   *
   * @throws RefusedOrderException if there is none
   */
  int column(String head) {
    for (int i = 0; i < table.columns().size(); i++) {
      if (table.columns().get(i).head().equals(head)) {
        return i;
      }
    }
    throw new RefusedOrderException(
        "There is no column " + head + ".", "Show the rows as in the record.");
  }

  /** Whether a row is among those that are kept; one of which it cannot be told is not. */
  boolean passes(int row) {
    return kept.isEmpty()
        || kept.get().elements().get(row) instanceof Value.Truth truth && truth.holds();
  }

  /** These columns, to be put in order by. */
  TypedTable typed(List<String> heads) {
    return TypedTable.of(heads.stream().map(head -> typed(head, column(head))).toList());
  }

  private TypedTable.Typed typed(String head, int column) {
    return table.columns().get(column).isNumber()
        ? TypedTable.Typed.numbers(head, numbers(column))
        : TypedTable.Typed.texts(
            head, IntStream.range(0, size()).mapToObj(row -> text(row, column)).toList());
  }

  /** Its numbers [SI]; NaN where there is none, or what stands there cannot be read. */
  private double[] numbers(int column) {
    Optional<Value.Series> series =
        columns
            .get(column)
            .flatMap(Figure::value)
            .filter(Value.Series.class::isInstance)
            .map(Value.Series.class::cast);
    double[] si = new double[size()];
    for (int row = 0; row < si.length; row++) {
      si[row] =
          series.isEmpty()
              ? read(text(row, column), table.columns().get(column))
              : row < series.get().size()
                      && series.get().elements().get(row) instanceof Value.Scalar scalar
                  ? scalar.si()
                  : Double.NaN;
    }
    return si;
  }

  /** A number of a column that as a whole has no value, since another one cannot be read. */
  private static double read(String text, TableColumn column) {
    try {
      Unit unit = UnitTable.find(column.unit().isBlank() ? "1" : column.unit().strip());
      return text.isEmpty() ? Double.NaN : Size.read(text, unit).si();
    } catch (UnitException e) {
      return Double.NaN;
    }
  }

  /** What stands in a row under a column. */
  String text(int row, int column) {
    return isTyped(column)
        ? table.text(row, table.place(column))
        : element(column, row).map(e -> worked(columns.get(column), e)).orElse("");
  }

  /**
   * Mean of the numbers that these rows have under a column, in its unit; empty where none have.
   */
  Optional<String> meanOf(int[] rows, int column) {
    TableColumn of = table.columns().get(column);
    if (!of.isNumber()) {
      return Optional.empty();
    }
    TypedTable numbers =
        means.computeIfAbsent(column, at -> TypedTable.of(List.of(typed(of.head(), at))));
    double mean = numbers.summary(of.head(), rows).map(TypedTable.Summary::mean).orElse(Double.NaN);
    Optional<Unit> unit = unit(column);
    return Double.isNaN(mean) || unit.isEmpty()
        ? Optional.empty()
        : Optional.of(Shown.of(mean, 0, unit.get(), settings).value());
  }

  private Optional<Unit> unit(int column) {
    return columns
        .get(column)
        .flatMap(Figure::unit)
        .or(
            () -> {
              String unit = table.columns().get(column).unit().strip();
              try {
                return Optional.of(UnitTable.find(unit.isEmpty() ? "1" : unit));
              } catch (UnitException e) {
                return Optional.empty();
              }
            });
  }

  /** One line: {@code {row, cells, verdict?, verdicts?, wrong?}}. */
  public ObjectNode line(int row) {
    ObjectNode line = JsonNodeFactory.instance.objectNode().put("row", row + 1);
    ArrayNode cells = line.putArray("cells");
    List<Verdict> verdicts = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      TableColumn column = table.columns().get(i);
      Optional<Figure.Element> element = element(i, row);
      cells.add(text(row, i));
      if (isTyped(i)) {
        String said = wrong.get(List.of(row, table.place(i)));
        if (said != null) {
          line.withObjectProperty("wrong").put(column.head(), said);
        }
      }
      element
          .flatMap(Figure.Element::verdict)
          .ifPresent(
              verdict -> {
                verdicts.add(verdict);
                line.withObjectProperty("verdicts").put(column.head(), verdict.word());
              });
    }
    verdicts.stream().min(Verdict::compareTo).ifPresent(v -> line.put("verdict", v.word()));
    return line;
  }

  private Optional<Figure.Element> element(int column, int row) {
    return columns
        .get(column)
        .map(Figure::elements)
        .filter(all -> row < all.size())
        .map(all -> all.get(row));
  }

  private String worked(Optional<Figure> figure, Figure.Element element) {
    if (element.value() instanceof Value.Words words) {
      return words.text();
    }
    if (element.value() instanceof Value.Truth truth) {
      return truth.holds() ? "yes" : "no";
    }
    if (!(element.value() instanceof Value.Scalar scalar) || figure.isEmpty()) {
      return "";
    }
    return Shown.expanded(
            scalar.si(),
            settings.expanded(element.standardUncertainty(), element.degreesOfFreedom()),
            TableHead.unit(figure.get(), settings))
        .value();
  }
}
