package endfloat.shafts;

import endfloat.definition.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/**
 * A stepped shaft laid out as beams: the nodes at steps, bearings and loads, and a beam a plane.
 */
final class ShaftBeam {
  private final List<Segment> segments;
  private final List<Bearing> bearings;
  private final List<ShaftLoad> loads;
  private final List<SpreadLoad> spreads;
  private final double length;
  private final double[] nodes;

  ShaftBeam(
      List<Segment> segments,
      List<Bearing> bearings,
      List<ShaftLoad> loads,
      List<SpreadLoad> spreads) {
    if (segments.isEmpty()) {
      throw new RefusedException("The shaft has no segment: segment(length: 40 mm, outer: 30 mm).");
    }
    this.segments = segments;
    this.bearings = bearings;
    this.loads = loads;
    this.spreads = spreads;
    length = segments.stream().mapToDouble(Segment::length).sum();
    nodes = laidOut();
  }

  double length() {
    return length;
  }

  /** Whether anything acts outside the plane of the forces. */
  boolean bendsSideways() {
    return loads.stream()
            .anyMatch(l -> l.force(ShaftPlane.SIDE) != 0 || l.couple(ShaftPlane.SIDE) != 0)
        || spreads.stream().anyMatch(s -> s.direction() != 0)
        || bearings.stream().anyMatch(b -> b.offsetSide() != 0);
  }

  /**
   * The beam of one plane.
   *
   * @param shear whether the shear of the sections is counted
   */
  BeamLine beam(ShaftPlane plane, double modulus, double poisson, boolean shear) {
    List<Span> spans = new ArrayList<>();
    for (int i = 0; i < nodes.length - 1; i++) {
      Segment segment = segmentOf(i);
      double shearStiffness =
          shear
              ? cowper(segment.inner() / segment.outer(), poisson)
                  * modulus
                  / (2 * (1 + poisson))
                  * segment.area()
              : Double.POSITIVE_INFINITY;
      double middle = (nodes[i] + nodes[i + 1]) / 2;
      double start = 0;
      double end = 0;
      for (SpreadLoad spread : spreads) {
        start += spread.at(plane, nodes[i], middle);
        end += spread.at(plane, nodes[i + 1], middle);
      }
      spans.add(
          new Span(
              nodes[i + 1] - nodes[i],
              modulus * segment.secondMoment(),
              shearStiffness,
              start,
              end));
    }
    return new BeamLine(spans, supports(plane), forces(plane), couples(plane));
  }

  /** The node of a place that was laid out as one. */
  int node(double place) {
    return Nodes.nearest(nodes, place);
  }

  /** Forces on the nodes [N]. */
  double[] forces(ShaftPlane plane) {
    double[] forces = new double[nodes.length];
    loads.forEach(load -> forces[node(load.at())] += load.force(plane));
    return forces;
  }

  private double[] couples(ShaftPlane plane) {
    double[] couples = new double[nodes.length];
    loads.forEach(load -> couples[node(load.at())] += load.couple(plane));
    return couples;
  }

  Segment segmentOf(int span) {
    double middle = (nodes[span] + nodes[span + 1]) / 2;
    double end = 0;
    for (Segment segment : segments) {
      end += segment.length();
      if (middle < end) {
        return segment;
      }
    }
    return segments.get(segments.size() - 1);
  }

  private double[] laidOut() {
    TreeSet<Double> places = new TreeSet<>();
    places.add(0.0);
    double x = 0;
    for (Segment segment : segments) {
      segment.holdHollow();
      x += segment.length();
      places.add(x);
    }
    for (Bearing bearing : bearings) {
      places.add(inside("bearing", bearing.at()));
    }
    for (ShaftLoad load : loads) {
      places.add(inside("shaft load", load.at()));
    }
    for (SpreadLoad spread : spreads) {
      if (!(spread.to() > spread.from())) {
        throw new RefusedException("A spread load begins before it ends: from is less than to.");
      }
      places.add(inside("spread load", spread.from()));
      places.add(inside("spread load", spread.to()));
    }
    return Nodes.of(places, length);
  }

  /** A place on the shaft; the rounding of the sum of its segments is no end beyond the end. */
  double inside(String what, double place) {
    if (place > length * (1 + 1e-9)) {
      throw new RefusedException(
          String.format(
              Locale.ROOT,
              "A %s stands at %.6g mm, beyond the end of the shaft at %.6g mm.",
              what,
              place * 1e3,
              length * 1e3));
    }
    return Math.min(place, length);
  }

  private List<BeamLine.Support> supports(ShaftPlane plane) {
    List<BeamLine.Support> supports = new ArrayList<>();
    for (int i = 0; i < nodes.length; i++) {
      supports.add(BeamLine.Support.NONE);
    }
    for (Bearing bearing : bearings) {
      int node = node(bearing.at());
      if (!supports.get(node).equals(BeamLine.Support.NONE)) {
        throw new RefusedException(
            "Two bearings stand at the same place; give one with the stiffness of both.");
      }
      supports.set(node, bearing.support(plane));
    }
    return supports;
  }

  /** Shear coefficient of a round section by Cowper; m is the ratio of the diameters. */
  static double cowper(double m, double poisson) {
    double sum = (1 + m * m) * (1 + m * m);
    return 6 * (1 + poisson) * sum / ((7 + 6 * poisson) * sum + (20 + 12 * poisson) * m * m);
  }
}
