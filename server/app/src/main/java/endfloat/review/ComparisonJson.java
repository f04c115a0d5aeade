package endfloat.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Shown;
import endfloat.engine.Verdict;
import endfloat.record.TitleBlock;
import endfloat.review.Comparison.Point;
import endfloat.review.Comparison.Row;
import endfloat.review.Comparison.Side;
import endfloat.review.Comparison.Wording;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** A comparison as JSON, for the command and the page. */
public final class ComparisonJson {
  private ComparisonJson() {}

  /**
   * All of it.
   *
   * @param more adds to a row what its reader needs beside
   */
  public static ObjectNode of(Comparison comparison, BiConsumer<Row, ObjectNode> more) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.set("left", side(comparison.left()));
    out.set("right", side(comparison.right()));
    out.put("same_engine", comparison.sameEngine()).put("equal", comparison.isEqual());
    out.put("clear", comparison.clear()).put("judged_otherwise", comparison.judgedOtherwise());
    comparison.shared().forEach(out.putArray("shared_instruments")::add);
    comparison.notShared().forEach(out.putArray("not_shared")::add);
    ArrayNode rows = out.putArray("figures");
    for (Row row : comparison.rows()) {
      ObjectNode entry = rows.addObject();
      entry.put("name", row.name()).put("label", row.label()).put("clause", row.clause());
      entry.put("reading", row.reading()).put("standing", row.standing().word());
      point(entry, "left", row.left(), comparison.left());
      point(entry, "right", row.right(), comparison.right());
      row.difference().ifPresent(shown -> entry.set("difference", shown(shown)));
      entry.put("judged_otherwise", row.isJudgedOtherwise());
      more.accept(row, entry);
    }
    ArrayNode tables = out.putArray("tables");
    comparison.tables().forEach(table -> tables.add(table(table)));
    wordings(out.putArray("formulas"), comparison.formulas());
    wordings(out.putArray("texts"), comparison.texts());
    return out;
  }

  private static ObjectNode side(Side side) {
    TitleBlock block = side.record().titleBlock();
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("title", block.title()).put("record_number", block.recordNumber());
    out.put("revision", block.revision()).put("date", block.date());
    out.put("engine_serial", block.engineSerial()).put("engine_type", block.engineType());
    out.put("stage", side.stage());
    side.stages().forEach(out.putArray("stages")::add);
    return out.put("source_hash", side.record().sourceHash());
  }

  private static void point(ObjectNode into, String name, Optional<Point> point, Side side) {
    if (point.isEmpty()) {
      return;
    }
    ObjectNode out = into.putObject(name).put("text", point.get().text());
    point.get().shown(side.settings()).ifPresent(shown -> out.setAll(shown(shown)));
    point.get().verdict().map(Verdict::word).ifPresent(word -> out.put("verdict", word));
  }

  private static ObjectNode table(TableDifference table) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("clause", table.clause()).put("name", table.name()).put("equal", table.isEqual());
    out.put("rows_by", table.by());
    out.put("counts", table.counts());
    table.said().forEach(out.putArray("said")::add);
    ObjectNode columns = out.putObject("columns");
    table.columnsGone().forEach(columns.putArray("only_left")::add);
    table.columnsAdded().forEach(columns.putArray("only_right")::add);
    out.putObject("rows")
        .put("left", table.leftRows())
        .put("right", table.rightRows())
        .put("changed", table.changed())
        .put("only_left", table.gone())
        .put("only_right", table.added());
    out.putObject("values")
        .put("changed", table.cells())
        .put("clear", table.clear())
        .put("judged_otherwise", table.judgedOtherwise())
        .put("same_written_otherwise", table.written());
    ArrayNode first = out.putArray("first");
    for (TableDifference.Row row : table.first()) {
      ObjectNode entry = first.addObject().put("row", row.key());
      entry.put("change", row.change().word());
      if (row.change() != TableDifference.Change.CHANGED) {
        entry.put("text", row.text());
      }
      ArrayNode cells = entry.putArray("cells");
      row.cells().forEach(cell -> cells.add(cell(cell)));
    }
    return out.put("more", table.more());
  }

  private static ObjectNode cell(TableDifference.Cell cell) {
    ObjectNode out = JsonNodeFactory.instance.objectNode().put("head", cell.head());
    out.put("left", cell.left()).put("right", cell.right());
    out.put("standing", cell.standing().word());
    cell.difference().ifPresent(shown -> out.set("difference", shown(shown)));
    cell.was().ifPresent(verdict -> out.put("was", verdict.word()));
    cell.verdict().ifPresent(verdict -> out.put("verdict", verdict.word()));
    return out;
  }

  private static ObjectNode shown(Shown shown) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("value", shown.value()).put("unit", shown.unit());
    return shown.uncertainty().isEmpty() ? out : out.put("u", shown.uncertainty());
  }

  private static void wordings(ArrayNode into, List<Wording> wordings) {
    for (Wording one : wordings) {
      into.addObject()
          .put("clause", one.clause())
          .put("what", one.what())
          .put("left", one.left())
          .put("right", one.right());
    }
  }
}
