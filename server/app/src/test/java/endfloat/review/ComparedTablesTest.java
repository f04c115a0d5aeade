package endfloat.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.record.InvestigationRecord;
import endfloat.review.Comparison.Standing;
import endfloat.review.TableDifference.Change;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Rows told apart by hand in small tables; uncertainties of differences against JCGM 100:2008,
 * formula 16: of a column of two engines u is each side's own, so u = √2 u₁.
 */
class ComparedTablesTest {
  private static InvestigationRecord record(String number, String columns, String rows) {
    return record(number, columns, rows, "");
  }

  private static InvestigationRecord record(
      String number, String columns, String rows, String limits) {
    String json =
        """
        {"format":"endfloat-record","version":1,
         "title_block":{"title":"T","record_number":"%s","engine_serial":"W6-1"},
         "cells":[{"id":"c1","kind":"table","title":"Wear","name":"wear","columns":[%s],
           "limits":[%s],"rows":[%s]},
           {"id":"c2","kind":"working","text":"largest [mm] = max(wear.lash)"}]}
        """
            .formatted(number, columns, limits, rows);
    return InvestigationRecord.read(json.getBytes(StandardCharsets.UTF_8));
  }

  private static final String KEYED =
      """
      {"head":"craft","kind":"text","key":true},
      {"head":"lash","kind":"number","unit":"mm","u":"0.002 mm"}
      """;

  private static final String NUMBERED =
      """
      {"head":"craft","kind":"text"},{"head":"lash","kind":"number","unit":"mm"}
      """;

  private static TableDifference table(InvestigationRecord left, InvestigationRecord right) {
    return Comparison.of(left, right).tables().get(0);
  }

  private static String cells(TableDifference.Row row) {
    return row.cells().stream()
        .map(cell -> cell.head() + ":" + cell.left() + ":" + cell.right())
        .collect(Collectors.joining(" "));
  }

  @Test
  void rowsAreToldByTheirKeyWhereverTheyStand() {
    TableDifference wear =
        table(
            record("1", KEYED, "[\"A\",\"0.150\"],[\"B\",\"0.160\"],[\"C\",\"0.170\"]"),
            record("2", KEYED, "[\"D\",\"0.180\"],[\"C\",\"0.170\"],[\"A\",\"0.250\"]"));
    assertEquals("craft", wear.by());
    assertEquals(List.of(1, 1, 1), List.of(wear.changed(), wear.gone(), wear.added()));
    assertEquals(
        List.of("A", "B", "D"), wear.first().stream().map(TableDifference.Row::key).toList());
    assertEquals("lash:0.150 mm:0.250 mm", cells(wear.first().get(0)));
    assertEquals(Change.GONE, wear.first().get(1).change());
    assertEquals("craft:B: lash:0.160 mm:", cells(wear.first().get(1)));
    assertEquals("craft::D lash::0.180 mm", cells(wear.first().get(2)));
    assertEquals(
        "3 rows, 1 changed, 1 only left, 1 only right; 1 value is another, 1 of them clearly",
        wear.counts());
    assertFalse(wear.isEqual());
  }

  @Test
  void aDifferenceSmallerThanItsOwnUncertaintyIsNotClear() {
    TableDifference wear =
        table(
            record("1", KEYED, "[\"A\",\"0.150\"],[\"B\",\"0.160\"]"),
            record("2", KEYED, "[\"A\",\"0.155\"],[\"B\",\"0.166\"]"));
    // U = 2 · √2 · 0.002 = 0.00566: 0.005 is within it, 0.006 beyond
    TableDifference.Cell one = wear.first().get(0).cells().get(0);
    TableDifference.Cell other = wear.first().get(1).cells().get(0);
    assertEquals("0.0050 ± 0.0057 mm", one.difference().orElseThrow().text());
    assertEquals(Standing.NOT_CLEAR, one.standing());
    assertEquals(Standing.CLEAR, other.standing());
    assertEquals(1, wear.clear());
  }

  @Test
  void withoutAKeyRowsAreToldByTheirNumber() {
    TableDifference wear =
        table(
            record("1", NUMBERED, "[\"A\",\"0.15\"],[\"B\",\"0.16\"]"),
            record("2", NUMBERED, "[\"A\",\"0.15\"],[\"C\",\"\"],[\"B\",\"0.16\"]"));
    assertEquals("row number", wear.by());
    assertEquals(List.of(1, 0, 1), List.of(wear.changed(), wear.gone(), wear.added()));
    assertEquals("craft:B:C lash:0.16 mm:", cells(wear.first().get(0)));
    assertEquals(Standing.ONLY_LEFT, wear.first().get(0).cells().get(1).standing());
    assertEquals("3", wear.first().get(1).key());
  }

  @Test
  void aKeyThatStandsTwiceIsNoKeyAndThatIsSaid() {
    TableDifference wear =
        table(
            record("1", KEYED, "[\"A\",\"0.15\"],[\"A\",\"0.16\"]"),
            record("2", KEYED, "[\"A\",\"0.15\"],[\"B\",\"0.16\"]"));
    assertEquals("row number", wear.by());
    assertTrue(wear.said().stream().anyMatch(one -> one.contains("the same in two")));
    // the left column has no value as a whole, so the texts decide
    assertEquals("craft:A:B", cells(wear.first().get(0)));
  }

