package endfloat.picture;

import endfloat.engine.Value;
import endfloat.picture.SvgWriter.Anchor;
import endfloat.units.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Tolerance zones of hole and shaft about the zero line, which is the basic size. */
final class FitPicture {
  private static final double HEIGHT = 300;
  private static final double TOP = 30;
  private static final double FOOT = 262;

  private final CalculationChart of;

  /** One zone: deviations from the basic size [SI]. */
  private record Zone(String name, double lower, double upper) {}

  FitPicture(CalculationChart of) {
    this.of = of;
  }

  private List<Zone> zones() {
    if (of.call().function().equals("inch_fit")) {
      Value.Fields fit = of.results();
      return List.of(
          new Zone("hole", number(fit, "hole_lower"), number(fit, "hole_upper")),
          new Zone("shaft", number(fit, "shaft_lower"), number(fit, "shaft_upper")));
    }
    String first = of.argument("size", 0);
    if (of.ask(first) instanceof Value.Words words) {
      // As the drawing writes it: 25 H7/g6.
      String[] written = words.text().strip().split("\\s+", 2);
      return ofSize(written[0] + " mm", written[1]);
    }
    return ofSize(first, words("designation", 1));
  }

  private List<Zone> ofSize(String size, String designation) {
    List<Zone> zones = new ArrayList<>();
    for (String one : designation.split("/", 2)) {
      zones.add(zone(size, one.strip()));
    }
    return zones;
  }

  private String words(String name, int place) {
    return of.ask(of.argument(name, place)) instanceof Value.Words words ? words.text() : "";
  }

  private Zone zone(String size, String designation) {
    Value.Fields limits =
        (Value.Fields) of.ask("iso_limits(" + size + ", \"" + designation + "\")");
    String part = Character.isUpperCase(designation.charAt(0)) ? "hole " : "shaft ";
    return new Zone(
        part + designation, number(limits, "lower_deviation"), number(limits, "upper_deviation"));
  }

  private static double number(Value.Fields fields, String name) {
    return CalculationChart.number(fields.get(name));
  }

  ChartPicture.Drawn drawn() {
    List<Zone> zones = zones();
    Unit unit = of.unit("um");
    double low = 0;
    double high = 0;
    for (Zone zone : zones) {
      low = Math.min(low, unit.fromSi(zone.lower()));
      high = Math.max(high, unit.fromSi(zone.upper()));
    }
    StringBuilder description = new StringBuilder("Tolerance zones about the basic size: ");
    for (Zone zone : zones) {
      description
          .append(zone == zones.get(0) ? "" : "; ")
          .append(zone.name())
          .append(" from ")
          .append(of.text(zone.lower(), unit))
          .append(" to ")
          .append(of.text(zone.upper(), unit));
    }
    String clearance = clearance(zones, unit);
    description.append(clearance.isEmpty() ? "." : "; " + clearance + ".");
    SvgWriter svg =
        new SvgWriter("chart", Plot.WIDTH, HEIGHT, description.toString(), ChartInk.BOTH);
    AxisScale up = AxisScale.widened(low, high == low ? low + 1 : high, FOOT, TOP, 6);
    axis(svg, up, unit);
    double left = Plot.LEFT + 60;
    for (Zone zone : zones) {
      box(svg, up, unit, zone, left);
      left += 260;
    }
    svg.text("chart-name", Plot.LEFT, HEIGHT - 8, Anchor.START, clearance);
    return new ChartPicture.Drawn(
        svg.finished(),
        description.toString(),
        List.of("part", "lower deviation", "upper deviation"),
        rows(zones, unit),
        List.of("Zero line: the basic size. Deviations upwards are positive."));
  }

  private String clearance(List<Zone> zones, Unit unit) {
    if (zones.size() < 2) {
      return "";
    }
    double least = zones.get(0).lower() - zones.get(1).upper();
    double most = zones.get(0).upper() - zones.get(1).lower();
    return "clearance "
        + of.text(CalculationChart.rounded(least), unit)
        + " to "
        + of.text(CalculationChart.rounded(most), unit)
        + (least < 0 ? " (negative: interference)" : "");
  }

  private static void axis(SvgWriter svg, AxisScale up, Unit unit) {
    SvgPath grid = new SvgPath();
    for (BigDecimal tick : up.ticks()) {
      double y = up.at(tick.doubleValue());
      grid.line(Plot.LEFT, y, Plot.RIGHT, y);
      svg.text("chart-number", Plot.LEFT - 9, y + 4.5, Anchor.END, up.text(tick));
    }
    svg.path("chart-grid", grid);
    double zero = up.at(0);
    svg.path(
        "chart-axis",
        new SvgPath()
            .line(Plot.LEFT, TOP, Plot.LEFT, FOOT)
            .line(Plot.LEFT, zero, Plot.RIGHT, zero));
    svg.text("chart-caption", Plot.LEFT, TOP - 10, Anchor.START, "deviation, " + unit.print());
  }

  private void box(SvgWriter svg, AxisScale up, Unit unit, Zone zone, double left) {
    double top = up.at(unit.fromSi(zone.upper()));
    double foot = up.at(unit.fromSi(zone.lower()));
    double width = 120;
    svg.rectangle("chart-bar", left, top, width, Math.max(1, foot - top));
    svg.path("chart-hatch", new SvgPath().hatch(left, top, left + width, foot, 8));
    svg.path(
        "chart-edge",
        new SvgPath()
            .from(left, top)
            .to(left + width, top)
            .to(left + width, foot)
            .to(left, foot)
            .close());
    double middle = (top + foot) / 2 + 4;
    svg.text("chart-name", left + width + 10, middle, Anchor.START, zone.name());
    svg.text("chart-number", left + width / 2, top - 5, Anchor.MIDDLE, of.text(zone.upper(), unit));
    svg.text(
        "chart-number", left + width / 2, foot + 15, Anchor.MIDDLE, of.text(zone.lower(), unit));
  }

  private List<List<String>> rows(List<Zone> zones, Unit unit) {
    List<List<String>> rows = new ArrayList<>();
    for (Zone zone : zones) {
      rows.add(List.of(zone.name(), of.text(zone.lower(), unit), of.text(zone.upper(), unit)));
    }
    return rows;
  }
}
