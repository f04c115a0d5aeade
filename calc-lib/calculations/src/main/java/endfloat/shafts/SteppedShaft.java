package endfloat.shafts;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Bending of a round shaft with steps on two or more bearings. */
public final class SteppedShaft {
  private SteppedShaft() {}

  /** Whether the shear of the sections is counted. */
  public enum Shear {
    LEFT_OUT,
    COUNTED
  }

  /**
   * What a shaft under load does.
   *
   * @param bearingLoads load on each bearing in the order given, positive against the forces
   * @param bearingSlopes slope of the shaft in each bearing
   * @param deflections at each load
   * @param slopes at each load
   * @param deflectionsAt at each place asked for
   * @param slopesAt at each place asked for
   * @param greatestDeflection of largest magnitude, with its sign
   * @param greatestDeflectionAt where it lies, from the left end
   * @param greatestMoment bending moment of largest magnitude; positive opens the side that the
   *     forces push towards
   * @param greatestMomentAt where it lies
   * @param greatestStress largest bending stress at the surface, without notch factor
   * @param greatestStressAt where it lies
   */
  public record Bending(
      @In("N") double[] bearingLoads,
      @In("mrad") double[] bearingSlopes,
      @In("mm") double[] deflections,
      @In("mrad") double[] slopes,
      @In("mm") double[] deflectionsAt,
      @In("mrad") double[] slopesAt,
      @In("mm") double greatestDeflection,
      @In("mm") double greatestDeflectionAt,
      @In("N.m") double greatestMoment,
      @In("mm") double greatestMomentAt,
      @In("MPa") double greatestStress,
      @In("mm") double greatestStressAt) {}

  /**
   * Deflection line, slopes, bearing loads and stress of a stepped shaft in one plane. Exact beam
   * theory in every segment: E I y'' = −M, with the shear of Timoshenko where it is counted. Work
   * each plane by itself and add by {@code hypot}.
   *
   * <p>It holds for small slopes, a straight shaft and steps that pass the whole bending moment; a
   * sharp step is a little softer than theory, fillets a little stiffer. Without shear it is true
   * for lengths above about ten diameters.
   *
   * @param segments from the left end to the right
   * @param bearings at least two, or one with a tilt stiffness
   * @param loads forces and couples
   * @param modulus of elasticity
   * @param poisson Poisson's ratio, for the shear only
   * @param shear left out or counted, with the shear coefficient of Cowper (1966) for solid and
   *     hollow rounds
   * @param at places at which deflection and slope are wanted as well
   * @return reactions, slopes, deflections and the greatest values
   */
  @Calculates(
      source =
          "Euler and Timoshenko beam theory, spans in closed form; shear coefficient: G. R. Cowper, J. Appl. Mech. 33 (1966) 335",
      cautions = {
        "Stress is nominal: notches, fillets and keyways raise it.",
        "One plane: gear forces act in two; a bearing load is the resultant of both."
      },
      terms = {"shaft deflection", "bending of a shaft", "bearing reactions", "slope at a gear"})
  public static Bending steppedShaft(
      List<Segment> segments,
      List<Bearing> bearings,
      List<ShaftLoad> loads,
      @In("GPa") @Range("> 0 GPa") double modulus,
      @In("1") @Range("0 .. 0.5") @Default("0.3") double poisson,
      @Default("\"left out\"") Shear shear,
      @In("mm") @Range(">= 0 mm") @Default("[]") double[] at) {
    double length = segments.stream().mapToDouble(Segment::length).sum();
    double[] nodes = nodes(segments, bearings, loads, length);
    BeamLine beam =
        new BeamLine(
            spans(segments, nodes, modulus, poisson, shear),
            supports(bearings, nodes),
            forces(loads, nodes),
            couples(loads, nodes));
    double[] placesLoaded = loads.stream().mapToDouble(ShaftLoad::at).toArray();
    double[] placesHeld = bearings.stream().mapToDouble(Bearing::at).toArray();
    for (double place : at) {
      inside("at", place, length);
    }
    double[] forces = forces(loads, nodes);
    double[] held = new double[bearings.size()];
    for (int i = 0; i < held.length; i++) {
      int node = nearest(nodes, placesHeld[i]);
      held[i] = beam.reaction(node, forces[node]);
    }
    Extreme deflection = Extreme.of(beam, BeamLine.State::deflection);
    Extreme moment = Extreme.of(beam, BeamLine.State::moment);
    Extreme stress = greatestStress(segments, beam);
    return new Bending(
        held,
        slopes(beam, placesHeld),
        deflections(beam, placesLoaded),
        slopes(beam, placesLoaded),
        deflections(beam, at),
        slopes(beam, at),
        deflection.value(),
        deflection.at(),
        moment.value(),
        moment.at(),
        stress.value(),
        stress.at());
  }

