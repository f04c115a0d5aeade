package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * The title block in the fields of ISO 7200 and the engine's own. Every field is text; absent is
 * empty.
 *
 * @param date of issue, ISO 8601, as {@code 2026-05-12}
 * @param state of the document: {@code draft}, {@code checked}, {@code approved}, {@code pattern}
 *     ...
 */
public record TitleBlock(
    String title,
    String subtitle,
    String recordNumber,
    String revision,
    String date,
    String owner,
    String engineType,
    String engineSerial,
    String hoursSinceOverhaul,
    String part,
    String document,
    String prepared,
    String checked,
    String approved,
    String state) {

  static TitleBlock of(JsonNode node) {
    return new TitleBlock(
        Texts.text(node, "title"),
        Texts.text(node, "subtitle"),
        Texts.text(node, "record_number"),
        Texts.text(node, "revision"),
        Texts.text(node, "date"),
        Texts.text(node, "owner"),
        Texts.text(node, "engine_type"),
        Texts.text(node, "engine_serial"),
        Texts.text(node, "hours_since_overhaul"),
        Texts.text(node, "part"),
        Texts.text(node, "document"),
        Texts.text(node, "prepared"),
        Texts.text(node, "checked"),
        Texts.text(node, "approved"),
        Texts.text(node, "state"));
  }
}
