package endfloat.shafts;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.numerics.Nought;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Bending of a round shaft with steps on two or more bearings. */
public final class SteppedShaft {
  private SteppedShaft() {}

  /** Whether the shear of the sections is counted. */
  public enum Shear {
    LEFT_OUT,
    COUNTED
  }

  /**
   * What a shaft under load does. Values without another word lie in the plane of the forces,
   * "side" ones in the plane of the side forces, and the resultant is the root of both squares.
   *
   * @param bearingLoads load on each bearing in the order given, positive against the forces
   * @param bearingLoadsSide its part sideways
   * @param bearingLoadsResultant of both
   * @param bearingSlopes slope of the shaft in each bearing
   * @param bearingSlopesSide its part sideways
   * @param bearingSlopesResultant of both
   * @param bearingCouples couple on each bearing that also holds the shaft against tilting; the
   *     resultant where there are side loads
   * @param deflections at each load
   * @param deflectionsSide its part sideways
   * @param deflectionsResultant of both
   * @param slopes at each load
   * @param slopesSide its part sideways
   * @param slopesResultant of both
   * @param deflectionsAt at each place asked for
   * @param deflectionsAtSide its part sideways
   * @param deflectionsAtResultant of both
   * @param slopesAt at each place asked for
   * @param slopesAtSide its part sideways
   * @param slopesAtResultant of both
   * @param momentsAt bending moment at each place asked for; the resultant where there are side
   *     loads
   * @param shearsAt shear force there, just right of the place; the resultant where there are side
   *     loads
   * @param stressesAt bending stress at the surface there, without notch factor
   * @param greatestDeflection of largest magnitude, with its sign; the resultant where there are
   *     side loads
   * @param greatestDeflectionAt where it lies, from the left end
   * @param greatestMoment bending moment of largest magnitude; positive opens the side that the
   *     forces push towards; the resultant where there are side loads
   * @param greatestMomentAt where it lies
   * @param greatestStress largest bending stress at the surface, without notch factor
   * @param greatestStressAt where it lies
   */
  public record Bending(
      @In("N") double[] bearingLoads,
      @In("N") double[] bearingLoadsSide,
      @In("N") double[] bearingLoadsResultant,
      @In("mrad") double[] bearingSlopes,
      @In("mrad") double[] bearingSlopesSide,
      @In("mrad") double[] bearingSlopesResultant,
      @In("N.m") double[] bearingCouples,
      @In("mm") double[] deflections,
      @In("mm") double[] deflectionsSide,
      @In("mm") double[] deflectionsResultant,
      @In("mrad") double[] slopes,
      @In("mrad") double[] slopesSide,
      @In("mrad") double[] slopesResultant,
      @In("mm") double[] deflectionsAt,
      @In("mm") double[] deflectionsAtSide,
      @In("mm") double[] deflectionsAtResultant,
      @In("mrad") double[] slopesAt,
      @In("mrad") double[] slopesAtSide,
      @In("mrad") double[] slopesAtResultant,
      @In("N.m") double[] momentsAt,
      @In("N") double[] shearsAt,
      @In("MPa") double[] stressesAt,
      @In("mm") double greatestDeflection,
      @In("mm") double greatestDeflectionAt,
      @In("N.m") double greatestMoment,
      @In("mm") double greatestMomentAt,
      @In("MPa") double greatestStress,
      @In("mm") double greatestStressAt) {}

