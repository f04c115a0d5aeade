package endfloat.record;

import com.fasterxml.jackson.core.io.NumberOutput;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * Writes a tree as people read it and as a version control compares it: known fields in the order
 * of the schema, others by name, two blanks an indent, and what fits one line on one line. Doubles
 * have their shortest decimals, so that the bytes are the same on every JDK.
 */
final class PrettyJson {
  private static final int WIDTH = 100;

  private final StringBuilder out = new StringBuilder(1 << 14);

  private PrettyJson() {}

  static byte[] bytes(JsonNode tree) {
    PrettyJson writer = new PrettyJson();
    writer.write(tree, 0, 0);
    return writer.out.append('\n').toString().getBytes(StandardCharsets.UTF_8);
  }

  /** On one line, for hashes and log lines. */
  static String compact(JsonNode tree) {
    PrettyJson writer = new PrettyJson();
    writer.oneLine(tree, Integer.MAX_VALUE);
    return writer.out.toString();
  }

  private void write(JsonNode node, int indent, int column) {
    if (!node.isContainerNode()) {
      value(node);
      return;
    }
    int start = out.length();
    if (node.isEmpty() || (indent > 0 && oneLine(node, start + WIDTH - column))) {
      if (node.isEmpty()) {
        out.append(node.isArray() ? "[]" : "{}");
      }
      return;
    }
    out.setLength(start);
    out.append(node.isArray() ? '[' : '{');
    String separator = "\n";
    int inner = indent + 2;
    if (node.isArray()) {
      for (JsonNode element : node) {
        out.append(separator).append(" ".repeat(inner));
        write(element, inner, inner);
        separator = ",\n";
      }
    } else {
      for (Map.Entry<String, JsonNode> field : KeyOrder.sorted(node)) {
        out.append(separator).append(" ".repeat(inner));
        int before = out.length();
        text(field.getKey());
        out.append(": ");
        write(field.getValue(), inner, inner + out.length() - before);
        separator = ",\n";
      }
    }
    out.append('\n').append(" ".repeat(indent)).append(node.isArray() ? ']' : '}');
  }

  /**
   * Whether it fitted before {@code end}; what was written then stays, else is for the caller to
   * drop.
   */
  private boolean oneLine(JsonNode node, int end) {
    if (!node.isContainerNode()) {
      if (node.isTextual() && out.length() > end - node.textValue().length()) {
        return false;
      }
      value(node);
      return out.length() <= end;
    }
    out.append(node.isArray() ? '[' : '{');
    String separator = "";
    if (node instanceof ArrayNode) {
      for (JsonNode element : node) {
        out.append(separator);
        if (!oneLine(element, end)) {
          return false;
        }
        separator = ", ";
      }
    } else {
      for (Map.Entry<String, JsonNode> field : KeyOrder.sorted(node)) {
        out.append(separator);
        text(field.getKey());
        out.append(": ");
        if (!oneLine(field.getValue(), end)) {
          return false;
        }
        separator = ", ";
      }
    }
    out.append(node.isArray() ? ']' : '}');
    return out.length() <= end;
  }

  private void value(JsonNode node) {
    switch (node.getNodeType()) {
      case STRING -> text(node.textValue());
      case NUMBER -> number(node);
      default -> out.append(node.asText("null"));
    }
  }

  private void number(JsonNode node) {
    if (node.isDouble() || node.isFloat()) {
      double value = node.doubleValue();
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("NaN and infinity are no numbers of a record");
      }
      // a file knows no -0.0: it is read as 0.0
      out.append(NumberOutput.toString(value + 0.0, true));
    } else if (node.isBigDecimal()) {
      BigDecimal written = node.decimalValue();
      out.append(written);
    } else {
      out.append(node.asText());
    }
  }

  private void text(String text) {
    JsonText.append(text, out);
  }
}
