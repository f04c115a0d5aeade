package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;

/** The two ends of a limit as typed into fields; either may be empty. */
public record FieldLimit(String low, String high) {

  static FieldLimit of(JsonNode node) {
    return new FieldLimit(Texts.text(node, "low"), Texts.text(node, "high"));
  }

  public boolean isEmpty() {
    return low.isBlank() && high.isBlank();
  }
}
