package endfloat.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import endfloat.record.RecordException.Reason;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Input that two readers could understand differently, or that is no JSON at all. */
class StrictReadingTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"a\": 1, \"a\": 2}| line 1, column 13: the field 'a' stands here twice",
        "{} {}| line 1, column 4: there is more after the end of the record",
        "{\"a\": NaN}| line 1, column 10: NaN and infinity are no numbers of JSON",
        "{\"a\": 1e400}| the number is too great",
        "{\"a\": 01}| line 1, column 8: this is not JSON",
        "{\"a\": }| line 1, column 7: this is not JSON",
        "{\"a\"| line 1, column 5: the file ends too early",
        "{\"a\": \"\\ud800 x\"}| half a character (a lone surrogate) in the text '...'",
        "{'a': 1}| line 1, column 2: this is not JSON",
        "{\"a\": 1} // note| line 1, column 10: this is not JSON",
        "``| the file is empty",
      })
  void isRefusedWithItsPlace(String text, String message) {
    RecordException refused =
        assertThrows(
            RecordException.class,
            () -> RecordJson.read(text.getBytes(StandardCharsets.UTF_8)),
            text);
    assertEquals(message, refused.getMessage());
    assertEquals(Reason.NOT_JSON, refused.reason());
  }

  @Test
  void nestingIsLimited() {
    byte[] deep = ("[".repeat(10_000) + "]".repeat(10_000)).getBytes(StandardCharsets.UTF_8);
    assertEquals(
        "nested more than 100 deep",
        assertThrows(RecordException.class, () -> RecordJson.read(deep)).getMessage());
  }

  @Test
  void otherEncodingsAreRefused() {
    assertEquals(
        "the file is not UTF-8 text; save it again as UTF-8",
        assertThrows(
                RecordException.class,
                () -> RecordJson.read("{\"a\": 1}".getBytes(StandardCharsets.UTF_16)))
            .getMessage());
    assertEquals(
        "the file is not UTF-8 text; save it again as UTF-8",
        assertThrows(
                RecordException.class,
                () -> RecordJson.read("{\"a\": \"\u00e9\"}".getBytes(StandardCharsets.ISO_8859_1)))
            .getMessage()
            .replaceFirst("^line.*: ", ""));
  }
}
