package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.TableOrder;
import endfloat.review.TableOut;
import endfloat.table.TypedTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The lines of a table in one order and choice: rows that pass, and before each group its head.
 * Made once, told in parts as they come into view.
 */
public final class TableLines {
  private final TableRows rows;

  /** A row, or for the head of a group -1 - its number. */
  private final int[] lines;

  /** Rows of each group. */
  private final List<int[]> groups = new ArrayList<>();

  private final int passing;
  private final List<Integer> by;

  private TableLines(TableRows rows, TableOrder order) {
    this.rows = rows;
    this.by = order.group().stream().map(rows::column).toList();
    int[] sorted = sorted(rows, order);
    passing = sorted.length;
    lines = by.isEmpty() ? sorted : grouped(sorted);
  }

  /**
   * @throws RefusedOrderException if it names a column that is not there
   */
  public static TableLines of(TableRows rows, TableOrder order) {
    return new TableLines(rows, order);
  }

  private static int[] sorted(TableRows rows, TableOrder order) {
    List<TypedTable.Key> keys =
        Stream.concat(order.group().stream(), order.sort().stream())
            .map(TypedTable.Key::of)
            .toList();
    int[] all = IntStream.range(0, rows.size()).filter(rows::passes).toArray();
    if (keys.isEmpty()) {
      return all;
    }
    boolean[] passes = new boolean[rows.size()];
    Arrays.stream(all).forEach(row -> passes[row] = true);
    return rows.typed(keys.stream().map(TypedTable.Key::head).distinct().toList())
        .sorted(keys, passes);
  }

  private int[] grouped(int[] sorted) {
    IntStream.Builder made = IntStream.builder();
    int from = 0;
    for (int i = 1; i <= sorted.length; i++) {
      if (i == sorted.length || !label(sorted[i - 1]).equals(label(sorted[i]))) {
        groups.add(Arrays.copyOfRange(sorted, from, i));
        made.add(-groups.size());
        Arrays.stream(sorted, from, i).forEach(made::add);
        from = i;
      }
    }
    return sorted.length == 0 ? sorted : made.build().toArray();
  }

  private List<String> label(int row) {
    return by.stream().map(column -> rows.text(row, column)).toList();
  }

  /** The rows in this order as a CSV file, without the heads of groups. */
  public String csv() {
    int[] order = Arrays.stream(lines).filter(line -> line >= 0).toArray();
    return TableOut.csv(rows.table(), rows.figures(), order);
  }

  /** {@code {revision, total, passing, lines: [...]}}. */
  public ObjectNode view(int from, int count) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    view.put("revision", rows.revision()).put("total", lines.length).put("passing", passing);
    ArrayNode told = view.putArray("lines");
    for (int at = from; at < Math.min((long) from + count, lines.length); at++) {
      told.add(lines[at] >= 0 ? rows.line(lines[at]) : head(groups.get(-1 - lines[at])));
    }
    return view;
  }

  /** Head of a group: {@code {group, count, cells}}, the mean under each column of numbers. */
  private ObjectNode head(int[] group) {
    ObjectNode head = JsonNodeFactory.instance.objectNode();
    head.put("group", String.join(", ", label(group[0]))).put("count", group.length);
    ArrayNode cells = head.putArray("cells");
    for (int column = 0; column < rows.table().columns().size(); column++) {
      String text = by.contains(column) ? rows.text(group[0], column) : "";
      cells.add(
          by.contains(column)
              ? text.isEmpty() ? "missing" : text
              : rows.meanOf(group, column).map(mean -> "mean " + mean).orElse(""));
    }
    return head;
  }
}
