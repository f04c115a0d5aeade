package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The one order of fields in a record: known ones as the schema lists them, others by name. */
final class KeyOrder {
  static final List<String> KNOWN =
      List.of(
          // record
          "format version title_block settings parts instruments provenance",
          // cell, instrument, reading, part
          "id number name kind title subtitle record_number revision date owner engine_type",
          "engine_serial hours_since_overhaul serial position what unit instrument part document",
          "prepared checked approved stage temperature material axes entries at taken struck",
          "by time reason text settled readings limits offset gain resolution scatter uncertainty",
          "calibrated due certificate units terms low high authority condition state rule coverage",
          "record source_hash readings_file readings_hash",
          "cells remarks library figures cell value u verdict results hashes source");

  private static final Map<String, Integer> RANK = new HashMap<>();

  static {
    KNOWN.forEach(line -> List.of(line.split(" ")).forEach(key -> RANK.put(key, RANK.size())));
  }

  private static final Comparator<Map.Entry<String, JsonNode>> ORDER =
      Comparator.<Map.Entry<String, JsonNode>>comparingInt(
              field -> RANK.getOrDefault(field.getKey(), Integer.MAX_VALUE))
          .thenComparing(Map.Entry::getKey);

  private KeyOrder() {}

  static List<Map.Entry<String, JsonNode>> sorted(JsonNode node) {
    List<Map.Entry<String, JsonNode>> fields = new ArrayList<>(node.properties());
    fields.sort(ORDER);
    return fields;
  }
}