  private static double[] nodes(
      List<Segment> segments, List<Bearing> bearings, List<ShaftLoad> loads, double length) {
    TreeSet<Double> places = new TreeSet<>();
    places.add(0.0);
    double x = 0;
    for (Segment segment : segments) {
      if (segment.inner() >= segment.outer()) {
        throw new RefusedException(
            "A segment's hole is as large as the shaft: inner must be less than outer.");
      }
      x += segment.length();
      places.add(x);
    }
    for (Bearing bearing : bearings) {
      inside("bearing", bearing.at(), length);
      places.add(Math.min(bearing.at(), length));
    }
    for (ShaftLoad load : loads) {
      inside("shaft_load", load.at(), length);
      places.add(Math.min(load.at(), length));
    }
    List<Double> kept = new ArrayList<>();
    for (double place : places) {
      if (kept.isEmpty() || place - kept.get(kept.size() - 1) > 1e-9 * length) {
        kept.add(place);
      }
    }
    return kept.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static void inside(String what, double place, double length) {
    if (place > length * (1 + 1e-9)) {
      throw new RefusedException(
          String.format(
              java.util.Locale.ROOT,
              "A %s stands at %.6g mm, beyond the end of the shaft at %.6g mm.",
              what.replace('_', ' '),
              place * 1e3,
              length * 1e3));
    }
  }

  private static int nearest(double[] nodes, double place) {
    int best = 0;
    for (int i = 1; i < nodes.length; i++) {
      if (Math.abs(nodes[i] - place) < Math.abs(nodes[best] - place)) {
        best = i;
      }
    }
    return best;
  }

  private static List<Span> spans(
      List<Segment> segments, double[] nodes, double modulus, double poisson, Shear shear) {
    List<Span> spans = new ArrayList<>();
    for (int i = 0; i < nodes.length - 1; i++) {
      Segment segment = segmentAt(segments, (nodes[i] + nodes[i + 1]) / 2);
      double shearStiffness =
          shear == Shear.LEFT_OUT
              ? Double.POSITIVE_INFINITY
              : cowper(segment.inner() / segment.outer(), poisson)
                  * modulus
                  / (2 * (1 + poisson))
                  * segment.area();
      spans.add(
          new Span(nodes[i + 1] - nodes[i], modulus * segment.secondMoment(), shearStiffness, 0));
    }
    return spans;
  }

  private static Segment segmentAt(List<Segment> segments, double x) {
    double end = 0;
    for (Segment segment : segments) {
      end += segment.length();
      if (x < end) {
        return segment;
      }
    }
    return segments.get(segments.size() - 1);
  }

  /** Shear coefficient of a round section by Cowper; m is the ratio of the diameters. */
  static double cowper(double m, double poisson) {
    double sum = (1 + m * m) * (1 + m * m);
    return 6 * (1 + poisson) * sum / ((7 + 6 * poisson) * sum + (20 + 12 * poisson) * m * m);
  }

  private static List<BeamLine.Support> supports(List<Bearing> bearings, double[] nodes) {
    List<BeamLine.Support> supports = new ArrayList<>();
    for (int i = 0; i < nodes.length; i++) {
      supports.add(BeamLine.Support.NONE);
    }
    for (Bearing bearing : bearings) {
      int node = nearest(nodes, bearing.at());
      if (supports.get(node) != BeamLine.Support.NONE) {
        throw new RefusedException(
            "Two bearings stand at the same place; give one with the stiffness of both.");
      }
      supports.set(node, bearing.support());
    }
    return supports;
  }

  private static double[] forces(List<ShaftLoad> loads, double[] nodes) {
    double[] forces = new double[nodes.length];
    loads.forEach(load -> forces[nearest(nodes, load.at())] += load.force());
    return forces;
  }

  private static double[] couples(List<ShaftLoad> loads, double[] nodes) {
    double[] couples = new double[nodes.length];
    loads.forEach(load -> couples[nearest(nodes, load.at())] += load.couple());
    return couples;
  }

  private static double[] deflections(BeamLine beam, double[] places) {
    double[] values = new double[places.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = beam.at(places[i]).deflection();
    }
    return values;
  }

  private static double[] slopes(BeamLine beam, double[] places) {
    double[] values = new double[places.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = beam.at(places[i]).slope();
    }
    return values;
  }

  private static Extreme greatestStress(List<Segment> segments, BeamLine beam) {
    double[] nodes = beam.nodes();
    Extreme best = new Extreme(0, 0);
    for (int i = 0; i < beam.spanCount(); i++) {
      Segment segment = segmentAt(segments, (nodes[i] + nodes[i + 1]) / 2);
      double modulus = segment.secondMoment() / (segment.outer() / 2);
      // Without a distributed load the moment runs straight between nodes, so its ends are its
      // extremes.
      for (double s : new double[] {0, beam.span(i).length()}) {
        double stress = Math.abs(beam.within(i, s).moment()) / modulus;
        if (stress > best.value()) {
          best = new Extreme(stress, nodes[i] + s);
        }
      }
    }
    return best;
  }
}
