package endfloat.shafts;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.numerics.Nought;
import endfloat.units.Uncertain;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** A straight beam of one section: the cases of the beam tables, by end conditions and loads. */
public final class Beam {
  private Beam() {}

  /**
   * What a loaded beam does.
   *
   * @param deflection at the place asked for, positive in the direction of the loads
   * @param slope there, dy/dx from the left end
   * @param moment bending moment there; positive opens the side that the loads push towards
   *     (sagging)
   * @param shear shear force there, just right of the place
   * @param stress bending stress there
   * @param reactionLeft force of the left support, positive against the loads
   * @param reactionRight force of the right support
   * @param momentLeft bending moment at the left end; negative where a fixed end hogs
   * @param momentRight bending moment at the right end
   * @param deflectionLeft of the left end
   * @param deflectionRight of the right end
   * @param slopeLeft at the left end
   * @param slopeRight at the right end
   * @param greatestDeflection of largest magnitude, with its sign
   * @param greatestDeflectionAt where it lies, from the left end
   * @param greatestMoment of largest magnitude, with its sign
   * @param greatestMomentAt where it lies
   * @param greatestStress largest bending stress
   */
  public record Bent(
      @In("mm") Uncertain deflection,
      @In("mrad") Uncertain slope,
      @In("N.m") Uncertain moment,
      @In("N") Uncertain shear,
      @In("MPa") Uncertain stress,
      @In("N") double reactionLeft,
      @In("N") double reactionRight,
      @In("N.m") double momentLeft,
      @In("N.m") double momentRight,
      @In("mm") double deflectionLeft,
      @In("mm") double deflectionRight,
      @In("mrad") double slopeLeft,
      @In("mrad") double slopeRight,
      @In("mm") double greatestDeflection,
      @In("mm") double greatestDeflectionAt,
      @In("N.m") double greatestMoment,
      @In("mm") double greatestMomentAt,
      @In("MPa") Uncertain greatestStress) {}

  /**
   * Deflection, slope, moment, shear and stress of a beam of one section, for any pair of ends and
   * a force, a spread load and a couple anywhere: {@code E I y'' = −M}, solved exactly.
   *
   * <p>A cantilever is {@code left: "fixed", right: "free"}; a propped one {@code left: "fixed",
   * right: "supported"}. The loads add up; further ones go into the lists. A bar that overhangs its
   * supports is a stepped_shaft. It holds for small slopes and for lengths above about ten depths,
   * where shear adds little.
   *
   * @param length L
   * @param left how the left end is held: free, supported, fixed or guided (moves but cannot turn)
   * @param right how the right end is held
   * @param modulus E, of elasticity
   * @param diameter of a round section
   * @param bore of a hollow round section
   * @param width of a rectangular section, across the load
   * @param depth of a rectangular section, along the load
   * @param secondMoment I, of any other section
   * @param sectionModulus Z, of that section, for the stress
   * @param force P, at one place
   * @param forceAt a, where the force acts, from the left end; not given = in the middle
   * @param spread w, load per length; even unless spread_end is given
   * @param spreadEnd load per length at the far end of the spread load, for a trapezium or triangle
   * @param spreadFrom where the spread load begins, from the left end
   * @param spreadTo where it ends; not given = at the right end
   * @param couple M₀, at one place; positive raises the slope
   * @param coupleAt where the couple acts, from the left end
   * @param at x, place at which deflection, slope, moment, shear and stress are wanted
   * @param loads further forces and couples, in the plane of the beam
   * @param spreads further spread loads
   * @return the line at x, reactions, end values and greatest values
   * @throws RefusedException if the ends do not hold the beam, no section is given, or a slope is
   *     past 0.1 rad
   */
  @Calculates(
      source =
          "Euler beam theory in closed form; cases of Roark's Formulas for Stress and Strain, 7th"
              + " ed., Table 8.1",
      cautions = {
        "A real fixed end gives a little: truth lies between fixed and supported.",
        "Stress is nominal: notches and fillets raise it."
      },
      terms = {
        "cantilever",
        "simply supported beam",
        "fixed beam",
        "encastre",
        "propped cantilever",
        "guided",
        "uniform load",
        "triangular load"
      })
  public static Bent beam(
      @In("mm") @Range("> 0 mm") double length,
      BeamEnd left,
      BeamEnd right,
      @In("GPa") @Range("> 0 GPa") double modulus,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double diameter,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double bore,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double width,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double depth,
      @In("mm^4") @Range("> 0 mm^4") @Default(Default.NOT_GIVEN) double secondMoment,
      @In("mm^3") @Range("> 0 mm^3") @Default(Default.NOT_GIVEN) double sectionModulus,
      @In("N") @Default("0 N") double force,
      @In("mm") @Range(">= 0 mm") @Default(Default.NOT_GIVEN) double forceAt,
      @In("N/mm") @Default("0 N/mm") double spread,
      @In("N/mm") @Default(Default.NOT_GIVEN) double spreadEnd,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double spreadFrom,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double spreadTo,
      @In("N.m") @Default("0 N.m") double couple,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double coupleAt,
      @In("mm") @Range(">= 0 mm") @Default(Default.NOT_GIVEN) double at,
      @Default("[]") List<ShaftLoad> loads,
      @Default("[]") List<SpreadLoad> spreads) {
    BeamSection section =
        BeamSection.of(diameter, bore, width, depth, secondMoment, sectionModulus);
    double forcePlace = Double.isNaN(forceAt) ? length / 2 : inside("force_at", forceAt, length);
    double spreadStop = Double.isNaN(spreadTo) ? length : inside("spread_to", spreadTo, length);
    List<ShaftLoad> all = new ArrayList<>(loads);
    all.add(new ShaftLoad(forcePlace, force, 0, 0, 0, 0));
    all.add(new ShaftLoad(inside("couple_at", coupleAt, length), 0, couple, 0, 0, 0));
    List<SpreadLoad> allSpread = new ArrayList<>(spreads);
    allSpread.add(new SpreadLoad(spread, spreadFrom, spreadStop, spreadEnd, 0));
    double[] nodes = nodes(all, allSpread, length);
    int last = nodes.length - 1;
    double[] forces = new double[nodes.length];
    double[] couples = new double[nodes.length];
    for (ShaftLoad load : all) {
      forces[Nodes.nearest(nodes, load.at())] += load.force(ShaftPlane.FORCE);
      couples[Nodes.nearest(nodes, load.at())] += load.couple(ShaftPlane.FORCE);
    }
    BeamLine beam =
        new BeamLine(
            spans(nodes, allSpread, modulus * section.secondMoment()),
            supports(nodes.length, left, right),
            forces,
            couples);
    BeamState leftEnd = beam.within(0, 0);
    BeamState rightEnd = beam.within(last - 1, nodes[last] - nodes[last - 1]);
    Extreme deflection = Extreme.of(beam, (i, s) -> beam.within(i, s).deflection(), beam::rise);
    Extreme moment =
        Extreme.of(beam, (i, s) -> beam.within(i, s).moment(), (i, s) -> beam.within(i, s).shear());
    BeamState there = Double.isNaN(at) ? null : beam.at(inside("at", at, length));
    double most = deflection.value();
    double mostMoment = moment.value();
    double mostSlope =
        Math.max(
            Math.abs(most) / length,
            Math.max(Math.abs(leftEnd.slope()), Math.abs(rightEnd.slope())));
    double mostForce =
        Math.abs(mostMoment) / length + Math.abs(leftEnd.shear()) + Math.abs(rightEnd.shear());
    boolean here = there != null;
    return new Bent(
        asked(here ? Nought.snapped(there.deflection(), most) : Double.NaN),
        asked(here ? Nought.snapped(there.slope(), mostSlope) : Double.NaN),
        asked(here ? Nought.snapped(there.moment(), mostMoment) : Double.NaN),
        asked(here ? Nought.snapped(there.shear(), mostForce) : Double.NaN),
        here ? stress(section, Nought.snapped(there.moment(), mostMoment)) : asked(Double.NaN),
        Nought.snapped(beam.reaction(0, forces[0]), mostForce),
        Nought.snapped(beam.reaction(last, forces[last]), mostForce),
        Nought.snapped(leftEnd.moment(), mostMoment),
        Nought.snapped(rightEnd.moment(), mostMoment),
        Nought.snapped(leftEnd.deflection(), most),
        Nought.snapped(rightEnd.deflection(), most),
        Nought.snapped(leftEnd.slope(), mostSlope),
        Nought.snapped(rightEnd.slope(), mostSlope),
        most,
        deflection.at(),
        mostMoment,
        moment.at(),
        stress(section, mostMoment));
  }

