package endfloat.shafts;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;
import java.util.List;

/** Twist of a round shaft with steps. */
public final class ShaftTwist {
  private ShaftTwist() {}

  /**
   * What a torque does to a shaft.
   *
   * @param twist of one end against the other
   * @param stiffness torque per angle
   * @param greatestStress largest shear stress at a surface, without notch factor
   * @param twists of each segment, in order
   * @param equivalentLength of a plain solid shaft of the equivalent diameter with this stiffness
   */
  public record Twist(
      @In("deg") double twist,
      @In("N.m/rad") double stiffness,
      @In("MPa") double greatestStress,
      @In("deg") double[] twists,
      @In("mm") Uncertain equivalentLength) {}

  /**
   * Twist, torsional stiffness and shear stress of a stepped round shaft: φ = Σ T L/(G J), J = π
   * (D⁴ − d⁴)/32, τ = T D/(2 J).
   *
   * <p>It holds for round sections within the elastic limit. The ends of a step, splines and shrunk
   * hubs add length or take it away; the sum leaves that out.
   *
   * @param segments from end to end
   * @param torque carried by the whole length
   * @param shearModulus of the material
   * @param equivalentDiameter of a plain solid shaft to compare with
   * @return twist, stiffness, stress
   */
  @Calculates(
      source =
          "Saint-Venant torsion of round bars; Roark's Formulas for Stress and Strain, 7th ed., Table 10.1, cases 1 and 10",
      cautions = "Stress is nominal: keyways, splines and fillets raise it.",
      terms = {"torsion", "wind-up", "torsional stiffness"})
  public static Twist shaftTwist(
      List<Segment> segments,
      @In("N.m") double torque,
      @In("GPa") @Range("> 0 GPa") double shearModulus,
      @In("mm") @Range("> 0 mm") @Default(Default.NOT_GIVEN) double equivalentDiameter) {
    double[] twists = new double[segments.size()];
    double flexibility = 0;
    double stress = 0;
    for (int i = 0; i < twists.length; i++) {
      Segment segment = segments.get(i);
      segment.holdHollow();
      double softness = segment.length() / (shearModulus * segment.polarMoment());
      twists[i] = torque * softness;
      flexibility += softness;
      stress = Math.max(stress, Math.abs(torque) * segment.outer() / (2 * segment.polarMoment()));
    }
    if (segments.isEmpty()) {
      throw new RefusedException("The shaft has no segment: segment(length: 40 mm, outer: 30 mm).");
    }
    Uncertain equivalent =
        Double.isNaN(equivalentDiameter)
            ? Uncertain.absent("give equivalent_diameter to have the length of a plain shaft")
            : new Uncertain(
                shearModulus * flexibility * new Segment(1, equivalentDiameter, 0).polarMoment(),
                0);
    return new Twist(torque * flexibility, 1 / flexibility, stress, twists, equivalent);
  }

  /**
   * Shafts geared together, seen from the first.
   *
   * @param stiffness of all in a row, at the first shaft
   * @param twist wind-up at the first shaft with the last held
   * @param referred stiffness of each shaft, seen from the first
   * @param torques in each shaft, without losses
   */
  public record Geared(
      @In("N.m/rad") double stiffness,
      @In("deg") double twist,
      @In("N.m/rad") double[] referred,
      @In("N.m") double[] torques) {}

  /**
   * Stiffness and wind-up of shafts geared together, seen from the first shaft: {@code k_i' = k_i
   * n_i²}, in a row {@code 1/k = Σ 1/k_i'}.
   *
   * <p>Stiffness is carried over by the square of the speed ratio; teeth count as rigid unless they
   * are given as a shaft of their own, their mesh stiffness times the square of the base radius.
   *
   * @param shafts in a row, the first with ratio 1
   * @param torque at the first shaft
   * @return stiffness, wind-up, and what each shaft carries
   * @throws RefusedException without a shaft, or if the first has another ratio than 1
   */
  @Calculates(
      source = "derived: equal power at both ends of a mesh, springs in series",
      cautions = "Backlash is no part of the stiffness: below it the shafts do not wind up at all.",
      terms = {"wind-up", "torsional stiffness", "gear train", "referred stiffness"})
  public static Geared twistThroughGears(List<GearedShaft> shafts, @In("N.m") double torque) {
    if (shafts.isEmpty()) {
      throw new RefusedException("Name the shafts: geared_shaft(stiffness: 42 kN.m/rad).");
    }
    if (Math.abs(shafts.get(0).ratio() - 1) > 1e-9) {
      throw new RefusedException(
          "The first shaft is the one from which all is seen: its ratio is 1.");
    }
    double[] referred = new double[shafts.size()];
    double[] torques = new double[shafts.size()];
    double flexibility = 0;
    for (int i = 0; i < referred.length; i++) {
      GearedShaft shaft = shafts.get(i);
      referred[i] = shaft.stiffness() * shaft.ratio() * shaft.ratio();
      torques[i] = torque / shaft.ratio();
      flexibility += 1 / referred[i];
    }
    return new Geared(1 / flexibility, torque * flexibility, referred, torques);
  }
}