  /**
   * Deflection line, slopes, bearing loads and stress of a stepped shaft in two planes. Exact beam
   * theory in every segment: E I y'' = −M, with the shear of Timoshenko where it is counted.
   *
   * <p>Forces, couples and spread loads act in the plane of the forces; side forces a quarter turn
   * on, and a load with a direction anywhere between. It holds for small slopes, a straight shaft
   * and steps that pass the whole bending moment; a sharp step is a little softer than theory,
   * fillets a little stiffer. Without shear it is true for lengths above about ten diameters. A
   * bearing is linear and the same all round; one with an offset bends the shaft by itself.
   *
   * @param segments from the left end to the right
   * @param bearings at least two, or one with a tilt stiffness
   * @param loads forces and couples
   * @param modulus of elasticity
   * @param poisson Poisson's ratio, for the shear only
   * @param shear left out or counted, with the shear coefficient of Cowper (1966) for solid and
   *     hollow rounds
   * @param at places at which deflection, slope, moment, shear and stress are wanted as well
   * @param spread loads spread over a length, even or growing
   * @return reactions, slopes, deflections and the greatest values
   * @throws RefusedException if the shaft is not held, or a slope is past 0.1 rad
   */
  @Calculates(
      source =
          "Euler and Timoshenko beam theory, spans in closed form; shear coefficient: G. R. Cowper, J. Appl. Mech. 33 (1966) 335",
      cautions = {
        "Stress is nominal: notches, fillets and keyways raise it.",
        "A bearing with clearance is not linear: its load and slope are those of a shaft without it.",
        "On a rotating shaft a stress that stands still in space alternates in the metal at every turn."
      },
      terms = {
        "shaft deflection",
        "bending of a shaft",
        "bearing reactions",
        "slope at a gear",
        "two planes",
        "overhung gear"
      })
  public static Bending steppedShaft(
      List<Segment> segments,
      List<Bearing> bearings,
      @Default("[]") List<ShaftLoad> loads,
      @In("GPa") @Range("> 0 GPa") double modulus,
      @In("1") @Range("0 .. 0.5") @Default("0.3") double poisson,
      @Default("\"left out\"") Shear shear,
      @In("mm") @Range(">= 0 mm") @Default("[]") double[] at,
      @Default("[]") List<SpreadLoad> spread) {
    ShaftBeam shaft = new ShaftBeam(segments, bearings, loads, spread);
    boolean counted = shear == Shear.COUNTED;
    BeamLine front = shaft.beam(ShaftPlane.FORCE, modulus, poisson, counted);
    BeamLine side = shaft.beam(ShaftPlane.SIDE, modulus, poisson, counted);
    double[] loaded = loads.stream().mapToDouble(ShaftLoad::at).toArray();
    double[] held = bearings.stream().mapToDouble(Bearing::at).toArray();
    double[] asked = new double[at.length];
    for (int i = 0; i < at.length; i++) {
      asked[i] = shaft.inside("place asked for", at[i]);
    }
    ShaftLine line = new ShaftLine(shaft, front, side);
    double[] reactions = reactions(shaft, front, ShaftPlane.FORCE, held);
    double[] reactionsSide = reactions(shaft, side, ShaftPlane.SIDE, held);
    Extreme deflection = line.greatestDeflection();
    Extreme moment = line.greatestMoment();
    Extreme stress = line.greatestStress();
    double most = deflection.value();
    double mostMoment = moment.value();
    double mostForce = Math.abs(mostMoment) / shaft.length();
    double mostSlope = Math.abs(most) / shaft.length();
    double[] loadsHere = Nought.snapped(reactions, mostForce);
    double[] loadsSide = Nought.snapped(reactionsSide, mostForce);
    Places atBearings = new Places(front, side, held, most, mostSlope);
    Places atLoads = new Places(front, side, loaded, most, mostSlope);
    Places atAsked = new Places(front, side, asked, most, mostSlope);
    return new Bending(
        loadsHere,
        loadsSide,
        resultant(loadsHere, loadsSide),
        atBearings.slopes(),
        atBearings.slopesSide(),
        resultant(atBearings.slopes(), atBearings.slopesSide()),
        line.bearingCouples(bearings),
        atLoads.deflections(),
        atLoads.deflectionsSide(),
        resultant(atLoads.deflections(), atLoads.deflectionsSide()),
        atLoads.slopes(),
        atLoads.slopesSide(),
        resultant(atLoads.slopes(), atLoads.slopesSide()),
        atAsked.deflections(),
        atAsked.deflectionsSide(),
        resultant(atAsked.deflections(), atAsked.deflectionsSide()),
        atAsked.slopes(),
        atAsked.slopesSide(),
        resultant(atAsked.slopes(), atAsked.slopesSide()),
        Nought.snapped(line.at(asked, BeamState::moment), mostMoment),
        Nought.snapped(line.at(asked, BeamState::shear), mostForce),
        Nought.snapped(line.stresses(asked), stress.value()),
        most,
        deflection.at(),
        mostMoment,
        moment.at(),
        stress.value(),
        stress.at());
  }

  /** Deflections and slopes in both planes at places along the shaft. */
  private record Places(
      double[] deflections, double[] deflectionsSide, double[] slopes, double[] slopesSide) {
    Places(
        BeamLine front, BeamLine side, double[] places, double mostDeflection, double mostSlope) {
      this(
          Nought.snapped(along(front, places, BeamState::deflection), mostDeflection),
          Nought.snapped(along(side, places, BeamState::deflection), mostDeflection),
          Nought.snapped(along(front, places, BeamState::slope), mostSlope),
          Nought.snapped(along(side, places, BeamState::slope), mostSlope));
    }
  }

  private static double[] reactions(
      ShaftBeam shaft, BeamLine beam, ShaftPlane plane, double[] held) {
    double[] forces = shaft.forces(plane);
    double[] reactions = new double[held.length];
    for (int i = 0; i < held.length; i++) {
      int node = shaft.node(held[i]);
      reactions[i] = beam.reaction(node, forces[node]);
    }
    return reactions;
  }

  private static double[] along(
      BeamLine beam, double[] places, ToDoubleFunction<BeamState> quantity) {
    double[] values = new double[places.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = quantity.applyAsDouble(beam.at(places[i]));
    }
    return values;
  }

  private static double[] resultant(double[] first, double[] second) {
    double[] both = new double[first.length];
    for (int i = 0; i < both.length; i++) {
      both[i] = StrictMath.hypot(first[i], second[i]);
    }
    return both;
  }
}
