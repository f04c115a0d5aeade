package endfloat.plates;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/** Round plates with and without a hole. */
public final class RoundPlate {
  private static final String SOURCE =
      "exact thin-plate (Kirchhoff) solution; cases of Roark's Formulas for Stress and Strain, 7th ed., Table 11.2";
  private static final String SMALL =
      "Flat plate without ribs; true while the deflection stays below half the thickness and the plate is thin against its width; theory says whether it does.";
  private static final String EDGES =
      "A bolted rim lies between fixed and supported: work out both.";

  private static final String TOO_SMALL =
      "under a force on a circle smaller than half the thickness thin-plate theory makes the moment"
          + " too large: give half the thickness as loaded_radius, or more";

  private RoundPlate() {}

  /**
   * Deflection, slopes, moments and stress of a round plate with a central hole under loads that
   * are the same all round.
   *
   * <p>Deflection counts in the direction of the load; a moment is positive where it would compress
   * the loaded face. Each edge may be free, supported, fixed or guided (it moves but cannot turn: a
   * rigid hub or rim). Forces go in by the inner edge, the outer edge or a circle between; couples
   * likewise, per length of their circle.
   *
   * @param outerRadius a
   * @param innerRadius b, of the hole
   * @param thickness t
   * @param modulus of elasticity
   * @param poisson Poisson's ratio
   * @param outerEdge how the outer edge is held
   * @param innerEdge how the inner edge is held; "guided" is a rigid hub
   * @param force carried evenly by the inner edge
   * @param ringForce carried evenly by a circle between the edges, or by the outer edge
   * @param ringRadius of that circle, or the radius from which the pressure acts; not given = the
   *     inner edge
   * @param pressure uniform, from the ring radius outwards
   * @param pressureRise added to the pressure, growing evenly from zero at the ring radius to this
   *     at the outer edge
   * @param ringCouple per length of the circle; raises the radial moment beyond it
   * @param innerCouple radial moment put on a free or supported inner edge, per length
   * @param outerCouple radial moment put on a free or supported outer edge, per length
   * @param at radius at which deflection, slope, moments and stress are wanted
   * @return deflections, slopes, moments, stress
   */
  @Calculates(
      source = SOURCE + ", cases 1 to 3 and 5",
      cautions = {SMALL, EDGES},
      terms = {"annular plate", "end wall", "diaphragm", "cover", "bearing panel"})
  public static PlateResult annularPlate(
      @In("mm") @Range("> 0 mm") double outerRadius,
      @In("mm") @Range("> 0 mm") double innerRadius,
      @In("mm") @Range("> 0 mm") double thickness,
      @In("GPa") @Range("> 0 GPa") double modulus,
      @In("1") @Range("0 .. 0.49") @Default("0.3") double poisson,
      @Default("\"fixed\"") Edge outerEdge,
      @Default("\"free\"") Edge innerEdge,
      @In("N") @Default("0 N") double force,
      @In("N") @Default("0 N") double ringForce,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double ringRadius,
      @In("MPa") @Default("0 MPa") double pressure,
      @In("MPa") @Default("0 MPa") double pressureRise,
      @In("N.mm/mm") @Default("0 N.mm/mm") double ringCouple,
      @In("N.mm/mm") @Default("0 N.mm/mm") double innerCouple,
      @In("N.mm/mm") @Default("0 N.mm/mm") double outerCouple,
      @In("mm") @Range(">= 0 mm") @Default(Default.NOT_GIVEN) double at) {
    if (innerRadius >= outerRadius) {
      throw new RefusedException(
          "The hole is as large as the plate: inner_radius must be less than outer_radius.");
    }
    if (force != 0 && !moves(innerEdge)) {
      throw new RefusedException(
          "A force at an inner edge that cannot move bends nothing; leave the edge free or guided.");
    }
    if ((innerCouple != 0 && !turns(innerEdge)) || (outerCouple != 0 && !turns(outerEdge))) {
      throw new RefusedException(
          "A couple on an edge that cannot turn bends nothing; leave the edge free or supported.");
    }
    double join = Double.isNaN(ringRadius) ? innerRadius : ringRadius;
    if (join < innerRadius || join > outerRadius) {
      throw new RefusedException("ring_radius lies between inner_radius and outer_radius.");
    }
    if (join == innerRadius && ringForce != 0 && !moves(innerEdge)) {
      throw new RefusedException(
          "A ring force at an inner edge that cannot move bends nothing: give ring_radius, where it"
              + " acts.");
    }
    boolean atRim = join == outerRadius;
    if (atRim && (pressure != 0 || pressureRise != 0 || !moves(outerEdge) || ringCouple != 0)) {
      throw new RefusedException(
          "A ring at the outer edge carries a force there, and only where that edge can move; give"
              + " a couple there as outer_couple, and a pressure without ring_radius.");
    }
    if (atRim) {
      join = innerRadius;
    }
    PlateField.Plate plate =
        new PlateField.Plate(
            outerRadius,
            innerRadius,
            stiffness(modulus, thickness, poisson),
            poisson,
            outerEdge,
            innerEdge);
    PlateField.Loads loads =
        new PlateField.Loads(
            0,
            pressure,
            pressureRise / (outerRadius - join),
            atRim ? 0 : ringForce / (2 * StrictMath.PI * join),
            ringCouple,
            join,
            force,
            atRim ? ringForce : 0,
            innerCouple,
            outerCouple);
    return PlateResult.of(
        new PlateField(plate, loads), plate, loads, thickness, PlateResult.Beneath.NOWHERE, at);
  }

