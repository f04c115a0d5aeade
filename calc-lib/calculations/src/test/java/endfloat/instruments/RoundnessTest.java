package endfloat.instruments;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Reference circles and lines against each other. */
class RoundnessTest {

  /** No zone is narrower than the minimum zone, and circles hold the profile between them. */
  @Property(tries = 40)
  void theCirclesStandInOrder(@ForAll int seed) {
    Random random = new Random(seed);
    int n = 12 + random.nextInt(40);
    double[] radii = new double[n];
    double shift = 1e-5 * random.nextGaussian();
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * i / n;
      radii[i] = 0.04 + shift * Math.cos(angle - seed) + 2e-6 * random.nextGaussian();
    }
    var c = Roundness.roundness(radii, new double[0]);
    assertTrue(c.minimumZone() <= c.deviation() * (1 + 1e-9));
    assertTrue(c.inscribed() < c.radius() && c.radius() < c.circumscribed());
    assertTrue(c.minimumZone() <= (c.circumscribed() - c.inscribed()) + 4e-6 * 4);
  }

  /** A true circle off its centre has no deviation at all. */
  @Test
  void anEccentricCircleIsRound() {
    double[] radii = new double[36];
    double e = 2e-5;
    double r = 0.03;
    for (int i = 0; i < radii.length; i++) {
      double angle = 2 * Math.PI * i / radii.length;
      radii[i] = e * Math.cos(angle) + Math.sqrt(r * r - Math.pow(e * Math.sin(angle), 2));
    }
    var c = Roundness.roundness(radii, new double[0]);
    assertEquals(0, c.deviation(), 1e-15);
    assertEquals(0, c.minimumZone(), 1e-15);
    assertEquals(e, c.centreX(), 1e-15);
    assertEquals(r, c.radius(), 1e-15);
  }

  /** The zone of an n-lobed form is twice its amplitude, whatever its centre. */
  @Test
  void theZoneOfALobedFormIsTwiceItsAmplitude() {
    double[] radii = new double[360];
    for (int i = 0; i < radii.length; i++) {
      double angle = 2 * Math.PI * i / radii.length;
      radii[i] = 0.04 + 1e-6 * Math.cos(5 * angle) + 1e-6 * Math.sin(angle);
    }
    assertEquals(2e-6, Roundness.roundness(radii, new double[0]).minimumZone(), 1e-9);
  }

  @Property(tries = 50)
  void aTiltedStraightEdgeIsAsStraightAsBefore(@ForAll int seed) {
    Random random = new Random(seed);
    double[] x = new double[9];
    double[] z = new double[9];
    double[] tilted = new double[9];
    for (int i = 0; i < 9; i++) {
      x[i] = 0.05 * i;
      z[i] = 2e-6 * random.nextGaussian();
      tilted[i] = z[i] + 3e-5 * x[i] + 1e-3;
    }
    var a = Straightness.straightness(x, z);
    var b = Straightness.straightness(x, tilted);
    assertEquals(a.minimumZone(), b.minimumZone(), 1e-15);
    assertEquals(a.deviation(), b.deviation(), 1e-15);
    assertTrue(a.minimumZone() <= a.deviation() && a.minimumZone() <= a.endPointDeviation());
  }
}
