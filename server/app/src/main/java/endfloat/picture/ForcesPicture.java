package endfloat.picture;

import endfloat.engine.Question;
import endfloat.engine.Value;
import endfloat.picture.SvgWriter.Anchor;
import endfloat.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** Forces on the teeth of a pair: along the tangent, towards the axis, along the shaft. */
final class ForcesPicture {
  private static final double HEIGHT = 280;
  private static final double LONGEST = 150;

  private final CalculationChart of;

  /** One force as the pair's results name it. */
  private record Force(String name, double newtons) {}

  ForcesPicture(CalculationChart of) {
    this.of = of;
  }

  ChartPicture.Drawn drawn() {
    Value.Fields results = of.results();
    Unit unit = of.unit("N");
    List<Force> forces = new ArrayList<>();
    for (String name : results.names()) {
      if (name.matches("(tangential|radial|axial)(_[12])?")) {
        double force = CalculationChart.number(results.get(name));
        if (Double.isFinite(force)) {
          forces.add(new Force(name, force));
        }
      }
    }
    double most = forces.stream().mapToDouble(f -> Math.abs(f.newtons())).max().orElse(0);
    if (most == 0) {
      throw Question.refused(
          "/of", "This pair carries no force to draw.", "Give the call its torque.");
    }
    StringBuilder description = new StringBuilder("Forces on the teeth: ");
    for (Force force : forces) {
      description
          .append(force == forces.get(0) ? "" : ", ")
          .append(force.name().replace('_', ' '))
          .append(' ')
          .append(of.text(force.newtons(), unit));
    }
    description.append('.');
    SvgWriter svg =
        new SvgWriter("chart", Plot.WIDTH, HEIGHT, description.toString(), ChartInk.BOTH);
    boolean bySide = forces.stream().anyMatch(f -> f.name().endsWith("_2"));
    tripod(svg, 190, "gear 1", forces, "_2", most, unit);
    if (bySide) {
      tripod(svg, 580, "gear 2", forces, "_1", most, unit);
    }
    return new ChartPicture.Drawn(
        svg.finished(),
        description.toString(),
        List.of("force", "size"),
        forces.stream()
            .map(f -> List.of(f.name().replace('_', ' '), of.text(f.newtons(), unit)))
            .toList(),
        List.of(
            "Lengths are to one scale. Tangential: along the pitch circle; radial: towards the"
                + " gear's own axis; axial: along its shaft, drawn aslant."));
  }

  private void tripod(
      SvgWriter svg,
      double x,
      String gear,
      List<Force> forces,
      String others,
      double most,
      Unit unit) {
    double y = 110;
    svg.text("chart-caption", x - 130, 20, Anchor.START, gear);
    svg.circle("chart-mark", x, y, 4);
    for (Force force : forces) {
      if (force.name().endsWith(others)) {
        continue;
      }
      double length = LONGEST * force.newtons() / most;
      char kind = force.name().charAt(0);
      double dx = kind == 't' ? 1 : kind == 'r' ? 0 : -0.7071;
      double dy = kind == 't' ? 0 : kind == 'r' ? 1 : 0.7071;
      arrow(svg, x, y, x + length * dx, y + length * dy);
      String text = force.name().replaceAll("_[12]", "") + " " + of.text(force.newtons(), unit);
      double tipX = x + length * dx;
      double tipY = y + length * dy;
      svg.text(
          "chart-name",
          kind == 't' ? (x + tipX) / 2 : tipX + (kind == 'r' ? 8 : 6),
          kind == 't' ? y - 10 : tipY + (kind == 'r' ? 4 : 18),
          kind == 't' ? Anchor.MIDDLE : kind == 'a' ? Anchor.END : Anchor.START,
          text);
    }
  }

  private static void arrow(SvgWriter svg, double x1, double y1, double x2, double y2) {
    double length = StrictMath.hypot(x2 - x1, y2 - y1);
    if (length < 1) {
      return;
    }
    double dx = (x2 - x1) / length;
    double dy = (y2 - y1) / length;
    svg.path("chart-curve", new SvgPath().line(x1, y1, x2, y2));
    svg.path(
        "chart-arrow",
        new SvgPath()
            .from(x2, y2)
            .to(x2 - 11 * dx - 4.5 * dy, y2 - 11 * dy + 4.5 * dx)
            .to(x2 - 11 * dx + 4.5 * dy, y2 - 11 * dy - 4.5 * dx)
            .close());
  }
}
