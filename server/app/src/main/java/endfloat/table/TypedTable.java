package endfloat.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import tech.tablesaw.aggregate.AggregateFunctions;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;
import tech.tablesaw.joining.JoinType;
import tech.tablesaw.selection.Selection;
import tech.tablesaw.sorting.Sort;
import tech.tablesaw.table.TableSlice;

/**
 * A table in memory with typed columns: put in order, chosen from, grouped, joined, summed up. It
 * speaks in row numbers, counted from 0, so that who shows rows takes them from where they are. A
 * missing value stands last in every order and belongs to no group.
 *
 * <p>Loaded when a table is first put in order: what is underneath takes its time to start.
 */
public final class TypedTable {
  private static final String ROW = "row";
  private static final String MISSING = "missing ";

  private final Table table;

  private TypedTable(Table table) {
    this.table = table;
  }

  /**
   * A column to put in.
   *
   * @param numbers in one unit, NaN for a missing one; null for a column of texts
   * @param texts empty for a missing one; null for a column of numbers
   */
  @SuppressWarnings("ArrayRecordComponent") // handed over once and altered by nobody
  public record Typed(String head, double[] numbers, List<String> texts) {
    public static Typed numbers(String head, double[] numbers) {
      return new Typed(head, numbers, null);
    }

    public static Typed texts(String head, List<String> texts) {
      return new Typed(head, null, texts);
    }
  }

  /** A column and the way in which it goes. */
  public record Key(String head, boolean down) {
    /** {@code lash} or {@code lash down}. */
    public static Key of(String written) {
      String text = written.strip();
      String head = text.split("\\s+", 2)[0];
      return new Key(head, text.toLowerCase(Locale.ROOT).endsWith(" down"));
    }
  }

  /** Rows that have the same values in the columns they are grouped by. */
  @SuppressWarnings("ArrayRecordComponent") // made for the caller alone
  public record Group(List<String> labels, int[] rows) {}

  /**
   * What a column of numbers comes to; everything but the counts is NaN where too few are there.
   *
   * @param sd of a sample, n - 1
   */
  public record Summary(
      int count, int missing, double mean, double sd, double least, double greatest) {}

  /** A table of these columns; all have the same number of rows. */
  public static TypedTable of(List<Typed> columns) {
    Table table = Table.create();
    int rows = 0;
    for (Typed column : columns) {
      rows = column.numbers() != null ? column.numbers().length : column.texts().size();
      if (column.numbers() != null) {
        table.addColumns(DoubleColumn.create(column.head(), column.numbers()));
        table.addColumns(missing(column));
      } else {
        table.addColumns(StringColumn.create(column.head(), column.texts()));
        table.addColumns(missing(column));
      }
    }
    table.addColumns(IntColumn.indexColumn(ROW, rows, 0));
    return new TypedTable(table);
  }

  /** 1 where a value is missing: what an order looks at first. */
  private static Column<?> missing(Typed column) {
    int rows = column.numbers() != null ? column.numbers().length : column.texts().size();
    int[] missing = new int[rows];
    for (int row = 0; row < rows; row++) {
      boolean none =
          column.numbers() != null
              ? Double.isNaN(column.numbers()[row])
              : column.texts().get(row).isEmpty();
      missing[row] = none ? 1 : 0;
    }
    return IntColumn.create(MISSING + column.head(), missing);
  }

  public int rows() {
    return table.rowCount();
  }

  public boolean has(String head) {
    return table.columnNames().contains(head) && !head.startsWith(MISSING) && !head.equals(ROW);
  }

  /** All rows in this order; equal ones as they stand. */
  public int[] sorted(List<Key> keys) {
    return numbers(ordered(keys));
  }

  /** The rows that pass, in this order. */
  public int[] sorted(List<Key> keys, boolean[] passes) {
    return numbers(chosen(passes).ordered(keys));
  }

  /** The table of the rows that pass; they keep their numbers. */
  public TypedTable chosen(boolean[] passes) {
    if (passes.length != rows()) {
      throw new IllegalArgumentException(passes.length + " answers for " + rows() + " rows");
    }
    int count = 0;
    int[] kept = new int[passes.length];
    for (int row = 0; row < passes.length; row++) {
      if (passes[row]) {
        kept[count++] = row;
      }
    }
    return new TypedTable(table.where(Selection.with(Arrays.copyOf(kept, count))));
  }

