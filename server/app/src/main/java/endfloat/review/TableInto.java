package endfloat.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import endfloat.record.Cell;
import endfloat.record.Change;
import endfloat.record.TableClause;
import endfloat.record.TableColumn;
import endfloat.table.ReadTable;
import endfloat.table.ReadTable.ReadColumn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A file taken into a table of a record: the one change that it comes to. */
public final class TableInto {
  private TableInto() {}

  /**
   * The rows of the file in place of those that stand. Columns that are worked out stay, and of a
   * column of the same head what was said of it.
   */
  public static Change replacing(Cell cell, TableTaken taken) {
    return replacing(cell, taken.fields(), name(file(taken)));
  }

  /** The rows read from the records of the shelf in place of those that stand. */
  public static Change replacing(Cell cell, Fleet.Read read) {
    return replacing(cell, read.fields(), "fleet");
  }

  private static Change replacing(Cell cell, ObjectNode fields, String name) {
    List<Change> parts = new ArrayList<>();
    if (cell.table().name().isBlank()) {
      parts.add(Change.put(cell.id(), "/name", TextNode.valueOf(name)));
    }
    parts.add(Change.put(cell.id(), "/columns", columns(cell, fields.path("columns"))));
    parts.add(Change.put(cell.id(), "/from", fields.path("from")));
    parts.add(Change.rows(cell.id(), 0, cell.table().size(), (ArrayNode) fields.path("rows")));
    return Change.together(parts);
  }

  /**
   * The rows of the file beneath those that stand; empty where its columns are other ones.
   *
   * @see #appends
   */
  public static Optional<Change> appending(Cell cell, TableTaken taken) {
    ReadTable read = taken.read();
    TableClause table = cell.table();
    List<ReadColumn> inOrder = new ArrayList<>();
    for (TableColumn column : table.columns()) {
      if (column.isTyped()) {
        Optional<ReadColumn> same =
            read.columns().stream().filter(c -> fits(c, column)).findFirst();
        if (same.isEmpty()) {
          return Optional.empty();
        }
        inOrder.add(same.get());
      }
    }
    if (inOrder.size() != read.columns().size()) {
      return Optional.empty();
    }
    ObjectNode from = (ObjectNode) taken.fields().path("from");
    if (!table.from().file().isBlank()) {
      // of two files there is no one hash
      from.put("file", table.from().file() + ", " + file(taken)).put("sha256", "");
      from.remove("sheet");
    }
    return Optional.of(
        Change.together(
            List.of(
                Change.put(cell.id(), "/from", from),
                Change.rows(cell.id(), table.size(), 0, rows(inOrder, read.rows())))));
  }

  /** Whether the columns of the file are those of the table. */
  public static boolean appends(Cell cell, ReadTable read) {
    List<TableColumn> typed = cell.table().columns().stream().filter(TableColumn::isTyped).toList();
    return typed.size() == read.columns().size()
        && typed.stream().allMatch(c -> read.columns().stream().anyMatch(r -> fits(r, c)));
  }

  private static boolean fits(ReadColumn read, TableColumn column) {
    return read.head().equals(column.head())
        && read.unit().strip().equals(column.unit().strip())
        && (column.isNumber()
            ? read.kind().word().equals("number")
            : read.kind().word().equals(column.kind()));
  }

  /** The columns of the file, with what was said of those of the same head; those worked out. */
  private static ArrayNode columns(Cell cell, JsonNode read) {
    ArrayNode columns = JsonNodeFactory.instance.arrayNode();
    JsonNode before = cell.source().path("columns");
    for (JsonNode column : read) {
      ObjectNode next = columns.addObject();
      for (JsonNode old : before) {
        if (head(old).equals(head(column)) && !isWorkedOut(old)) {
          next.setAll((ObjectNode) old);
          next.remove("unit");
        }
      }
      next.setAll((ObjectNode) column);
    }
    for (JsonNode old : before) {
      boolean taken = false;
      for (JsonNode column : read) {
        taken |= head(column).equals(head(old));
      }
      if (isWorkedOut(old) && !taken) {
        columns.add(old);
      }
    }
    return columns;
  }

  private static String head(JsonNode column) {
    return column.path("head").asText();
  }

  private static boolean isWorkedOut(JsonNode column) {
    return !column.path("formula").asText("").isBlank();
  }

  private static String file(TableTaken taken) {
    return taken.fields().path("from").path("file").asText();
  }

  private static ArrayNode rows(List<ReadColumn> columns, int count) {
    ArrayNode rows = JsonNodeFactory.instance.arrayNode(count);
    for (int i = 0; i < count; i++) {
      ArrayNode row = rows.addArray();
      for (ReadColumn column : columns) {
        row.add(column.texts().get(i));
      }
    }
    return rows;
  }

  /** A name of the language out of that of a file: {@code fleet.csv} is fleet. */
  private static String name(String file) {
    String stem =
        file.replaceFirst("\\.[A-Za-z]{2,4}$", "")
            .replaceAll("[^\\p{L}\\p{Nd}]+", "_")
            .replaceAll("^_+|_+$", "");
    return stem.isEmpty() ? "table" : Character.isDigit(stem.charAt(0)) ? "_" + stem : stem;
  }
}
