package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Text fields out of a tree that has passed the schema: absent is empty. */
final class Texts {
  private Texts() {}

  static String text(JsonNode node, String field) {
    JsonNode value = node.get(field);
    return value != null && value.isTextual() ? value.textValue() : "";
  }

  static List<String> list(JsonNode node, String field) {
    List<String> texts = new ArrayList<>();
    JsonNode values = node.get(field);
    if (values != null && values.isArray()) {
      values.forEach(value -> texts.add(value.asText()));
    }
    return List.copyOf(texts);
  }
}
