package endfloat.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.RefusedException;
import endfloat.units.Indexed;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Arithmetic of the readings, done by hand. */
class WearTest {
  private static final List<String> AXES = List.of("plane", "direction");

  private static Indexed read(List<List<String>> labels, double... values) {
    return new Indexed(AXES, labels, values);
  }

  /** A missing station is left out; it does not make a difference of its own. */
  @Test
  void aPlaneReadInOneDirectionOnlyHasNoOvality() {
    var worn =
        Wear.boreWear(
            read(
                List.of(
                    List.of("top", "across"), List.of("top", "along"), List.of("foot", "across")),
                0.0803,
                0.0801,
                0.0800),
            Double.NaN,
            "plane",
            "direction");
    assertEquals(0.0002, worn.ovality().value(), 1e-12);
    assertEquals("plane top", worn.ovalityAt());
    assertEquals(0.0003, worn.taper().value(), 1e-12);
    assertTrue(worn.wear().isAbsent());
    assertEquals(
        "no wear without the new size: give new_size from the schedule", worn.wear().whyAbsent());
  }

  @Test
  void wearIsMeasuredFromTheWorstPlaceOfEach() {
    Indexed d =
        read(
            List.of(List.of("a", "x"), List.of("a", "y"), List.of("b", "x"), List.of("b", "y")),
            0.0501,
            0.0499,
            0.0500,
            0.0498);
    assertEquals(1e-4, Wear.boreWear(d, 0.05, "plane", "direction").wear().value(), 1e-12);
    assertEquals(2e-4, Wear.journalWear(d, 0.05, "plane", "direction").wear().value(), 1e-12);
  }

  @Test
  void refusesReadingsThatCannotSayIt() {
    var plain =
        assertThrows(
            RefusedException.class,
            () -> Wear.boreWear(Indexed.list(0.08, 0.081), Double.NaN, "plane", "direction"));
    assertEquals(
        "the diameters have no axis \"plane\": read them with stations, one for each plane and"
            + " direction",
        plain.getMessage());
  }

  /** A short bush has one plane: its ovality is not refused for want of a taper. */
  @Test
  void oneDirectionHasNoOvalityAndOnePlaneNoTaperButTheRestStands() {
    var direction =
        Wear.boreWear(
            read(List.of(List.of("a", "x"), List.of("b", "x")), 0.08, 0.081),
            Double.NaN,
            "plane",
            "direction");
    assertEquals("ovality needs two directions in one plane", direction.ovality().whyAbsent());
    assertNull(direction.ovalityAt());
    assertEquals(0.001, direction.taper().value(), 1e-12);
    var plane =
        Wear.journalWear(
            read(List.of(List.of("a", "x"), List.of("a", "y")), 0.0499, 0.0498),
            0.05,
            "plane",
            "direction");
    assertEquals("taper needs two planes along one direction", plane.taper().whyAbsent());
    assertEquals(1e-4, plane.ovality().value(), 1e-12);
    assertEquals(2e-4, plane.wear().value(), 1e-12);
  }
}
