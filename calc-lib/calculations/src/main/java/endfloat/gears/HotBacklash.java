package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import java.util.List;

/** Backlash of a warm mesh. */
public final class HotBacklash {
  /** Two pitch angles that add up to half a turn: no bevel pair, the way parallel gears move. */
  private static final double FLAT = StrictMath.PI * (1 - 1e-9);

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
   * apex. Parallel pair (no pitch angles): one housing link, the centre distance; two shaft links,
   * the working radii. Skew pair: the same, with the helix angle of the gear on which the backlash
   * is said.
   *
   * <p>Moved bevel gears no longer match: their pitches at the heel differ by {@code 2π |s₁ sin δ₁
   * cos δ₁/z₁ − s₂ sin δ₂ cos δ₂/z₂|}, and the free backlash by half of it either way over the
   * tooth phase. Given the teeth, this enters the uncertainty.
   *
   * @param coldBacklash at 20 degC, circumferential; for bevel gears at the heel
   * @param links lengths with material and temperature, each its own
   * @param pressureAngle α_n, normal
   * @param pitchAngle1 δ₁ of a bevel gear; left out for parallel and skew shafts
   * @param pitchAngle2 δ₂, given wherever δ₁ is
   * @param helixAngle β, helix or spiral angle
   * @param endFloat1 free movement of bevel gear 1 into mesh from its thrust face
   * @param endFloat2 free movement of bevel gear 2 into mesh
   * @param teeth1 z₁ of a bevel gear; with both, the mismatch of moved bevel gears is counted
   * @param teeth2 z₂
   * @throws RefusedException without a link, with one pitch angle only, or with end float of gears
   *     that are not bevel gears: along parallel shafts it does not take them into mesh
   */
  @Calculates(
      source =
          "derived: free growth of each link and backlash_from_axial_shift; for parallel shafts"
              + " backlash_from_centre_distance",
      cautions = {
        "Below zero there is no backlash: the mesh is wedged. It is never a working clearance.",
        "First order in the movement; change of offset and of shaft angle are not covered.",
        "Without the teeth the mismatch of moved bevel gears is not counted: up to an eighth of the"
            + " change.",
        "One temperature for a whole block is an assumption; shafts on the oil side run hotter."
      },
      terms = {"hot lash", "running backlash", "bevel", "spur", "warm", "thermal"},
      modelError = "backlashHotError")
  public static Hot backlashHot(
      @In("mm") double coldBacklash,
      List<MeshLink> links,
      @In("deg") @Range("10 deg .. 35 deg") @Default("20 deg") double pressureAngle,
      @In("deg") @Range("1 deg .. 90 deg") @Default(Default.NOT_GIVEN) double pitchAngle1,
      @In("deg") @Range("1 deg .. 90 deg") @Default(Default.NOT_GIVEN) double pitchAngle2,
      @In("deg") @Range("-60 deg .. 60 deg") @Default("0 deg") double helixAngle,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double endFloat1,
      @In("mm") @Range(">= 0 mm") @Default("0 mm") double endFloat2,
      @In("1") @Range(">= 5") @Default(Default.NOT_GIVEN) double teeth1,
      @In("1") @Range(">= 5") @Default(Default.NOT_GIVEN) double teeth2) {
    if (links.isEmpty()) {
      throw new RefusedException("no link is given: name what holds the gears in mesh");
    }
    if (Double.isNaN(pitchAngle1) != Double.isNaN(pitchAngle2)) {
      throw new RefusedException(
          "one pitch angle only is given: bevel gears need both, parallel and skew gears none");
    }
    boolean radial = Double.isNaN(pitchAngle1) || pitchAngle1 + pitchAngle2 >= FLAT;
    if (radial && (endFloat1 > 0 || endFloat2 > 0)) {
      throw new RefusedException(
          "end float takes bevel gears only into mesh; give their pitch angles. On parallel shafts"
              + " it does nothing to spur gears, and to helical gears it adds e tan b of backlash:"
              + " from_float in backlash_through_train");
    }
    double movement1 = movement(links, 1);
    double movement2 = movement(links, 2);
    if (!Double.isNaN(teeth1)) {
      CylindricalMesh.whole("teeth_1", teeth1);
    }
    if (!Double.isNaN(teeth2)) {
      CylindricalMesh.whole("teeth_2", teeth2);
    }
    double rate1 = AxialShift.rate(pressureAngle, orFlat(pitchAngle1), helixAngle);
    double rate2 = AxialShift.rate(pressureAngle, orFlat(pitchAngle2), helixAngle);
    double change = movement1 * rate1 + movement2 * rate2;
    double hot = coldBacklash + change;
    double least = hot - endFloat1 * rate1 - endFloat2 * rate2;
    State state = hot <= 0 ? State.WEDGED : least <= 0 ? State.GONE_WITHIN_END_FLOAT : State.CLEAR;
    return new Hot(movement1, movement2, change, hot, least, state);
  }

  /** Half-widths of the error of {@link #backlashHot}, in the order of its results. */
  public static double[] backlashHotError(
      double coldBacklash,
      List<MeshLink> links,
      double pressureAngle,
      double pitchAngle1,
      double pitchAngle2,
      double helixAngle,
      double endFloat1,
      double endFloat2,
      double teeth1,
      double teeth2) {
    double mismatch =
        StrictMath.PI
            * (pitchChange(movement(links, 1), orFlat(pitchAngle1), teeth1)
                - pitchChange(movement(links, 2), orFlat(pitchAngle2), teeth2));
    return new double[] {0, 0, mismatch, mismatch, mismatch};
  }

  /** A gear that did not move, or whose teeth run parallel to its shaft, has no mismatch. */
  private static double pitchChange(double movement, double pitchAngle, double teeth) {
    double change = movement * StrictMath.sin(2 * pitchAngle) / 2;
    return Math.abs(change) < 1e-15 ? 0 : change / teeth;
  }

  /** Gears on parallel shafts move as a crown gear does: straight into mesh. */
  private static double orFlat(double pitchAngle) {
    return Double.isNaN(pitchAngle) ? StrictMath.PI / 2 : pitchAngle;
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
