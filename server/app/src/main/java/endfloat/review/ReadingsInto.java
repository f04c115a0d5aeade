package endfloat.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.EditDistance;
import endfloat.record.Cell;
import endfloat.record.Instrument;
import endfloat.record.InvestigationRecord;
import endfloat.record.Reading;
import endfloat.table.Column;
import endfloat.table.Column.Aspect;
import endfloat.table.Column.Field;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Puts the columns of a table into the emptied readings of a record, and lists what does not fit.
 */
final class ReadingsInto {
  private final List<String> problems;
  private final List<String> notices;
  private final Map<String, ReadingPlace> readings = new LinkedHashMap<>();
  private final Set<String> instruments;
  private final String recordStage;

  ReadingsInto(
      InvestigationRecord from, ObjectNode tree, List<String> problems, List<String> notices) {
    this.problems = problems;
    this.notices = notices;
    this.recordStage = from.settings().stage();
    this.instruments = from.instruments().stream().map(Instrument::id).collect(Collectors.toSet());
    for (Cell cell : InvestigationRecord.of(tree).cells()) {
      List<Reading> before = from.cell(cell.id()).orElseThrow().readings();
      List<Reading> emptied = cell.readings();
      for (int i = 0; i < before.size(); i++) {
        Reading reading = before.get(i);
        List<Station> stations = Station.all(reading, from.settings().stage());
        ReadingPlace place = new ReadingPlace(cell, reading, emptied.get(i).source(), stations);
        if (!reading.name().isEmpty() && readings.put(reading.name(), place) != null) {
          problems.add("the record has two readings of the name " + reading.name());
        }
      }
    }
  }

  void put(List<Column> columns) {
    Map<String, List<Column>> byName = new LinkedHashMap<>();
    for (Column column : columns) {
      if (readings.containsKey(column.name())) {
        byName.computeIfAbsent(column.name(), any -> new ArrayList<>()).add(column);
      } else {
        problems.add(
            column.place() + ": the record has no reading " + column.name() + nearest(column));
      }
    }
    readings.forEach(
        (name, place) -> {
          List<Column> own = byName.getOrDefault(name, List.of());
          if (own.stream().noneMatch(column -> column.aspect() == Aspect.VALUE)) {
            problems.add(
                place.words()
                    + " has no column "
                    + place.head(place.reading().name())
                    + "; give it one, empty where nothing was taken");
          } else {
            put(place, own);
          }
        });
  }

  private String nearest(Column column) {
    List<String> near =
        readings.keySet().stream()
            .filter(known -> EditDistance.between(column.name(), known) <= 2)
            .sorted(Comparator.comparingInt(known -> EditDistance.between(column.name(), known)))
            .limit(3)
            .toList();
    return near.isEmpty() ? "" : "; nearest: " + String.join(", ", near);
  }

  private void put(ReadingPlace place, List<Column> columns) {
    Map<Station, ObjectNode> entries = new LinkedHashMap<>();
    place.empty().putArray("entries");
    for (Station station : place.stations()) {
      entries.put(station, entry(place, station));
    }
    for (Station station : place.stations()) {
      boolean given =
          columns.stream()
              .filter(column -> column.aspect() == Aspect.VALUE)
              .anyMatch(column -> place.stations(column).equals(List.of(station)));
      if (!given) {
        problems.add(
            place.words()
                + " has no column "
                + place.wanted(station)
                + "; give it one, empty where nothing was taken");
      }
    }
    Map<Station, Column> filled = new HashMap<>();
    for (Column column : columns) {
      if (column.aspect() == Aspect.VALUE) {
        value(place, column, entries, filled);
      } else {
        condition(place, column, entries);
      }
    }
    boolean measured = columns.stream().anyMatch(c -> c.aspect() == Aspect.TEMPERATURE);
    if (!measured && !place.reading().temperature().isEmpty()) {
      notices.add(
          place.reading().name()
              + ": no column for the part's temperature; "
              + place.reading().temperature()
              + " stays, as in the record");
    }
  }

