package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class CorrelationsTest {
  private static Root root(String id, double degrees) {
    return new Root(id, Root.Kind.INPUT, id, "", degrees);
  }

  private static final double NONE = Double.POSITIVE_INFINITY;

  private static Gradient gradient(Object... rootsAndParts) {
    Gradient sum = Gradient.NONE;
    for (int i = 0; i < rootsAndParts.length; i += 2) {
      Gradient one = Gradient.of((Root) rootsAndParts[i], (double) rootsAndParts[i + 1]);
      sum = Gradient.combine(1, sum, 1, one);
    }
    return sum;
  }

  /**
   * uncertainty-gum-g4-welch-satterthwaite. Source: JCGM 100:2008 (GUM), G.4.1 (example): relative
   * uncertainties 0.25 % (n = 10), 0.57 % (n = 5), 0.82 % (n = 15) give 1.03 % and 19.0.
   */
  @Test
  void reproducesTheProductOfJcgm100G41() {
    Gradient g = gradient(root("a", 9), 0.25e-2, root("b", 4), 0.57e-2, root("c", 14), 0.82e-2);
    double u = Correlations.NONE.standardUncertainty(g);
    assertEquals(1.03e-2, u, 0.005e-2);
    assertEquals(19.0, Correlations.NONE.degreesOfFreedom(g, u), 0.05);
  }

  /**
   * uncertainty-gum-5-2-2-ten-resistors. Source: JCGM 100:2008 (GUM), 5.2.2, example: ten resistors
   * of 1000 ohm compared with one standard, 100 mohm each: 1 ohm together, 0.32 ohm if they were
   * independent.
   */
  @Test
  void tenResistorsCalibratedAgainstOneStandardAddUpWhole() {
    Root standard = root("standard", NONE);
    Gradient sum = Gradient.NONE;
    Gradient apart = Gradient.NONE;
    for (int i = 0; i < 10; i++) {
      sum = Gradient.combine(1, sum, 1, Gradient.of(standard, 0.1));
      apart = Gradient.combine(1, apart, 1, Gradient.of(root("r" + i, NONE), 0.1));
    }
    assertEquals(1.0, Correlations.NONE.standardUncertainty(sum), 1e-6);
    assertEquals(0.316227766, Correlations.NONE.standardUncertainty(apart), 1e-6 * 0.316);
  }

  /** Var(a - b) = a² + b² - 2 r a b, JCGM 100, 5.2.2 formula (16): 4 + 9 - 2 * 0.8 * 6. */
  @Test
  void aDifferenceOfCorrelatedInputsIsBetterKnownThanItsParts() {
    Root a = root("a", 5);
    Root b = root("b", 5);
    Root first = a.compareTo(b) < 0 ? a : b;
    Root second = first == a ? b : a;
    var correlations = new Correlations(List.of(new Correlations.Pair(first, second, 0.8)));
    Gradient difference = gradient(a, 2.0, b, -3.0);
    double u = correlations.standardUncertainty(difference);
    assertEquals(Math.sqrt(3.4), u, 1e-15);
    assertTrue(
        Double.isNaN(correlations.degreesOfFreedom(difference, u)),
        "Welch and Satterthwaite hold for independent roots only");
  }

  @Test
  void threeCannotEachGoAgainstTheOtherTwo() {
    Root a = root("a", NONE);
    Root b = root("b", NONE);
    Root c = root("c", NONE);
    assertFalse(
        new Correlations(
                List.of(
                    new Correlations.Pair(a, b, -0.9),
                    new Correlations.Pair(b, c, -0.9),
                    new Correlations.Pair(a, c, -0.9)))
            .refusal()
            .isEmpty());
    assertTrue(
        new Correlations(
                List.of(
                    new Correlations.Pair(a, b, 1),
                    new Correlations.Pair(b, c, 1),
                    new Correlations.Pair(a, c, 1)))
            .refusal()
            .isEmpty(),
        "all one and the same is possible");
  }
}
