package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * What holds for the whole record.
 *
 * @param units {@code metric} or {@code imperial}
 * @param terms {@code british} or {@code american}
 * @param rule decision rule {@code simple}, {@code guarded} or {@code probability}; empty where
 *     each limit takes its own default
 * @param coverage coverage factor k of expanded uncertainties as printed
 * @param stage the record's current stage, as {@code as found}
 */
public record Settings(String units, String terms, String rule, double coverage, String stage) {
  static Settings of(JsonNode node) {
    return new Settings(
        orElse(Texts.text(node, "units"), "metric"),
        orElse(Texts.text(node, "terms"), "british"),
        Texts.text(node, "rule"),
        node.path("coverage").asDouble(2),
        orElse(Texts.text(node, "stage"), "as found"));
  }

  private static String orElse(String text, String fallback) {
    return text.isEmpty() ? fallback : text;
  }
}
