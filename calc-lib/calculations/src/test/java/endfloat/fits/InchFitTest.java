package endfloat.fits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.OutOfRangeException;
import endfloat.definition.RefusedException;
import org.junit.jupiter.api.Test;

/** The published rows are in checks/inch_fit.check; here every row against itself. */
class InchFitTest {
  /** What makes a row certain: its printed clearances follow from its printed limits. */
  @Test
  void clearancesFollowFromTheLimitsInEveryRow() {
    for (InchFit.Row row : InchFit.rows()) {
      String name = row.fitClass() + " to " + row.to();
      assertEquals(row.least(), -row.shaftUpper(), 1e-9, name);
      assertEquals(row.greatest(), row.hole() - row.shaftLower(), 1e-9, name);
      assertTrue(row.shaftLower() < row.shaftUpper(), name);
    }
    assertEquals(464, InchFit.rows().size());
  }

  /** Ranges of a class join without gap or overlap. */
  @Test
  void rangesJoin() {
    InchFit.Row before = null;
    for (InchFit.Row row : InchFit.rows()) {
      if (before != null && before.fitClass().equals(row.fitClass())) {
        assertEquals(before.to(), row.over());
        assertTrue(row.hole() >= before.hole(), row.fitClass() + " to " + row.to());
      }
      before = row;
    }
  }

  /** One hole grade, one tolerance: H7 holes of RC3, LC2, LT1, LN2 and FN2 are the same. */
  @Test
  void holesOfOneGradeAgreeAcrossClasses() {
    for (double inches = 0.05; inches < 19.6; inches += 0.05) {
      double size = inches * 0.0254;
      double hole = InchFit.inchFit(size, "RC3").holeUpper();
      for (String other : new String[] {"LC2", "LT1", "LT5", "LN2", "LN3", "FN2", "FN4"}) {
        assertEquals(hole, InchFit.inchFit(size, other).holeUpper(), other + " " + inches);
      }
    }
  }

  /** A02-ansi-RC4-1.0: Machinery's Handbook, 31st ed., Table 8a. */
  @Test
  void thouAreExact() {
    assertEquals(-0.8 * 25.4e-6, InchFit.inchFit(0.0254, "RC4").shaftUpper(), 1e-19);
    assertEquals(2.032e-5, InchFit.inchFit(0.0254, "rc 4").leastClearance());
  }

  @Test
  void refusesByName() {
    assertEquals(
        "ANSI B4.1 LC7 over 9.85 in is not certain here: take it from the standard",
        assertThrows(RefusedException.class, () -> InchFit.inchFit(0.3, "LC7")).getMessage());
    assertEquals(
        "ANSI B4.1 gives no FN3 up to 0.95 in",
        assertThrows(RefusedException.class, () -> InchFit.inchFit(0.01, "FN3")).getMessage());
    assertThrows(OutOfRangeException.class, () -> InchFit.inchFit(0.51, "RC4"));
  }
}
