package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.erdtman.jcs.NumberToJSON;

/**
 * The canonical form of RFC 8785, written from the tree: fields by the UTF-16 units of their names,
 * numbers as ECMAScript writes a double, no blanks. CanonicalJsonTest holds it to the form that the
 * published library makes of the same text.
 */
final class CanonicalJson {
  private final StringBuilder out = new StringBuilder(1 << 14);

  private CanonicalJson() {}

  static byte[] bytes(JsonNode tree) {
    CanonicalJson writer = new CanonicalJson();
    writer.write(tree);
    return writer.out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void write(JsonNode node) {
    switch (node.getNodeType()) {
      case OBJECT -> {
        List<Map.Entry<String, JsonNode>> fields = new ArrayList<>(node.properties());
        fields.sort(Map.Entry.comparingByKey());
        char separator = '{';
        for (Map.Entry<String, JsonNode> field : fields) {
          out.append(separator);
          JsonText.append(field.getKey(), out);
          out.append(':');
          write(field.getValue());
          separator = ',';
        }
        out.append(fields.isEmpty() ? "{}" : "}");
      }
      case ARRAY -> {
        char separator = '[';
        for (JsonNode element : node) {
          out.append(separator);
          write(element);
          separator = ',';
        }
        out.append(node.isEmpty() ? "[]" : "]");
      }
      case STRING -> JsonText.append(node.textValue(), out);
      case NUMBER -> number(node.doubleValue());
      default -> out.append(node.asText());
    }
  }

  private void number(double value) {
    try {
      out.append(NumberToJSON.serializeNumber(value));
    } catch (IOException e) {
      throw new UncheckedIOException("NaN and infinity are no numbers of a record", e);
    }
  }
}
