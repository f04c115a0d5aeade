package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;

/** Trees of new records. */
public final class NewRecord {
  private NewRecord() {}

  /** A section for the readings and one for the workings, nothing in them yet but what is typed. */
  static ObjectNode blank(String title, LocalDate today) {
    ObjectNode tree = JsonNodeFactory.instance.objectNode();
    tree.put("format", "endfloat-record");
    tree.put("version", InvestigationRecord.VERSION);
    titleBlock(tree.putObject("title_block"), title, today);
    ObjectNode settings = tree.putObject("settings");
    settings.put("units", "metric").put("terms", "british");
    settings.put("coverage", 2).put("stage", "as found");
    tree.putArray("parts");
    tree.putArray("instruments");
    ArrayNode cells = tree.putArray("cells");
    cells.addObject().put("id", "c1").put("kind", "note").put("title", "The case").put("text", "");
    ObjectNode readings = cells.addObject();
    readings.put("id", "c2").put("kind", "readings").put("title", "Readings");
    readings.putArray("readings");
    cells
        .addObject()
        .put("id", "c3")
        .put("kind", "working")
        .put("title", "Working")
        .put("text", "");
    return tree;
  }

  /**
   * The pattern with its readings not taken, its results, signatures and serial numbers left out.
   */
  public static ObjectNode from(InvestigationRecord pattern, String title, LocalDate today) {
    ObjectNode tree = pattern.tree().deepCopy();
    tree.remove(List.of("results", "hashes", "provenance"));
    ObjectNode block = tree.withObject("/title_block");
    block.remove(
        List.of("record_number", "engine_serial", "hours_since_overhaul", "checked", "approved"));
    if (!pattern.titleBlock().state().equals("pattern")) {
      // a pattern's says what it is for, another's what came out
      block.remove("subtitle");
    }
    titleBlock(block, title, today);
    for (JsonNode part : tree.path("parts")) {
      ((ObjectNode) part).remove("serial");
    }
    notTaken(tree.path("cells"));
    return tree;
  }

  private static void titleBlock(ObjectNode block, String title, LocalDate today) {
    block.put("title", title.isBlank() ? "Untitled" : title.strip());
    block.put("revision", "A");
    block.put("date", today.toString());
    block.put("document", "Investigation record");
    block.put("state", "draft");
  }

  /**
   * Empties every reading and table: stations stay, what was taken, struck or set apart at them
   * goes.
   */
  static void notTaken(JsonNode cells) {
    for (JsonNode cell : cells) {
      for (JsonNode reading : cell.path("readings")) {
        ArrayNode kept = JsonNodeFactory.instance.arrayNode();
        for (JsonNode entry : reading.path("entries")) {
          if (entry.has("struck")) {
            continue;
          }
          ObjectNode empty = ((ObjectNode) entry).remove(List.of("temperature", "instrument"));
          empty.putArray("taken");
          kept.add(empty);
        }
        ((ObjectNode) reading).set("entries", kept);
      }
      if (Texts.text(cell, "kind").equals("table") && cell.path("rows").size() > 0) {
        ((ObjectNode) cell).remove("from");
        ((ObjectNode) cell).putArray("rows");
      }
      ((ObjectNode) cell).remove("remarks");
      OfOtherEngine.forget((ObjectNode) cell);
      notTaken(cell.path("cells"));
    }
  }
}
