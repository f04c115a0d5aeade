package endfloat.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Second method: every move of both joints tried. */
class VernierCouplingTest {
  private static final double DEG = Math.PI / 180;

  @Property(tries = 200)
  void noFewerTeethGiveTheSameSetting(
      @ForAll @IntRange(min = 2, max = 40) int a,
      @ForAll @IntRange(min = 2, max = 40) int b,
      @ForAll @IntRange(min = -170, max = 170) int degrees) {
    var set = VernierCoupling.vernierCoupling(a, b, degrees * DEG, 1);
    int positions = (int) set.positions();
    long moved = (long) set.teethA() * (positions / a) - (long) set.teethB() * (positions / b);
    assertEquals(0, Math.floorMod(moved - (long) set.steps(), positions));
    double fewest = Math.abs(set.teethA()) + Math.abs(set.teethB());
    for (int m = -a; m <= a; m++) {
      for (int n = -b; n <= b; n++) {
        long steps = (long) m * (positions / a) - (long) n * (positions / b);
        if (Math.floorMod(steps - (long) set.steps(), positions) == 0) {
          assertTrue(Math.abs(m) + Math.abs(n) >= fewest);
        }
      }
    }
    assertTrue(Math.abs(set.error()) <= set.leastTimingStep() / 2 * (1 + 1e-9));
  }

  @Test
  void saysWhatToDoInWords() {
    assertEquals(
        "joint A (36): 1 tooth with the rotation; joint B (37): 1 tooth against the rotation",
        VernierCoupling.vernierCoupling(36, 37, 0.27 * DEG, 1).instruction());
    assertEquals(
        "leave it: no setting is nearer",
        VernierCoupling.vernierCoupling(24, 36, 2 * DEG, 1).instruction());
  }
}
