package endfloat.gears;

import endfloat.definition.Calculates;
import endfloat.definition.In;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;
import java.util.List;

/** Backlash added up through a train of gears. */
public final class Train {
  private Train() {}

  /**
   * Free turn of a train, all shafts but one held at the far end.
   *
   * @param atEach free turn felt at each shaft, from the first to the last, the rest following
   * @param atFirst at the first shaft, the last held
   * @param atLast at the last shaft, the first held
   * @param shares of each mesh in the whole, in order; they add up to 1
   * @param worst number of the mesh with the greatest share, counted from 1
   * @param opensFirst number of the mesh whose flanks part first as the vibration grows: the one
   *     with the greatest alternating torque for its mean torque
   * @param reversal that torque ratio of it; the flanks part above 1
   */
  public record FreeTurn(
      @In("deg") double[] atEach,
      @In("deg") double atFirst,
      @In("deg") double atLast,
      @In("1") double[] shares,
      @In("1") double worst,
      @In("1") Uncertain opensFirst,
      @In("1") Uncertain reversal) {}

  /**
   * Backlash through a train of meshes, as an angle at each shaft: {@code Σ (j_i/r_i) × ratio to
   * that shaft}.
   *
   * @param meshes in order from the first shaft
   * @return angles and shares
   */
  @Calculates(
      source = "derived: arcs over radii, carried through the ratios",
      cautions = {
        "Which mesh opens first does not follow from backlash: it opens where the alternating torque"
            + " exceeds the mean; give both for each mesh.",
        "Meshes are taken one behind the other; branches that meet again share their backlash"
            + " otherwise."
      },
      terms = {"gear train", "timing gears", "total lash", "backlash at the crankshaft"})
  public static FreeTurn backlashThroughTrain(List<TrainMesh> meshes) {
    if (meshes.isEmpty()) {
      throw new RefusedException("the train has no mesh");
    }
    int n = meshes.size();
    // turns of each shaft for one turn of the first
    double[] turns = new double[n + 1];
    turns[0] = 1;
    double[] atFirst = new double[n];
    double sum = 0;
    for (int i = 0; i < n; i++) {
      TrainMesh mesh = meshes.get(i);
      atFirst[i] = mesh.angle() / turns[i];
      turns[i + 1] = turns[i] / mesh.ratio();
      sum += atFirst[i];
    }
    if (!(sum > 0)) {
      throw new RefusedException("no mesh of the train has any backlash");
    }
    double[] atEach = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      atEach[i] = sum * turns[i];
    }
    double[] shares = new double[n];
    int worst = 0;
    for (int i = 0; i < n; i++) {
      shares[i] = atFirst[i] / sum;
      worst = atFirst[i] > atFirst[worst] ? i : worst;
    }
    int first = opensFirst(meshes);
    return new FreeTurn(
        atEach,
        sum,
        atEach[n],
        shares,
        worst + 1.0,
        first < 0 ? unknown() : new Uncertain(first + 1.0, 0),
        first < 0 ? unknown() : new Uncertain(meshes.get(first).reversal(), 0));
  }

  /** -1 where a mesh lacks its torques, or carries no mean torque to hold its flanks together. */
  private static int opensFirst(List<TrainMesh> meshes) {
    int first = 0;
    for (int i = 0; i < meshes.size(); i++) {
      if (!Double.isFinite(meshes.get(i).reversal())) {
        return -1;
      }
      first = meshes.get(i).reversal() > meshes.get(first).reversal() ? i : first;
    }
    return first;
  }

  private static Uncertain unknown() {
    return Uncertain.absent(
        "backlash does not say which mesh opens first: give mean_torque and alternating_torque of"
            + " every mesh");
  }
}
