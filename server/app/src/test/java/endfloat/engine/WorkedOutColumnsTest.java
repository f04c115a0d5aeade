package endfloat.engine;

import static endfloat.engine.TableColumnsTest.said;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.record.InvestigationRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A table of which all columns are worked out, such as one of groups. */
class WorkedOutColumnsTest {
  /** The second formula goes over other groups, in another order: its values stay with theirs. */
  @Test
  void columnsThatAreAllWorkedOutGoByTheRowsOfTheFirst() throws IOException {
    String text =
        "{'format':'endfloat-record','version':1,'title_block':{'title':'t'},'cells':["
            + "{'id':'c1','kind':'table','name':'wear','columns':["
            + "{'head':'batch','kind':'text'},{'head':'hours','kind':'number'}],"
            + "'rows':[['A','1'],['B','9'],['C','5'],['C','7'],['A','3']]},"
            + "{'id':'c3','kind':'table','name':'late','columns':["
            + "{'head':'batch','kind':'text'},{'head':'hours','kind':'number'}],"
            + "'rows':[['C','6'],['B','9']]},"
            + "{'id':'c2','kind':'table','name':'groups','columns':["
            + "{'head':'mean','kind':'number','formula':'mean(wear.hours, by: wear.batch)'},"
            + "{'head':'late','kind':'number','formula':'mean(late.hours, by: late.batch)'},"
            + "{'head':'sum','kind':'number','formula':'groups.mean + groups.late'}],"
            + "'limits':['limit groups.late: at most 8'],'rows':[]}]}";
    ValueGraph graph =
        RecordGraph.of(
                InvestigationRecord.read(text.replace('\'', '"').getBytes(StandardCharsets.UTF_8)))
            .graph();
    assertEquals("2 9 6", said(graph, "groups.mean"));
    assertEquals("- 9 6", said(graph, "groups.late"));
    assertEquals("- 18 12", said(graph, "groups.sum"));
    assertEquals(
        List.of(Verdict.OUTSIDE, Verdict.WITHIN),
        graph.figure("groups.late").orElseThrow().elements().stream()
            .flatMap(one -> one.verdict().stream())
            .toList());
    List<String> hints = graph.problems("c2").stream().map(p -> p.problem().message()).toList();
    assertTrue(hints.contains("1 of 3 rows of this table have no value here."), hints::toString);
  }
}
