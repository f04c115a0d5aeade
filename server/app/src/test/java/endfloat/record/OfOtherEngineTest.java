package endfloat.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** A record begun from another says nothing of an engine that nobody has looked at yet. */
class OfOtherEngineTest {
  private static ObjectNode forgotten(String cell) throws JsonProcessingException {
    ObjectNode node = (ObjectNode) new ObjectMapper().readTree(cell.replace('\'', '"'));
    OfOtherEngine.forget(node);
    return node;
  }

  @Test
  void whatWasFoundIsNotInspectedAndHowToLookStays() throws JsonProcessingException {
    assertEquals(
        "{\"kind\":\"findings\",\"findings\":[{\"part\":\"p1\",\"method\":\"by eye\","
            + "\"state\":\"not inspected\"}]}",
        forgotten(
                "{'kind':'findings','findings':[{'part':'p1','method':'by eye','state':'found',"
                    + "'damage':'chipped','disposition':'scrap'}]}")
            .toString());
  }

  @Test
  void evidenceOfTheOtherEngineIsNotMeasuredHereAndNoCauseIsRuledOut()
      throws JsonProcessingException {
    ObjectNode board =
        forgotten(
            "{'kind':'causes','observed':'0.2 mm','causes':[{'contribution':'opening',"
                + "'standing':'ruled out','fact':'slides'}],"
                + "'evidence':[{'marks':{'k1':{'mark':'for','reason':'chips'}}}]}");
    assertEquals("", board.path("observed").asText());
    assertEquals("opening", board.at("/causes/0/contribution").asText());
    assertEquals("open", board.at("/causes/0/standing").asText());
    assertEquals("{\"mark\":\"not measured\"}", board.at("/evidence/0/marks/k1").toString());
  }

  @Test
  void aNumberMeasuredOnTheOtherEngineGoesAndAnExpressionStays() throws JsonProcessingException {
    ObjectNode fits =
        forgotten(
            "{'kind':'fits','rows':[{'measured':'0.041 mm','sizes':[{'measured':'22.04'}]},"
                + "{'measured':'bush - journal','new':{'low':'0.03'}},"
                + "{'measured':'2 * swing'},{'measured':'0.041 mm \u00b1 0.002 mm'},"
                + "{'measured':'0.041 mm +- 0.002 mm'}]}");
    assertEquals("", fits.at("/rows/0/measured").asText());
    assertEquals("", fits.at("/rows/0/sizes/0/measured").asText());
    assertEquals("bush - journal", fits.at("/rows/1/measured").asText());
    assertEquals("2 * swing", fits.at("/rows/2/measured").asText());
    assertEquals("", fits.at("/rows/3/measured").asText());
    assertEquals("", fits.at("/rows/4/measured").asText());
    assertEquals("0.03", fits.at("/rows/1/new/low").asText());
  }

  @Test
  void nobodyHasSigned() throws JsonProcessingException {
    assertEquals(
        "{\"roles\":[{\"role\":\"Checked\"}]}",
        forgotten("{'roles':[{'role':'Checked','name':'A','date':'2026-05-12'}]}").toString());
  }

  @Test
  void aNoteOfTheOtherEngineIsLeftOutAndOneThatHoldsForAllStays() throws JsonProcessingException {
    assertEquals(
        "",
        forgotten("{'kind':'note','text':'Chipped.','of_this_engine':true}").at("/text").asText());
    assertEquals(
        "Hold the shaft.",
        forgotten("{'kind':'note','text':'Hold the shaft.'}").at("/text").asText());
  }

  @Test
  void whatCameOutIsNotTheSubtitleOfTheNextAndWhatAPatternIsForIs() throws JsonProcessingException {
    assertEquals("", subtitleOfNext("draft"));
    assertEquals("For a mesh.", subtitleOfNext("pattern"));
  }

  private static String subtitleOfNext(String state) throws JsonProcessingException {
    String record =
        "{'format':'endfloat-record','version':1,'title_block':{'title':'Mesh',"
            + "'subtitle':'For a mesh.','state':'"
            + state
            + "'},'cells':[]}";
    InvestigationRecord from =
        InvestigationRecord.of(new ObjectMapper().readTree(record.replace('\'', '"')));
    return NewRecord.from(from, "Next", LocalDate.EPOCH).at("/title_block/subtitle").asText();
  }
}
