package endfloat.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RandomStreamTest {
  private static final int TRIALS = 2_000_000;

  /** Moments of the standard normal: 0, 1, 0, 3; five standard errors of each. */
  @Test
  void normalsHaveTheMomentsOfTheNormalDistribution() {
    RandomStream random = new RandomStream(42, 0);
    double[] sums = new double[4];
    for (int i = 0; i < TRIALS; i++) {
      double x = random.normal();
      double power = x;
      for (int k = 0; k < 4; k++) {
        sums[k] += power;
        power *= x;
      }
    }
    assertEquals(0, sums[0] / TRIALS, 5 * Math.sqrt(1.0 / TRIALS));
    assertEquals(1, sums[1] / TRIALS, 5 * Math.sqrt(2.0 / TRIALS));
    assertEquals(0, sums[2] / TRIALS, 5 * Math.sqrt(15.0 / TRIALS));
    assertEquals(3, sums[3] / TRIALS, 5 * Math.sqrt(96.0 / TRIALS));
  }

  /** The rare branches too: shares beyond 0.5, 1, 2, 3, 3.7 and 4 against the distribution. */
  @Test
  void normalsHaveTheTailsOfTheNormalDistribution() {
    double[] ends = {0.5, 1, 2, 3, 3.7, 4};
    int[] beyond = new int[ends.length];
    RandomStream random = new RandomStream(1, 5);
    for (int i = 0; i < TRIALS; i++) {
      double x = random.normal();
      for (int k = 0; k < ends.length; k++) {
        beyond[k] += x > ends[k] ? 1 : 0;
      }
    }
    for (int k = 0; k < ends.length; k++) {
      double share = Normal.above(ends[k]);
      assertEquals(share, (double) beyond[k] / TRIALS, 5 * Math.sqrt(share / TRIALS), "" + ends[k]);
    }
  }

  /** Guard: the bits must never change, or records made before would no longer agree. */
  @Test
  void theFirstNumbersAreAlwaysTheSame() {
    RandomStream random = new RandomStream(1, 0);
    assertEquals(FIRST_NORMAL, random.normal());
    assertEquals(FIRST_UNIFORM, random.uniform());
  }

  @Test
  void blocksAreStreamsOfTheirOwn() {
    assertTrue(new RandomStream(1, 0).uniform() != new RandomStream(1, 1).uniform());
    assertTrue(new RandomStream(1, 0).uniform() != new RandomStream(2, 0).uniform());
  }

  /** Abramowitz and Stegun, Table 26.1: Q(1) = 0.15865 52539, Q(3) = 0.00134 98980. */
  @Test
  void normalTailsAsPublished() {
    assertEquals(0.1586552539, Normal.above(1), 5e-11);
    assertEquals(0.0013498980, Normal.above(3), 5e-11);
    assertEquals(0.8413447461, Normal.below(1), 5e-11);
  }

  private static final double FIRST_NORMAL = 0.06683510411118619;
  private static final double FIRST_UNIFORM = 0.5130279882824674;
}
