package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * An instrument of the register. Its figures are text as typed, with unit; empty where unknown.
 *
 * @param id the shop's mark, as {@code DG-07}
 * @param kind as {@code dial gauge}
 * @param offset expanded uncertainty of the zero, shared by all readings taken with it
 * @param gain expanded uncertainty of the scale, as {@code 0.5 %}, shared too
 * @param resolution the step of the indication; rectangular over ± half of it, each reading's own
 * @param scatter standard deviation of one reading
 * @param uncertainty the one expanded figure where no more is known
 * @param coverage coverage factor k of offset, gain and uncertainty
 * @param calibrated ISO 8601 date or empty
 * @param due date of the next calibration, or empty
 * @param certificate where the figures come from
 * @param source the object of the file, not to be altered
 */
public record Instrument(
    String id,
    String name,
    String kind,
    String offset,
    String gain,
    String resolution,
    String scatter,
    String uncertainty,
    double coverage,
    String calibrated,
    String due,
    String certificate,
    ObjectNode source) {

  static Instrument of(JsonNode node) {
    return new Instrument(
        Texts.text(node, "id"),
        Texts.text(node, "name"),
        Texts.text(node, "kind"),
        Texts.text(node, "offset"),
        Texts.text(node, "gain"),
        Texts.text(node, "resolution"),
        Texts.text(node, "scatter"),
        Texts.text(node, "uncertainty"),
        node.path("coverage").asDouble(2),
        Texts.text(node, "calibrated"),
        Texts.text(node, "due"),
        Texts.text(node, "certificate"),
        (ObjectNode) node);
  }
}
