package endfloat.picture;

import endfloat.engine.Value;
import endfloat.picture.SvgWriter.Anchor;
import endfloat.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** A chain of dimensions: links laid end to end with their sense, and the gap that is left. */
final class ChainPicture {
  private static final double ROW = 30;
  private static final double TOP = 40;
  private static final int NOMINAL = 0;
  private static final int SENSE = 4;

  private final CalculationChart of;

  ChainPicture(CalculationChart of) {
    this.of = of;
  }

  ChartPicture.Drawn drawn() {
    Unit unit = of.unit("mm");
    List<Value.PartValue> links = CalculationChart.parts(of.ask(of.argument("links", 0)));
    Value.Fields results = of.results();
    double low = CalculationChart.number(results.get("low"));
    double high = CalculationChart.number(results.get("high"));
    double[] shares = CalculationChart.numbers(results.get("contributions"));
    double least = Math.min(0, low);
    double most = Math.max(0, high);
    double at = 0;
    for (Value.PartValue link : links) {
      at += signed(link);
      least = Math.min(least, at);
      most = Math.max(most, at);
    }
    String description =
        "Chain of "
            + links.size()
            + " links: the gap lies between "
            + of.text(low, unit)
            + " and "
            + of.text(high, unit)
            + (low < 0 ? "; negative is interference." : ".");
    double height = TOP + ROW * (links.size() + 1) + 40;
    SvgWriter svg = new SvgWriter("chart", Plot.WIDTH, height, description, ChartInk.BOTH);
    AxisScale across =
        AxisScale.widened(
            unit.fromSi(least), unit.fromSi(most), Plot.LEFT + 60, Plot.RIGHT - 130, 8);
    double zero = across.at(0);
    svg.path("chart-mean", new SvgPath().line(zero, TOP - 14, zero, height - 30));
    at = 0;
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < links.size(); i++) {
      double end = at + signed(links.get(i));
      double y = TOP + ROW * i + ROW / 2;
      arrow(svg, across.at(unit.fromSi(at)), across.at(unit.fromSi(end)), y);
      String size = of.text(CalculationChart.rounded(signed(links.get(i))), unit);
      String share = i < shares.length ? of.text(shares[i], unit) : "";
      svg.text("chart-number", Plot.LEFT + 40, y + 4.5, Anchor.END, "link " + (i + 1));
      svg.text("chart-label", Plot.RIGHT - 120, y + 4.5, Anchor.START, size);
      rows.add(List.of("link " + (i + 1), size, share));
      at = end;
    }
    gap(svg, across, unit, low, high, TOP + ROW * links.size() + ROW / 2);
    rows.add(List.of("gap", of.text(low, unit) + " to " + of.text(high, unit), ""));
    svg.text("chart-caption", zero, TOP - 20, Anchor.MIDDLE, "from here, + opens the gap");
    return new ChartPicture.Drawn(
        svg.finished(),
        description,
        List.of("link", "nominal with its sense", "part of the result's tolerance"),
        rows,
        List.of("Links lie end to end in the order given; one that closes the gap leads back."));
  }

  private static double signed(Value.PartValue link) {
    return CalculationChart.number(link.components()[NOMINAL])
        * CalculationChart.number(link.components()[SENSE]);
  }

  private static void arrow(SvgWriter svg, double from, double to, double y) {
    double way = Math.signum(to - from);
    svg.path(
        "chart-dimension",
        new SvgPath().line(from, y, to, y).line(from, y - 6, from, y + 6).line(to, y, to, y + ROW));
    svg.path(
        "chart-arrow",
        new SvgPath().from(to, y).to(to - 9 * way, y - 3.5).to(to - 9 * way, y + 3.5).close());
  }

  private void gap(SvgWriter svg, AxisScale across, Unit unit, double low, double high, double y) {
    double left = across.at(unit.fromSi(low));
    double right = across.at(unit.fromSi(high));
    svg.rectangle("chart-bar", left, y - 9, Math.max(1.5, right - left), 18);
    svg.path(
        "chart-edge",
        new SvgPath().line(left, y - 11, left, y + 11).line(right, y - 11, right, y + 11));
    svg.text("chart-number", Plot.LEFT + 40, y + 4.5, Anchor.END, "gap");
    svg.text(
        "chart-name",
        Plot.RIGHT - 120,
        y + 4.5,
        Anchor.START,
        of.text(low, unit) + " to " + of.text(high, unit));
  }
}
