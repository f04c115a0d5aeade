package endfloat.http.view;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import java.util.HashMap;
import java.util.Map;

/** The clauses as they stand one after the other and in each other, with their numbers. */
final class ClauseOrder {
  private ClauseOrder() {}

  /** {@code [{id, number, cells: [...]}]}; only sections have {@code cells}. */
  static ArrayNode of(InvestigationRecord record) {
    ArrayNode top = JsonNodeFactory.instance.arrayNode();
    Map<String, ArrayNode> sections = new HashMap<>();
    for (Cell cell : record.cells()) {
      ObjectNode node = JsonNodeFactory.instance.objectNode();
      node.put("id", cell.id()).put("number", cell.number());
      if (cell.isSection()) {
        sections.put(cell.id(), node.putArray("cells"));
      }
      sections.getOrDefault(cell.parent(), top).add(node);
    }
    return top;
  }

  /** The same order with a whole view in each place. */
  static ArrayNode filled(JsonNode order, java.util.function.Function<String, ObjectNode> views) {
    ArrayNode filled = JsonNodeFactory.instance.arrayNode();
    for (JsonNode place : order) {
      ObjectNode view = views.apply(place.path("id").asText());
      if (place.has("cells")) {
        view.set("cells", filled(place.path("cells"), views));
      }
      filled.add(view);
    }
    return filled;
  }
}
