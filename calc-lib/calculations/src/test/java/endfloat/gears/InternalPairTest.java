package endfloat.gears;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import endfloat.definition.OutOfRangeException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Second method: the flanks themselves, laid into one another and turned until they touch. */
class InternalPairTest {
  private static final double ANGLE = StrictMath.toRadians(20);
  private static final double TAN = StrictMath.tan(ANGLE);

  /** A pinion tooth in a ring space, both in the middle of the line of centres at first. */
  private record Flanks(int z1, int z2, double module, double x1, double x2, double centres) {
    double base(int teeth) {
      return module * teeth * StrictMath.cos(ANGLE) / 2;
    }

    /** Half the angle that a tooth of the pinion, or a space of the ring, fills at a radius. */
    double half(int teeth, double shift, double radius) {
      double atPitch = StrictMath.PI / (2 * teeth) + 2 * shift * TAN / teeth;
      double angle = StrictMath.acos(base(teeth) / radius);
      return atPitch + Involute.inv(ANGLE) - Involute.inv(angle);
    }

    /** Least gap, as an arc about the ring's centre, with the pinion turned; below 0 it digs in. */
    double gap(double turned, double from, double to) {
      double least = Double.POSITIVE_INFINITY;
      int steps = 4000;
      for (int i = 0; i <= steps; i++) {
        double radius = from + (to - from) * i / steps;
        double at = turned + half(z1, x1, radius);
        double x = centres + radius * StrictMath.cos(at);
        double y = radius * StrictMath.sin(at);
        double fromRing = StrictMath.hypot(x, y);
        if (fromRing > base(z2)) {
          double gap = half(z2, x2, fromRing) - StrictMath.atan2(y, x);
          least = Math.min(least, gap * fromRing);
        }
      }
      return least;
    }

    /** How far the pinion turns from the middle until a flank touches [rad]. */
    double free() {
      double from = Math.max(base(z1) * 1.0001, module * (z1 / 2.0 - 1.2 + x1));
      double to = module * (z1 / 2.0 + 1 + x1);
      double low = -0.05;
      double high = 0.05;
      for (int i = 0; i < 80; i++) {
        double middle = (low + high) / 2;
        if (gap(middle, from, to) > 0) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return low;
    }
  }

  @ParameterizedTest
  @CsvSource({
    "20, 60, 2, 0, 0, 39.9",
    "20, 60, 2, 0, 0, 39.6",
    "17, 96, 14, 0.2, 0.5, 556.5",
    "25, 70, 3, 0.3, 0.1, 66.5",
    "30, 55, 1.5, 0, 0.4, 19.2"
  })
  void theBacklashIsWhatThePinionTurnsFreeInTheRing(
      int z1, int z2, double module, double x1, double x2, double centres) {
    InternalPair.Internal pair =
        InternalPair.internalPair(z1, z2, module / 1e3, ANGLE, 0, x1, x2, centres / 1e3, 1, 1);
    double free = new Flanks(z1, z2, module, x1, x2, centres).free();
    // both flanks, on the working pitch circle
    double arc = 2 * free * pair.workingDiameter1() / 2;
    assertEquals(pair.backlash(), arc, 2e-8 * module);
  }

  /**
   * Both must agree where nothing fouls: length of the line of action between the tip circles, laid
   * out in the plane (line of action tangent to both base circles).
   */
  @ParameterizedTest
  @CsvSource({"20, 60, 2", "25, 70, 3", "40, 100, 1"})
  void theContactRatioIsThatOfTheLineOfActionBetweenTheTips(int z1, int z2, double module) {
    InternalPair.Internal pair =
        InternalPair.internalPair(z1, z2, module / 1e3, ANGLE, 0, 0, 0, Double.NaN, 1, 1);
    double centres = (z2 - z1) * module / 2;
    // foot of the pinion's perpendicular on the line of action, and along it
    double footX = centres + z1 * module / 2 * StrictMath.cos(ANGLE) * StrictMath.cos(ANGLE);
    double footY = z1 * module / 2 * StrictMath.cos(ANGLE) * StrictMath.sin(ANGLE);
    double alongX = StrictMath.sin(ANGLE);
    double alongY = -StrictMath.cos(ANGLE);
    double inRing = 0;
    double overPinion = 0;
    for (double s = 0; s < 20 * module; s += module * 1e-5) {
      double x = footX + s * alongX;
      double y = footY + s * alongY;
      inRing = StrictMath.hypot(x, y) < module * (z2 / 2.0 - 1) ? s : inRing;
      overPinion = StrictMath.hypot(x - centres, y) < module * (z1 / 2.0 + 1) ? s : overPinion;
    }
    double pitch = StrictMath.PI * module * StrictMath.cos(ANGLE);
    assertEquals((overPinion - inRing) / pitch, pair.contactRatio(), 1e-4);
  }

  /**
   * Standard teeth of 20 degrees foul away from the line of centres where the ring has only a few
   * teeth more than the pinion (Elements of Metric Gear Technology, section 5, trochoid
   * interference: fewer than 9 more; from memory), and the ring's tip digs into a small pinion.
   */
  @ParameterizedTest
  @CsvSource({
    "60, 66, tips foul away from the line of centres",
    "60, 75, none",
    "12, 60, tip of the ring reaches below the pinion's base circle"
  })
  void saysWhatFouls(int z1, int z2, String words) {
    assertEquals(
        words,
        InternalPair.internalPair(z1, z2, 2e-3, ANGLE, 0, 0, 0, Double.NaN, 1, 1).interference());
  }

  @org.junit.jupiter.api.Test
  void centresCloserThanTheBaseCirclesAreRefused() {
    assertThrows(
        OutOfRangeException.class,
        () -> InternalPair.internalPair(20, 60, 2e-3, ANGLE, 0, 0, 0, 37.5e-3, 1, 1));
  }
}
