package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One row of a schedule of fits and clearances.
 *
 * @param key tells it from the other rows of its clause
 * @param item reference in the schedule, as it stands in the balloon of the sketch
 * @param what the fit is
 * @param part id in the register, or empty
 * @param mate id in the register, or empty
 * @param measured expression of the working language; empty where not measured
 * @param unit of the row; bare numbers in its fields are in it
 * @param asNew limits when new
 * @param worn what may be exceeded by wear; an end not given stays as new
 * @param sizes of the two parts, each with limits of its own
 */
public record FitRow(
    String key,
    String item,
    String what,
    String part,
    String mate,
    String measured,
    String unit,
    FieldLimit asNew,
    FieldLimit worn,
    String authority,
    String condition,
    String rule,
    List<Size> sizes) {

  /** The size of one of the parts. */
  public record Size(String of, String measured, FieldLimit asNew, FieldLimit worn) {}

  /** The rows of a clause of fits. */
  static List<FitRow> all(JsonNode clause) {
    List<FitRow> rows = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (JsonNode node : clause.path("rows")) {
      rows.add(of(node, Keys.own(node, "item", rows.size(), taken)));
    }
    return List.copyOf(rows);
  }

  private static FitRow of(JsonNode node, String key) {
    List<Size> sizes = new ArrayList<>();
    for (JsonNode size : node.path("sizes")) {
      // where nobody says otherwise the first size is that of the part, the second of its mate
      String other =
          sizes.isEmpty()
              ? Texts.text(node, "part")
              : sizes.size() == 1 ? Texts.text(node, "mate") : "";
      String named = Texts.text(size, "of");
      sizes.add(
          new Size(
              named.isBlank() ? other : named,
              Texts.text(size, "measured"),
              FieldLimit.of(size.path("new")),
              FieldLimit.of(size.path("worn"))));
    }
    return new FitRow(
        key,
        Texts.text(node, "item"),
        Texts.text(node, "what"),
        Texts.text(node, "part"),
        Texts.text(node, "mate"),
        Texts.text(node, "measured"),
        Texts.text(node, "unit"),
        FieldLimit.of(node.path("new")),
        FieldLimit.of(node.path("worn")),
        Texts.text(node, "authority"),
        Texts.text(node, "condition"),
        Texts.text(node, "rule"),
        List.copyOf(sizes));
  }
}
