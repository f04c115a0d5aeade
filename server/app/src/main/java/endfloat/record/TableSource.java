package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the rows of a table come from: typed, a file, the records of the shelf, or the groups of
 * another table.
 *
 * @param file name of the file they were read from; empty for none
 * @param sheet of the workbook, where it was named
 * @param sha256 of its bytes, hex
 * @param date on which it was read, ISO 8601
 * @param shelf the records they were read from; empty for none
 * @param refreshed when, ISO 8601
 * @param table name of the table whose groups they are; empty for none
 * @param group heads of the columns it is grouped by
 * @param of heads of the columns that are summed up
 * @param filter condition on the rows that count; empty for all
 */
public record TableSource(
    String file,
    String sheet,
    String sha256,
    String date,
    List<OnShelf> shelf,
    String refreshed,
    String table,
    List<String> group,
    List<String> of,
    String filter) {

  /**
   * A record that rows were read from, as it was then.
   *
   * @param record id on the shelf
   * @param title for people
   * @param revision of the document
   * @param sourceHash SHA-256 of its source
   */
  public record OnShelf(String record, String title, String revision, String sourceHash) {}

  static TableSource of(JsonNode from) {
    List<OnShelf> shelf = new ArrayList<>();
    for (JsonNode one : from.path("shelf")) {
      shelf.add(
          new OnShelf(
              Texts.text(one, "record"),
              Texts.text(one, "title"),
              Texts.text(one, "revision"),
              Texts.text(one, "source_hash")));
    }
    return new TableSource(
        Texts.text(from, "file"),
        Texts.text(from, "sheet"),
        Texts.text(from, "sha256"),
        Texts.text(from, "date"),
        List.copyOf(shelf),
        Texts.text(from, "refreshed"),
        Texts.text(from, "table"),
        Texts.list(from, "group"),
        Texts.list(from, "of"),
        Texts.text(from, "filter"));
  }

  /** Whether it is made of the groups of another table. */
  public boolean isGrouped() {
    return !table.isBlank();
  }
}
