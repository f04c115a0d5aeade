package endfloat.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Clause;
import endfloat.engine.GraphSettings;
import endfloat.engine.GraphSource;
import endfloat.engine.ValueGraph;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lists within records, and records along a series, as numbers for other programs. */
class FigureNumbersTest {
  private static List<ObjectNode> numbers(String name, String lines) {
    ValueGraph graph =
        ValueGraph.of(
            new GraphSource(
                List.of(new Clause.Working("w", "1", lines)), List.of(), GraphSettings.STANDARD));
    return FigureNumbers.inUnitsOfLines().of(graph.figure(name).orElseThrow());
  }

  private static ObjectNode entry(List<ObjectNode> all, String name) {
    return all.stream().filter(e -> e.get("name").asText().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void aListWithinARecordHasTheUncertaintyOfEachElement() {
    var all =
        numbers(
            "p",
            """
            a = 0.5 mm ± 0.004 mm
            p = shim_pack([0.8 mm, 0.2 mm], [a, 0.3 mm, 0.2 mm])
            """);
    ObjectNode totals = entry(all, "p.totals");
    assertEquals(0.002, totals.get("u").get(0).asDouble(), 1e-12);
    assertEquals(0, totals.get("u").get(1).asDouble());
  }

  @Test
  void aRecordAlongASeriesIsOneEntryAField() {
    var all =
        numbers(
            "f",
            """
            d = 25 mm ± 0.1 mm
            f = hot_clearance([d, 30 mm], 24 mm, 2e-5 1/K, 1e-5 1/K, 20 degC, 20 degC)
            """);
    assertEquals(0.05, all.get(0).get("u").get(0).asDouble(), 1e-6);
    var shafts = numbers("e", "e = cosine_error(150 mm, angle: [1 deg, 2 deg])");
    ObjectNode reads = entry(shafts, "e.reads_long");
    assertEquals(0.02284920659e-3, reads.get("value").get(0).asDouble(), 1e-12);
    assertEquals("m", reads.get("unit").asText());
    assertTrue(shafts.stream().noneMatch(e -> e.get("value").get(0).isNull()));
  }
}
