package endfloat.shafts;

import java.util.List;

/**
 * The spans between two supports, or between a support and an end, as one elastic piece. Steps and
 * loads within it are passed by carrying the state along, so a step a hair's breadth from a load
 * costs no figures.
 */
final class Bay {
  private final int first;
  private final int last;
  private final List<Span> spans;
  private final double[] forces;
  private final double[] couples;
  private final double length;
  private final BeamState byMoment;
  private final BeamState byShear;
  private final BeamState byLoad;
  private final double flexibility;

  /**
   * @param first its first span, likewise its last
   * @param spans of the whole beam
   * @param forces on the nodes; those of inner nodes count here [N]
   * @param couples likewise [N m]
   */
  Bay(int first, int last, List<Span> spans, double[] forces, double[] couples) {
    this.first = first;
    this.last = last;
    this.spans = spans;
    this.forces = forces;
    this.couples = couples;
    byLoad = carried(new BeamState(0, 0, 0, 0), null);
    byMoment = unloaded(new BeamState(0, 0, 1, 0));
    byShear = unloaded(new BeamState(0, 0, 0, 1));
    length = spans.subList(first, last + 1).stream().mapToDouble(Span::length).sum();
    flexibility = byMoment.deflection() * byShear.slope() - byShear.deflection() * byMoment.slope();
  }

  /** Carries a state to the right end, keeping those at the start of each span. */
  BeamState carried(BeamState start, BeamState[] starts) {
    BeamState state = start;
    for (int i = first; i <= last; i++) {
      if (i > first) {
        state = state.past(forces[i], couples[i]);
      }
      if (starts != null) {
        starts[i] = state;
      }
      state = state.along(spans.get(i), spans.get(i).length());
    }
    return state;
  }

  private BeamState unloaded(BeamState start) {
    BeamState state = start;
    for (int i = first; i <= last; i++) {
      Span span = spans.get(i);
      Span bare = new Span(span.length(), span.bending(), span.shear(), 0, 0);
      state = state.along(bare, span.length());
    }
    return state;
  }

  /** The state at the left end when both ends stand where they are said to. */
  BeamState start(double y, double slope, double yEnd, double slopeEnd) {
    return solved(y, slope, yEnd - byLoad.deflection(), slopeEnd - byLoad.slope());
  }

  private BeamState solved(double y, double slope, double yEnd, double slopeEnd) {
    double sag = yEnd - y - slope * length;
    double turn = slopeEnd - slope;
    return new BeamState(
        y,
        slope,
        (sag * byShear.slope() - byShear.deflection() * turn) / flexibility,
        (byMoment.deflection() * turn - byMoment.slope() * sag) / flexibility);
  }

  /**
   * Forces and couples on its ends for a movement of its ends and no load: force left, couple left,
   * force right, couple right.
   */
  double[] endForces(double y, double slope, double yEnd, double slopeEnd) {
    BeamState start = solved(y, slope, yEnd, slopeEnd);
    return new double[] {
      -start.shear(), start.moment(), start.shear(), -(start.moment() + start.shear() * length)
    };
  }

  /** The same for its loads with both ends held fast. */
  double[] heldForces() {
    BeamState start = start(0, 0, 0, 0);
    return new double[] {
      -start.shear(),
      start.moment(),
      start.shear() + byLoad.shear(),
      -(start.moment() + start.shear() * length + byLoad.moment())
    };
  }
}
