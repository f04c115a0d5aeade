package endfloat.bench;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.OutOfRangeException;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/** Timing by a vernier coupling: two toothed joints with different numbers of teeth. */
public final class VernierCoupling {
  private static final int MOST_TEETH = 2000;

  private VernierCoupling() {}

  /**
   * What a vernier coupling can do, and what to do.
   *
   * @param positions different settings in one turn of its shaft
   * @param leastStep least change, in degrees of its own shaft
   * @param leastTimingStep least change, in degrees of the shaft in which the timing is said
   * @param oneStepA teeth of joint A for one step of advance; positive with the rotation
   * @param oneStepB teeth of joint B for one step of advance; positive against the rotation
   * @param steps whole steps nearest to the correction; positive advances
   * @param teethA to move joint A for them, positive with the rotation
   * @param teethB to move joint B for them, positive against the rotation
   * @param achieved change of timing, in degrees of the shaft in which it is said
   * @param error achieved less wanted
   * @param instruction in words
   */
  public record Setting(
      @In("1") double positions,
      @In("deg") double leastStep,
      @In("deg") double leastTimingStep,
      @In("1") double oneStepA,
      @In("1") double oneStepB,
      @In("1") double steps,
      @In("1") double teethA,
      @In("1") double teethB,
      @In("deg") double achieved,
      @In("deg") double error,
      String instruction) {}

  /**
   * Steps of a vernier coupling, and the nearest setting to a wanted change of timing.
   *
   * <p>The coupling has a joint of A teeth and one of B teeth. Moving the driven shaft on by one
   * tooth at A with the rotation and back by one at B changes it by {@code 360° (1/A − 1/B)}; the
   * least step is {@code 360° / lcm(A, B)}. Advance is positive: the driven shaft goes ahead in its
   * own sense of turning. The fewest teeth are moved that give the step.
   *
   * @param teethA of one joint
   * @param teethB of the other joint
   * @param correction wanted change of timing, in degrees of the shaft in which timing is said;
   *     positive advances
   * @param ratio turns of that shaft for one turn of the coupling: 2 for crank degrees where the
   *     coupling sits on a camshaft
   */
  @Calculates(
      source =
          "common workshop practice: least step 360 deg / lcm(A, B); moves by the whole-number"
              + " solution of a/A - b/B = steps/lcm",
      cautions = {
        "Say whether degrees are of the crank or of the cam, and which way each shaft turns.",
        "After the change check valve timing and spark timing at the flywheel again.",
        "Earth the ignition and take the plugs out before the engine is turned: it can kick."
      },
      terms = {"ignition timing", "cam timing", "magneto", "vernier", "serrations", "advance"},
      partials = "vernierCouplingPartials")
  public static Setting vernierCoupling(
      @In("1") @Range("2 .. 2000") double teethA,
      @In("1") @Range("2 .. 2000") double teethB,
      @In("deg") @Default("0 deg") double correction,
      @In("1") @Range("> 0") @Default("1") double ratio) {
    int a = whole("teeth_a", teethA);
    int b = whole("teeth_b", teethB);
    int positions = a / gcd(a, b) * b;
    double turn = 2 * StrictMath.PI;
    double timingStep = turn / positions * ratio;
    // half way between two settings the smaller change is taken
    double wanted = correction / timingStep;
    double steps = Math.signum(wanted) * Math.ceil(Math.abs(wanted) - 0.5);
    if (Math.abs(steps) > positions) {
      throw new OutOfRangeException(
          "correction", correction, -turn * ratio, turn * ratio, "deg", "give at most one turn");
    }
    int[] one = moves(a, b, positions, 1);
    int[] all = moves(a, b, positions, (long) steps);
    double achieved = steps * timingStep;
    return new Setting(
        positions,
        turn / positions,
        timingStep,
        one[0],
        one[1],
        steps,
        all[0],
        all[1],
        achieved,
        achieved - correction,
        instruction(all, a, b));
  }

  /** Of {@link #vernierCoupling}: steps are whole, so only the error follows the correction. */
  public static double[][] vernierCouplingPartials(
      double teethA, double teethB, double correction, double ratio) {
    Setting set = vernierCoupling(teethA, teethB, correction, ratio);
    double perRatio = set.leastStep();
    double[] fixed = {0, 0, 0, 0};
    return new double[][] {
      fixed,
      fixed,
      {0, 0, 0, perRatio},
      fixed,
      fixed,
      fixed,
      fixed,
      fixed,
      {0, 0, 0, set.steps() * perRatio},
      {0, 0, -1, set.steps() * perRatio}
    };
  }

  /** Fewest teeth moved, {m, n} with m/a − n/b = steps/positions. */
  private static int[] moves(int a, int b, int positions, long steps) {
    int perA = positions / a;
    int perB = positions / b;
    int[] best = null;
    for (int m = -a; m <= a; m++) {
      long rest = (long) m * perA - steps;
      if (rest % perB == 0) {
        // whole turns of B change nothing
        long n = Math.floorMod(rest / perB, (long) b);
        n = 2 * n > b ? n - b : n;
        if (best == null || Math.abs(m) + Math.abs(n) < Math.abs(best[0]) + Math.abs(best[1])) {
          best = new int[] {m, (int) n};
        }
      }
    }
    return best;
  }

  private static String instruction(int[] moves, int a, int b) {
    if (moves[0] == 0 && moves[1] == 0) {
      return "leave it: no setting is nearer";
    }
    String first = part(moves[0], a, "A", "with", "against");
    String second = part(moves[1], b, "B", "against", "with");
    return first.isEmpty() || second.isEmpty() ? first + second : first + "; " + second;
  }

  private static String part(int moves, int teeth, String joint, String positive, String negative) {
    if (moves == 0) {
      return "";
    }
    return "joint "
        + joint
        + " ("
        + teeth
        + "): "
        + Math.abs(moves)
        + (Math.abs(moves) == 1 ? " tooth " : " teeth ")
        + (moves > 0 ? positive : negative)
        + " the rotation";
  }

  private static int whole(String name, double teeth) {
    if (teeth != Math.rint(teeth) || teeth > MOST_TEETH) {
      throw new RefusedException(name + " = " + teeth + " is no whole number of teeth");
    }
    return (int) teeth;
  }

  private static int gcd(int a, int b) {
    return b == 0 ? a : gcd(b, a % b);
  }
}
