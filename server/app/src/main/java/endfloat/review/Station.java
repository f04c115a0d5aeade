package endfloat.review;

import endfloat.record.Reading;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Where and when something of a reading is taken: its labels, and the stage, as found or as left.
 * What is taken at another stage is another value and never a repeat.
 *
 * @param at labels by axis; empty for a single place
 * @param stage that holds for it, its own or that of the reading or of the record
 */
record Station(Map<String, String> at, String stage) {
  /** The label of a head that names the stage, where no axis of the reading is called so. */
  static final String STAGE = "stage";

  static Station of(Reading.Entry entry, Reading reading, String recordStage) {
    return new Station(
        entry.at(),
        !entry.stage().isEmpty()
            ? entry.stage()
            : reading.stage().isEmpty() ? recordStage : reading.stage());
  }

  /** The stations of a reading in their order; those of another stage are others. */
  static List<Station> all(Reading reading, String recordStage) {
    return reading.entries().stream()
        .map(entry -> of(entry, reading, recordStage))
        .distinct()
        .toList();
  }

  /** Whether a reading is taken at more than one stage, so that heads must say which. */
  static boolean atSeveralStages(List<Station> stations) {
    return stations.stream().map(Station::stage).distinct().count() > 1;
  }

  /** As the head of a column says it: {@code [tooth=4,stage=as left]}; empty for nothing. */
  String label(boolean withStage) {
    Map<String, String> labels = new LinkedHashMap<>(at);
    if (withStage) {
      labels.put(STAGE, stage);
    }
    return labels.isEmpty()
        ? ""
        : labels.entrySet().stream()
            .map(label -> label.getKey() + "=" + label.getValue())
            .collect(Collectors.joining(",", "[", "]"));
  }
}
