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
  private final Map<String, Place> readings = new LinkedHashMap<>();
  private final Set<String> instruments;

  /** A reading of the record and the emptied one of the new tree. */
  private record Place(Cell cell, Reading reading, ObjectNode empty) {
    String words() {
      return "the reading " + reading.name() + " of clause " + cell.number();
    }

    List<Map<String, String>> stations() {
      return reading.entries().stream().map(Reading.Entry::at).distinct().toList();
    }
  }

  ReadingsInto(
      InvestigationRecord from, ObjectNode tree, List<String> problems, List<String> notices) {
    this.problems = problems;
    this.notices = notices;
    this.instruments = from.instruments().stream().map(Instrument::id).collect(Collectors.toSet());
    for (Cell cell : InvestigationRecord.of(tree).cells()) {
      List<Reading> before = from.cell(cell.id()).orElseThrow().readings();
      List<Reading> emptied = cell.readings();
      for (int i = 0; i < before.size(); i++) {
        Reading reading = before.get(i);
        Place place = new Place(cell, reading, emptied.get(i).source());
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
                    + wanted(place, Map.of())
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

  private static String wanted(Place place, Map<String, String> station) {
    String labels =
        station.isEmpty()
            ? ""
            : station.entrySet().stream()
                .map(label -> label.getKey() + "=" + label.getValue())
                .collect(Collectors.joining(",", "[", "]"));
    String unit = place.reading().unit().isEmpty() ? "" : " [" + place.reading().unit() + "]";
    return "'" + place.reading().name() + labels + unit + "'";
  }

  private void put(Place place, List<Column> columns) {
    Map<Map<String, String>, ObjectNode> entries = new HashMap<>();
    ArrayNode list = place.empty().putArray("entries");
    for (Map<String, String> station : place.stations()) {
      ObjectNode entry = list.addObject();
      if (!station.isEmpty()) {
        ObjectNode at = entry.putObject("at");
        station.forEach(at::put);
      }
      entry.putArray("taken");
      entries.put(station, entry);
      boolean given =
          columns.stream().anyMatch(c -> c.aspect() == Aspect.VALUE && c.labels().equals(station));
      if (!given) {
        problems.add(
            place.words()
                + " has no column "
                + wanted(place, station)
                + "; give it one, empty where nothing was taken");
      }
    }
    for (Column column : columns) {
      put(place, column, entries);
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

  private void put(Place place, Column column, Map<Map<String, String>, ObjectNode> entries) {
    ObjectNode into =
        column.labels().isEmpty() && column.aspect() != Aspect.VALUE
            ? place.empty()
            : entries.get(column.labels());
    if (into == null) {
      problems.add(column.place() + ": " + noStation(place, column));
      return;
    }
    switch (column.aspect()) {
      case VALUE -> value(place, column, into);
      case TEMPERATURE ->
          same(column, "temperature")
              .ifPresent(
                  text ->
                      ReadingUnit.temperature(column)
                          .ifPresentOrElse(
                              problems::add,
                              () -> into.put("temperature", text + " " + column.unit())));
      case INSTRUMENT -> same(column, "instrument").ifPresent(id -> instrument(column, id, into));
      default -> throw new IllegalStateException(column.aspect().name());
    }
  }

  private static String noStation(Place place, Column column) {
    boolean plain = place.stations().stream().allMatch(Map::isEmpty);
    if (plain) {
      return place.words() + " has no stations; leave the labels out";
    }
    return column.labels().isEmpty()
        ? place.words()
            + " has stations; write one column each, such as "
            + wanted(place, place.stations().get(0))
        : place.words() + " has no such station";
  }

  private void value(Place place, Column column, ObjectNode entry) {
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
