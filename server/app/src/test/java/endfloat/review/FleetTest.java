package endfloat.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.record.InvestigationRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The shipped mesh record and its second engine, side by side in a table. */
class FleetTest {
  private static final Path NOTEBOOKS = Path.of("../../notebooks");

  private static Fleet.Read read(String... names) throws IOException {
    InvestigationRecord first =
        InvestigationRecord.read(Files.readAllBytes(NOTEBOOKS.resolve("w6-bevel-mesh.json")));
    byte[] csv = Files.readAllBytes(NOTEBOOKS.resolve("w6-bevel-mesh.second-engine.csv"));
    InvestigationRecord second =
        Rerun.run(first, Rerun.Readings.of(csv, "second-engine.csv")).record();
    return Fleet.of(
        List.of(new Fleet.Member("first", first), new Fleet.Member("second", second)),
        List.of(names),
        "2026-11-25T18:00:00Z");
  }

  @Test
  void oneRowARecordAndOneColumnAFigureWithItsUncertainty() throws IOException {
    Fleet.Read read = read("hot_loosest", "no_such");
    JsonNode columns = read.fields().path("columns");
    assertEquals(
        List.of("record", "engine", "hours", "hot_loosest", "hot_loosest_u", "no_such"),
        columns.findValuesAsText("head"));
    assertEquals("mm", columns.get(3).path("unit").asText());
    assertEquals("first", read.fields().at("/rows/0/0").asText());
    assertEquals("412", read.fields().at("/rows/0/2").asText());
    assertEquals(
        List.of("first: no_such is not there", "second: no_such is not there"),
        read.notices().stream().filter(n -> n.contains("no_such")).toList());
    JsonNode from = read.fields().path("from");
    assertEquals(64, from.at("/shelf/1/source_hash").asText().length());
    assertEquals("2026-11-25T18:00:00Z", from.path("refreshed").asText());
    assertEquals("hot_loosest", from.at("/of/0").asText());
  }

  @Test
  void whatWasReadIsATableOfTheLanguage() throws IOException {
    ObjectNode record = new ObjectMapper().createObjectNode();
    record.put("format", "endfloat-record").put("version", 1);
    record.putObject("title_block").put("title", "t");
    ObjectNode cell = record.putArray("cells").addObject();
    cell.put("id", "c1").put("kind", "table").put("name", "sisters");
    cell.setAll(read("hot_loosest").fields());
    record
        .withArray("cells")
        .addObject()
        .put("id", "c2")
        .put("kind", "working")
        .put("text", "loosest [mm] = max(sisters.hot_loosest)\nn = count(sisters.hot_loosest)");
    ValueGraph graph = RecordGraph.of(InvestigationRecord.of(record)).graph();
    assertEquals(2, graph.figure("n").orElseThrow().si());
    assertTrue(graph.figure("loosest").orElseThrow().si() > 0.3e-3);
  }
}
