package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Each slope is known exactly from calculus. */
class SlopesTest {
  private static final double END = Double.POSITIVE_INFINITY;

  private static double slope(
      java.util.function.DoubleUnaryOperator f, double x, double u, double least, double greatest) {
    double[] slopes =
        Slopes.at(
            v -> v < least || v > greatest ? null : new double[] {f.applyAsDouble(v)},
            new double[] {f.applyAsDouble(x)},
            x,
            u,
            least,
            greatest);
    return slopes[0];
  }

  @Property(tries = 300)
  void smoothFunctionsGiveTenFigures(@ForAll @DoubleRange(min = 0.01, max = 3) double x) {
    assertEquals(StrictMath.cos(x), slope(StrictMath::sin, x, 1e-3, -END, END), 2e-10);
    assertEquals(
        StrictMath.exp(x), slope(StrictMath::exp, x, 1e-3, -END, END), 1e-9 * StrictMath.exp(x));
    assertEquals(1 / x, slope(StrictMath::log, x, 1e-3 * x, 0, END), 1e-9 / x);
  }

  @Test
  void atAnEndOfTheRangeTheSlopeComesFromInside() {
    assertEquals(0.25, slope(Math::sqrt, 4, 0.01, 4, 9), 1e-9);
    assertEquals(1.0 / 6, slope(Math::sqrt, 9, 0.01, 4, 9), 1e-9);
  }

  @Test
  void atZeroTheStepFollowsTheUncertainty() {
    assertEquals(1, slope(StrictMath::sin, 0, 1e-6, -END, END), 1e-9);
  }

  @Test
  void whereNothingCanBeTriedThereIsNoSlope() {
    assertNull(Slopes.at(v -> null, new double[] {1}, 1, 0.1, -END, END));
  }
}
