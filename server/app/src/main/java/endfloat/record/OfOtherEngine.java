package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * What clauses say of one engine and must not say of the next: what was found, what the evidence
 * spoke for, what was measured, who signed, and notes that are said to be of this engine. What is
 * to be looked at stays.
 */
final class OfOtherEngine {
  /** A number, its unit and what is behind ±. */
  private static final String NUMBER =
      "[-+\u2212]?[0-9][0-9./ ]*(?:e[-+]?[0-9]+)?[^-+*/()\\s]*(?:\\s*(?:\u00b1|\\+/?[-\u2212]).*)?";

  private OfOtherEngine() {}

  static void forget(ObjectNode cell) {
    if (cell.path("of_this_engine").asBoolean()) {
      cell.put("text", "");
    }
    for (JsonNode finding : cell.path("findings")) {
      ((ObjectNode) finding)
          .put("state", Finding.State.NOT_INSPECTED.word())
          .remove(List.of("damage", "size", "orientation", "by", "photo", "disposition"));
    }
    for (JsonNode cause : cell.path("causes")) {
      ((ObjectNode) cause).put("standing", "open").remove("fact");
      dropNumber((ObjectNode) cause, "contribution");
    }
    for (JsonNode evidence : cell.path("evidence")) {
      for (JsonNode mark : evidence.path("marks")) {
        ((ObjectNode) mark).put("mark", "not measured").remove("reason");
      }
    }
    if (cell.path("kind").asText().equals("causes")) {
      dropNumber(cell, "observed");
    }
    for (JsonNode row : cell.path("rows")) {
      dropNumber((ObjectNode) row, "measured");
      row.path("sizes").forEach(size -> dropNumber((ObjectNode) size, "measured"));
    }
    if (cell.path("kind").asText().equals("photo")) {
      cell.remove(List.of("photo", "caption"));
    }
    for (JsonNode role : cell.path("roles")) {
      ((ObjectNode) role).remove(List.of("name", "date", "remark"));
    }
  }

  /** A plain number was measured on the other engine; an expression reads this one's readings. */
  private static void dropNumber(ObjectNode node, String field) {
    // 2 * swing begins like a number and is none
    if (Texts.text(node, field).strip().matches(NUMBER)) {
      node.put(field, "");
    }
  }
}
