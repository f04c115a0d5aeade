package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Copies of one level, so that a changed tree shares what did not change. */
final class Trees {
  private Trees() {}

  static ObjectNode shallow(JsonNode node) {
    ObjectNode copy = JsonNodeFactory.instance.objectNode();
    node.properties().forEach(field -> copy.set(field.getKey(), field.getValue()));
    return copy;
  }

  static ArrayNode shallowList(JsonNode node) {
    ArrayNode copy = JsonNodeFactory.instance.arrayNode(node.size() + 1);
    node.forEach(copy::add);
    return copy;
  }
}
