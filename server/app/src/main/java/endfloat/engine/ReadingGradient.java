package endfloat.engine;

import endfloat.units.Unit;

/** The uncertainty of what was taken at one station: the instrument's, its step, the scatter. */
final class ReadingGradient {
  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private final String place;
  private final String reading;
  private final InstrumentFigures stated;

  /**
   * @param place id from which the roots of this station are named
   */
  ReadingGradient(String place, String reading, InstrumentFigures stated) {
    this.place = place;
    this.reading = reading;
    this.stated = stated;
  }

  Gradient of(Taken taken, Unit unit) {
    int n = taken.count();
    return of(taken.mean(), n, n >= 2 ? taken.deviationOfMean() : 0, unit);
  }

  /** Of one value taken alone. */
  Gradient of(double si, Unit unit) {
    return of(si, 1, 0, unit);
  }

  private Gradient of(double mean, int n, double deviationOfMean, Unit unit) {
    double indicated = unit.isTemperaturePoint() ? unit.interval().toSi(unit.fromSi(mean)) : mean;
    Gradient all = shared(indicated);
    all =
        add(
            all,
            Root.Kind.RESOLUTION,
            "resolution",
            stated.resolution(),
            INFINITE,
            "half a step either way, rectangular; repeats do not make it smaller");
    all =
        add(
            all,
            Root.Kind.OWN,
            "own",
            stated.own() / Math.sqrt(n),
            INFINITE,
            "the half of the instrument's U that is each reading's own");
    if (n >= 2) {
      return add(
          all,
          Root.Kind.SCATTER,
          "scatter",
          deviationOfMean,
          n - 1,
          "scatter of the mean of " + n + " readings");
    }
    return Double.isNaN(stated.scatter())
        ? all
        : add(
            all,
            Root.Kind.SCATTER,
            "scatter",
            stated.scatter(),
            INFINITE,
            "scatter of one reading, as stated for the instrument");
  }

  private Gradient shared(double indicated) {
    Root offset =
        new Root(
            "instrument:" + stated.id() + ":offset",
            Root.Kind.OFFSET,
            stated.id(),
            "offset of " + stated.id() + ", " + stated.offsetWords(),
            INFINITE);
    Root gain =
        new Root(
            "instrument:" + stated.id() + ":gain",
            Root.Kind.GAIN,
            stated.id(),
            "gain of " + stated.id(),
            INFINITE);
    return Gradient.combine(
        1, Gradient.of(offset, stated.offset()), 1, Gradient.of(gain, stated.gain() * indicated));
  }

  private Gradient add(
      Gradient to, Root.Kind kind, String suffix, double u, double degrees, String words) {
    if (u == 0) {
      return to;
    }
    Root root = new Root(place + ":" + suffix, kind, reading, words, degrees);
    return Gradient.combine(1, to, 1, Gradient.of(root, u));
  }
}
