package endfloat.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Shown;
import endfloat.http.view.ComparisonView;
import endfloat.record.InvestigationRecord;
import endfloat.review.Comparison;
import endfloat.review.Rerun;
import endfloat.table.DecimalMark;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Two engines side by side on paper: what the comparison says, and nothing beside it. */
class ComparisonPageTest {
  private static Comparison comparison;
  private static String html;
  private static Document page;

  @BeforeAll
  static void compare() throws Exception {
    Path file = Path.of("../../notebooks/w6-bevel-mesh.json");
    InvestigationRecord one = ShippedRecords.record(file);
    byte[] csv = ShippedRecords.bytes(Path.of("../../notebooks/w6-bevel-mesh.second-engine.csv"));
    Rerun.Readings readings =
        new Rerun.Readings(
            csv, "second.csv", DecimalMark.POINT, "", "W6-204 <spare>", LocalDate.of(2026, 6, 2));
    comparison = Comparison.of(one, Rerun.run(one, readings, Map.of()).record());
    html = ComparisonPage.html(ComparisonView.of(comparison), PaperSize.A4);
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    page =
        factory
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
  }

  private static List<Element> all(String name) {
    NodeList nodes = page.getElementsByTagNameNS("*", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  /** The rows of a table, each with the texts of its cells. */
  private static List<List<String>> rows(String caption) {
    Element table =
        all("table").stream()
            .filter(one -> one.getFirstChild().getTextContent().equals(caption))
            .findFirst()
            .orElseThrow();
    List<List<String>> rows = new ArrayList<>();
    NodeList lines = table.getElementsByTagNameNS("*", "tr");
    for (int i = 1; i < lines.getLength(); i++) {
      List<String> cells = new ArrayList<>();
      for (var at = lines.item(i).getFirstChild(); at != null; at = at.getNextSibling()) {
        cells.add(at.getTextContent());
      }
      rows.add(cells);
    }
    return rows;
  }

  @Test
  void whatIsJudgedOtherwiseComesFirstWithBothVerdicts() {
    List<List<String>> rows = rows("Limits whose verdict is another one");
    assertEquals(comparison.judgedOtherwise(), rows.size());
    List<String> hot =
        rows.stream().filter(row -> row.get(1).equals("hot_loosest")).findFirst().orElseThrow();
    assertTrue(hot.get(6).startsWith("outside then within"), hot.get(6));
    assertEquals("clear", hot.get(5));
    assertTrue(html.indexOf("Judged otherwise") < html.indexOf("Readings that differ"));
  }

  @Test
  void everyDifferenceStandsThereAsTheEngineSaysIt() {
    List<List<String>> printed = new ArrayList<>(rows("Readings"));
    printed.addAll(rows("Figures"));
    List<Comparison.Row> rows = new ArrayList<>();
    for (boolean reading : new boolean[] {true, false}) {
      comparison.rows().stream()
          .filter(row -> row.reading() == reading)
          .filter(row -> row.standing() != Comparison.Standing.NONE)
          .forEach(rows::add);
    }
    assertEquals(rows.size(), printed.size());
    for (int i = 0; i < rows.size(); i++) {
      Comparison.Row row = rows.get(i);
      List<String> line = printed.get(i);
      assertEquals(row.label(), line.get(1));
      assertEquals(row.standing().word(), line.get(5), row.label());
      starts(line.get(2), row.left().flatMap(p -> p.shown(comparison.left().graph().settings())));
      starts(line.get(3), row.right().flatMap(p -> p.shown(comparison.right().graph().settings())));
      starts(line.get(4), row.difference());
    }
  }

  private static void starts(String cell, Optional<Shown> shown) {
    shown.ifPresent(one -> assertTrue(cell.startsWith(one.value()), cell + " for " + one.text()));
  }

  @Test
  void rowsOfATableStandWithTheirKeysAndBothValues() {
    InvestigationRecord one = ShippedRecords.record(Path.of("../../notebooks/w6-fleet.json"));
    ObjectNode tree = one.tree().deepCopy();
    for (JsonNode cell : tree.findParents("name")) {
      if (cell.path("name").asText().equals("fleet")) {
        ((ArrayNode) cell.at("/rows/1")).set(5, "0.31");
        ((ArrayNode) cell.path("rows")).remove(8);
      }
    }
    String fleet =
        ComparisonPage.html(
            ComparisonView.of(Comparison.of(one, InvestigationRecord.of(tree))), PaperSize.A4);
    String part = fleet.substring(fleet.indexOf("Table 2, fleet"), fleet.indexOf("Table 4.2"));
    String text = part.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    assertTrue(text.contains("14 and 13 rows, 1 changed, 1 only left"), text);
    assertTrue(text.contains("2 lash 0.21 mm 0.31 mm 0.100 mm ± 0.011 clear within then outside"));
    assertTrue(text.contains("9 only left craft 9, batch 23-B"), text);
    assertTrue(fleet.contains("row of table 2, fleet: see below"), "said among what is judged");
  }

  @Test
  void whatCountsAsOneErrorAndWhatAsTwoIsSaid() {
    assertTrue(html.contains("cancel: " + String.join(", ", comparison.shared()) + "."));
    assertTrue(html.contains("TP-03: a thermometer sits otherwise on each engine."));
    assertTrue(html.contains(comparison.left().record().sourceHash()));
    assertTrue(html.contains(comparison.right().record().sourceHash()));
  }

  @Test
  void picturesAreSaidInWordsAndNothingIsFetchedOrRun() {
    for (Element svg : all("svg")) {
      assertTrue(
          svg.getAttribute("aria-hidden").equals("true")
              || !svg.getAttribute("aria-label").isBlank());
    }
    assertEquals(List.of(), all("script"));
    assertEquals(List.of(), all("link"));
    assertFalse(html.contains("<spare>"), "an engine's name became markup");
  }
}
