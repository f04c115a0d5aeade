package endfloat.picture;

import endfloat.engine.Value;
import endfloat.units.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The deflection line and the bending moment of a beam, or of a round plate from its inner edge or
 * centre outwards: the call asked again at many places.
 */
final class BentPicture {
  private static final double HEIGHT = 330;
  private static final int PLACES = 41;
  private static final int ROWS_EVERY = 4;

  private final CalculationChart of;
  private final String what;
  private final String along;
  private final String momentField;
  private final Unit length;
  private final Unit moment;

  BentPicture(CalculationChart of) {
    this.of = of;
    boolean beam = of.call().function().equals("beam");
    this.what = beam ? "Beam" : "Plate";
    this.along = beam ? "from the left end" : "from the centre";
    this.momentField = beam ? "moment" : "radial_moment";
    this.length = of.unit("mm");
    this.moment = of.unit(beam ? "N.m" : "N.mm/mm");
  }

  /** What comes out at one place; the moment is NaN where the calculation gives none. */
  private record At(double place, double deflection, double moment) {}

  ChartPicture.Drawn drawn() {
    List<At> all = along();
    Value.Fields results = of.results();
    double most = CalculationChart.number(results.get("greatest_deflection"));
    double mostAt = CalculationChart.number(results.get("greatest_deflection_at"));
    String description =
        what
            + ": greatest deflection "
            + of.text(most, length)
            + " at "
            + of.text(mostAt, length)
            + " "
            + along
            + ".";
    SvgWriter svg = new SvgWriter("chart", Plot.WIDTH, HEIGHT, description, ChartInk.BOTH);
    double[] xs = all.stream().mapToDouble(at -> length.fromSi(at.place())).toArray();
    double[] line = all.stream().mapToDouble(at -> length.fromSi(at.deflection())).toArray();
    Plot bent =
        new Plot(
            svg, xs, line, 34, 140, "deflection in the direction of the load, " + length.print());
    bent.curve(xs, line);
    bent.mark(length.fromSi(mostAt), length.fromSi(most), of.text(most, length));
    // both fields have one axis, so a place without a moment is left out of its curve only
    List<At> known = all.stream().filter(at -> !Double.isNaN(at.moment())).toList();
    double[] moments = known.stream().mapToDouble(at -> moment.fromSi(at.moment())).toArray();
    Plot bending =
        new Plot(
            svg,
            xs,
            moments,
            176,
            272,
            (momentField.equals("moment") ? "bending moment, " : "radial moment, ")
                + moment.print());
    bending.curve(known.stream().mapToDouble(at -> length.fromSi(at.place())).toArray(), moments);
    bending.foot(along + ", " + length.print());
    return new ChartPicture.Drawn(
        svg.finished(), description, List.of(along, "deflection", "moment"), rows(all), notes(all));
  }

  private List<String> notes(List<At> all) {
    List<String> notes = new ArrayList<>();
    notes.add("Deflections are positive in the direction of the load.");
    if (all.stream().anyMatch(at -> Double.isNaN(at.moment()))) {
      notes.add("Under a force at a point the moment has no end and is not drawn.");
    }
    return notes;
  }

  private List<At> along() {
    double from = 0;
    double to;
    if (of.call().function().equals("annular_plate")) {
      from = CalculationChart.number(of.ask(of.argument("inner_radius", 1)));
      to = CalculationChart.number(of.ask(of.argument("outer_radius", 0)));
    } else {
      to =
          CalculationChart.number(
              of.ask(of.argument(what.equals("Beam") ? "length" : "radius", 0)));
    }
    List<At> all = new ArrayList<>();
    for (int i = 0; i < PLACES; i++) {
      double place = i == PLACES - 1 ? to : from + (to - from) * i / (PLACES - 1);
      String at = "at: " + new BigDecimal(Double.toString(place)).toPlainString() + " m";
      Value.Fields there = (Value.Fields) of.ask(of.call().without("at").with(at));
      all.add(
          new At(
              place,
              CalculationChart.number(there.get("deflection")),
              CalculationChart.number(there.get(momentField))));
    }
    return all;
  }

  private List<List<String>> rows(List<At> all) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < all.size(); i += ROWS_EVERY) {
      At at = all.get(i);
      rows.add(
          List.of(
              of.text(CalculationChart.rounded(at.place()), length),
              of.text(at.deflection(), length),
              Double.isNaN(at.moment()) ? "\u2013" : of.text(at.moment(), moment)));
    }
    return rows;
  }
}
