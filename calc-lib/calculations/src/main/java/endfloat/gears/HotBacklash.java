package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import java.util.List;

/** Backlash of a warm mesh. */
public final class HotBacklash {
  private HotBacklash() {}

  /**
   * Backlash when hot. Movements count positive out of mesh: away from the apex, or centres apart.
   *
   * @param movement1 of gear 1
   * @param movement2 of gear 2
   * @param change hot less cold
   * @param hot circumferential backlash, gears against the thrust faces at which the cold one was
   *     read; below zero there is none
   * @param hotLeast the same when both gears float into mesh by their end float
   * @param state clear, gone when the end float is taken the other way, or no backlash: wedged
   */
  public record Hot(
      @In("mm") double movement1,
      @In("mm") double movement2,
      @In("mm") double change,
      @In("mm") double hot,
      @In("mm") double hotLeast,
      State state) {}

  /** What is left of the backlash. */
  public enum State {
    CLEAR,
    GONE_WITHIN_END_FLOAT,
    WEDGED
  }

  /**
   * Circumferential backlash of a mesh when hot, from the growth of every part that holds the
   * gears: {@code j + Σ 2 s_i tan α_n sin δ_i / cos β}.
   *
   * <p>Bevel pair: for each member the housing links go from the crossing of the axes to its
   * locating thrust face, the shaft links from there back along shaft, shim and wheel to the pitch
   * apex. Parallel pair (leave the pitch angles at 90°): one housing link, the centre distance; two
   * shaft links, the working radii. Skew pair: the same, with the helix angle of the gear on which
   * the backlash is said.
   *
   * @param coldBacklash at 20 degC, circumferential; for bevel gears at the heel
   * @param links lengths with material and temperature, each its own
   * @param pressureAngle α_n, normal
   * @param pitchAngle1 δ₁ of a bevel gear; 90° for parallel and skew shafts
   * @param pitchAngle2 δ₂
   * @param helixAngle β, helix or spiral angle
   * @param endFloat1 free movement of gear 1 into mesh from its thrust face
   * @param endFloat2 free movement of gear 2 into mesh
   */
  @Calculates(
      source =
          "derived: free growth of each link and backlash_from_axial_shift; for parallel shafts"
              + " backlash_from_centre_distance",
      cautions = {
        "Below zero there is no backlash: the mesh is wedged. It is never a working clearance.",
        "First order in the movement; change of offset and of shaft angle are not covered.",
        "The mismatch of a moved bevel member is not counted here; backlash_from_axial_shift counts it"
            + " where its teeth are given.",
        "One temperature for a whole block is an assumption; shafts on the oil side run hotter."
      },
      terms = {"hot lash", "running backlash", "bevel", "spur", "warm", "thermal"})
  public static Hot backlashHot(
      @In("mm") double coldBacklash,
      List<MeshLink> links,
      @In("deg") @Range("10 deg .. 35 deg") @Default("20 deg") double pressureAngle,
      @In("deg") @Range("1 deg .. 90 deg") @Default("90 deg") double pitchAngle1,
      @In("deg") @Range("1 deg .. 90 deg") @Default("90 deg") double pitchAngle2,
      @In("deg") @Range("-60 deg .. 60 deg") @Default("0 deg") double helixAngle,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double endFloat1,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double endFloat2) {
    if (links.isEmpty()) {
      throw new RefusedException("no link is given: name what holds the gears in mesh");
    }
    double movement1 = movement(links, 1);
    double movement2 = movement(links, 2);
    double rate1 = AxialShift.rate(pressureAngle, pitchAngle1, helixAngle);
    double rate2 = AxialShift.rate(pressureAngle, pitchAngle2, helixAngle);
    double change = movement1 * rate1 + movement2 * rate2;
    double hot = coldBacklash + change;
    double least = hot - endFloat1 * rate1 - endFloat2 * rate2;
    State state = hot <= 0 ? State.WEDGED : least <= 0 ? State.GONE_WITHIN_END_FLOAT : State.CLEAR;
    return new Hot(movement1, movement2, change, hot, least, state);
  }

  private static double movement(List<MeshLink> links, int member) {
    double sum = 0;
    for (MeshLink link : links) {
      if (link.member() != Math.rint(link.member())) {
        throw new RefusedException("a link belongs to member 1 or 2");
      }
      if (link.member() == member) {
        sum += link.movement();
      }
    }
    return sum;
  }
}
