package endfloat.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.http.view.PaperView;
import endfloat.record.InvestigationRecord;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** The report of every record that ships: it opens by itself, and says what the record says. */
class ReportPageTest {
  private static final Path NOTEBOOKS = Path.of("../../notebooks");

  static List<Path> records() throws IOException {
    try (Stream<Path> files = Files.list(NOTEBOOKS)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static InvestigationRecord read(Path file) {
    try {
      return InvestigationRecord.read(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String html(InvestigationRecord record) {
    return ReportPage.html(PaperView.of(record), PaperSize.A4);
  }

  private static Document parsed(String html) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
  }

  private static List<Element> all(Document page) {
    NodeList nodes = page.getElementsByTagNameNS("*", "*");
    return java.util.stream.IntStream.range(0, nodes.getLength())
        .mapToObj(i -> (Element) nodes.item(i))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("records")
  void isWellFormedAndEveryLinkOfItLeadsSomewhere(Path file) throws Exception {
    List<Element> elements = all(parsed(html(read(file))));
    Set<String> ids = new HashSet<>();
    for (Element one : elements) {
      if (one.hasAttribute("id")) {
        assertTrue(ids.add(one.getAttribute("id")), "twice: " + one.getAttribute("id"));
      }
    }
    for (Element one : elements) {
      String to = one.getAttribute("href");
      assertTrue(!to.startsWith("#") || ids.contains(to.substring(1)), to);
    }
  }

  @ParameterizedTest
  @MethodSource("records")
  void bringsAllItNeedsAndRunsNothing(Path file) throws Exception {
    String html = html(read(file));
    for (Element one : all(parsed(html))) {
      assertFalse(one.getLocalName().matches("script|link|iframe|object|form"), one.getLocalName());
      assertFalse(one.hasAttribute("style"), one.getLocalName());
      String source = one.getAttribute("src");
      assertTrue(source.isEmpty() || source.startsWith("data:"), source);
    }
    assertEquals(html.split("url\\(", -1).length, html.split("url\\(data:", -1).length);
  }

  @ParameterizedTest
  @MethodSource("records")
  void everyPictureAndFormulaIsSaidInWordsToo(Path file) throws Exception {
    for (Element one : all(parsed(html(read(file))))) {
      boolean hidden = one.getAttribute("aria-hidden").equals("true");
      if (one.getLocalName().matches("svg|math") && !hidden) {
        assertFalse(one.getAttribute("aria-label").isBlank(), one.getLocalName());
      }
      if (one.getLocalName().equals("table")) {
        assertTrue(
            one.getFirstChild().getNodeName().equals("caption")
                || one.getAttribute("class").equals("worst"),
            one.getAttribute("class"));
      }
    }
  }

  /** A record that ships is shown whole: no line in error, no chart that cannot be drawn. */
  @ParameterizedTest
  @MethodSource("records")
  void nothingIsInErrorOrLeftOut(Path file) throws Exception {
    SheetOnPaper sheet = PaperView.of(read(file));
    assertEquals(0, sheet.view().path("summary").path("errors").asInt());
    assertFalse(html(read(file)).contains("not drawn here"), "a clause has no part of the report");
  }

  /** The finding and what is not within limits come before anything else; cautions come with it. */
  @Test
  void theFindingComesFirstAndCautionsStandWithTheirWorkings() throws Exception {
    String html = html(read(NOTEBOOKS.resolve("w6-bevel-mesh.json")));
    int finding = html.indexOf("Five teeth in a row");
    assertTrue(finding > 0 && finding < html.indexOf("id=\"clause-c5\""), "finding, readings");
    int limits = html.indexOf("Not within limits");
    assertTrue(limits > 0 && limits < html.indexOf("id=\"clause-c5\""), "beside the finding");
    int hold = html.indexOf("Hold the mate and both shafts");
    assertTrue(html.indexOf("id=\"clause-c11\"") < hold, "with the workings that call for it");
    assertTrue(hold < html.indexOf("id=\"clause-c12\""), "and with those only");
  }

  @Test
  void aCautionForArgumentsLeftOutStandsOnlyWhereTheyAre() throws Exception {
    ObjectNode tree = read(NOTEBOOKS.resolve("w6-bevel-mesh.json")).tree().deepCopy();
    String html = html(InvestigationRecord.of(tree));
    assertTrue(html.contains("Without teeth the mismatch"), "3.5 gives no teeth");
    int at = html.indexOf("Without teeth the mismatch");
    assertTrue(html.indexOf("id=\"clause-c13\"") < at, "3.4 gives them");
    String shims = html(read(NOTEBOOKS.resolve("w6-bevel-shims.json")));
    assertFalse(shims.contains("see bevel_shims"), "the record uses it already");
  }

  /**
   * Record to report and back: each number printed, with its unit and its uncertainty, is the one
   * saved, rounded to the places printed.
   */
  @ParameterizedTest
  @MethodSource("records")
  void theFiguresReadBackAreThoseOfTheRecord(Path file) throws Exception {
    InvestigationRecord record = read(file);
    Map<String, JsonNode> saved = new HashMap<>();
    record.savedFigures().forEach(one -> saved.put(one.path("name").asText(), one));
    ValueGraph graph = RecordGraph.of(record).graph();
    Set<String> compared = new HashSet<>();
    for (Element one : all(parsed(html(record)))) {
      String name = one.getAttribute("data-figure");
      JsonNode of = saved.getOrDefault(name, record.tree());
      String text = one.getTextContent().replace('\u2212', '-');
      if (of.path("value").isNumber() && text.matches("-?[0-9.]+")) {
        Unit printed = unit(one.getAttribute("data-unit"));
        Unit kept = unit(of.path("unit").asText());
        compare(text, printed.fromSi(kept.toSi(of.get("value").asDouble())), name);
        String u = u(one);
        if (!u.isEmpty()) {
          // U = 2 u, or more where that rests on a few readings
          double degrees = degreesOfFreedom(graph, name);
          double expanded =
              graph.settings().expanded(kept.interval().toSi(of.get("u").asDouble()), degrees);
          compare(u, printed.interval().fromSi(expanded), "U of " + name);
        }
        compared.add(name);
      }
    }
    long numbers =
        saved.values().stream()
            .filter(one -> one.path("value").isNumber() && !one.path("name").asText().contains("."))
            .filter(one -> !one.path("name").asText().contains(":"))
            .count();
    assertTrue(compared.size() >= numbers * 8 / 10, compared.size() + " of " + numbers);
  }

  private static Unit unit(String text) {
    return UnitTable.find(text.isEmpty() ? "1" : text.equals("°") ? "deg" : text);
  }

  private static double degreesOfFreedom(ValueGraph graph, String name) {
    int dot = name.lastIndexOf('.');
    return graph
        .figure(name)
        .map(Figure::degreesOfFreedom)
        .or(
            () ->
                graph.figure(name.substring(0, dot)).stream()
                    .flatMap(f -> f.elements().stream())
                    .filter(e -> e.field().equals(name.substring(dot + 1)))
                    .map(Figure.Element::degreesOfFreedom)
                    .findFirst())
        .orElseThrow();
  }

  private static String u(Element value) {
    for (Node at = value.getNextSibling(); at != null; at = at.getNextSibling()) {
      if (at instanceof Element element && element.getAttribute("class").equals("u")) {
        return element.getTextContent().replace("± ", "");
      }
    }
    return "";
  }

  private static void compare(String text, double value, String of) {
    if (!text.matches("-?[0-9.]+")) {
      return;
    }
    BigDecimal printed = new BigDecimal(text);
    // a whole number may end in noughts that only keep its place: 5920 ± 150
    int places =
        printed.scale() == 0 && printed.signum() != 0
            ? printed.stripTrailingZeros().scale()
            : printed.scale();
    assertEquals(value, printed.doubleValue(), 0.5000001 * StrictMath.pow(10, -places), of);
  }

  @Test
  void bothHashesTheRuleAndTheLibraryStandInTheAppendix() throws Exception {
    InvestigationRecord record = read(NOTEBOOKS.resolve("w6-bevel-mesh.json"));
    String html = html(record);
    assertTrue(html.contains(record.sourceHash()));
    JsonNode hashes = InvestigationRecord.read(record.write()).tree().path("hashes");
    assertTrue(html.contains(hashes.path("results").asText()));
    assertTrue(html.contains("guarded: the value must clear the limit by U = k u"));
  }

  @Test
  void readingsStandStageBesideStageAndAStruckOneKeepsItsReason() throws Exception {
    ObjectNode tree = read(NOTEBOOKS.resolve("w6-bevel-mesh.json")).tree().deepCopy();
    ObjectNode clause = (ObjectNode) tree.withArray("cells").addObject();
    clause.put("id", "stages").put("kind", "readings").put("title", "Stages");
    ObjectNode reading = clause.putArray("readings").addObject();
    reading.put("name", "play_of_test").put("unit", "mm").put("what", "Play");
    reading.putArray("axes");
    var entries = reading.putArray("entries");
    entries.addObject().put("stage", "as found").putArray("taken").add("0.211");
    entries.addObject().put("stage", "as left").putArray("taken").add("0.104");
    ObjectNode struck = entries.addObject().put("stage", "as found");
    struck.putArray("taken").add("0.987");
    struck
        .putObject("struck")
        .put("reason", "stylus slipped & <rang>")
        .put("by", "Fitter")
        .put("time", "2026-05-12T09:41:07Z");
    reading.put("temperature", "21 degC");
    String html = html(InvestigationRecord.of(tree));
    assertTrue(html.contains("Taken, as found"));
    assertTrue(html.contains("Taken, as left"));
    assertTrue(html.contains("= 0.104 mm"), "the value at the other stage");
    assertTrue(
        html.contains(
            "<del>0.987</del> mm. stylus slipped &amp; &lt;rang&gt; (Fitter, 2026-05-12)"));
    assertTrue(html.contains("part at 21 °C"), "degrees as written by hand");
  }

  @Test
  void aTitleCanEndNeitherTheStyleSheetNorTheHead() throws Exception {
    ObjectNode tree = read(NOTEBOOKS.resolve("w6-bevel-mesh.json")).tree().deepCopy();
    String hostile = "</style><script>x</script>\"}\\ & \u0001";
    tree.withObject("/title_block").put("title", hostile);
    String html = html(InvestigationRecord.of(tree));
    assertFalse(html.contains("<script>"), "a title became a script");
    assertEquals(2, html.split("</style>", -1).length);
    parsed(html);
  }
}
