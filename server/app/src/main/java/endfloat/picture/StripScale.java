package endfloat.picture;

/**
 * Where a number stands on a limit strip. Two limits always stand in the same two places, so that
 * strips under each other compare at a glance; a single limit keeps its place.
 */
final class StripScale {
  static final double LEFT = 1;
  static final double RIGHT = 147;
  private static final double LOW_AT = 34.8;
  private static final double HIGH_AT = 113.2;

  /** Where zero stands for a single upper limit: what is used up of it shows as a length. */
  private static final double ZERO_AT = 6;

  /** Half the width of the greatest mark. */
  private static final double ROOM = 6;

  private final double origin;
  private final double originAt;
  private final double unitsPerPixel;

  StripScale(LimitStrip strip) {
    LimitStrip.Limit low = strip.low();
    LimitStrip.Limit high = strip.high();
    if (low != null) {
      origin = low.at();
      originAt = LOW_AT;
      double span = high == null ? room(strip, low.at()) : high.at() - low.at();
      unitsPerPixel = (span > 0 ? span : room(strip, low.at())) / (HIGH_AT - LOW_AT);
    } else if (high.at() > 0 && strip.value() >= 0) {
      origin = high.at();
      originAt = HIGH_AT;
      unitsPerPixel = high.at() / (HIGH_AT - ZERO_AT);
    } else {
      origin = high.at();
      originAt = HIGH_AT;
      unitsPerPixel = room(strip, high.at()) / (HIGH_AT - LOW_AT);
    }
  }

  /** Enough that the value and its whisker stand clear of a single limit. */
  private static double room(LimitStrip strip, double limit) {
    double away = Math.abs(strip.value() - limit) + strip.expandedUncertainty();
    double room = 1.25 * Math.max(away, 3 * strip.expandedUncertainty());
    if (room > 0) {
      return room;
    }
    return limit == 0 ? 1 : 0.1 * Math.abs(limit);
  }

  private double unclipped(double number) {
    return originAt + (number - origin) / unitsPerPixel;
  }

  /** Place of a number, held at the ends of the strip. */
  double at(double number) {
    return Math.min(Math.max(unclipped(number), LEFT), RIGHT);
  }

  /** Place of the mark, which keeps clear of the ends. */
  double markAt(double number) {
    return Math.min(Math.max(unclipped(number), LEFT + ROOM), RIGHT - ROOM);
  }

  boolean isBeyond(double number) {
    double x = unclipped(number);
    return !(x >= LEFT + ROOM - 0.5 && x <= RIGHT - ROOM + 0.5);
  }

  boolean isOff(double number) {
    double x = unclipped(number);
    return !(x >= LEFT && x <= RIGHT);
  }
}