  @Test
  void theSameValueInAnotherUnitOrWithOtherDigitsIsTheSame() {
    String inThou = KEYED.replace("\"mm\"", "\"thou\"").replace("0.002 mm", "0.05 thou");
    TableDifference wear =
        table(
            record("1", KEYED, "[\"A\",\"0.254\"],[\"B\",\"0.127\"]"),
            record("2", inThou, "[\"A\",\"10\"],[\"B\",\"5.5\"]"));
    assertEquals(1, wear.changed());
    assertEquals("lash:0.127 mm:5.5 thou", cells(wear.first().get(0)));
    TableDifference digits =
        table(record("1", KEYED, "[\"A\",\"0.25\"]"), record("2", KEYED, "[\"A\",\"0.250\"]"));
    assertTrue(digits.isEqual());
    assertEquals(1, digits.written());
  }

  @Test
  void numbersThatDifferInTheirLastDigitAreOthers() {
    String plain = "{\"head\":\"lash\",\"kind\":\"number\",\"unit\":\"mm\"}";
    TableDifference wear =
        table(record("1", plain, "[\"1234567890\"]"), record("2", plain, "[\"1234567891\"]"));
    assertEquals(1, wear.changed());
  }

  @Test
  void columnsOfOneSideAreNamed() {
    String more = KEYED + ",{\"head\":\"hours\",\"kind\":\"number\",\"unit\":\"h\"}";
    TableDifference wear =
        table(record("1", KEYED, "[\"A\",\"0.25\"]"), record("2", more, "[\"A\",\"0.25\",\"7\"]"));
    assertEquals(List.of("hours"), wear.columnsAdded());
    assertEquals(0, wear.changed());
    assertFalse(wear.isEqual());
  }

  @Test
  void rowsJudgedOtherwiseComeFirstHoweverManyOthersThereAre() {
    String limit = "\"limit wear.lash: at most 0.30 mm (rule: \\\"simple\\\")\"";
    InvestigationRecord left = record("1", NUMBERED, rows(120, "0.15", "0.15"), limit);
    InvestigationRecord right = record("2", NUMBERED, rows(120, "0.16", "0.31"), limit);
    TableDifference wear = table(left, right);
    assertEquals(120, wear.changed());
    assertEquals(1, wear.judgedOtherwise());
    assertEquals(ComparedTables.FIRST, wear.first().size());
    assertEquals(70, wear.more());
    assertEquals("120", wear.first().get(0).key());
    assertEquals("outside", wear.first().get(0).cells().get(0).verdict().orElseThrow().word());
    assertEquals(1, Comparison.of(left, right).judgedOtherwise() - mostJudged(left, right));
  }

  private static long mostJudged(InvestigationRecord left, InvestigationRecord right) {
    return Comparison.of(left, right).rows().stream()
        .filter(Comparison.Row::isJudgedOtherwise)
        .count();
  }

  private static String rows(int count, String each, String last) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(n -> "[\"" + n + "\",\"" + (n == count ? last : each) + "\"]")
        .collect(Collectors.joining(","));
  }

  @Test
  void figuresMadeOfATableStayAmongTheFigures() {
    Comparison both =
        Comparison.of(
            record("1", KEYED, "[\"A\",\"0.150\"]"), record("2", KEYED, "[\"A\",\"0.250\"]"));
    assertEquals(List.of("largest"), both.rows().stream().map(Comparison.Row::name).toList());
    assertEquals(2, both.clear());
    JsonNode json = ComparisonJson.of(both, (row, entry) -> {}).path("tables").path(0);
    assertEquals("wear", json.path("name").asText());
    assertEquals(1, json.path("rows").path("changed").asInt());
    assertEquals("0.1000", json.at("/first/0/cells/0/difference/value").asText());
    assertTrue(both.texts().stream().noneMatch(one -> one.what().contains("rows")));
  }

  @Test
  void aTableOfOneSideIsSaidAndItsRowsAreCounted() {
    InvestigationRecord with = record("1", KEYED, "[\"A\",\"0.150\"]");
    InvestigationRecord without =
        InvestigationRecord.read(
            """
            {"format":"endfloat-record","version":1,"title_block":{"title":"T"},"cells":[]}
            """
                .getBytes(StandardCharsets.UTF_8));
    TableDifference wear = table(without, with);
    assertEquals(List.of("Only the right side has this table"), wear.said());
    assertEquals(List.of(0, 1), List.of(wear.leftRows(), wear.rightRows()));
  }

  @Test
  void aTableThatIsTheSameIsEqual() {
    InvestigationRecord one = record("1", KEYED, "[\"A\",\"0.150\"]");
    assertTrue(table(one, one).isEqual());
    InvestigationRecord wrong = record("1", KEYED, "[\"A\",\"long\"]");
    assertTrue(table(wrong, wrong).isEqual());
  }
}
