package endfloat.engine;

import endfloat.engine.FieldLine.Entered;
import endfloat.record.Cell;
import endfloat.record.FieldLimit;
import endfloat.record.FitRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The rows of a schedule of fits as values and limits of the graph.
 *
 * <p>A used part is judged by what wear may have made of it; an end that wear leaves alone stays as
 * new. Where no worn limit is given the limits of the new part decide.
 */
final class FitLines {
  private final List<FieldLine> lines = new ArrayList<>();

  private final Map<String, String> parts;

  private FitLines(Map<String, String> parts) {
    this.parts = parts;
  }

  /** Name of a row's figure. */
  static String fit(String clause, FitRow row) {
    return clause + "." + row.key();
  }

  /** Name of the figure of one of its sizes. */
  static String size(String clause, FitRow row, int at) {
    return fit(clause, row) + ".size" + (at + 1);
  }

  /**
   * @param parts names of the register by id
   */
  static List<FieldLine> of(Cell cell, Map<String, String> parts) {
    FitLines fits = new FitLines(parts);
    List<FitRow> rows = cell.fits();
    for (int i = 0; i < rows.size(); i++) {
      fits.row(cell.id(), rows.get(i), "/rows/" + i);
    }
    return List.copyOf(fits.lines);
  }

  private void row(String clause, FitRow row, String at) {
    String title = title(row);
    measured(fit(clause, row), title, row, at, row.measured(), at, row.asNew(), row.worn());
    for (int i = 0; i < row.sizes().size(); i++) {
      FitRow.Size size = row.sizes().get(i);
      measured(
          size(clause, row, i),
          title + ", " + part(size, i),
          row,
          at,
          size.measured(),
          at + "/sizes/" + i,
          size.asNew(),
          size.worn());
    }
  }

  /** Whose size it is: by the register, else by its place in the row. */
  private String part(FitRow.Size size, int at) {
    String named = size.of().isBlank() ? "" : parts.getOrDefault(size.of(), size.of());
    return named.isBlank() ? "size of part " + (at + 1) : named;
  }

  private static String title(FitRow row) {
    String item = row.item().isBlank() ? "" : "item " + row.item();
    return item.isEmpty() || row.what().isBlank() ? item + row.what() : item + ", " + row.what();
  }

  private void measured(
      String name,
      String title,
      FitRow row,
      String rowAt,
      String expression,
      String at,
      FieldLimit asNew,
      FieldLimit worn) {
    if (expression.isBlank()) {
      if (!asNew.isEmpty() || !worn.isEmpty()) {
        lines.add(new FieldLine.Unmeasured(name, title));
      }
      return;
    }
    lines.add(
        new FieldLine.Stated(
            name,
            title,
            new Entered(rowAt + "/unit", row.unit()),
            new Entered(at + "/measured", expression)));
    Entered newLow = new Entered(at + "/new/low", asNew.low());
    Entered newHigh = new Entered(at + "/new/high", asNew.high());
    Entered rule = new Entered(rowAt + "/rule", row.rule());
    if (!worn.isEmpty()) {
      Entered low = worn.low().isBlank() ? newLow : new Entered(at + "/worn/low", worn.low());
      Entered high = worn.high().isBlank() ? newHigh : new Entered(at + "/worn/high", worn.high());
      lines.add(bounds(name, row, low, high, "worn", rule, true));
    }
    if (!asNew.isEmpty()) {
      lines.add(bounds(name, row, newLow, newHigh, "new", rule, worn.isEmpty()));
    }
  }

  private static FieldLine bounds(
      String name,
      FitRow row,
      Entered low,
      Entered high,
      String state,
      Entered rule,
      boolean decides) {
    return new FieldLine.Bounds(
        name, row.unit(), low, high, row.authority(), row.condition(), state, rule, decides);
  }
}