  private static Uncertain asked(double value) {
    return Double.isNaN(value)
        ? Uncertain.absent("give at, the place where it is wanted")
        : new Uncertain(value, 0);
  }

  private static Uncertain stress(BeamSection section, double moment) {
    return Double.isNaN(section.modulus())
        ? Uncertain.absent("the stress needs section_modulus beside second_moment")
        : new Uncertain(Math.abs(moment) / section.modulus(), 0);
  }

  private static double inside(String what, double place, double length) {
    if (place > length * (1 + 1e-9)) {
      throw new RefusedException(what + " lies beyond the right end of the beam.");
    }
    return Math.min(place, length);
  }

  private static double[] nodes(List<ShaftLoad> loads, List<SpreadLoad> spreads, double length) {
    TreeSet<Double> places = new TreeSet<>(List.of(0.0, length));
    for (ShaftLoad load : loads) {
      if (load.side() != 0 || load.coupleSide() != 0 || load.direction() != 0) {
        throw new RefusedException("A beam bends in one plane; stepped_shaft takes side loads.");
      }
      places.add(inside("a load", load.at(), length));
    }
    for (SpreadLoad load : spreads) {
      if (!(load.to() > load.from())) {
        throw new RefusedException("The spread load begins before it ends, and on the beam.");
      }
      places.add(inside("a spread load", load.from(), length));
      places.add(inside("a spread load", load.to(), length));
    }
    return Nodes.of(places, length);
  }

  private static List<Span> spans(double[] nodes, List<SpreadLoad> spreads, double bending) {
    List<Span> spans = new ArrayList<>();
    for (int i = 0; i < nodes.length - 1; i++) {
      double middle = (nodes[i] + nodes[i + 1]) / 2;
      double start = 0;
      double end = 0;
      for (SpreadLoad load : spreads) {
        start += load.at(ShaftPlane.FORCE, nodes[i], middle);
        end += load.at(ShaftPlane.FORCE, nodes[i + 1], middle);
      }
      spans.add(new Span(nodes[i + 1] - nodes[i], bending, Double.POSITIVE_INFINITY, start, end));
    }
    return spans;
  }

  private static List<BeamLine.Support> supports(int nodes, BeamEnd left, BeamEnd right) {
    List<BeamLine.Support> supports = new ArrayList<>();
    for (int i = 0; i < nodes; i++) {
      supports.add(BeamLine.Support.NONE);
    }
    supports.set(0, left.support());
    supports.set(nodes - 1, right.support());
    return supports;
  }
}
