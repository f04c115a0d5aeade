package endfloat.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Words of the trade on both sides; common practice, no source. */
class TermsTest {
  @Test
  void aTextIsSaidInTheWordsOfTheOtherSide() {
    assertEquals(
        "Valve lash and end play, by dial indicator.",
        Terms.AMERICAN.say("Tappet clearance and end float, by dial gauge."));
    assertEquals(
        "Schedule of fits and clearances", Terms.BRITISH.say("Schedule of fits and clearances"));
    assertEquals("Table of limits", Terms.AMERICAN.say("Schedule of fits and clearances"));
  }

  @Test
  void aWordInsideAnotherIsLeftAlone() {
    assertEquals(
        "snipe, liner_bore and metrename", Terms.AMERICAN.say("snipe, liner_bore and metrename"));
  }

  @Test
  void theSettingOfARecordChooses() {
    assertEquals(Terms.AMERICAN, Terms.of("american"));
    assertEquals(Terms.BRITISH, Terms.of("british"));
    assertTrue(Terms.pairs().size() > 20);
  }
}
