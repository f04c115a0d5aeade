package endfloat.working;

import endfloat.units.Dimension;
import endfloat.units.Unit;

/** Questions about kinds that many rules ask. */
final class Kinds {
  static final Kind.Quantity NUMBER = new Kind.Quantity(Dimension.NONE);
  static final Kind.Quantity ANGLE = new Kind.Quantity(Dimension.ANGLE);
  static final Kind.Quantity KELVIN = new Kind.Quantity(Dimension.TEMPERATURE);
  static final Kind.Temperature TEMPERATURE = new Kind.Temperature();
  static final Kind.Truth TRUTH = new Kind.Truth();
  static final Kind.Words WORDS = new Kind.Words();
  static final Dimension PER_TIME = Dimension.NONE.over(Dimension.TIME);
  static final Dimension ANGULAR_SPEED = Dimension.ANGLE.over(Dimension.TIME);

  private Kinds() {}

  /** The kind of a value in this unit. */
  static Kind of(Unit unit) {
    return unit.isTemperaturePoint() ? TEMPERATURE : new Kind.Quantity(unit.dimension());
  }

  /** The kind of one value, where it is a series of each element. */
  static Kind element(Kind kind) {
    return kind instanceof Kind.Series series ? series.element() : kind;
  }

  static boolean isSeries(Kind kind) {
    return kind instanceof Kind.Series;
  }

  static boolean isTemperature(Kind kind) {
    return element(kind) instanceof Kind.Temperature;
  }

  /** A temperature difference. */
  static boolean isKelvin(Kind kind) {
    return element(kind) instanceof Kind.Quantity quantity
        && quantity.dimension().withoutAngle().equals(Dimension.TEMPERATURE);
  }

  /** A pure number, an angle counted as one. */
  static boolean isNumber(Kind kind) {
    return element(kind) instanceof Kind.Quantity quantity
        && quantity.dimension().withoutAngle().isNone();
  }

  /** A single number without dimension, bare or not. */
  static boolean isPure(Kind kind) {
    return kind instanceof Kind.Quantity quantity && quantity.dimension().isNone();
  }

  /** The same kind, known to be typed as a number and nothing else. */
  static Kind bare(Kind kind) {
    if (kind instanceof Kind.Series series) {
      return new Kind.Series(bare(series.element()), series.axes(), series.labels());
    }
    return NUMBER.equals(kind) ? new Kind.Quantity(Dimension.NONE, true) : kind;
  }

  /** Of two kinds that are one but for that; what is made of both is bare where both are. */
  static Kind both(Kind left, Kind right) {
    return left instanceof Kind.Quantity a
            && right instanceof Kind.Quantity b
            && a.bare() != b.bare()
        ? new Kind.Quantity(a.dimension())
        : left;
  }
}
