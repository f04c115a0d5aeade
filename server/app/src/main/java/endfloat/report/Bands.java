package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * Values beside each other under their heads: the stations of a series, or the results of a
 * calculation.
 */
final class Bands {
  /** Values of a series that stand beside each other; fewer where their places have long names. */
  private static final int ACROSS = 8;

  private static final int FEW = 4;
  private static final int WIDE = 14;

  /** No number is as long. */
  private static final int WORDS = 20;

  /** Results of a calculation that stand beside each other. */
  private static final int FIELDS = 5;

  private final Markup out;

  Bands(Markup out) {
    this.out = out;
  }

  /** What stands together under one head: a result, and where it was found. */
  private record Cell(JsonNode element, String where) {}

  private static List<Cell> cells(JsonNode elements) {
    List<Cell> cells = new ArrayList<>();
    for (JsonNode one : elements) {
      Cell last = cells.isEmpty() ? null : cells.get(cells.size() - 1);
      String name = one.path("field").asText();
      if (last != null && name.equals(last.element().path("field").asText() + "_at")) {
        cells.set(cells.size() - 1, new Cell(last.element(), one.path("value").asText()));
      } else {
        cells.add(new Cell(one, ""));
      }
    }
    return cells;
  }

  /** A row beneath a figure of a table with so many columns before that of the strip. */
  void write(JsonNode figure, int columns) {
    List<Cell> cells = cells(figure.path("elements"));
    boolean fields = Answers.hasFields(figure);
    int longest = cells.stream().mapToInt(cell -> place(cell.element()).length()).max().orElse(0);
    int across = fields ? FIELDS : longest > WIDE ? FEW : ACROSS;
    out.start("tr", "class", "series").start("td").end();
    out.start("td", "colspan", String.valueOf(columns));
    int wide = fields ? across : wide(cells.size(), across);
    for (int from = 0; from < cells.size(); from += wide) {
      List<Cell> band = cells.subList(from, Math.min(cells.size(), from + wide));
      int room = from == 0 ? 0 : wide - band.size();
      out.start("table", "class", "stations");
      out.element("caption", "unseen", fields ? "Results" : "Station by station");
      out.start("thead").start("tr");
      Cell last = band.get(band.size() - 1);
      for (Cell cell : band) {
        boolean words = cell == last && across(cell, room);
        String span = words ? String.valueOf(room + 1) : null;
        out.start("th", "scope", "col", "class", "station", "colspan", span);
        out.text(place(cell.element())).end();
      }
      room(across(last, room) ? 0 : room);
      out.end().end().start("tbody").start("tr");
      for (Cell cell : band) {
        boolean words = cell == last && across(cell, room);
        out.start("td", "class", "station", "colspan", words ? String.valueOf(room + 1) : null);
        station(figure, cell, fields);
        out.end();
      }
      room(across(last, room) ? 0 : room);
      out.end().end().end();
    }
    out.end().end();
  }

  /**
   * How many of so many stand in each band, the bands as like as may be.
   *
   * @param most that there is room for
   */
  static int wide(int all, int most) {
    int bands = (all + most - 1) / most;
    return bands == 0 ? most : (all + bands - 1) / bands;
  }

  /** Whether words at the end of a band take the room that it leaves. */
  private static boolean across(Cell cell, int room) {
    return room > 0 && cell.element().path("value").asText().length() > WORDS;
  }

  /** Columns that a last band leaves empty: what it has stands below its like. */
  private void room(int columns) {
    for (int i = 0; i < columns; i++) {
      out.start("td").end();
    }
  }

  private void station(JsonNode figure, Cell cell, boolean field) {
    JsonNode one = cell.element();
    String name = field ? figure.path("name").asText() + "." + one.get("field").asText() : null;
    number(one, name, field ? one.path("unit").asText() : "");
    out.some("span", "under", cell.where());
    String verdict = one.path("verdict").asText();
    if (!field && !verdict.isEmpty() && !verdict.equals("within")) {
      out.element("span", "verdict " + verdict.replace(' ', '-'), verdict);
    }
  }

  /** A value with its uncertainty; its unit where no column has it. */
  void number(JsonNode shown, String name, String unit) {
    String of = name == null ? null : shown.path("unit").asText();
    out.start("span", "class", "val", "data-figure", name, "data-unit", of);
    out.text(shown.path("value").asText()).end();
    out.some("span", "un", unit);
    String u = shown.path("u").asText();
    out.some("span", "u", u.isEmpty() ? "" : "± " + u);
  }

  /** Where a station is, or which of several results: {@code cylinder 3, top}. */
  static String place(JsonNode element) {
    if (element.has("field")) {
      return element.get("field").asText().replace('_', ' ');
    }
    List<String> labels = new ArrayList<>();
    element
        .path("labels")
        .properties()
        .forEach(
            one -> {
              String label = one.getValue().asText();
              labels.add(label.matches("[\\d.]+") ? one.getKey() + " " + label : label);
            });
    return String.join(", ", labels);
  }
}
