package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * A part of the register.
 *
 * @param id what readings and fits refer to
 * @param number the maker's part number
 * @param position where it sat in the engine
 * @param source the object of the file, not to be altered
 */
public record RegisteredPart(
    String id, String number, String name, String serial, String position, ObjectNode source) {
  static RegisteredPart of(JsonNode node) {
    return new RegisteredPart(
        Texts.text(node, "id"),
        Texts.text(node, "number"),
        Texts.text(node, "name"),
        Texts.text(node, "serial"),
        Texts.text(node, "position"),
        (ObjectNode) node);
  }
}
