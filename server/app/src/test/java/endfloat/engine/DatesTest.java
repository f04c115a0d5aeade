package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import endfloat.record.InvestigationRecord;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Dates of a column in the language. Days between two dates by the Gregorian calendar of ISO 8601,
 * counted as JDN(later) - JDN(earlier); 2000-01-01 has the Julian day number 2451545 (IAU).
 */
class DatesTest {
  private static ValueGraph graph(String working) {
    String text =
        """
        {"format":"endfloat-record","version":1,"title_block":{"title":"t"},"cells":[
         {"id":"c1","kind":"table","name":"fleet","columns":[
           {"head":"fitted","kind":"date"},{"head":"taken_off","kind":"date"},
           {"head":"hours","kind":"number","unit":"h"},{"head":"batch","kind":"text"}],
          "rows":[["2024-02-28","2024-03-01","400","B1"],["2023-02-28","2023-03-01","900","B2"],
                  ["1999-12-31","","650","B1"],["2026-01-22","2026-05-19","64","B2"]]},
         {"id":"c2","kind":"working","text":"%s"}]}
        """
            .formatted(working.replace("\"", "\\\"").replace("\n", "\\n"));
    return RecordGraph.of(InvestigationRecord.read(text.getBytes(StandardCharsets.UTF_8))).graph();
  }

  private static String said(String line) {
    ValueGraph graph = graph(line);
    Figure figure = graph.figure(line.split("[ =\\[]")[0]).orElseThrow();
    if (figure.problem().isPresent()) {
      return figure.problem().get().message();
    }
    Value value = figure.value().orElseThrow();
    if (value instanceof Value.Series series) {
      return series.elements().stream().map(e -> one(figure, e)).collect(Collectors.joining(" "));
    }
    return one(figure, value);
  }

  private static String one(Figure figure, Value value) {
    if (value instanceof Value.Words words) {
      return words.text();
    }
    if (value instanceof Value.Scalar scalar) {
      return Shown.digits(figure.unit().map(u -> u.fromSi(scalar.si())).orElse(scalar.si()), 6);
    }
    return value instanceof Value.Truth truth ? truth.holds() ? "yes" : "no" : "-";
  }

  @Test
  void daysBetweenTwoDatesCountTheLeapDay() {
    assertEquals("2 1 - 117", said("age [d] = fleet.taken_off - fleet.fitted"));
    assertEquals(
        "-2 -1 - -117", said("age [d] = fleet.fitted - fleet.taken_off").replace('−', '-'));
  }

  /** JDN 2451545 less JDN 2451544, and 2451545 less 2461063 of 2026-01-22. */
  @Test
  void aQuotedDateMayStandOnEitherSide() {
    assertEquals(
        "1 -9518",
        said("age [d] = \"2000-01-01\" - only(fleet.fitted, where: fleet.fitted < \"2000-01-02\""
                + " or fleet.fitted > \"2026-01-01\")")
            .replace('−', '-'));
  }

  @Test
  void rowsAreChosenByTheirDate() {
    assertEquals(
        "900 650", said("h [h] = only(fleet.hours, where: fleet.fitted < \"2024-01-01\")"));
    assertEquals("64", said("h [h] = only(fleet.hours, where: fleet.fitted >= \"2026-01-22\")"));
    assertEquals("400", said("h [h] = only(fleet.hours, where: fleet.fitted = \"2024-02-28\")"));
    assertEquals(
        "400 900 64", said("h [h] = only(fleet.hours, where: fleet.taken_off > fleet.fitted)"));
  }

  @Test
  void theFirstTheLastAndTheTimeBetween() {
    assertEquals("1999-12-31", said("d = min(fleet.fitted)"));
    assertEquals("2026-01-22", said("d = max(fleet.fitted)"));
    // JDN 2461063 less 2451544
    assertEquals("9519", said("d [d] = range(fleet.fitted)"));
    assertEquals("2024-03-01 2026-05-19", said("d = max(fleet.taken_off, by: fleet.batch)"));
    assertEquals("3", said("d = count(fleet.taken_off)"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "h = fleet.fitted > \"2024-2-1\" | \"2024-2-1\" stands beside a date and is none.",
        "h = fleet.fitted > \"2023-02-29\" | \"2023-02-29\" stands beside a date and is none.",
        "h = fleet.fitted > \"B1\" | \"B1\" stands beside a date and is none.",
        "h = fleet.fitted = fleet.batch | This compares a date with a text.",
        "h = fleet.fitted > 2024 | This compares a date with a pure number.",
        "h = fleet.fitted + 90 d | A date has no sum with anything.",
        "h = fleet.fitted - 90 d | This takes a time from a date.",
        "h = mean(fleet.fitted) | mean of dates says nothing.",
        "h = fleet.fitted * 2 | This reckons with a date.",
        "h = fleet.batch < \"B2\" | This compares a text with a text."
      })
  void whatMakesNoSenseOfADateIsRefused(String line, String message) {
    assertEquals(message, said(line));
  }
}
