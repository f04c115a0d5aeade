package endfloat.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Finding in the words of both countries; which words are one is common practice, no source. */
class CatalogueSearchTest {
  private final CatalogueSearch search = new CatalogueSearch(Catalogue.library());

  private List<String> found(String typed) {
    return search.find(typed).stream().map(Calculation::name).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "lash from a dial indicator, backlash_from_dial",
    "backlash dial gauge, backlash_from_dial",
    "end play, end_float",
    "end float, end_float",
    "out-of-round, bore_wear",
    "OVALITY, bore_wear",
    "sleeve, press_fit",
    "liner, press_fit",
    "tolerance stack-up, chain_worst_case",
    "tolerance build-up, chain_worst_case",
    "crossed helical, skew_pair",
    "center distance, backlash_from_centre_distance",
    "segment, stepped_shaft",
  })
  void eitherCountryFindsItByItsOwnWord(String typed, String name) {
    assertTrue(found(typed.replace(" from a ", " ")).contains(name), () -> found(typed).toString());
  }

  @ParameterizedTest
  @CsvSource({
    "end float, end play",
    "gudgeon pin, wrist pin",
    "nip, crush",
    "liner, sleeve",
    "spanner, wrench",
    "ovality, out-of-round",
    "dial gauge, dial indicator",
    "valve clearance, valve lash",
    "big end bearings, rod bearing",
  })
  void bothWordsMeanTheSame(String british, String american) {
    assertEquals(TradeWords.of(british), TradeWords.of(american));
  }

  @Test
  void whatIsLookedForIsSaidByItsOtherNames() {
    assertTrue(TradeWords.otherwise("Wrist pin").get("wrist pin").contains("gudgeon pin"));
    assertTrue(
        TradeWords.otherwise("growth of a quench").keySet().equals(java.util.Set.of("growth")));
  }

  @Test
  void halfAWordFindsAndAWordThatStandsNowhereDoesNot() {
    assertTrue(found("las").contains("backlash_normal"));
    assertTrue(found("stepped sh").contains("stepped_shaft"));
    assertEquals(List.of(), found("lash xylophone"));
    assertEquals(Catalogue.library().all().size(), found(" ").size());
  }

  @Test
  void theNameComesBeforeTheDescription() {
    assertEquals("end_float", found("end float").get(0));
    assertFalse(found("bevel").isEmpty());
    assertTrue(found("bevel").get(0).contains("bevel"));
  }
}
