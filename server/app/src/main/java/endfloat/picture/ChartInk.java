package endfloat.picture;

import java.util.HashMap;
import java.util.Map;

/** The looks of charts in the colours of paper; {@code css/chart.css} has the same by class. */
final class ChartInk {
  private static final String INK = "#1a2027";
  private static final String SECOND = "#434a53";
  private static final String CAPTION = "#5a616a";
  private static final String RULE = "#8d9197";
  private static final String HAIR = "#dcd8cb";
  private static final String BLUE = "#1b3f94";
  private static final String WITHIN = "#175d41";
  private static final String UNPROVEN = "#7a4f00";
  private static final String OUT = "#a2221a";
  private static final String PAPER = "#ffffff";

  static final Ink BOTH = Ink.both(looks());

  private ChartInk() {}

  private static Map<String, Map<String, String>> looks() {
    Map<String, Map<String, String>> looks = new HashMap<>();
    looks.put("chart", Map.of());
    looks.put("chart-grid", stroke(HAIR, "1"));
    looks.put("chart-axis", stroke(INK, "1.2"));
    looks.put("chart-beyond", stroke(RULE, "0.6"));
    looks.put("chart-limit", dashed(INK, "1.3", "16 4 3 4"));
    looks.put("chart-mean", dashed(SECOND, "1", "16 4 3 4"));
    looks.put("chart-lead", dashed(SECOND, "1", "3 3"));
    looks.put("chart-leader", stroke(SECOND, "1.1"));
    looks.put("chart-dimension", stroke(SECOND, "1.1"));
    looks.put("chart-arrow", Map.of("fill", SECOND));
    looks.put("chart-band", Map.of("fill", BLUE, "fill-opacity", "0.16"));
    looks.put("chart-curve", stroke(BLUE, "2.2"));
    looks.put("chart-whisker", stroke(INK, "1.5"));
    looks.put("chart-cross", outlined(INK, "1.6"));
    looks.put("chart-mark", Map.of("fill", INK));
    looks.put("chart-within", Map.of("fill", WITHIN));
    looks.put("chart-not-proven", outlined(UNPROVEN, "2"));
    looks.put("chart-outside", Map.of("fill", OUT));
    looks.put("chart-ring", stroke(INK, "1.4"));
    looks.put("chart-plate", Map.of("fill", PAPER));
    looks.put("chart-bar", Map.of("fill", BLUE, "fill-opacity", "0.13"));
    looks.put("chart-hatch", stroke(BLUE, "1"));
    looks.put("chart-edge", stroke(BLUE, "1.3"));
    looks.put("chart-number", text(SECOND, "13.5"));
    looks.put("chart-label", text(SECOND, "13.5"));
    looks.put("chart-name", text(INK, "13.5"));
    looks.put("chart-caption", text(CAPTION, "11.5"));
    return looks;
  }

  private static Map<String, String> stroke(String colour, String width) {
    return Map.of("fill", "none", "stroke", colour, "stroke-width", width);
  }

  private static Map<String, String> dashed(String colour, String width, String dashes) {
    return Map.of(
        "fill", "none", "stroke", colour, "stroke-width", width, "stroke-dasharray", dashes);
  }

  private static Map<String, String> outlined(String colour, String width) {
    return Map.of("fill", PAPER, "stroke", colour, "stroke-width", width);
  }

  private static Map<String, String> text(String colour, String size) {
    return Map.of(
        "fill", colour, "font-size", size, "font-family", "Endfloat Lettering, sans-serif");
  }
}
