package endfloat.picture;

import endfloat.engine.Verdict;
import endfloat.picture.SvgWriter.Anchor;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Draws readings round a wheel, the turn rolled out. All numbers are in the unit shown. */
final class RoundDrawing {
  private static final double WIDTH = 812;
  private static final double HEIGHT = 310;
  private static final double LEFT = 66;
  private static final double RIGHT = 664;
  private static final double TOP = 24;
  private static final double BOTTOM = 250;

  /** One place round the wheel. */
  record Station(
      String label, double angle, double y, double half, String text, Optional<Verdict> verdict) {}

  /** The first harmonic; its phase in degrees. */
  record Wave(double mean, double amplitude, double phase) {
    double at(double degrees) {
      return mean + amplitude * StrictMath.cos(StrictMath.toRadians(degrees - phase));
    }
  }

  /** What is written. */
  record Words(String result, String axis, String twice, String description) {}

  private final List<Station> stations;
  private final Station tightest;
  private final Station loosest;
  private final Wave wave;
  private final Words words;
  private final AxisScale up;
  private final AxisScale across = new AxisScale(0, 360, LEFT, RIGHT, 8);
  private final SvgWriter svg;
  private final Labels labels = new Labels(LEFT + 4, TOP - 2, RIGHT, BOTTOM - 2);

  RoundDrawing(List<Station> stations, Station tightest, Station loosest, Wave wave, Words words) {
    this.stations = stations;
    this.tightest = tightest;
    this.loosest = loosest;
    this.wave = wave;
    this.words = words;
    double low = wave.mean() - wave.amplitude();
    double high = wave.mean() + wave.amplitude();
    for (Station station : stations) {
      low = Math.min(low, station.y() - station.half());
      high = Math.max(high, station.y() + station.half());
    }
    double span = high > low ? high - low : Math.max(Math.abs(high), 1);
    up = AxisScale.widened(low - 0.12 * span, high + 0.12 * span, BOTTOM, TOP, 5);
    svg = new SvgWriter("chart", WIDTH, HEIGHT, words.description(), ChartInk.BOTH);
  }

  String svg() {
    axes();
    double mean = up.at(wave.mean());
    svg.path("chart-mean", new SvgPath().line(LEFT, mean, RIGHT + 34, mean));
    SvgPath curve = new SvgPath();
    for (int degrees = 0; degrees <= 360; degrees += 5) {
      double x = across.at(degrees);
      double y = up.at(wave.at(degrees));
      if (degrees == 0) {
        curve.from(x, y);
      } else {
        curve.to(x, y);
      }
      labels.keepClear(x - 5, y - 4, x + 5, y + 4);
    }
    svg.path("chart-curve", curve);
    stations.forEach(this::station);
    twice();
    extreme(tightest, "least ");
    extreme(loosest, "greatest ");
    return svg.finished();
  }

  private void axes() {
    SvgPath grid = new SvgPath();
    SvgPath axes = new SvgPath().from(LEFT, TOP).to(LEFT, BOTTOM).to(RIGHT, BOTTOM);
    for (BigDecimal tick : up.ticks()) {
      double y = up.at(tick.doubleValue());
      grid.line(LEFT, y, RIGHT, y);
      axes.line(LEFT - 5, y, LEFT, y);
      svg.text("chart-number", LEFT - 9, y + 4.5, Anchor.END, up.text(tick));
    }
    for (int degrees = 0; degrees <= 360; degrees += 45) {
      double x = across.at(degrees);
      axes.line(x, BOTTOM, x, BOTTOM + 5);
      svg.text("chart-number", x, BOTTOM + 19, Anchor.MIDDLE, degrees + "\u00b0");
    }
    svg.path("chart-grid", grid);
    svg.path("chart-axis", axes);
    svg.text("chart-caption", LEFT, TOP - 10, Anchor.START, words.result());
    svg.text("chart-caption", RIGHT, BOTTOM + 54, Anchor.END, words.axis() + ", by its angle");
  }

  private void station(Station station) {
    double x = across.at(station.angle());
    double y = up.at(station.y());
    if (station.half() > 0) {
      double top = up.at(station.y() + station.half());
      double foot = up.at(station.y() - station.half());
      svg.path(
          "chart-whisker",
          new SvgPath()
              .line(x, top, x, foot)
              .line(x - 3.5, top, x + 3.5, top)
              .line(x - 3.5, foot, x + 3.5, foot));
      labels.keepClear(x - 4, top, x + 4, foot);
    }
    ChartMark.draw(svg, station.verdict(), x, y);
    labels.keepClear(x - 6, y - 6, x + 6, y + 6);
    if (stations.size() <= 24) {
      svg.text("chart-label", x, BOTTOM + 37, Anchor.MIDDLE, station.label());
    }
  }

  /** A dimension between crest and trough, at the right. */
  private void twice() {
    double top = up.at(wave.mean() + wave.amplitude());
    double foot = up.at(wave.mean() - wave.amplitude());
    double x = RIGHT + 24;
    double crest = across.at(Math.floorMod(Math.round(wave.phase()), 360L));
    double trough = across.at(Math.floorMod(Math.round(wave.phase() + 180), 360L));
    svg.path(
        "chart-lead", new SvgPath().line(crest, top, x + 6, top).line(trough, foot, x + 6, foot));
    svg.path("chart-dimension", new SvgPath().line(x, top, x, foot));
    svg.path(
        "chart-arrow",
        new SvgPath()
            .from(x, top)
            .to(x - 3, top + 9)
            .to(x + 3, top + 9)
            .close()
            .from(x, foot)
            .to(x - 3, foot - 9)
            .to(x + 3, foot - 9)
            .close());
    double middle = (top + foot) / 2;
    // its uncertainty on a line of its own: beside the figure it would run off the picture
    String[] lines = words.twice().split(" (?=\u00b1)|(?<=eccentricity) ");
    double y = middle - 8.5 * lines.length + 13;
    for (int i = 0; i < lines.length; i++) {
      svg.text(i == 0 ? "chart-label" : "chart-name", x + 10, y + 17 * i, Anchor.START, lines[i]);
    }
  }

  private void extreme(Station station, String word) {
    double x = across.at(station.angle());
    double y = up.at(station.y());
    svg.circle("chart-ring", x, y, 9);
    labels.label(svg, x, y, word + station.text());
  }
}
