package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.RowsInOrder.Arranged;
import endfloat.engine.RowsInOrder.Stretch;
import endfloat.record.InvestigationRecord;
import endfloat.record.TableOrder;
import endfloat.review.GroupedTable;
import endfloat.review.TableOut;
import endfloat.review.TableTaken;
import endfloat.table.TableAsked;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** From a file to rows in order and to a file again. */
class RowsInOrderTest {
  private static final String FILE =
      "lash [thou],hours [h],batch,failed\r\n"
          + "12,400,B2,no\r\n18,900,B1,yes\r\n,650,B2,no\r\n15.0,500,,no\r\n";

  private static InvestigationRecord record() {
    ObjectNode record = new ObjectMapper().createObjectNode();
    record.put("format", "endfloat-record").put("version", 1);
    record.putObject("title_block").put("title", "t");
    ObjectNode cell = record.putArray("cells").addObject();
    cell.put("id", "c1").put("kind", "table").put("name", "wear");
    TableTaken taken =
        TableTaken.ofFile(
            FILE.getBytes(StandardCharsets.UTF_8), "fleet.csv", "2026-11-25", TableAsked.PLAIN);
    cell.setAll(taken.fields());
    cell.withArray("columns")
        .addObject()
        .put("head", "rate")
        .put("kind", "number")
        .put("unit", "um/h")
        .put("formula", "wear.lash/wear.hours");
    return InvestigationRecord.of(record);
  }

  private static final InvestigationRecord RECORD = record();
  private static final ValueGraph GRAPH = RecordGraph.of(RECORD).graph();

  private static Arranged arranged(List<String> sort, String filter, List<String> group) {
    return RowsInOrder.of(GRAPH, RECORD.cells().get(0).table(), new TableOrder(sort, filter, group))
        .arranged();
  }

  @Test
  void rowsAreSortedChosenAndGrouped() {
    assertArrayEquals(new int[] {0, 1, 2, 3}, arranged(List.of(), "", List.of()).rows());
    assertArrayEquals(new int[] {1, 3, 0, 2}, arranged(List.of("lash down"), "", List.of()).rows());
    assertArrayEquals(
        new int[] {1, 3}, arranged(List.of(), "wear.lash > 12 thou", List.of()).rows());
    Arranged grouped = arranged(List.of("hours down"), "", List.of("batch"));
    assertArrayEquals(new int[] {1, 2, 0, 3}, grouped.rows());
    assertEquals(
        List.of(
            new Stretch(List.of("B1"), 0, 1),
            new Stretch(List.of("B2"), 1, 2),
            new Stretch(List.of(""), 3, 1)),
        grouped.groups());
  }

  @Test
  void whatMeansNothingIsRefused() {
    assertThrows(QuestionRefusedException.class, () -> arranged(List.of(), "wear.lash", List.of()));
    assertThrows(
        QuestionRefusedException.class, () -> arranged(List.of(), "wear.lsh > 1 mm", List.of()));
    assertEquals(
        "There is no column lsh.",
        assertThrows(QuestionRefusedException.class, () -> arranged(List.of("lsh"), "", List.of()))
            .problem()
            .message());
  }

  @Test
  void aFileGoesOutAsItCameInWithWhatWasWorkedOut() {
    assertEquals(
        "lash [thou],hours [h],batch,failed,rate [um/h]\r\n"
            + "12,400,B2,no,0.762\r\n18,900,B1,yes,0.508\r\n\"\",650,B2,no,\r\n15.0,500,,no,0.762\r\n",
        TableOut.csv(GRAPH, RECORD.cells().get(0).table()));
    assertEquals("c2cad3cc", RECORD.cells().get(0).table().from().sha256().substring(0, 8));
  }

  /** A table of groups is made of formulas, so it is a table like any. */
  @Test
  void theGroupsOfATableAreATableThemselves() {
    ObjectNode tree = RECORD.tree().deepCopy();
    ObjectNode cell =
        GroupedTable.clause(
            RECORD.cells().get(0).table(), List.of("batch"), List.of("lash"), "hours > 400 h");
    tree.withArray("cells").add(cell.put("id", "c2").put("kind", "table").put("name", "by_batch"));
    ValueGraph graph = RecordGraph.of(InvestigationRecord.of(tree)).graph();
    assertEquals(List.of(), graph.problems("c2").stream().filter(p -> p.at().isEmpty()).toList());
    assertEquals(
        "batch,rows,lash_mean [thou],lash_min [thou],lash_max [thou],lash_sd [thou]\r\n"
            + "B1,1,18,18,18,\r\nB2,1,,,,\r\n",
        TableOut.csv(graph, InvestigationRecord.of(tree).cells().get(1).table()));
  }

  /** Two rows of B2 that did not fail, one of them without a lash; none of B1 that did not. */
  @Test
  void groupsMayGoByTwoColumns() {
    ObjectNode tree = RECORD.tree().deepCopy();
    ObjectNode cell =
        GroupedTable.clause(
            RECORD.cells().get(0).table(), List.of("batch", "failed"), List.of("lash"), "");
    tree.withArray("cells").add(cell.put("id", "c2").put("kind", "table").put("name", "by_both"));
    ValueGraph graph = RecordGraph.of(InvestigationRecord.of(tree)).graph();
    assertEquals(
        "batch,failed,rows,lash_mean [thou],lash_min [thou],lash_max [thou],lash_sd [thou]\r\n"
            + "B1,yes,1,18,18,18,\r\nB2,no,2,12,12,12,\r\n",
        TableOut.csv(graph, InvestigationRecord.of(tree).cells().get(1).table()));
  }
}
