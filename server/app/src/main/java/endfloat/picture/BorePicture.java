package endfloat.picture;

import endfloat.engine.Value;
import endfloat.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** Offsets of bores along a shaft, the line fitted to them, and how far each is off it. */
final class BorePicture {
  private static final double HEIGHT = 290;

  private final CalculationChart of;

  BorePicture(CalculationChart of) {
    this.of = of;
  }

  ChartPicture.Drawn drawn() {
    Unit along = of.unit("mm");
    Unit small = of.unit("um");
    double[] positions = CalculationChart.numbers(of.ask(of.argument("positions", 0)));
    double[] offsets = CalculationChart.numbers(of.ask(of.argument("offsets", 1)));
    Value.Fields line = of.results();
    double intercept = CalculationChart.number(line.get("intercept"));
    double slope = CalculationChart.number(line.get("slope"));
    double[] deviations = CalculationChart.numbers(line.get("deviations"));
    double[] ends = CalculationChart.numbers(line.get("end_deviations"));
    double[] xs = new double[positions.length];
    double[] ys = new double[positions.length];
    double[] fitted = new double[positions.length];
    double[] all = new double[2 * positions.length];
    int worst = 0;
    for (int i = 0; i < xs.length; i++) {
      xs[i] = along.fromSi(positions[i]);
      ys[i] = small.fromSi(offsets[i]);
      fitted[i] = small.fromSi(intercept + slope * positions[i]);
      all[i] = ys[i];
      all[xs.length + i] = fitted[i];
      worst = Math.abs(deviations[i]) > Math.abs(deviations[worst]) ? i : worst;
    }
    String most = of.text(CalculationChart.rounded(deviations[worst]), small);
    String description =
        "Offsets of "
            + xs.length
            + " bores with the line fitted to them: the bore at "
            + of.text(positions[worst], along)
            + " is farthest off it, by "
            + most
            + ".";
    SvgWriter svg = new SvgWriter("chart", Plot.WIDTH, HEIGHT, description, ChartInk.BOTH);
    double[] span = {min(xs), max(xs)};
    Plot plot = new Plot(svg, span, all, 30, 226, "offset, " + small.print());
    plot.line(
        span[0],
        small.fromSi(intercept + slope * along.toSi(span[0])),
        span[1],
        small.fromSi(intercept + slope * along.toSi(span[1])));
    for (int i = 0; i < xs.length; i++) {
      plot.stem(xs[i], fitted[i], ys[i]);
      plot.dot(xs[i], ys[i]);
    }
    plot.mark(xs[worst], ys[worst], most + " off the line");
    plot.foot("along the shaft, " + along.print());
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < xs.length; i++) {
      rows.add(
          List.of(
              of.text(positions[i], along),
              of.text(offsets[i], small),
              of.text(CalculationChart.rounded(deviations[i]), small),
              of.text(CalculationChart.rounded(ends[i]), small)));
    }
    return new ChartPicture.Drawn(
        svg.finished(),
        description,
        List.of("at", "offset", "from the fitted line", "from the line of the end bores"),
        rows,
        List.of("The fitted line moves towards a bad bore: read the end-to-end column beside it."));
  }

  private static double min(double[] numbers) {
    double least = numbers[0];
    for (double number : numbers) {
      least = Math.min(least, number);
    }
    return least;
  }

  private static double max(double[] numbers) {
    double most = numbers[0];
    for (double number : numbers) {
      most = Math.max(most, number);
    }
    return most;
  }
}