  /** An empty entry of a station, its stage written down where that of the reading is another. */
  private ObjectNode entry(ReadingPlace place, Station station) {
    ObjectNode entry = place.empty().withArray("entries").addObject();
    if (!station.at().isEmpty()) {
      ObjectNode at = entry.putObject("at");
      station.at().forEach(at::put);
    }
    entry.putArray("taken");
    if (!station.stage().equals(standing(place))) {
      entry.put("stage", station.stage());
    }
    return entry;
  }

  /** The stage of an entry that says none of its own. */
  private String standing(ReadingPlace place) {
    return place.reading().stage().isEmpty() ? recordStage : place.reading().stage();
  }

  private void value(
      ReadingPlace place,
      Column column,
      Map<Station, ObjectNode> entries,
      Map<Station, Column> filled) {
    List<Station> stations = place.stations(column);
    if (stations.size() != 1) {
      problems.add(
          column.place()
              + ": "
              + (stations.isEmpty()
                  ? place.noStation(place.labels(column))
                  : place.words()
                      + " is taken at several stages; write one column each, such as "
                      + place.wanted(stations.get(0))));
      return;
    }
    Station station = stations.get(0);
    Column before = filled.putIfAbsent(station, column);
    if (before != null) {
      problems.add(column.place() + ": the same station and stage as " + before.place());
      return;
    }
    value(place, column, entries.computeIfAbsent(station, one -> entry(place, one)));
  }

  /** Temperature of the part or instrument: of the reading, or of a station at its stages. */
  private void condition(ReadingPlace place, Column column, Map<Station, ObjectNode> entries) {
    if (column.labels().isEmpty()) {
      condition(column, place.empty());
      return;
    }
    Map<String, String> labels = place.labels(column);
    String stage = place.stage(column);
    List<ObjectNode> into =
        entries.entrySet().stream()
            .filter(one -> one.getKey().at().equals(labels))
            .filter(one -> stage.isEmpty() || one.getKey().stage().equals(stage))
            .map(Map.Entry::getValue)
            .toList();
    if (into.isEmpty()) {
      problems.add(column.place() + ": " + place.noStation(labels));
    }
    into.forEach(entry -> condition(column, entry));
  }

  private void condition(Column column, ObjectNode into) {
    if (column.aspect() == Aspect.INSTRUMENT) {
      same(column, "instrument").ifPresent(id -> instrument(column, id, into));
      return;
    }
    same(column, "temperature")
        .ifPresent(
            text ->
                ReadingUnit.temperature(column)
                    .ifPresentOrElse(
                        problems::add, () -> into.put("temperature", text + " " + column.unit())));
  }

  private void value(ReadingPlace place, Column column, ObjectNode entry) {
    Optional<String> problem = ReadingUnit.problem(column, place.reading());
    if (problem.isPresent()) {
      problems.add(column.place() + ": " + problem.get());
      return;
    }
    String suffix = ReadingUnit.isDeclared(column, place.reading()) ? "" : " " + column.unit();
    ArrayNode taken = entry.putArray("taken");
    for (Field field : column.fields()) {
      taken.add(field.text() + suffix);
    }
  }

  private void instrument(Column column, String id, JsonNode into) {
    if (instruments.contains(id)) {
      ((ObjectNode) into).put("instrument", id);
    } else {
      problems.add(
          column.place()
              + ", row "
              + column.fields().get(0).row()
              + ": the record has no instrument "
              + id
              + "; enter it in the register first");
    }
  }

  /** The one text of a column that holds for all repeats; empty where it has none. */
  private Optional<String> same(Column column, String what) {
    if (column.fields().isEmpty()) {
      return Optional.empty();
    }
    Field first = column.fields().get(0);
    for (Field field : column.fields()) {
      if (!field.text().equals(first.text())) {
        problems.add(
            column.place()
                + ", row "
                + field.row()
                + ": another "
                + what
                + " than in row "
                + first.row()
                + "; repeats at one station share it");
        return Optional.empty();
      }
    }
    return Optional.of(first.text());
  }
}
