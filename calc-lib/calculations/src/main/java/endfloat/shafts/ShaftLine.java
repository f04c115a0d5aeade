package endfloat.shafts;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** Both planes of a bent shaft together: with the sign in one plane, the resultant in two. */
final class ShaftLine {
  private final ShaftBeam shaft;
  private final BeamLine front;
  private final BeamLine side;
  private final boolean onePlane;

  ShaftLine(ShaftBeam shaft, BeamLine front, BeamLine side) {
    this.shaft = shaft;
    this.front = front;
    this.side = side;
    onePlane = !shaft.bendsSideways();
  }

  double[] at(double[] places, ToDoubleFunction<BeamState> quantity) {
    double[] values = new double[places.length];
    for (int i = 0; i < values.length; i++) {
      int span = front.spanAt(places[i]);
      values[i] = both(quantity).at(span, places[i] - front.nodes()[span]);
    }
    return values;
  }

  /** At a step the higher of the two stresses beside it. */
  double[] stresses(double[] places) {
    double[] values = new double[places.length];
    double[] nodes = front.nodes();
    for (int i = 0; i < values.length; i++) {
      int span = front.spanAt(places[i]);
      double s = places[i] - nodes[span];
      values[i] = stress(span, s);
      if (span > 0 && s <= 1e-9 * shaft.length()) {
        values[i] = Math.max(values[i], stress(span - 1, nodes[span] - nodes[span - 1]));
      }
    }
    return values;
  }

  Extreme greatestDeflection() {
    return Extreme.of(
        front,
        both(BeamState::deflection),
        (i, s) ->
            front.within(i, s).deflection() * front.rise(i, s)
                + side.within(i, s).deflection() * side.rise(i, s));
  }

  Extreme greatestMoment() {
    return Extreme.of(front, both(BeamState::moment), rise(BeamState::moment, BeamState::shear));
  }

  Extreme greatestStress() {
    return Extreme.of(front, this::stress, rise(BeamState::moment, BeamState::shear));
  }

  double[] bearingCouples(List<Bearing> bearings) {
    double[] couples = new double[bearings.size()];
    for (int i = 0; i < couples.length; i++) {
      Bearing bearing = bearings.get(i);
      double turn =
          onePlane
              ? front.at(bearing.at()).slope()
              : StrictMath.hypot(front.at(bearing.at()).slope(), side.at(bearing.at()).slope());
      couples[i] = bearing.tiltStiffness() * turn;
    }
    return couples;
  }

  private double stress(int span, double s) {
    Segment segment = shaft.segmentOf(span);
    return Math.abs(both(BeamState::moment).at(span, s))
        * segment.outer()
        / (2 * segment.secondMoment());
  }

  private Extreme.Along both(ToDoubleFunction<BeamState> quantity) {
    if (onePlane) {
      return (i, s) -> quantity.applyAsDouble(front.within(i, s));
    }
    return (i, s) ->
        StrictMath.hypot(
            quantity.applyAsDouble(front.within(i, s)), quantity.applyAsDouble(side.within(i, s)));
  }

  /** Of the square, which turns where the quantity itself turns. */
  private Extreme.Along rise(
      ToDoubleFunction<BeamState> quantity, ToDoubleFunction<BeamState> derivative) {
    return (i, s) -> {
      BeamState a = front.within(i, s);
      BeamState b = side.within(i, s);
      return quantity.applyAsDouble(a) * derivative.applyAsDouble(a)
          + quantity.applyAsDouble(b) * derivative.applyAsDouble(b);
    };
  }
}
