package endfloat.picture;

import endfloat.engine.Value;
import endfloat.units.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** A stepped shaft with its bearings and loads, its deflection line and its bending moment. */
final class ShaftPicture {
  private static final double HEIGHT = 420;
  private static final int PLACES = 81;
  private static final double AXIS = 62;
  private static final double HALF = 34;

  private final CalculationChart of;

  ShaftPicture(CalculationChart of) {
    this.of = of;
  }

  ChartPicture.Drawn drawn() {
    Unit length = of.unit("mm");
    Unit torque = of.unit("N.m");
    List<Value.PartValue> segments = CalculationChart.parts(of.ask(of.argument("segments", 0)));
    double whole = 0;
    double widest = 0;
    for (Value.PartValue segment : segments) {
      whole += CalculationChart.number(segment.components()[0]);
      widest = Math.max(widest, CalculationChart.number(segment.components()[1]));
    }
    Value.Fields results = along(whole);
    double[] places = places(whole);
    double[] xs = shown(places, length);
    double[] deflections =
        shown(CalculationChart.numbers(results.get("deflections_at_resultant")), length);
    double[] plain = shown(CalculationChart.numbers(results.get("deflections_at")), length);
    boolean sideways = differ(deflections, plain);
    double[] line = sideways ? deflections : plain;
    double[] moments = shown(CalculationChart.numbers(results.get("moments_at")), torque);
    double most = CalculationChart.number(results.get("greatest_deflection"));
    double mostAt = CalculationChart.number(results.get("greatest_deflection_at"));
    double bending = CalculationChart.number(results.get("greatest_moment"));
    double bendingAt = CalculationChart.number(results.get("greatest_moment_at"));
    String description =
        "Stepped shaft: greatest deflection "
            + of.text(most, length)
            + " at "
            + of.text(mostAt, length)
            + ", greatest bending moment "
            + of.text(bending, torque)
            + " at "
            + of.text(bendingAt, length)
            + " from the left end.";
    SvgWriter svg = new SvgWriter("chart", Plot.WIDTH, HEIGHT, description, ChartInk.BOTH);
    Plot bent =
        new Plot(
            svg, xs, line, 150, 250, "deflection in the direction of the loads, " + length.print());
    bent.curve(xs, line);
    bent.mark(
        length.fromSi(mostAt),
        sideways ? Math.abs(length.fromSi(most)) : length.fromSi(most),
        of.text(most, length));
    shaft(svg, bent, segments, widest, length);
    Plot moment = new Plot(svg, xs, moments, 284, 366, "bending moment, " + torque.print());
    moment.curve(xs, moments);
    moment.mark(length.fromSi(bendingAt), torque.fromSi(bending), of.text(bending, torque));
    moment.foot("from the left end, " + length.print());
    return new ChartPicture.Drawn(
        svg.finished(),
        description,
        List.of("from the left end", "deflection", "bending moment"),
        rows(places, results, sideways, length, torque),
        List.of(
            sideways
                ? "Deflections are resultants of both planes."
                : "Deflections are positive in the direction of the loads.",
            "The shaft is drawn to scale along its length, not across it."));
  }

  private static boolean differ(double[] resultants, double[] plain) {
    for (int i = 0; i < plain.length && i < resultants.length; i++) {
      if (Math.abs(Math.abs(plain[i]) - resultants[i]) > 1e-9 * Math.abs(resultants[i])) {
        return true;
      }
    }
    return false;
  }

  private static double[] places(double whole) {
    double[] places = new double[PLACES];
    for (int i = 0; i < PLACES; i++) {
      places[i] = i == PLACES - 1 ? whole : whole * i / (PLACES - 1);
    }
    return places;
  }

  /** The same call, asked at many places. */
  private Value.Fields along(double whole) {
    StringBuilder at = new StringBuilder("at: [");
    for (double place : places(whole)) {
      at.append(at.charAt(at.length() - 1) == '[' ? "" : ", ")
          .append(new BigDecimal(Double.toString(place)).toPlainString())
          .append(" m");
    }
    return (Value.Fields) of.ask(of.call().without("at").with(at.append(']').toString()));
  }

  private static double[] shown(double[] si, Unit unit) {
    double[] shown = new double[si.length];
    for (int i = 0; i < si.length; i++) {
      shown[i] = unit.fromSi(si[i]);
    }
    return shown;
  }

  private void shaft(
      SvgWriter svg, Plot plot, List<Value.PartValue> segments, double widest, Unit length) {
    double at = 0;
    SvgPath edges = new SvgPath();
    for (Value.PartValue segment : segments) {
      double end = at + CalculationChart.number(segment.components()[0]);
      double half = HALF * CalculationChart.number(segment.components()[1]) / widest;
      double left = plot.x(length.fromSi(at));
      double right = plot.x(length.fromSi(end));
      edges
          .from(left, AXIS - half)
          .to(right, AXIS - half)
          .to(right, AXIS + half)
          .to(left, AXIS + half)
          .close();
      at = end;
    }
    svg.path("chart-axis", edges);
    svg.path("chart-mean", new SvgPath().line(Plot.LEFT - 12, AXIS, Plot.RIGHT + 12, AXIS));
    of.call()
        .argument("bearings", 1)
        .ifPresent(
            text -> {
              for (Value.PartValue bearing : CalculationChart.parts(of.ask(text))) {
                double x = plot.x(length.fromSi(CalculationChart.number(bearing.components()[0])));
                svg.path(
                    "chart-edge",
                    new SvgPath()
                        .from(x, AXIS + HALF + 4)
                        .to(x - 8, AXIS + HALF + 18)
                        .to(x + 8, AXIS + HALF + 18)
                        .close());
              }
            });
    of.call()
        .argument("loads", 2)
        .ifPresent(
            text -> {
              for (Value.PartValue load : CalculationChart.parts(of.ask(text))) {
                double x = plot.x(length.fromSi(CalculationChart.number(load.components()[0])));
                svg.path("chart-leader", new SvgPath().line(x, 4, x, AXIS - HALF - 2));
                svg.path(
                    "chart-arrow",
                    new SvgPath()
                        .from(x, AXIS - HALF - 1)
                        .to(x - 4, AXIS - HALF - 11)
                        .to(x + 4, AXIS - HALF - 11)
                        .close());
              }
            });
  }

  private List<List<String>> rows(
      double[] places, Value.Fields results, boolean sideways, Unit length, Unit torque) {
    double[] deflections =
        CalculationChart.numbers(
            results.get(sideways ? "deflections_at_resultant" : "deflections_at"));
    double[] moments = CalculationChart.numbers(results.get("moments_at"));
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < places.length; i += 8) {
      rows.add(
          List.of(
              of.text(CalculationChart.rounded(places[i]), length),
              of.text(deflections[i], length),
              of.text(moments[i], torque)));
    }
    return rows;
  }
}
