package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * A material of the record's own. Its properties are text as typed, with unit and, after ±, their
 * expanded uncertainty; empty where nothing is entered.
 *
 * @param name as the language names it
 * @param expansion coefficient of linear expansion
 * @param modulus Young's
 * @param poisson a plain number
 * @param density mass by volume
 * @param yield strength
 * @param source where the values come from
 */
public record EnteredMaterial(
    String name,
    String expansion,
    String modulus,
    String poisson,
    String density,
    String yield,
    String source) {

  static EnteredMaterial of(JsonNode node) {
    return new EnteredMaterial(
        Texts.text(node, "name"),
        Texts.text(node, "expansion"),
        Texts.text(node, "modulus"),
        Texts.text(node, "poisson"),
        Texts.text(node, "density"),
        Texts.text(node, "yield"),
        Texts.text(node, "source"));
  }
}
