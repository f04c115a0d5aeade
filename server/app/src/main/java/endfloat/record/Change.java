package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What an edit does to a record.
 *
 * @param op what is done
 * @param cell id of the clause; empty for SET, UNDO, REDO
 * @param at JSON Pointer (RFC 6901): inside the clause for PUT, inside the record for SET
 * @param value the new value; null removes. The whole clause for ADD, the parts for TOGETHER, for
 *     ROWS {@code {from, remove, insert}}
 * @param parent id of the section to ADD or MOVE into; empty for the top level
 * @param after id of the clause before it there; empty for the first place; null for the last
 */
public record Change(Op op, String cell, String at, JsonNode value, String parent, String after) {
  /** Kinds of change. */
  public enum Op {
    PUT,
    ADD,
    MOVE,
    DELETE,
    SET,
    /** Rows of a table taken out and others put in their place: {@link Change#rows}. */
    ROWS,
    /** Several PUTs and ROWS as one step: they are kept, refused and undone together. */
    TOGETHER,
    UNDO,
    REDO;

    String text() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public static Change put(String cell, String at, JsonNode value) {
    return new Change(Op.PUT, cell, at, value, "", null);
  }

  public static Change add(String cell, JsonNode value, String parent, String after) {
    return new Change(Op.ADD, cell, "", value, parent, after);
  }

  public static Change move(String cell, String parent, String after) {
    return new Change(Op.MOVE, cell, "", null, parent, after);
  }

  public static Change delete(String cell) {
    return new Change(Op.DELETE, cell, "", null, "", null);
  }

  public static Change set(String at, JsonNode value) {
    return new Change(Op.SET, "", at, value, "", null);
  }

  /**
   * Rows of a table taken out and others put in their place.
   *
   * @param from index of the first row taken out, from 0; the number of rows to append
   * @param remove how many are taken out
   * @param insert rows put in: a list of lists of text
   */
  public static Change rows(String cell, int from, int remove, ArrayNode insert) {
    return new Change(
        Op.ROWS, cell, "/rows", new RowSplice(from, remove, insert).toJson(), "", null);
  }

  /** Several puts and edits of rows as one step, in this order. */
  public static Change together(List<Change> parts) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    parts.forEach(part -> list.add(part.toJson()));
    return new Change(Op.TOGETHER, "", "", list, "", null);
  }

  /**
   * The changes that this one is made of: itself, unless it is several.
   *
   * @throws EditRefusedException if one of them is neither PUT nor ROWS
   */
  public List<Change> parts() {
    if (op != Op.TOGETHER) {
      return List.of(this);
    }
    List<Change> parts = new ArrayList<>();
    for (JsonNode part : value == null ? JsonNodeFactory.instance.arrayNode() : value) {
      Change change = fromJson(part);
      if (change.op != Op.PUT && change.op != Op.ROWS) {
        throw new EditRefusedException(
            "only texts and fields of clauses can be changed together", "send the rest one by one");
      }
      parts.add(change);
    }
    return List.copyOf(parts);
  }

  public static Change undo() {
    return new Change(Op.UNDO, "", "", null, "", null);
  }

  public static Change redo() {
    return new Change(Op.REDO, "", "", null, "", null);
  }

  ObjectNode toJson() {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("op", op.text());
    putText(json, "cell", cell);
    putText(json, "at", at);
    if (value != null) {
      json.set("value", value);
    }
    putText(json, "parent", parent);
    if (after != null) {
      json.put("after", after);
    }
    return json;
  }

  private static void putText(ObjectNode json, String field, String text) {
    if (!text.isEmpty()) {
      json.put(field, text);
    }
  }

  /**
   * @throws EditRefusedException if a field is of the wrong type or the op unknown
   */
  static Change fromJson(JsonNode json) {
    JsonNode value = json.get("value");
    return new Change(
        op(Edit.text(json, "op")),
        Edit.text(json, "cell"),
        Edit.text(json, "at"),
        value == null || value.isNull() ? null : RecordJson.normal(value),
        Edit.text(json, "parent"),
        json.hasNonNull("after") ? Edit.text(json, "after") : null);
  }

  private static Op op(String text) {
    for (Op op : Op.values()) {
      if (op.text().equals(text)) {
        return op;
      }
    }
    throw new EditRefusedException(
        "'" + text + "' is no kind of edit",
        "use put, add, move, delete, set, rows, together, undo or redo");
  }
}
