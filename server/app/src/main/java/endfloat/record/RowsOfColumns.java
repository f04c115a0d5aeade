package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The rows of a table after its columns changed. A row holds a text for each column that is typed,
 * by place: a column taken out, put between, moved, or now worked out from others would else shift
 * every text behind it under another head.
 */
final class RowsOfColumns {
  private RowsOfColumns() {}

  /** The rows as they then have to be; empty where they stand as they are. */
  static Optional<ArrayNode> after(JsonNode rows, JsonNode before, JsonNode after) {
    List<JsonNode> old = typed(before);
    List<JsonNode> now = typed(after);
    int[] from = new int[now.size()];
    boolean same = old.size() == now.size();
    for (int i = 0; i < from.length; i++) {
      from[i] = placeOf(now.get(i), i, old, now, before.size() == after.size());
      same &= from[i] == i;
    }
    return same || rows.isEmpty() ? Optional.empty() : Optional.of(taken(rows, from));
  }

  private static List<JsonNode> typed(JsonNode columns) {
    List<JsonNode> typed = new ArrayList<>();
    for (JsonNode column : columns) {
      if (Texts.text(column, "formula").isBlank()) {
        typed.add(column);
      }
    }
    return typed;
  }

  /** Place of its texts so far: that of the column with its head, else the same one renamed. */
  private static int placeOf(
      JsonNode column, int place, List<JsonNode> old, List<JsonNode> now, boolean sameCount) {
    int named = indexOf(Texts.text(column, "head"), old);
    if (named >= 0) {
      return named;
    }
    boolean renamed =
        sameCount
            && old.size() == now.size()
            && indexOf(Texts.text(old.get(place), "head"), now) < 0;
    return renamed ? place : -1;
  }

  private static int indexOf(String head, List<JsonNode> columns) {
    for (int i = 0; i < columns.size(); i++) {
      if (Texts.text(columns.get(i), "head").equals(head)) {
        return i;
      }
    }
    return -1;
  }

  private static ArrayNode taken(JsonNode rows, int[] from) {
    ArrayNode all = JsonNodeFactory.instance.arrayNode(rows.size());
    for (JsonNode row : rows) {
      ArrayNode next = all.addArray();
      Arrays.stream(from).forEach(place -> next.add(row.path(place).asText("")));
    }
    return all;
  }
}
