package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.record.Cell;
import endfloat.record.Reading;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Readings as they were taken, stage beside stage, as found and as left; struck ones with their
 * reason.
 */
final class ReadingsPart {
  /** Stations that stand beside each other on a sheet. */
  private static final int ACROSS = 9;

  private final Markup out;
  private final SheetOnPaper sheet;

  ReadingsPart(Markup out, SheetOnPaper sheet) {
    this.out = out;
    this.sheet = sheet;
  }

  void write(Cell clause) {
    List<Reading> single = new ArrayList<>();
    for (Reading reading : clause.readings()) {
      if (reading.axes().isEmpty()) {
        single.add(reading);
      } else {
        list(clause, single);
        single.clear();
        stations(reading);
      }
    }
    list(clause, single);
    clause.readings().forEach(this::struck);
  }

  /** Readings of one place each. */
  private void list(Cell clause, List<Reading> readings) {
    if (readings.isEmpty()) {
      return;
    }
    Set<String> stages = new LinkedHashSet<>();
    readings.forEach(reading -> stages.addAll(stages(reading)));
    out.table("readings", "unseen", "Readings of " + clause.number());
    out.start("thead").start("tr");
    out.start("th", "scope", "col", "class", "name").text("Name").end();
    out.start("th", "scope", "col").text("Reading").end();
    for (String stage : stages) {
      out.start("th", "scope", "col", "class", "taken").text("Taken, " + stage).end();
    }
    new Answers(out).heads("Limits");
    out.end().end();
    for (Reading reading : readings) {
      out.start("tbody", "class", "one").start("tr", "id", "figure-" + reading.name());
      out.start("th", "scope", "row", "class", "name");
      out.start("span", "class", "nm").name(reading.name()).end().end();
      out.start("td");
      about(reading, "");
      out.end();
      for (String stage : stages) {
        out.start("td", "class", "taken");
        for (Reading.Entry entry : reading.entries()) {
          if (stage(reading, entry).equals(stage)) {
            taken(entry);
          }
        }
        other(stage, reading.name());
        out.end();
      }
      JsonNode figure = sheet.figure(reading.name());
      new Answers(out).cells(figure);
      out.end();
      new Answers(out).beneath(figure, 4 + stages.size(), false);
      out.end();
    }
    out.end();
  }

  /** What the reading comes to at a stage that is not the record's present one. */
  private void other(String stage, String name) {
    JsonNode figure = sheet.stages().getOrDefault(stage, sheet.view().path("none")).path(name);
    if (figure.has("value") && figure.path("state").asText().equals("fresh")) {
      String u = figure.path("u").asText();
      String unit = figure.path("unit").asText();
      out.start("span", "class", "under").text("= " + figure.get("value").asText());
      out.text((u.isEmpty() ? "" : " ± " + u) + (unit.isEmpty() ? "" : " " + unit)).end();
      figure.path("limits").forEach(one -> VerdictMark.write(out, one.path("verdict").asText()));
    }
  }

  private void about(Reading reading, String stage) {
    out.element("span", "what", reading.what().isBlank() ? "not described" : reading.what());
    List<String> under = new ArrayList<>();
    add(under, reading.part().isBlank() ? "" : sheet.part(reading.part()));
    add(under, instrument(reading.instrument()));
    add(under, reading.temperature().isBlank() ? "" : "part at " + byHand(reading.temperature()));
    add(under, reading.material().isBlank() ? "" : reading.material() + ", corrected to 20 °C");
    add(under, stage);
    out.some("span", "under", String.join("; ", under));
  }

  private String instrument(String mark) {
    return mark.isBlank() || !sheet.overdue().contains(mark)
        ? mark
        : mark + " (calibration overdue)";
  }

  private static void add(List<String> texts, String text) {
    if (!text.isBlank()) {
      texts.add(text);
    }
  }

  private void taken(Reading.Entry entry) {
    boolean struck = entry.struck().isPresent();
    for (String text : entry.taken()) {
      out.start("span", "class", "one");
      if (struck) {
        out.start("del").text(text).end();
      } else {
        out.text(text.isBlank() ? "not taken" : text);
      }
      out.end();
    }
  }

