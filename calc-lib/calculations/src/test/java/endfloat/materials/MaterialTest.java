package endfloat.materials;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Callister and Rethwisch, Fundamentals of Materials Science and Engineering: An Integrated
 * Approach, 3rd ed., Appendix B, unless a test says otherwise.
 */
class MaterialTest {

  @Test
  void holdsTheMaterialsOfTheTrade() {
    assertTrue(MaterialTable.LIBRARY.names().size() >= 25);
    assertAll(
        MaterialTable.LIBRARY.names().stream()
            .map(n -> () -> assertFalse(Material.material(n).sources().isEmpty(), n)));
  }

  @Test
  void everyValueNamesItsSourceAndHowItIsKnown() {
    assertEquals(
        "W. D. Callister and D. G. Rethwisch, Fundamentals of Materials Science and Engineering: An"
            + " Integrated Approach, 3rd ed.: expansion (Table B.6, 20 degC, verified)",
        Material.material("invar").sources().split("; ", -1)[0]);
  }

  /** Table B.2 prints 90 to 113 GPa for grey iron G3000: middle 101.5, half-width 11.5, even. */
  @Test
  void aPrintedRangeIsItsMiddleWithAnEvenSpread() {
    var modulus = Material.material("gray iron g3000").modulus();
    assertEquals(101.5e9, modulus.value(), 1);
    assertEquals(11.5e9 / Math.sqrt(3), modulus.standardUncertainty(), 1);
  }

  /** Table B.4: 6061-T6 yields at 276 MPa; its expansion is that of 6061, 23.6 ppm/K. */
  @Test
  void aConditionAddsItsStrengthToTheMaterial() {
    var case6061 = Material.material("Aluminum 6061-T6");
    assertEquals(276e6, case6061.yield().value(), 1);
    assertEquals(23.6e-6, case6061.expansion().value(), 1e-12);
  }

  @Test
  void aStrengthNobodyCanVouchForIsAbsentAndSaysWhy() {
    var yield = Material.material("4140").yield();
    assertTrue(yield.isAbsent());
    assertEquals(
        "no yield strength on file for steel 4140: it depends on the condition; name one: steel"
            + " 4140 annealed; steel 4140 normalized; steel 4140 oil quenched, tempered 315 degC",
        yield.whyAbsent());
    assertEquals(
        "no yield strength on file for grey iron G1800: enter a value with its source in the"
            + " record",
        Material.material("grey iron G1800").yield().whyAbsent());
  }

  @Test
  void aNameNotOnFileIsRefusedWithTheNearest() {
    var refusal = assertThrows(RefusedException.class, () -> Material.material("steel 4144"));
    assertTrue(
        refusal.getMessage().startsWith("no material \"steel 4144\" on file; near it are: steel 4"),
        refusal.getMessage());
    assertThrows(RefusedException.class, () -> Material.material("unobtainium"));
    assertThrows(RefusedException.class, () -> Material.material(""));
  }

  /** The alloys that a generic name stands for on file. */
  private static final Map<String, List<String>> HELD =
      Map.of(
          "aluminium", List.of("1100", "2024", "6061", "7075", "356.0", "2618"),
          "magnesium", List.of("AZ31B", "AZ91D", "RZ5"),
          "brass", List.of("C26000", "C36000"),
          "phosphor bronze", List.of("C51000", "C52400"),
          "cast iron", List.of("G1800", "G3000", "G4000"),
          "stainless steel 18-8", List.of("stainless 304"),
          "titanium", List.of("titanium grade 1", "6Al-4V"),
          "carbon steel", List.of("1020", "1040"));

  /**
   * A generic name that is sure of a value which its own alloys do not have says something false.
   */
  @Test
  void theSpreadOfAGenericNameHoldsTheAlloysOfThatName() {
    HELD.forEach(
        (generic, alloys) -> {
          var whole = Material.material(generic);
          for (String alloy : alloys) {
            var one = Material.material(alloy);
            holds(generic + ", expansion of " + alloy, whole.expansion(), one.expansion());
            holds(generic + ", modulus of " + alloy, whole.modulus(), one.modulus());
            holds(generic + ", Poisson's ratio of " + alloy, whole.poisson(), one.poisson());
            holds(generic + ", density of " + alloy, whole.density(), one.density());
          }
        });
  }

  private static void holds(String what, Uncertain whole, Uncertain one) {
    if (!one.isAbsent()) {
      double half = Math.sqrt(3) * whole.standardUncertainty();
      assertTrue(
          Math.abs(one.value() - whole.value()) <= half * (1 + 1e-9),
          what + ": " + one.value() + " for " + whole.value() + " +/- " + half);
    }
  }

  /**
   * Table B.6: austenitic 304 expands by 17.2, martensitic 440A by 10.2 parts per million, both
   * stainless steels; a bronze is one of several. EN and BS 2870 (from memory): PB104 has 8 % of
   * tin and is no C52400, which has 10 %.
   */
  @Test
  void aNameOfAlloysThatAreNotAlikeIsRefused() {
    for (String name : List.of("stainless", "stainless steel", "bronze", "PB104")) {
      assertThrows(RefusedException.class, () -> Material.material(name), name);
    }
    var refusal = assertThrows(RefusedException.class, () -> Material.material("stainless"));
    assertTrue(refusal.getMessage().contains("stainless 3"), refusal.getMessage());
  }
}
