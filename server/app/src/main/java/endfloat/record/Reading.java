package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One measured quantity, at one place or at several stations, each with its repeats.
 *
 * @param name of the working language; empty where not yet named
 * @param what is measured, between what, in which state
 * @param unit in which it is taken, as typed
 * @param instrument id in the register, or empty
 * @param part id in the register, or empty
 * @param stage at which it was taken; empty where the record's own holds
 * @param temperature of the part, text with unit, or empty
 * @param material by which the value is corrected to 20 degC, or empty
 * @param axes names of the station labels in the order shown; empty for a single place
 * @param entries in the order taken
 * @param source the object of the file, not to be altered
 */
public record Reading(
    String name,
    String what,
    String unit,
    String instrument,
    String part,
    String stage,
    String temperature,
    String material,
    List<String> axes,
    List<Entry> entries,
    ObjectNode source) {

  static Reading of(JsonNode node) {
    List<Entry> entries = new ArrayList<>();
    node.path("entries").forEach(entry -> entries.add(Entry.of(entry)));
    return new Reading(
        Texts.text(node, "name"),
        Texts.text(node, "what"),
        Texts.text(node, "unit"),
        Texts.text(node, "instrument"),
        Texts.text(node, "part"),
        Texts.text(node, "stage"),
        Texts.text(node, "temperature"),
        Texts.text(node, "material"),
        Texts.list(node, "axes"),
        List.copyOf(entries),
        (ObjectNode) node);
  }

  /**
   * What was taken at one station in one go.
   *
   * @param at labels of the station by axis; empty for a single place
   * @param taken repeats, decimal text as typed; a text with a unit of its own is in that unit
   * @param stage its own stage, or empty for the reading's
   * @param temperature its own part temperature, or empty for the reading's
   * @param instrument its own instrument, or empty for the reading's
   * @param struck why it is rejected, where it is; a struck entry stays but never counts
   */
  public record Entry(
      Map<String, String> at,
      List<String> taken,
      String stage,
      String temperature,
      String instrument,
      Optional<Struck> struck) {

    static Entry of(JsonNode node) {
      Map<String, String> at = new LinkedHashMap<>();
      node.path("at")
          .properties()
          .forEach(label -> at.put(label.getKey(), label.getValue().asText()));
      JsonNode struck = node.get("struck");
      return new Entry(
          Collections.unmodifiableMap(at),
          Texts.list(node, "taken"),
          Texts.text(node, "stage"),
          Texts.text(node, "temperature"),
          Texts.text(node, "instrument"),
          struck == null ? Optional.empty() : Optional.of(Struck.of(struck)));
    }
  }

  /** A rejection: the reason, who struck it through, and when. */
  public record Struck(String reason, String by, String time) {
    static Struck of(JsonNode node) {
      return new Struck(
          Texts.text(node, "reason"), Texts.text(node, "by"), Texts.text(node, "time"));
    }
  }
}
