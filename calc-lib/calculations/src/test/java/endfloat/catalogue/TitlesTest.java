package endfloat.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Titles of calculations in the contents of the reference. */
class TitlesTest {
  @Test
  void everyTitleBelongsToACalculationAndNoTwoReadAlike() {
    List<String> strangers =
        Titles.given().keySet().stream()
            .filter(name -> Catalogue.library().find(name).isEmpty())
            .toList();
    assertEquals(List.of(), strangers);
    List<String> titles =
        Catalogue.library().all().stream().map(one -> Titles.of(one.name())).toList();
    assertEquals(titles.size(), new HashSet<>(titles).size(), titles::toString);
    assertTrue(titles.stream().noneMatch(title -> title.contains("_")), titles::toString);
  }

  @Test
  void aCalculationWithoutATitleIsCalledByItsName() {
    assertEquals("Some new thing", Titles.of("some_new_thing"));
    assertEquals("Growth of a heated length", Titles.of("thermal_growth"));
  }
}
