package endfloat.record;

import static java.util.stream.Collectors.joining;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Puts what the schema objects to in words: {@code clause 2.1, reading lash, entry 3: taken must be
 * text}.
 */
final class ProblemWords {
  private static final Map<String, String> TYPES =
      Map.of(
          "string", "text",
          "number", "a number",
          "integer", "a whole number",
          "boolean", "true or false",
          "array", "a list",
          "object", "a group of fields",
          "null", "null");

  private ProblemWords() {}

  static String of(JsonNode record, Error error) {
    return of(record, "", record, error);
  }

  /**
   * @param pointer of a part of the record
   * @param part that part as it would be, to which the error's own place is relative
   */
  static String of(JsonNode record, String pointer, JsonNode part, Error error) {
    List<String> steps = new ArrayList<>();
    NodePath path = error.getInstanceLocation();
    for (int i = 0; i < path.getNameCount(); i++) {
      steps.add(String.valueOf(path.getElement(i)));
    }
    if (error.getKeyword().equals("required")) {
      steps.add(error.getProperty());
    }
    Place inside = Place.of(part, steps);
    String outside = pointer.isEmpty() ? "" : Place.of(record, Pointer.steps(pointer)).where();
    String where =
        Stream.of(outside, inside.where()).filter(w -> !w.isEmpty()).collect(joining(", "));
    String said = words(error, inside.field());
    return where.isEmpty() ? said : where + ": " + said;
  }

  private static String words(Error error, String field) {
    String subject = field.isEmpty() ? "this" : field;
    JsonNode rule = error.getSchemaNode();
    return switch (error.getKeyword()) {
      case "required" -> subject + " is missing";
      case "type" -> subject + " must be " + types(rule);
      case "enum" -> subject + " must be one of " + listed(rule);
      case "const" -> subject + " must be " + rule.asText();
      case "minLength" -> subject + " must not be empty";
      case "maxLength" -> subject + " is longer than " + rule.asText() + " characters";
      case "maxItems" -> subject + " has more than " + rule.asText() + " elements";
      case "exclusiveMinimum" -> subject + " must be more than " + rule.asText();
      case "minimum" -> subject + " must be at least " + rule.asText();
      case "maximum" -> subject + " must be at most " + rule.asText();
      case "pattern" -> subject + " " + pattern(rule.asText());
      default -> subject + " is not as the schema has it: " + error.getMessage();
    };
  }

  private static String types(JsonNode rule) {
    if (rule.isTextual()) {
      return TYPES.getOrDefault(rule.textValue(), rule.textValue());
    }
    List<String> names = new ArrayList<>();
    rule.forEach(type -> names.add(TYPES.getOrDefault(type.asText(), type.asText())));
    return String.join(" or ", names);
  }

  private static String listed(JsonNode rule) {
    List<String> values = new ArrayList<>();
    rule.forEach(value -> values.add(value.asText().isEmpty() ? "nothing" : value.asText()));
    return String.join(", ", values);
  }

  private static String pattern(String pattern) {
    if (pattern.contains("\\p{L}")) {
      return "must begin with a letter or _ and go on with letters, digits and _";
    }
    if (pattern.contains("[0-9]{4}")) {
      return "must be a date such as 2026-05-12";
    }
    if (pattern.contains("{64}")) {
      return "must be a SHA-256 in hex";
    }
    return "must be letters, digits, - and _, at most 64 of them";
  }
}
