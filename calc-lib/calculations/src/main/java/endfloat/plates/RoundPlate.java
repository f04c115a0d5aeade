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
      "Flat plate without ribs; true while the deflection stays below half the thickness and the plate is thin against its width.";

  private RoundPlate() {}

  /**
   * What a loaded plate does.
   *
   * @param deflectionInner at the inner edge, or at the centre of a plate without a hole
   * @param slopeInner at the inner edge
   * @param slopeOuter at the outer edge
   * @param radialMomentInner per length, at the inner edge or the centre
   * @param hoopMomentInner per length, at the inner edge or the centre
   * @param radialMomentOuter per length, at the outer edge
   * @param greatestDeflection of largest magnitude
   * @param greatestDeflectionAt radius where it lies
   * @param greatestStress largest bending stress at either face, 6 M/t²
   * @param deflectionAtRing at the radius of the ring load, or where the pressure begins
   */
  public record Plate(
      @In("mm") double deflectionInner,
      @In("mrad") double slopeInner,
      @In("mrad") double slopeOuter,
      @In("N.mm/mm") double radialMomentInner,
      @In("N.mm/mm") double hoopMomentInner,
      @In("N.mm/mm") double radialMomentOuter,
      @In("mm") double greatestDeflection,
      @In("mm") double greatestDeflectionAt,
      @In("MPa") double greatestStress,
      @In("mm") double deflectionAtRing) {}

  /**
   * Deflection, slopes, moments and stress of a round plate with a central hole under loads that
   * are the same all round.
   *
   * <p>Deflection counts in the direction of the load; a moment is positive where it would compress
   * the loaded face.
   *
   * @param outerRadius a
   * @param innerRadius b, of the hole
   * @param thickness t
   * @param modulus of elasticity
   * @param poisson Poisson's ratio
   * @param outerEdge how the outer edge is held
   * @param innerEdge how the inner edge is held; "guided" is a rigid hub
   * @param force carried evenly by the inner edge
   * @param ringForce carried evenly by a circle between the edges
   * @param ringRadius of that circle, or the radius from which the pressure acts; not given = the
   *     inner edge
   * @param pressure uniform, from the ring radius outwards
   * @param pressureRise added to the pressure, growing evenly from zero at the ring radius to this
   *     at the outer edge
   * @return deflections, slopes, moments, stress
   */
  @Calculates(
      source = SOURCE,
      cautions = SMALL,
      terms = {"annular plate", "end wall", "diaphragm", "cover", "bearing panel"})
  public static Plate annularPlate(
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
      @In("MPa") @Default("0 MPa") double pressureRise) {
    if (innerRadius >= outerRadius) {
      throw new RefusedException(
          "The hole is as large as the plate: inner_radius must be less than outer_radius.");
    }
    if (force != 0 && (innerEdge == Edge.FIXED || innerEdge == Edge.SUPPORTED)) {
      throw new RefusedException(
          "A force at an inner edge that cannot move bends nothing; leave the edge free or guided.");
    }
    double at = Double.isNaN(ringRadius) ? innerRadius : ringRadius;
    if (at < innerRadius || at >= outerRadius) {
      throw new RefusedException("ring_radius lies between inner_radius and outer_radius.");
    }
    return worked(
        new PlateField.Plate(
            outerRadius,
            innerRadius,
            stiffness(modulus, thickness, poisson),
            poisson,
            outerEdge,
            innerEdge),
        new PlateField.Loads(
            0,
            pressure,
            pressureRise / (outerRadius - at),
            ringForce / (2 * StrictMath.PI * at),
            at,
            force),
        thickness);
  }

  /**
   * Deflection, slopes, moments and stress of a round plate without a hole.
   *
   * <p>A force at a point has no finite moment beneath it: give the radius of the circle that
   * carries it.
   *
   * @param radius a
   * @param thickness t
   * @param modulus of elasticity
   * @param poisson Poisson's ratio
   * @param edge fixed or supported
   * @param pressure uniform over the plate
   * @param force spread evenly over a central circle
   * @param loadedRadius radius of that circle
   * @return deflections, slopes, moments, stress; "inner" is the centre
   */
  @Calculates(
      source =
          SOURCE
              + ", cases 10a, 10b; Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 16",
      cautions = SMALL,
      terms = {"cover plate", "circular plate", "blanking plate"})
  public static Plate circularPlate(
      @In("mm") @Range("> 0 mm") double radius,
      @In("mm") @Range("> 0 mm") double thickness,
      @In("GPa") @Range("> 0 GPa") double modulus,
      @In("1") @Range("0 .. 0.49") @Default("0.3") double poisson,
      @Default("\"fixed\"") Edge edge,
      @In("MPa") @Default("0 MPa") double pressure,
      @In("N") @Default("0 N") double force,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double loadedRadius) {
    if (force != 0 && Double.isNaN(loadedRadius)) {
      throw new RefusedException(
          "Give loaded_radius: under a force at a point the moment has no end.");
    }
    double at = Double.isNaN(loadedRadius) ? radius / 2 : loadedRadius;
    if (at >= radius) {
      throw new RefusedException(
          "loaded_radius is less than the radius of the plate; spread over all of it, it is a pressure.");
    }
    double patch = force / (StrictMath.PI * at * at);
    return worked(
        new PlateField.Plate(
            radius, 0, stiffness(modulus, thickness, poisson), poisson, edge, Edge.FREE),
        new PlateField.Loads(pressure + patch, pressure, 0, 0, at, 0),
        thickness);
  }

  static double stiffness(double modulus, double thickness, double poisson) {
    return modulus * thickness * thickness * thickness / (12 * (1 - poisson * poisson));
  }

  private static Plate worked(PlateField.Plate plate, PlateField.Loads loads, double thickness) {
    PlateField field = new PlateField(plate, loads);
    PlateField.State inner = field.at(plate.inner());
    PlateField.State outer = field.at(plate.outer());
    double greatest = 0;
    double greatestAt = plate.inner();
    double moment = 0;
    int steps = 4000;
    for (int i = 0; i <= steps; i++) {
      double r = plate.inner() + (plate.outer() - plate.inner()) * i / steps;
      PlateField.State state = field.at(r);
      if (Math.abs(state.deflection()) > Math.abs(greatest)) {
        greatest = state.deflection();
        greatestAt = r;
      }
      moment =
          Math.max(moment, Math.max(Math.abs(state.radialMoment()), Math.abs(state.hoopMoment())));
    }
    return new Plate(
        inner.deflection(),
        inner.slope(),
        outer.slope(),
        inner.radialMoment(),
        inner.hoopMoment(),
        outer.radialMoment(),
        greatest,
        greatestAt,
        6 * moment / (thickness * thickness),
        field.at(loads.at()).deflection());
  }
}