  private static boolean moves(Edge edge) {
    return edge == Edge.FREE || edge == Edge.GUIDED;
  }

  private static boolean turns(Edge edge) {
    return edge == Edge.FREE || edge == Edge.SUPPORTED;
  }

  /**
   * Deflection, slopes, moments and stress of a round plate without a hole.
   *
   * <p>A force at a point has no finite moment beneath it; deflections and what happens at the edge
   * are finite. Give the radius of the circle that carries it to have the stress; thin-plate theory
   * knows the stress under a circle no smaller than half the thickness.
   *
   * @param radius a
   * @param thickness t
   * @param modulus of elasticity
   * @param poisson Poisson's ratio
   * @param edge fixed or supported
   * @param pressure uniform over the plate
   * @param force at the centre, or spread evenly over a central circle
   * @param loadedRadius radius of that circle; not given = at the point
   * @param ringForce carried evenly by a circle
   * @param ringRadius of that circle
   * @param edgeCouple radial moment put on a supported edge, per length
   * @param at radius at which deflection, slope, moments and stress are wanted
   * @return deflections, slopes, moments, stress; "inner" is the centre
   */
  @Calculates(
      source =
          SOURCE
              + ", cases 9, 10, 13, 16 and 17; Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 16",
      cautions = {SMALL, EDGES},
      terms = {"cover plate", "circular plate", "blanking plate"})
  public static PlateResult circularPlate(
      @In("mm") @Range("> 0 mm") double radius,
      @In("mm") @Range("> 0 mm") double thickness,
      @In("GPa") @Range("> 0 GPa") double modulus,
      @In("1") @Range("0 .. 0.49") @Default("0.3") double poisson,
      @Default("\"fixed\"") Edge edge,
      @In("MPa") @Default("0 MPa") double pressure,
      @In("N") @Default("0 N") double force,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double loadedRadius,
      @In("N") @Default("0 N") double ringForce,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double ringRadius,
      @In("N.mm/mm") @Default("0 N.mm/mm") double edgeCouple,
      @In("mm") @Range(">= 0 mm") @Default(Default.NOT_GIVEN) double at) {
    boolean patched = !Double.isNaN(loadedRadius);
    boolean ringed = !Double.isNaN(ringRadius);
    if (patched && ringed) {
      throw new RefusedException(
          "Give loaded_radius or ring_radius, and add the results of two calls.");
    }
    if (ringForce != 0 && !ringed) {
      throw new RefusedException("Give ring_radius, where the ring force acts.");
    }
    if (edgeCouple != 0 && !turns(edge)) {
      throw new RefusedException("A couple on a fixed edge bends nothing; leave it supported.");
    }
    double join = patched ? loadedRadius : ringed ? ringRadius : radius / 2;
    if (join >= radius) {
      throw new RefusedException(
          (patched ? "loaded_radius" : "ring_radius")
              + " is less than the radius of the plate; spread over all of it, a force is a pressure.");
    }
    double patch = patched ? force / (StrictMath.PI * join * join) : 0;
    double point = patched ? 0 : force;
    PlateField.Plate plate =
        new PlateField.Plate(
            radius, 0, stiffness(modulus, thickness, poisson), poisson, edge, Edge.FREE);
    PlateField.Loads loads =
        new PlateField.Loads(
            pressure + patch,
            pressure,
            0,
            ringForce / (2 * StrictMath.PI * join),
            0,
            join,
            point,
            0,
            0,
            edgeCouple);
    PlateResult.Beneath beneath = PlateResult.Beneath.NOWHERE;
    if (point != 0) {
      beneath = PlateResult.Beneath.POINT;
    } else if (patch != 0 && join < thickness / 2) {
      beneath = new PlateResult.Beneath(join, TOO_SMALL);
    }
    return PlateResult.of(new PlateField(plate, loads), plate, loads, thickness, beneath, at);
  }

  static double stiffness(double modulus, double thickness, double poisson) {
    return modulus * thickness * thickness * thickness / (12 * (1 - poisson * poisson));
  }
}
