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
    for (int from = 0; from < cells.size(); from += across) {
      List<Cell> band = cells.subList(from, Math.min(cells.size(), from + across));
      out.start("table", "class", "stations");
      out.element("caption", "unseen", fields ? "Results" : "Station by station");
      out.start("thead").start("tr");
      for (Cell cell : band) {
        out.start("th", "scope", "col", "class", "station").text(place(cell.element())).end();
      }
      out.end().end().start("tbody").start("tr");
      for (Cell cell : band) {
        out.start("td", "class", "station");
        station(figure, cell, fields);
        out.end();
      }
      out.end().end().end();
    }
    out.end().end();
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
