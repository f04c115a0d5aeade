package endfloat.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.LibraryVersion;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.record.InvestigationRecord;
import endfloat.review.Agree.Difference;
import endfloat.working.LineProblem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class AgreeTest {
  private static InvestigationRecord saved() {
    try (var in = InvestigationRecord.class.getResourceAsStream("end-float.json")) {
      InvestigationRecord record = InvestigationRecord.read(in.readAllBytes());
      ObjectNode results = Results.recomputed(record);
      return InvestigationRecord.read(record.withResults(results).write());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static JsonNode figure(InvestigationRecord record, String name) {
    return record.savedFigures().stream()
        .filter(figure -> figure.path("name").asText().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** The saved record with one thing in its figures altered, as a hand or a newer library would. */
  private static InvestigationRecord altered(String figure, String field, double factor) {
    InvestigationRecord record = saved();
    ObjectNode tree = record.tree().deepCopy();
    for (JsonNode one : tree.at("/results/figures")) {
      if (one.path("name").asText().equals(figure)) {
        ((ObjectNode) one).put(field, one.path(field).doubleValue() * factor);
      }
    }
    return InvestigationRecord.of(tree);
  }

  @Test
  void savesFiguresThatCanBeReadWithoutEndfloat() {
    JsonNode loosest = figure(saved(), "loosest");
    assertEquals(0.141, loosest.path("value").doubleValue());
    assertEquals("mm", loosest.path("unit").asText());
    assertEquals("within", loosest.path("verdict").asText());
    assertEquals("c4", loosest.path("cell").asText());
    assertTrue(loosest.path("u").doubleValue() > 0);
    JsonNode lash = figure(saved(), "lash");
    assertEquals("[0.134,0.141]", lash.path("value").toString(), "the struck one does not count");
    assertEquals("{\"tooth\":\"4\"}", lash.path("labels").get(1).toString());
  }

  @Test
  void agreesWithWhatWasJustSaved() {
    for (boolean exact : new boolean[] {false, true}) {
      Agree.Report report = Agree.of(saved(), exact);
      assertEquals(List.of(), report.differences());
      assertTrue(report.agrees());
      assertEquals(LibraryVersion.text(), report.savedLibrary());
      assertFalse(report.sourceChanged());
    }
  }

  @Test
  void allowsOneInAThousandMillionOfAValueUnlessExact() {
    assertTrue(Agree.of(altered("loosest", "value", 1 + 0.9e-9), false).agrees());
    assertFalse(Agree.of(altered("loosest", "value", 1 + 1.1e-9), false).agrees());
    assertFalse(Agree.of(altered("loosest", "value", 1 + 1e-15), true).agrees());
    assertTrue(Agree.of(altered("loosest", "u", 1 + 0.9e-6), false).agrees());
    assertFalse(Agree.of(altered("loosest", "u", 1 + 1.1e-6), false).agrees());
  }

  @Test
  void namesTheFigureItsClauseAndWhatDiffers() {
    List<Difference> differences = Agree.of(altered("loosest", "value", 2), false).differences();
    assertEquals(List.of(new Difference("loosest", "2.2", "value", "0.282", "0.141")), differences);
  }

  @Test
  void namesFiguresThatAreGoneAndVerdictsThatTurned() {
    ObjectNode tree = saved().tree().deepCopy();
    ObjectNode working = (ObjectNode) tree.at("/cells/1/cells/1");
    working.put("text", "widest [mm] = max(lash)\nlimit lash: 0.10 .. 0.13 mm");
    Agree.Report report = Agree.of(InvestigationRecord.of(tree), false);
    List<String> found =
        report.differences().stream().map(d -> d.name() + " " + d.what() + " " + d.now()).toList();
    assertTrue(found.contains("loosest figure "), found.toString());
    assertTrue(found.contains("widest figure 0.141"), found.toString());
    assertTrue(found.stream().anyMatch(d -> d.startsWith("lash verdict")), found.toString());
    assertTrue(report.sourceChanged());
  }

  @Test
  void doesNotAgreeWhereNothingWasSaved() {
    Agree.Report report = Agree.of(saved().withResults(null), false);
    assertEquals(0, report.compared());
    assertFalse(report.agrees());
    assertEquals(List.of(), report.differences());
  }

  private static List<String> errors(InvestigationRecord record) {
    ValueGraph graph = RecordGraph.of(record).graph();
    return record.cells().stream()
        .flatMap(cell -> graph.problems(cell.id()).stream())
        .map(problem -> problem.problem())
        .filter(problem -> problem.severity() == LineProblem.Severity.ERROR)
        .map(LineProblem::message)
        .toList();
  }

  @Test
  void figuresOfTheDemonstrationAndItsRerunSurviveTheFile() throws IOException {
    Path notebooks = Path.of("../../notebooks");
    InvestigationRecord first =
        InvestigationRecord.read(Files.readAllBytes(notebooks.resolve("w6-bevel-mesh.json")));
    byte[] csv = Files.readAllBytes(notebooks.resolve("w6-bevel-mesh.second-engine.csv"));
    InvestigationRecord second =
        Rerun.run(first, Rerun.Readings.of(csv, "second-engine.csv")).record();
    assertEquals(List.of(), errors(first));
    assertEquals(List.of(), errors(second));
    for (InvestigationRecord record : List.of(first, second)) {
      byte[] file = record.withResults(Results.recomputed(record)).write();
      Agree.Report report = Agree.of(InvestigationRecord.read(file), true);
      assertTrue(report.agrees(), report.differences().toString());
      assertTrue(report.compared() > 20, report.compared() + " figures");
      assertTrue(new String(file, StandardCharsets.UTF_8).contains("\"hot_loosest\""));
    }
  }
}
