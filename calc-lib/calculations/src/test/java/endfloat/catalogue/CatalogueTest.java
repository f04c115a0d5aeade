package endfloat.catalogue;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.definition.OutOfRangeException;
import endfloat.definition.Progress;
import endfloat.definition.RefusedException;
import java.util.List;
import org.junit.jupiter.api.Test;

class CatalogueTest {
  private final Catalogue library = Catalogue.library();

  @Test
  void everyCalculationHasChecksThatCanBeRead() {
    assertAll(
        library.all().stream()
            .map(c -> () -> assertFalse(library.checks(c.name()).isEmpty(), c.name())));
  }

  @Test
  void everyArgumentAndResultIsDescribed() {
    assertAll(
        library.all().stream()
            .flatMap(
                c ->
                    c.parameters().stream()
                        .map(p -> new String[] {c.name() + ": " + p.name(), p.description()}))
            .map(d -> () -> assertFalse(d[1].isBlank(), d[0])));
  }

  @Test
  void aSlipOfThePenFindsTheNearestName() {
    assertEquals("stepped_shaft", library.nearest("steped_shaft").get(0));
  }

  @Test
  void aValueOutsideTheRangeIsRefusedBeforeTheMethodRuns() {
    Calculation limits = library.find("iso_limits").orElseThrow();
    var refusal =
        assertThrows(
            OutOfRangeException.class,
            () -> limits.call(new Object[] {0.0, "H7"}, Progress.IGNORED));
    assertEquals("size", refusal.quantity());
    assertEquals("it holds for > 0 mm", refusal.wayOut());
  }

  @Test
  void aValueThatIsNoNumberIsRefused() {
    Calculation limits = library.find("iso_limits").orElseThrow();
    assertThrows(
        RefusedException.class,
        () -> limits.call(new Object[] {Double.NaN, "H7"}, Progress.IGNORED));
  }

  @Test
  void aListOfPartsIsBuiltFromItsComponents() {
    Calculation twist = library.find("shaft_twist").orElseThrow();
    Object[] given =
        twist.call(
            new Object[] {
              List.<Object[]>of(new Object[] {0.65, 0.045, 0.0}),
              1200.0,
              79230.7692308e6,
              Double.NaN
            },
            Progress.IGNORED);
    // Roark's Formulas for Stress and Strain, 7th ed., Table 10.1, case 1 (from memory;
    // recomputed): 0.02445404915 rad
    assertEquals(0.02445404915, (double) given[0], 1e-8);
    assertTrue(twist.givesRecord());
  }

  @Test
  void aCallThatBeginsWithATextMeansTheFormThatTakesOne() {
    Catalogue library = Catalogue.library();
    assertEquals("iso_limits_text", library.find("iso_limits", true).orElseThrow().name());
    assertEquals("iso_limits", library.find("iso_limits", false).orElseThrow().name());
    assertEquals("inch_fit", library.find("inch_fit", true).orElseThrow().name());
  }
}
