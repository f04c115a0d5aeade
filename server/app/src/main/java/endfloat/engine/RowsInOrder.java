package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.engine.Value.Series;
import endfloat.engine.Value.Truth;
import endfloat.engine.Value.Words;
import endfloat.record.TableClause;
import endfloat.record.TableColumn;
import endfloat.record.TableOrder;
import endfloat.table.TypedTable;
import endfloat.table.TypedTable.Key;
import endfloat.table.TypedTable.Typed;
import endfloat.units.Unit;
import endfloat.working.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The rows of a table as a page asks for them: those that pass, in order, and the groups. What it
 * needs of the graph is taken at once; {@link #arranged} may then run in any thread.
 */
public final class RowsInOrder {
  private final TableOrder order;
  private final List<Typed> columns;
  private final boolean[] passes;
  private final int rows;

  private RowsInOrder(TableOrder order, List<Typed> columns, boolean[] passes, int rows) {
    this.order = order;
    this.columns = columns;
    this.passes = passes;
    this.rows = rows;
  }

  /**
   * Takes the columns as they stand now and works out the filter.
   *
   * @throws QuestionRefusedException if the filter means nothing, or a head is not there
   */
  public static RowsInOrder of(ValueGraph graph, TableClause table, TableOrder order) {
    List<Typed> columns = new ArrayList<>();
    List<String> wanted = new ArrayList<>(order.group());
    order.sort().forEach(key -> wanted.add(Key.of(key).head()));
    int rows = rows(graph, table);
    for (String head : wanted.stream().distinct().toList()) {
      columns.add(column(graph, table, head));
    }
    boolean[] passes = order.filter().isBlank() ? null : passes(graph, order.filter(), rows);
    return new RowsInOrder(order, columns, passes, rows);
  }

  private static int rows(ValueGraph graph, TableClause table) {
    int rows = table.size();
    for (TableColumn column : table.columns()) {
      if (!column.isTyped()) {
        rows = Math.max(rows, series(graph, table, column.head()).map(Series::size).orElse(0));
      }
    }
    return rows;
  }

  private static Optional<Series> series(ValueGraph graph, TableClause table, String head) {
    return graph
        .column(table.name() + "." + head)
        .map(slot -> slot.isFresh() ? slot.value() : null)
        .filter(Series.class::isInstance)
        .map(Series.class::cast);
  }

  private static Typed column(ValueGraph graph, TableClause table, String head) {
    List<String> heads = table.columns().stream().map(TableColumn::head).toList();
    if (!heads.contains(head)) {
      throw Question.refused(
          "/view", "There is no column " + head + ".", "It has " + String.join(", ", heads) + ".");
    }
    Optional<Series> series = series(graph, table, head);
    if (series.isEmpty()) {
      int at = heads.indexOf(head);
      int place = table.place(at);
      List<String> texts = new ArrayList<>();
      for (int row = 0; row < table.size(); row++) {
        texts.add(place < 0 ? "" : table.text(row, place).strip());
      }
      return Typed.texts(head, texts);
    }
    List<Value> elements = series.get().elements();
    if (graph.kindOf(table.name() + "." + head).orElseThrow() instanceof Kind.Series kind
        && (kind.element() instanceof Kind.Words
            || kind.element() instanceof Kind.Date
            || kind.element() instanceof Kind.Truth)) {
      return Typed.texts(head, elements.stream().map(RowsInOrder::text).toList());
    }
    Optional<Unit> unit = graph.unitOf(table.name() + "." + head);
    double[] numbers = new double[elements.size()];
    for (int row = 0; row < numbers.length; row++) {
      numbers[row] =
          elements.get(row) instanceof Scalar s
              ? unit.map(u -> u.fromSi(s.si())).orElse(s.si())
              : Double.NaN;
    }
    return Typed.numbers(head, numbers);
  }

  private static String text(Value value) {
    return value instanceof Words words
        ? words.text()
        : value instanceof Truth truth ? truth.holds() ? "yes" : "no" : "";
  }

  private static boolean[] passes(ValueGraph graph, String filter, int rows) {
    if (!(Question.of(graph, "/view/filter", filter).value() instanceof Series series)
        || series.size() != rows
        || !series.elements().stream()
            .allMatch(e -> e instanceof Truth || e instanceof Value.Absent)) {
      throw Question.refused(
          "/view/filter",
          "This is no condition on the rows of this table.",
          "Compare a column with something, such as wear.lash > 15 thou.");
    }
    boolean[] passes = new boolean[rows];
    for (int row = 0; row < rows; row++) {
      passes[row] = series.elements().get(row) instanceof Truth truth && truth.holds();
    }
    return passes;
  }

  /**
   * Rows in the order asked for.
   *
   * @param rows numbers from 0, as the record has them, of those that pass
   * @param groups of them in order, each a stretch of {@code rows}; none where no group is asked
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once and altered by nobody
  public record Arranged(int[] rows, List<Stretch> groups) {}

  /**
   * A group: rows that stand together.
   *
   * @param labels its values in the columns it goes by
   * @param from place of its first row among the rows, from 0
   */
  public record Stretch(List<String> labels, int from, int count) {}

  /** Puts the rows in order. */
  public Arranged arranged() {
    if (columns.isEmpty()) {
      return new Arranged(plain(), List.of());
    }
    TypedTable table = TypedTable.of(columns);
    TypedTable chosen = passes == null ? table : table.chosen(passes);
    List<Key> keys = order.sort().stream().map(Key::of).toList();
    int[] sorted = chosen.sorted(keys);
    return order.group().isEmpty()
        ? new Arranged(sorted, List.of())
        : grouped(sorted, chosen.groups(order.group()));
  }

  private int[] plain() {
    int[] all = new int[rows];
    int count = 0;
    for (int row = 0; row < rows; row++) {
      if (passes == null || passes[row]) {
        all[count++] = row;
      }
    }
    return Arrays.copyOf(all, count);
  }

  /** The groups one after another, within each the order of all; rows of no group at the end. */
  private Arranged grouped(int[] sorted, List<TypedTable.Group> groups) {
    int[] groupOf = new int[rows];
    Arrays.fill(groupOf, groups.size());
    int[] starts = new int[groups.size() + 2];
    for (int g = 0; g < groups.size(); g++) {
      for (int row : groups.get(g).rows()) {
        groupOf[row] = g;
      }
    }
    for (int row : sorted) {
      starts[groupOf[row] + 1]++;
    }
    List<Stretch> stretches = new ArrayList<>();
    for (int g = 0; g <= groups.size(); g++) {
      int count = starts[g + 1];
      starts[g + 1] += starts[g];
      if (count > 0) {
        List<String> labels =
            g < groups.size()
                ? groups.get(g).labels()
                : Collections.nCopies(order.group().size(), "");
        stretches.add(new Stretch(labels, starts[g], count));
      }
    }
    int[] placed = new int[sorted.length];
    int[] next = starts.clone();
    for (int row : sorted) {
      placed[next[groupOf[row]]++] = row;
    }
    return new Arranged(placed, stretches);
  }
}
