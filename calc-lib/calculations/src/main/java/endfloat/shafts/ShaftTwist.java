package endfloat.shafts;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
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
   */
  public record Twist(
      @In("deg") double twist,
      @In("N.m/rad") double stiffness,
      @In("MPa") double greatestStress,
      @In("deg") double[] twists) {}

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
      @In("GPa") @Range("> 0 GPa") double shearModulus) {
    double[] twists = new double[segments.size()];
    double flexibility = 0;
    double stress = 0;
    for (int i = 0; i < twists.length; i++) {
      Segment segment = segments.get(i);
      if (segment.inner() >= segment.outer()) {
        throw new RefusedException(
            "A segment's hole is as large as the shaft: inner must be less than outer.");
      }
      double softness = segment.length() / (shearModulus * segment.polarMoment());
      twists[i] = torque * softness;
      flexibility += softness;
      stress = Math.max(stress, Math.abs(torque) * segment.outer() / (2 * segment.polarMoment()));
    }
    return new Twist(torque * flexibility, 1 / flexibility, stress, twists);
  }
}