  private Table ordered(List<Key> keys) {
    Sort sort = null;
    for (Key key : keys) {
      Sort.Order order = key.down() ? Sort.Order.DESCEND : Sort.Order.ASCEND;
      sort =
          sort == null
              ? Sort.on(MISSING + key.head(), Sort.Order.ASCEND)
              : sort.next(MISSING + key.head(), Sort.Order.ASCEND);
      sort = sort.next(key.head(), order);
    }
    return sort == null ? table : table.sortOn(sort.next(ROW, Sort.Order.ASCEND));
  }

  private static int[] numbers(Table table) {
    return table.intColumn(ROW).asIntArray();
  }

  /** The groups in the order of their labels; rows that lack one of them are in none. */
  public List<Group> groups(List<String> heads) {
    List<String> needed = new ArrayList<>(heads);
    heads.forEach(head -> needed.add(MISSING + head));
    needed.add(ROW);
    Table whole = table.selectColumns(needed.toArray(String[]::new));
    for (String head : heads) {
      whole = whole.where(whole.intColumn(MISSING + head).isEqualTo(0));
    }
    List<Group> groups = new ArrayList<>();
    if (whole.isEmpty()) {
      return groups;
    }
    for (TableSlice slice : whole.splitOn(heads.toArray(String[]::new))) {
      Table one = slice.asTable();
      List<String> labels = heads.stream().map(head -> one.column(head).getString(0)).toList();
      groups.add(new Group(labels, numbers(one)));
    }
    groups.sort(
        (a, b) -> {
          for (int i = 0; i < a.labels().size(); i++) {
            int order = a.labels().get(i).compareTo(b.labels().get(i));
            if (order != 0) {
              return order;
            }
          }
          return 0;
        });
    return groups;
  }

  /** What a column of numbers comes to; empty for a column of texts. */
  public Optional<Summary> summary(String head) {
    return table.column(head) instanceof DoubleColumn numbers
        ? Optional.of(summary(numbers))
        : Optional.empty();
  }

  /**
   * What a column of numbers comes to over some rows; empty for a column of texts.
   *
   * @param rows by the numbers that they have in the whole table
   */
  public Optional<Summary> summary(String head, int[] rows) {
    if (rows.length > 0 && table.intColumn(ROW).getInt(rows() - 1) != rows() - 1) {
      throw new IllegalStateException("rows are summed up of the whole table, not of some of it");
    }
    return table.column(head) instanceof DoubleColumn numbers
        ? Optional.of(summary(numbers.where(Selection.with(rows))))
        : Optional.empty();
  }

  private static Summary summary(DoubleColumn numbers) {
    int count = numbers.size() - numbers.countMissing();
    return new Summary(
        count,
        numbers.countMissing(),
        count == 0 ? Double.NaN : AggregateFunctions.mean.summarize(numbers),
        count < 2 ? Double.NaN : AggregateFunctions.stdDev.summarize(numbers),
        count == 0 ? Double.NaN : AggregateFunctions.min.summarize(numbers),
        count == 0 ? Double.NaN : AggregateFunctions.max.summarize(numbers));
  }

  /**
   * Pairs of rows of this table and another that have the same text in a column.
   *
   * @return for each pair the row here and the row there, in the order of the rows here
   */
  public List<int[]> joined(String head, TypedTable other, String otherHead) {
    Table left = side(table, head, "here");
    Table right = side(other.table, otherHead, "there");
    Table both = left.joinOn("key").with(right).type(JoinType.INNER).join();
    List<int[]> pairs = new ArrayList<>(both.rowCount());
    IntColumn here = both.intColumn("here");
    IntColumn there = both.intColumn("there");
    for (int i = 0; i < both.rowCount(); i++) {
      pairs.add(new int[] {here.getInt(i), there.getInt(i)});
    }
    pairs.sort((a, b) -> a[0] != b[0] ? a[0] - b[0] : a[1] - b[1]);
    return pairs;
  }

  private static Table side(Table of, String head, String rowName) {
    Table whole = of.where(of.intColumn(MISSING + head).isEqualTo(0));
    StringColumn key = StringColumn.create("key", whole.column(head).asStringColumn().asList());
    return Table.create(key, whole.intColumn(ROW).copy().setName(rowName));
  }

  /** The columns that are there, for messages. */
  public List<String> heads() {
    return Stream.of(table.columnNames().toArray(String[]::new)).filter(this::has).toList();
  }
}
