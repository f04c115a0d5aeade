package endfloat.report;

import endfloat.record.Reading;
import endfloat.working.typeset.Typeset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A reading with its boxes to write in: one a repeat, stations in the order of the page. */
final class FormBoxes {
  /** Boxes beside each other on a sheet, wide enough for a pencil. */
  private static final int ACROSS = 6;

  private static final int FEW = 4;

  /** Boxes that are not parted by the end of a sheet: eight lines of six. */
  private static final int MOST_TOGETHER = 48;

  private static final int REPEATS_ACROSS = 3;

  private final Markup out;
  private final String stageOfRecord;

  FormBoxes(Markup out, String stageOfRecord) {
    this.out = out;
    this.stageOfRecord = stageOfRecord;
  }

  /** The boxes of a reading of one place, stage under stage. */
  void single(Reading reading) {
    Map<String, Integer> stages = new LinkedHashMap<>();
    for (Reading.Entry entry : reading.entries()) {
      stages.merge(stage(reading, entry), repeats(entry), Integer::sum);
    }
    if (stages.isEmpty()) {
      stages.put("", 1);
    }
    table(reading, "boxes", "");
    out.start("tbody");
    stages.forEach(
        (stage, repeats) -> {
          int boxes = Math.max(1, repeats);
          for (int from = 0; from < boxes; from += REPEATS_ACROSS) {
            out.start("tr");
            if (stages.size() > 1) {
              out.start("th", "scope", "row").text(from == 0 ? stage : "").end();
            }
            for (int i = from; i < Math.min(boxes, from + REPEATS_ACROSS); i++) {
              box(boxes > 1 ? String.valueOf(i + 1) : "");
            }
            out.element("td", "unit", unit(reading)).end();
          }
        });
    out.end().end();
  }

  private static String unit(Reading reading) {
    return reading.unit().replace("deg", "°");
  }

  /** The boxes of a reading with stations: the last axes across, the others and stages down. */
  void stations(Reading reading) {
    List<String> axes = reading.axes();
    int cut = axes.size() - 1;
    while (cut > 0 && places(reading, axes.subList(cut - 1, axes.size())).size() <= ACROSS) {
      cut--;
    }
    List<String> down = axes.subList(0, cut);
    List<String> across = axes.subList(cut, axes.size());
    boolean staged = stages(reading).size() > 1;
    Map<List<String>, Map<String, Integer>> rows = new LinkedHashMap<>();
    for (Reading.Entry entry : reading.entries()) {
      List<String> row = new ArrayList<>();
      down.forEach(axis -> row.add(entry.at().getOrDefault(axis, "")));
      if (staged) {
        row.add(stage(reading, entry));
      }
      rows.computeIfAbsent(row, r -> new LinkedHashMap<>())
          .merge(place(entry, across), repeats(entry), Integer::sum);
    }
    List<String> heads = new ArrayList<>(down);
    if (staged) {
      heads.add("stage");
    }
    List<String> columns = List.copyOf(places(reading, across));
    int wide = Bands.wide(columns.size(), ACROSS);
    for (int from = 0; from < columns.size(); from += wide) {
      List<String> band = columns.subList(from, Math.min(columns.size(), from + wide));
      band(reading, heads, band, wide - band.size(), rows);
    }
  }

  private void band(
      Reading reading,
      List<String> heads,
      List<String> columns,
      int room,
      Map<List<String>, Map<String, Integer>> rows) {
    String where = ", " + columns.get(0) + " to " + columns.get(columns.size() - 1);
    table(reading, columns.size() + room < FEW ? "boxes few" : "boxes", where);
    out.start("thead").start("tr");
    heads.forEach(head -> out.start("th", "scope", "col", "class", "place").text(head).end());
    columns.forEach(column -> out.start("th", "scope", "col").text(column).end());
    room(room);
    out.end().end().start("tbody");
    rows.forEach(
        (labels, boxes) -> {
          int lines =
              columns.stream().mapToInt(column -> boxes.getOrDefault(column, 0)).max().orElse(1);
          for (int line = 0; line < Math.max(1, lines); line++) {
            out.start("tr");
            for (String label : labels) {
              String said = line == 0 ? label : "";
              out.start("th", "scope", "row", "class", "place").text(said).end();
            }
            for (String column : columns) {
              boolean asked = boxes.containsKey(column) && line < Math.max(1, boxes.get(column));
              if (asked) {
                box(lines > 1 ? String.valueOf(line + 1) : "");
              } else {
                room(1);
              }
            }
            room(room);
            out.end();
          }
        });
    out.end().end();
  }

  /** Whether all boxes of a reading with stations go to one sheet beside others. */
  boolean fitOneSheet(Reading reading) {
    return reading.entries().size() <= MOST_TOGETHER;
  }

  private void room(int columns) {
    for (int i = 0; i < columns; i++) {
      out.start("td", "class", "no-box").end();
    }
  }

  private void table(Reading reading, String look, String where) {
    out.start("table", "class", look, "aria-label", "Boxes for " + reading.name() + where);
  }

  private void box(String repeat) {
    out.start("td", "class", "box").some("span", "cap", repeat).end();
  }

  /** A symbol as the page has it, with its unit. */
  void symbol(Reading reading) {
    out.start("span", "class", "nm").made(Typeset.nameHtml(reading.name())).end();
    out.text(reading.unit().isBlank() ? "" : " [" + unit(reading) + "]");
  }

  /** How often it was read in one go; what was struck through had another put in its place. */
  private static int repeats(Reading.Entry entry) {
    return entry.struck().isPresent() ? 0 : Math.max(1, entry.taken().size());
  }

  private static Set<String> places(Reading reading, List<String> axes) {
    Set<String> places = new LinkedHashSet<>();
    reading.entries().forEach(entry -> places.add(place(entry, axes)));
    return places;
  }

  private static String place(Reading.Entry entry, List<String> axes) {
    List<String> labels = new ArrayList<>();
    for (String axis : axes) {
      String label = entry.at().getOrDefault(axis, "");
      if (!label.isBlank()) {
        labels.add(label.matches("[\\d.]+") ? axis + " " + label : label);
      }
    }
    return String.join(", ", labels);
  }

  private Set<String> stages(Reading reading) {
    Set<String> stages = new LinkedHashSet<>();
    reading.entries().forEach(entry -> stages.add(stage(reading, entry)));
    return stages;
  }

  private String stage(Reading reading, Reading.Entry entry) {
    return !entry.stage().isEmpty()
        ? entry.stage()
        : !reading.stage().isEmpty() ? reading.stage() : stageOfRecord;
  }
}
