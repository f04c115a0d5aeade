package endfloat.plates;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.definition.TypesetAs;

/** A flat end wall with a bearing housing in the middle: how far it lets a shaft move. */
public final class BearingPanel {
  private BearingPanel() {}

  /** How the rim of a panel is held. */
  public enum Rim {
    FIXED,
    SUPPORTED
  }

  /**
   * Stiffness of a panel at its hub, and what a force and a couple do to it.
   *
   * @param axial force along the axis per movement of the hub
   * @param tilt couple per angle of the hub, about an axis across the shaft
   * @param opening axial movement of the hub by the force given
   * @param angle tilt of the hub by the couple given
   * @param stress largest bending stress of both together, at the side where they add
   * @param theory whether the thin-plate theory of small deflections holds for what came out
   */
  public record Stiffness(
      @In("N/mm") double axial,
      @In("N.m/rad") double tilt,
      @In("mm") double opening,
      @In("mrad") double angle,
      @In("MPa") double stress,
      PlateResult.Theory theory) {}

  /**
   * Axial and tilting stiffness of a flat round panel with a rigid hub: k_z = F/z and k_θ = M/θ of
   * the exact thin plate.
   *
   * <p>The hub cannot bend; the rim is fixed (bolted to a stiff case) or supported, chosen: the
   * truth lies between. Tilt is the plate under a couple at the hub, w = (A r + B r³ + C/r + D r ln
   * r) cos φ: bevel and helical forces act at a radius and tilt it. Prefer a stiffness measured by
   * load and dial.
   *
   * @param outerRadius a, inside of the bolted rim
   * @param hubRadius b, of the stiff boss
   * @param thickness t
   * @param modulus of elasticity
   * @param poisson Poisson's ratio
   * @param rim fixed or supported
   * @param force along the axis, for the opening and the stress
   * @param couple at the hub, for the angle and the stress
   * @return both stiffnesses, and what the loads do
   */
  @Calculates(
      source =
          "exact thin-plate solution; axial: Roark's Formulas for Stress and Strain, 7th ed., Table 11.2, cases 1f and 1b; tilt:"
              + " cases 20 and 21, Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., art. 63",
      cautions =
          "Flat, no ribs, thin, movement below half the thickness; theory says whether it does. Ribs and a dished wall are stiffer, a joint that gaps is softer.",
      terms = {"end wall", "diaphragm", "bearing panel", "timing case", "trunnion"})
  public static Stiffness panelStiffness(
      @In("mm") @Range("> 0 mm") double outerRadius,
      @In("mm") @Range("> 0 mm") double hubRadius,
      @In("mm") @Range("> 0 mm") double thickness,
      @In("GPa") @Range("> 0 GPa") double modulus,
      @In("1") @Range("0 .. 0.49") @Default("0.3") double poisson,
      @Default("\"fixed\"") Rim rim,
      @In("N") @Default("0 N") double force,
      @In("N.m") @Default("0 N.m") double couple) {
    if (hubRadius >= outerRadius) {
      throw new RefusedException(
          "The hub is as large as the panel: hub_radius must be less than outer_radius.");
    }
    double stiffness = RoundPlate.stiffness(modulus, thickness, poisson);
    Edge outer = rim == Rim.FIXED ? Edge.FIXED : Edge.SUPPORTED;
    PlateField pushed =
        new PlateField(
            new PlateField.Plate(outerRadius, hubRadius, stiffness, poisson, outer, Edge.GUIDED),
            PlateField.Loads.hub(hubRadius, 1));
    TiltField tilted = new TiltField(hubRadius / outerRadius, poisson, rim == Rim.FIXED);
    double axial = 1 / pushed.at(hubRadius).deflection();
    double tilt = tilted.couple() * stiffness;
    double angle = couple / tilt;
    double byAngle = stiffness / outerRadius * angle;
    double moment =
        PlateSurvey.of(
                r -> {
                  PlateField.State state = pushed.at(r);
                  double[] more = tilted.moments(r / outerRadius);
                  return Math.max(
                      Math.abs(force * state.radialMoment()) + Math.abs(byAngle * more[0]),
                      Math.abs(force * state.hoopMoment()) + Math.abs(byAngle * more[1]));
                },
                hubRadius,
                outerRadius)
            .value();
    return new Stiffness(
        axial,
        tilt,
        force / axial,
        angle,
        6 * moment / (thickness * thickness),
        PlateResult.theory(
            Math.abs(force / axial) + Math.abs(angle) * hubRadius,
            thickness,
            outerRadius - hubRadius));
  }

  /**
   * How far a panel lets a shaft move along its axis: (F + F_coupling)/k_z.
   *
   * <p>Positive away from the apex of the mesh behind it, when the forces are given so.
   *
   * @param force thrust of the gears on the shaft, positive away from the apex
   * @param stiffness k_z, of the panel; measured if it can be
   * @param coupling axial force of the coupling, positive away from the apex
   * @return axial movement of the shaft
   */
  @Calculates(
      source = "definition of stiffness",
      cautions = {
        "A coupling that sticks can hold any force up to its bound, either way: give both ends of the interval.",
        "Joints that gap under load make a panel softer the harder it is pushed."
      },
      terms = {"panel deflection", "end wall gives way"},
      partials = "axialOpeningPartials")
  @TypesetAs("(force + coupling) / stiffness")
  @In("mm")
  public static double axialOpening(
      @In("N") double force,
      @In("N/mm") @Range("> 0 N/mm") double stiffness,
      @In("N") @Default("0 N") double coupling) {
    return (force + coupling) / stiffness;
  }

  /** Of {@link #axialOpening}. */
  public static double[][] axialOpeningPartials(double force, double stiffness, double coupling) {
    return new double[][] {
      {1 / stiffness, -(force + coupling) / (stiffness * stiffness), 1 / stiffness}
    };
  }
}
