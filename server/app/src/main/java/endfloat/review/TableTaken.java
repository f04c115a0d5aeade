package endfloat.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.RecordJson;
import endfloat.table.FieldKind;
import endfloat.table.Offence;
import endfloat.table.ReadTable;
import endfloat.table.ReadTable.ReadColumn;
import endfloat.table.TableAsked;
import endfloat.table.TableReader;
import endfloat.table.WorkbookReader;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/**
 * A table read from a file, as the fields of a clause: columns, rows, and where they come from.
 *
 * @param read what was read, and what is wrong with it
 * @param fields {@code columns}, {@code rows} and {@code from} of a clause; empty where anything is
 *     wrong
 */
public record TableTaken(ReadTable read, ObjectNode fields) {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  /**
   * Reads a file of separated values, or a workbook.
   *
   * @param name of the file, for people
   * @param date on which it is read, ISO 8601
   */
  public static TableTaken ofFile(byte[] file, String name, String date, TableAsked asked) {
    boolean workbook =
        name.toLowerCase(Locale.ROOT).endsWith(".xlsx") || WorkbookReader.isWorkbook(file);
    ReadTable read = workbook ? WorkbookReader.read(file, asked) : TableReader.read(file, asked);
    TableTaken taken = of(read);
    if (taken.read().isWhole()) {
      ObjectNode from = taken.fields().putObject("from").put("file", name);
      if (workbook) {
        asked.sheet().ifPresent(sheet -> from.put("sheet", sheet));
      }
      from.put("sha256", sha256(file)).put("date", date);
    }
    return taken;
  }

  /** Reads what was pasted from elsewhere, its first row being the heads. */
  public static TableTaken pasted(String text, TableAsked asked) {
    return of(TableReader.paste(text, asked));
  }

  /** What the rows come to in the file of a record: each a line, each text in quotes. */
  private static long bytes(ReadTable read) {
    long bytes = 12L * read.rows();
    for (ReadColumn column : read.columns()) {
      bytes += column.letters() + 4L * read.rows();
    }
    return bytes;
  }

  private static ReadTable held(ReadTable read) {
    long bytes = bytes(read);
    if (!read.isWhole() || bytes < RecordJson.MOST_BYTES) {
      return read;
    }
    String why =
        "its rows come to "
            + bytes / 1_000_000
            + " MB in the record, which takes "
            + RecordJson.MOST_BYTES / 1_000_000
            + " MB at most; leave out columns or rows that nothing rests on";
    return new ReadTable(read.columns(), List.of(new Offence(0, 0, "", why)), 0, read.notices());
  }

  private static TableTaken of(ReadTable file) {
    ReadTable read = held(file);
    ObjectNode fields = JSON.objectNode();
    if (!read.isWhole()) {
      return new TableTaken(read, fields);
    }
    ArrayNode columns = fields.putArray("columns");
    for (ReadColumn column : read.columns()) {
      ObjectNode one = columns.addObject().put("head", column.head());
      one.put("kind", column.kind().word());
      if (!column.unit().isEmpty() && column.kind() == FieldKind.NUMBER) {
        one.put("unit", column.unit());
      }
      if (!column.written().startsWith(column.head())) {
        one.put("note", column.written());
      }
    }
    ArrayNode rows = fields.putArray("rows");
    for (int row = 0; row < read.rows(); row++) {
      ArrayNode texts = JSON.arrayNode(read.columns().size());
      for (ReadColumn column : read.columns()) {
        texts.add(column.texts().get(row));
      }
      rows.add(texts);
    }
    return new TableTaken(read, fields);
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
