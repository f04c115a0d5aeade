package endfloat.review;

import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.Cell;
import endfloat.record.Reading;
import endfloat.table.Column;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A reading of a record and the emptied one of the record to come, with what columns may be of it.
 *
 * @param stations at which it was taken, those of another stage apart
 */
record ReadingPlace(Cell cell, Reading reading, ObjectNode empty, List<Station> stations) {
  String words() {
    return "the reading " + reading.name() + " of clause " + cell.number();
  }

  /** The labels of a column without the stage. */
  Map<String, String> labels(Column column) {
    Map<String, String> labels = new LinkedHashMap<>(column.labels());
    if (labelsStage()) {
      labels.remove(Station.STAGE);
    }
    return labels;
  }

  /** The stage that a column names; empty where it names none. */
  String stage(Column column) {
    return labelsStage() ? column.labels().getOrDefault(Station.STAGE, "") : "";
  }

  /** Whether a label of a head names the stage and not an axis. */
  private boolean labelsStage() {
    return !reading.axes().contains(Station.STAGE);
  }

  /** The stations that a column of values may be of; one alone where it is clear. */
  List<Station> stations(Column column) {
    Map<String, String> labels = labels(column);
    String stage = stage(column);
    List<Station> there = stations.stream().filter(s -> s.at().equals(labels)).toList();
    // a stage at which nothing was taken on the first engine may be taken on this one
    return there.isEmpty() || stage.isEmpty() ? there : List.of(new Station(labels, stage));
  }

  /** The head that a column of a station has, in quotes. */
  String wanted(Station station) {
    return head(reading.name() + station.label(Station.atSeveralStages(stations)));
  }

  /** A head with the unit, in quotes. */
  String head(String name) {
    return "'" + name + (reading.unit().isEmpty() ? "" : " [" + reading.unit() + "]") + "'";
  }

  /** Why there is no station of some labels. */
  String noStation(Map<String, String> labels) {
    if (stations.stream().map(Station::at).allMatch(Map::isEmpty)) {
      return words()
          + (labels.isEmpty()
              ? " is not taken at that stage"
              : " has no stations; leave the labels out");
    }
    return labels.isEmpty()
        ? words() + " has stations; write one column each, such as " + wanted(stations.get(0))
        : words() + " has no such station; write a head such as " + wanted(stations.get(0));
  }
}
