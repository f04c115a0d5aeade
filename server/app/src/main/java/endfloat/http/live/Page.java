package endfloat.http.live;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Consumer;

/**
 * One open page of a sheet.
 *
 * @param id made by the page, so that it is the same after a lost connection
 * @param out takes one message as JSON text; keeps the order
 */
record Page(String id, Consumer<String> out) {

  void send(ObjectNode message) {
    out.accept(message.toString());
  }

  static ObjectNode message(String type) {
    return JsonNodeFactory.instance.objectNode().put("type", type);
  }
}
