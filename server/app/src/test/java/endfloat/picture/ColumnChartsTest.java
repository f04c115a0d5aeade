package endfloat.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.record.InvestigationRecord;
import endfloat.review.TableTaken;
import endfloat.table.TableAsked;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Charts of the columns of a table: their numbers as text, by hand; and statistics of columns. */
class ColumnChartsTest {
  private static final String FILE =
      "lash [mm],hours [h],batch,fitted,failed\n"
          + "0.10,100,B1,2026-01-05,no\n0.12,200,B1,2026-01-12,no\n0.14,300,B1,2026-02-02,no\n"
          + "0.16,400,B1,2026-02-09,no\n0.18,500,B1,2026-03-02,yes\n0.31,600,B2,2026-03-09,yes\n"
          + "0.33,700,B2,2026-04-06,yes\n,800,B2,2026-04-13,no\n";

  private static InvestigationRecord record(String chart, String of, String input) {
    ObjectNode record = new ObjectMapper().createObjectNode();
    record.put("format", "endfloat-record").put("version", 1);
    record.putObject("title_block").put("title", "t");
    ObjectNode cell = record.putArray("cells").addObject();
    cell.put("id", "c1").put("kind", "table").put("name", "wear");
    cell.setAll(TableTaken.pasted(FILE, TableAsked.PLAIN).fields());
    cell.putArray("limits").add("limit wear.lash: at most 0.30 mm");
    record
        .withArray("cells")
        .addObject()
        .put("id", "c2")
        .put("kind", "chart")
        .put("chart", chart)
        .put("of", of)
        .put("input", input);
    record
        .withArray("cells")
        .addObject()
        .put("id", "c3")
        .put("kind", "working")
        .put(
            "text",
            "line = straight_line(wear.hours, wear.lash)\n"
                + "at_400 [mm] = line.intercept + line.slope * 400 h\n"
                + "at_0 [mm] = line.intercept + line.slope * 0 h\n"
                + "r = linear_correlation(wear.hours, wear.lash)\n"
                + "mixed = linear_correlation(only(wear.hours, where: wear.failed), only(wear.lash,"
                + " where: not wear.failed))");
    return InvestigationRecord.of(record);
  }

  private static ChartPicture picture(String chart, String of, String input) {
    InvestigationRecord record = record(chart, of, input);
    return ChartPicture.of(record.cells().get(1), RecordGraph.of(record).graph()).orElseThrow();
  }

  private static void whole(ChartPicture picture) {
    assertTrue(picture.problem().isEmpty(), picture.problem().toString());
    assertTrue(picture.svg().contains("aria-label=\"" + picture.description().substring(0, 9)));
    assertFalse(picture.svg().contains("style="));
    picture.rows().forEach(row -> assertEquals(picture.heads().size(), row.size()));
  }

  @Test
  void aHistogramCountsEveryValueOnce() {
    ChartPicture picture = picture("histogram", "wear.lash", "");
    whole(picture);
    assertEquals(7, picture.rows().stream().mapToInt(row -> Integer.parseInt(row.get(2))).sum());
    assertEquals(List.of("0.1 mm", "0.15 mm", "3"), picture.rows().get(0));
    assertTrue(
        picture.description().startsWith("wear.lash: 7 values from 0.1 mm to 0.33 mm, mean"),
        picture.description());
    assertTrue(picture.notes().contains("1 of 8 rows have no value and are left out."));
    assertTrue(picture.svg().contains("chart-limit") || picture.svg().contains("16 4 3 4"));
  }

  @Test
  void aScatterHasTheLineThroughItsPoints() {
    ChartPicture picture = picture("scatter", "wear.lash", "wear.hours");
    whole(picture);
    assertEquals(7, picture.rows().size());
    assertTrue(
        picture.description().startsWith("wear.lash against wear.hours: 7 points; straight line"),
        picture.description());
    assertTrue(picture.notes().contains("1 rows lack one of the two values and are left out."));
  }

  @Test
  void aBoxStandsForEachGroupAndFewValuesArePoints() {
    ChartPicture picture = picture("box", "wear.lash", "wear.batch");
    whole(picture);
    assertEquals(
        List.of("B1", "5", "0.1 mm", "0.11 mm", "0.14 mm", "0.17 mm", "0.18 mm"),
        picture.rows().get(0));
    assertEquals(
        List.of("B2", "2", "0.31 mm", "", "0.32 mm", "", "0.33 mm"), picture.rows().get(1));
  }

  @Test
  void aRunStandsInTheOrderOfItsDates() {
    ChartPicture picture = picture("run", "wear.lash", "wear.fitted");
    whole(picture);
    assertEquals(List.of("2026-01-05", "0.1 mm"), picture.rows().get(0));
    assertTrue(
        picture.description().endsWith("median 0.16 mm; most in a row on one side of it: 3."),
        picture.description());
    whole(picture("run", "wear.lash", ""));
    whole(picture("run", "wear.lash", "wear.hours"));
  }

  @Test
  void whatIsNoColumnOfNumbersIsRefusedAtItsField() {
    assertEquals("/of", picture("histogram", "wear.batch", "").problem().orElseThrow().field());
    assertEquals("/of", picture("run", "3 mm", "").problem().orElseThrow().field());
    assertEquals(
        "/input", picture("scatter", "wear.lash", "wear.batch").problem().orElseThrow().field());
    assertEquals(
        "/input", picture("box", "wear.lash", "wear.hours").problem().orElseThrow().field());
    assertEquals(
        "/input", picture("run", "wear.lash", "wear.batch").problem().orElseThrow().field());
  }

  /**
   * What is read off a line is most certain in the middle of its points (JCGM 100, H.3.4): u(y)
   * there is s/√n, and slope and intercept move together.
   */
  @Test
  void slopeAndInterceptVaryTogether() {
    ValueGraph graph = RecordGraph.of(record("", "", "")).graph();
    Figure line = graph.figure("line").orElseThrow();
    endfloat.engine.Value.Fields fit = (endfloat.engine.Value.Fields) line.value().orElseThrow();
    double s = ((endfloat.engine.Value.Scalar) fit.get("residual_deviation")).si();
    double sIntercept = ((endfloat.engine.Value.Scalar) fit.get("intercept_uncertainty")).si();
    Figure middle = graph.figure("at_400").orElseThrow();
    assertEquals(s / Math.sqrt(7), middle.standardUncertainty(), 1e-12);
    assertEquals(5, middle.degreesOfFreedom(), 1e-9);
    assertEquals(sIntercept, graph.figure("at_0").orElseThrow().standardUncertainty(), 1e-12);
  }

  @Test
  void columnsGoTogetherByTheirRowsAndNeverByPlace() {
    ValueGraph graph = RecordGraph.of(record("", "", "")).graph();
    Figure r = graph.figure("r").orElseThrow();
    assertEquals(Figure.State.FRESH, r.state());
    assertEquals("1 of 8 rows have no value here and are left out.", r.hints().get(0).message());
    assertEquals(Figure.State.ERROR, graph.figure("mixed").orElseThrow().state());
  }
}
