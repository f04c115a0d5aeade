package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Rows of a table taken out and others put in their place, as one step: a block pasted, rows added
 * or deleted. The way back is of the same kind, so that the log holds these rows and not the table.
 *
 * @param from index of the first row taken out, from 0
 * @param remove how many are taken out
 * @param insert rows put in
 */
record RowSplice(int from, int remove, ArrayNode insert) {

  /**
   * @param value {@code {"from": 12, "remove": 1, "insert": [["12.5", "B2"]]}}
   * @throws EditRefusedException if it is none
   */
  static RowSplice of(JsonNode value) {
    JsonNode given = value == null ? JsonNodeFactory.instance.objectNode() : value;
    JsonNode rows = given.path("insert");
    if (!given.path("from").canConvertToInt()
        || !given.path("remove").canConvertToInt()
        || !(rows instanceof ArrayNode insert)) {
      throw new EditRefusedException(
          "the edit of rows has no from, remove or insert",
          "send {\"from\": 12, \"remove\": 1, \"insert\": [[...]]}");
    }
    return new RowSplice(given.path("from").intValue(), given.path("remove").intValue(), insert);
  }

  ObjectNode toJson() {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("from", from).put("remove", remove).set("insert", insert);
    return json;
  }

  /**
   * What takes it back.
   *
   * @throws EditRefusedException if there are not so many rows
   */
  RowSplice back(JsonNode rows) {
    if (from < 0 || remove < 0 || (long) from + remove > rows.size()) {
      throw new EditRefusedException(
          "there are no rows " + (from + 1L) + " to " + ((long) from + remove) + " in this table",
          "it may have changed meanwhile; look at it again");
    }
    ArrayNode removed = JsonNodeFactory.instance.arrayNode(remove);
    for (int i = from; i < from + remove; i++) {
      removed.add(rows.get(i));
    }
    return new RowSplice(from, insert.size(), removed);
  }

  /** The rows after it; those given are left alone. */
  ArrayNode applied(JsonNode rows) {
    ArrayNode all = JsonNodeFactory.instance.arrayNode(rows.size() + insert.size());
    for (int i = 0; i < from; i++) {
      all.add(rows.get(i));
    }
    all.addAll(insert);
    for (int i = from + remove; i < rows.size(); i++) {
      all.add(rows.get(i));
    }
    return all;
  }
}
