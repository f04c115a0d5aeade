package endfloat.gears;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ContactPathTest {

  /**
   * Loss factor of Ohlendorf, (1 - eps + eps1^2 + eps2^2)/2 base pitches, for one to two pairs in
   * contact (ISO/TR 14179-2, from memory; the same sharing worked out by hand).
   */
  @Property
  void meanDistanceIsOhlendorfsBetweenOneAndTwoPairs(
      @ForAll @DoubleRange(min = 0.3, max = 0.98) double approach,
      @ForAll @DoubleRange(min = 0.75, max = 0.98) double recess) {
    double ratio = approach + recess;
    assertEquals(
        (1 - ratio + approach * approach + recess * recess) / 2,
        new ContactPath(approach, recess, 1, false).meanDistance(),
        1e-12);
  }

  /** Second method: the sharing added up in small steps, also above two pairs and for one side. */
  @Test
  void meanDistanceIsThatOfSmallSteps() {
    for (double[] path : new double[][] {{1.2, 1.1}, {0.4, 0.3}, {1.6, 0.7}, {0.9, 1.3}}) {
      double sum = 0;
      int steps = 400_000;
      double step = (path[0] + path[1]) / steps;
      for (int i = 0; i < steps; i++) {
        double x = -path[0] + (i + 0.5) * step;
        int pairs = 0;
        for (int k = -4; k <= 4; k++) {
          pairs += x + k >= -path[0] && x + k <= path[1] ? 1 : 0;
        }
        sum += Math.abs(x) / pairs * step;
      }
      // a path below one pitch is the whole time in contact: helical teeth overlap along the face
      double length = Math.min(1, path[0] + path[1]);
      assertEquals(sum / length, new ContactPath(path[0], path[1], 1, false).meanDistance(), 1e-5);
    }
  }

  /**
   * A 60-tooth wheel digs into a standard 15-tooth pinion of 20 degrees: fewer than 17 teeth are
   * undercut (Machinery's Handbook, interference in spur gears).
   */
  @Test
  void saysWhereATipDigsIntoTheMate() {
    assertTrue(mesh(15, 60).path.undercut());
    assertEquals("tip reaches below the base circle", mesh(15, 60).interference());
    assertEquals("none", mesh(18, 60).interference());
  }

  private static CylindricalMesh mesh(double teeth1, double teeth2) {
    return new CylindricalMesh(
        new CylindricalMesh.Wheel(teeth1, 0, 1),
        new CylindricalMesh.Wheel(teeth2, 0, 1),
        0.003,
        Math.toRadians(20),
        0,
        Double.NaN,
        TipHeight.FULL);
  }
}