  /**
   * A reading with stations: as many of the last axes run across as a sheet has room for, the
   * others and the stages down.
   */
  private void stations(Reading reading) {
    List<String> axes = reading.axes();
    int cut = axes.size() - 1;
    while (cut > 0 && places(reading, axes.subList(cut - 1, axes.size())) <= ACROSS) {
      cut--;
    }
    List<String> across = axes.subList(cut, axes.size());
    List<String> down = axes.subList(0, cut);
    Set<String> columns = new LinkedHashSet<>();
    Map<List<String>, Map<String, List<Reading.Entry>>> rows = new LinkedHashMap<>();
    Set<String> stages = stages(reading);
    for (Reading.Entry entry : reading.entries()) {
      String column = place(entry, across);
      columns.add(column);
      List<String> row = new ArrayList<>();
      down.forEach(axis -> row.add(entry.at().getOrDefault(axis, "")));
      if (stages.size() > 1) {
        row.add(stage(reading, entry));
      }
      rows.computeIfAbsent(row, r -> new LinkedHashMap<>())
          .computeIfAbsent(column, c -> new ArrayList<>())
          .add(entry);
    }
    out.start("div", "class", "grid", "id", "figure-" + reading.name());
    out.start("p", "class", "grid-head");
    out.start("span", "class", "nm").name(reading.name()).end();
    out.text(" [" + byHand(reading.unit()) + "] ");
    about(reading, stages.size() > 1 ? "" : String.join("", stages));
    out.end();
    List<String> heads = new ArrayList<>(down);
    if (stages.size() > 1) {
      heads.add("stage");
    }
    List<String> all = List.copyOf(columns);
    int wide = Bands.wide(all.size(), ACROSS);
    for (int from = 0; from < all.size(); from += wide) {
      List<String> band = all.subList(from, Math.min(all.size(), from + wide));
      int room = from == 0 ? 0 : wide - band.size();
      band(reading, heads, across, band, room, rows);
    }
    worst(sheet.figure(reading.name()), stages);
    out.end();
  }

  private static long places(Reading reading, List<String> axes) {
    return reading.entries().stream().map(entry -> place(entry, axes)).distinct().count();
  }

  /** Where an entry was taken on some of its axes: {@code top, thrust}. */
  private static String place(Reading.Entry entry, List<String> axes) {
    List<String> labels = new ArrayList<>();
    for (String axis : axes) {
      String label = entry.at().getOrDefault(axis, "");
      add(labels, label.matches("[\\d.]+") ? axis + " " + label : label);
    }
    return String.join(", ", labels);
  }

  private void band(
      Reading reading,
      List<String> down,
      List<String> across,
      List<String> columns,
      int room,
      Map<List<String>, Map<String, List<Reading.Entry>>> rows) {
    out.table(
        "stations", "unseen", "Stations of " + reading.name() + " by " + String.join(", ", across));
    out.start("thead").start("tr");
    down.forEach(axis -> out.start("th", "scope", "col").text(axis).end());
    for (String column : columns) {
      out.start("th", "scope", "col", "class", "station").text(column).end();
    }
    out.made("<td></td>".repeat(room));
    out.end().end().start("tbody");
    rows.forEach(
        (labels, stations) -> {
          out.start("tr");
          labels.forEach(label -> out.start("th", "scope", "row").text(label).end());
          for (String column : columns) {
            out.start("td", "class", "station");
            stations.getOrDefault(column, List.of()).forEach(this::taken);
            out.end();
          }
          out.made("<td></td>".repeat(room));
          out.end();
        });
    out.end().end();
  }

  private void worst(JsonNode figure, Set<String> stages) {
    JsonNode worst = SheetOnPaper.worst(figure);
    if (worst.path("limits").isEmpty()) {
      return;
    }
    out.start("table", "class", "worst").start("tbody", "class", "one").start("tr");
    out.start("td", "class", "name").end();
    out.element("td", "", "Nearest to its limits" + (stages.size() > 1 ? " now" : ""));
    new Answers(out).cells(figure);
    out.end();
    new Answers(out).beneath(figure, 4, false);
    out.end().end();
  }

  /** Degrees as one writes them by hand, not as the language spells them. */
  private static String byHand(String typed) {
    return typed.replaceAll("\\bdeg([CF])\\b", "°$1");
  }

  /** What was struck through, and why. */
  private void struck(Reading reading) {
    for (Reading.Entry entry : reading.entries()) {
      if (entry.struck().isEmpty()) {
        continue;
      }
      Reading.Struck struck = entry.struck().get();
      List<String> by = new ArrayList<>();
      add(by, struck.by());
      // the day; to the second it stands in the record
      add(by, struck.time().split("T", 2)[0]);
      List<String> labels = new ArrayList<>();
      entry.at().forEach((axis, label) -> labels.add(axis + " " + label));
      out.start("p", "class", "struck");
      out.text("Struck: " + reading.name() + (labels.isEmpty() ? "" : ", "));
      out.text(String.join(", ", labels) + ": ");
      out.start("del").text(String.join(", ", entry.taken())).end();
      out.text(" " + byHand(reading.unit()) + ". " + struck.reason());
      out.text(by.isEmpty() ? "" : " (" + String.join(", ", by) + ")").end();
    }
  }

  private Set<String> stages(Reading reading) {
    Set<String> stages = new LinkedHashSet<>();
    reading.entries().forEach(entry -> stages.add(stage(reading, entry)));
    if (stages.isEmpty()) {
      stages.add(reading.stage().isEmpty() ? sheet.record().settings().stage() : reading.stage());
    }
    return stages;
  }

  private String stage(Reading reading, Reading.Entry entry) {
    return !entry.stage().isEmpty()
        ? entry.stage()
        : !reading.stage().isEmpty() ? reading.stage() : sheet.record().settings().stage();
  }
}
