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
          "format version title_block settings parts instruments materials provenance",
          "id item group role number name cell head kind title subtitle record record_number revision date owner",
          "engine_type engine_serial hours_since_overhaul serial position what unit at taken instrument",
          "effect observed needed chart of input from to points axis count part mate place measured new worn mechanism contribution damage size",
          "orientation method smallest kit document prepared checked approved units terms low high authority condition state rule offset",
          "gain resolution scatter uncertainty coverage calibrated due certificate stage standing fact",
          "expansion modulus poisson density yield",
          "table file sheet sha256 shelf refreshed filter sort formula key note",
          "temperature material axes entries struck mark reason by time gives text of_this_engine clause marks answered settled photo caption disposition",
          "remark readings view columns limits rows sizes causes evidence findings roles",
          "source source_hash readings_file readings_hash",
          "within not_proven outside waiting in_error",
          "cells remarks library figures value u verdict results hashes");

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
