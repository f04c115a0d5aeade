package endfloat.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Charts say the same to the eye and to the ear, and put their strokes where the numbers are. */
class ChartPictureTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** lash(t) = 0.15 mm + 0.0025 mm/K (t - 20 K): passes 0.30 mm at 80 K exactly. */
  private static final String LINES =
      """
      cold [mm] = 0.15 mm ± 0.01 mm
      t [K] = 60 K
      lash [mm] = cold + 0.0025 mm/K * (t - 20 K)
      limit lash: 0.05 .. 0.30 mm "W6 schedule"
      two = 2
      """;

  /** Practice notes of the trade, eight readings round a wheel. */
  private static final double[] LASH = {0.134, 0.141, 0.152, 0.163, 0.170, 0.158, 0.146, 0.136};

  static InvestigationRecord record(String lines, String chart) {
    ObjectNode record = JSON.createObjectNode();
    record.put("format", "endfloat-record").put("version", 1);
    record.putObject("title_block").put("title", "W6");
    var cells = record.putArray("cells");
    cells.addObject().put("id", "w1").put("kind", "working").put("text", lines);
    ObjectNode readings = cells.addObject().put("id", "r1").put("kind", "readings");
    ObjectNode reading = readings.putArray("readings").addObject();
    reading.put("name", "dial").put("unit", "mm");
    reading.putArray("axes").add("tooth");
    var entries = reading.putArray("entries");
    for (int i = 0; i < LASH.length; i++) {
      ObjectNode entry = entries.addObject();
      entry.putObject("at").put("tooth", Integer.toString(1 + 5 * i));
      entry.putArray("taken").add(String.format(java.util.Locale.ROOT, "%.3f", LASH[i]));
    }
    try {
      cells.add(((ObjectNode) JSON.readTree(chart)).put("id", "c1").put("kind", "chart"));
      return InvestigationRecord.read(JSON.writeValueAsBytes(record));
    } catch (java.io.IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static ChartPicture picture(String lines, String chart) {
    InvestigationRecord record = record(lines, chart);
    ValueGraph graph = RecordGraph.of(record).graph();
    Cell cell = record.cell("c1").orElseThrow();
    return ChartPicture.of(cell, graph).orElseThrow();
  }

  private static ChartPicture against(String lines) {
    return picture(
        lines,
        "{\"chart\":\"against\",\"of\":\"lash\",\"input\":\"t\",\"from\":\"0 K\",\"to\":\"100\"}");
  }

  static List<Element> drawn(String svg, String className) {
    List<Element> found = new ArrayList<>();
    NodeList all = SvgWriterTest.parsed(svg).getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      if (((Element) all.item(i)).getAttribute("class").equals(className)) {
        found.add((Element) all.item(i));
      }
    }
    return found;
  }

  /** Kept as test output, to be looked at. */
  private static void kept(String name, String svg) throws java.io.IOException {
    Path folder = Files.createDirectories(Path.of("target", "pictures"));
    Files.writeString(folder.resolve(name + ".svg"), svg, StandardCharsets.UTF_8);
  }

  @Test
  void aResultAgainstAnInputPassesItsLimitWhereItDoes() throws java.io.IOException {
    ChartPicture picture = against(LINES);
    assertTrue(picture.problem().isEmpty(), () -> picture.problem().toString());
    kept("against", picture.svg());
    // u(t) = 0.005 mm / 0.0025 mm/K = 2 K, so U = 4 K
    assertTrue(
        picture.description().contains("passes 0.30 at 80.0 ± 4.0 K"), picture.description());
    Element cross = drawn(picture.svg(), "chart-cross").get(0);
    double x = Double.parseDouble(cross.getAttribute("cx"));
    assertEquals(66 + 0.8 * (792 - 66), x, 0.01, "four fifths of the way from 0 to 100 K");
    assertTrue(
        picture.rows().contains(List.of("80 K", "0.300 ± 0.010 mm")), picture.rows().toString());
    assertTrue(
        picture.rows().contains(List.of("now 60 K", "0.250 ± 0.010 mm")),
        picture.rows().toString());
    assertEquals(1, drawn(picture.svg(), "chart-within").size(), "a dot: it is within");
    assertEquals(2, drawn(picture.svg(), "chart-limit").size());
  }

  @Test
  void everyPictureIsWellFormedAndCarriesItsNumbers() {
    for (ChartPicture picture :
        List.of(
            against(LINES), round(), picture(LINES, "{\"chart\":\"spread\",\"of\":\"lash\"}"))) {
      assertEquals(
          picture.description(), SvgWriterTest.parsed(picture.svg()).getAttribute("aria-label"));
      assertFalse(picture.svg().contains("style="));
      assertFalse(picture.svg().contains(" id="));
      assertFalse(picture.rows().isEmpty());
      picture.rows().forEach(row -> assertEquals(picture.heads().size(), row.size()));
    }
  }

  @Test
  void aPartWithoutAValueIsAGapAndIsSaid() {
    ChartPicture picture =
        against(LINES.replace("* (t - 20 K)", "* 1 K * sqrt((t - 20 K) / (1 K))"));
    assertTrue(picture.problem().isEmpty());
    assertTrue(picture.notes().get(0).startsWith("Part of the curve has no value"));
  }

  private static ChartPicture round() {
    return picture(LINES, "{\"chart\":\"round\",\"of\":\"dial\",\"axis\":\"tooth\",\"count\":40}");
  }

  /**
   * For equal steps the least-squares amplitude is Bessel's, 2/n times the sums with cosine and
   * sine (Whittaker and Robinson, The Calculus of Observations, 1924, chapter X; from memory),
   * worked out here by itself.
   */
  @Test
  void theFirstHarmonicIsBessels() throws java.io.IOException {
    ChartPicture picture = round();
    assertTrue(picture.problem().isEmpty(), () -> picture.problem().toString());
    kept("round", picture.svg());
    double a = 0;
    double b = 0;
    double mean = 0;
    for (int i = 0; i < 8; i++) {
      a += LASH[i] * StrictMath.cos(i * Math.PI / 4) / 4;
      b += LASH[i] * StrictMath.sin(i * Math.PI / 4) / 4;
      mean += LASH[i] / 8;
    }
    double twice = 2 * StrictMath.hypot(a, b);
    // 0.170 less 0.134: what a drawing means by run-out, and not twice the harmonic
    assertEquals("total indicator reading", picture.rows().get(8).get(0));
    assertEquals("0.036 mm", picture.rows().get(8).get(2));
    assertTrue(
        picture.description().contains("total indicator reading 0.036 mm (greatest less least)"),
        picture.description());
    assertTrue(picture.rows().get(9).get(0).contains("eccentricity, first harmonic"));
    String shown = picture.rows().get(9).get(2);
    assertEquals(twice, Double.parseDouble(shown.replace(" mm", "")), 1e-6, shown);
    double squares = 0;
    for (int i = 0; i < 8; i++) {
      double left =
          LASH[i]
              - mean
              - a * StrictMath.cos(i * Math.PI / 4)
              - b * StrictMath.sin(i * Math.PI / 4);
      squares += left * left;
    }
    String left = picture.rows().get(10).get(2);
    assertEquals(
        StrictMath.sqrt(squares / 5), Double.parseDouble(left.replace(" mm", "")), 5e-5, left);
    assertTrue(picture.description().contains("least 0.134 mm at tooth 1"), picture.description());
    assertTrue(
        picture.description().contains("greatest 0.170 mm at tooth 21"), picture.description());
  }

  @Test
  void theSpreadIsTakenApartByRoot() throws java.io.IOException {
    String lines =
        """
        a [mm] = 1 mm ± 0.08 mm
        b [mm] = 1 mm ± 0.06 mm
        sum [mm] = a + b
        """;
    ChartPicture picture = picture(lines, "{\"chart\":\"spread\",\"of\":\"sum\"}");
    kept("spread", picture.svg());
    assertEquals(
        List.of(List.of("a", "± 0.080 mm", "64 %"), List.of("b", "± 0.060 mm", "36 %")),
        picture.rows());
    Element longest = drawn(picture.svg(), "chart-bar").get(0);
    Element other = drawn(picture.svg(), "chart-bar").get(1);
    assertEquals(
        0.75,
        Double.parseDouble(other.getAttribute("width"))
            / Double.parseDouble(longest.getAttribute("width")),
        1e-4);
    // u² = 0.04² + 0.03² + 2·0.5·0.04·0.03 = 0.0037 mm²
    ChartPicture together =
        picture(lines + "correlate a, b: 0.5\n", "{\"chart\":\"spread\",\"of\":\"sum\"}");
    assertEquals("43 %", together.rows().get(0).get(2));
    assertTrue(
        together.notes().get(0).contains("adds 32 % of the variance"), together.notes().get(0));
  }

  @Test
  void whatCannotBeDrawnSaysWhyAtItsField() {
    problem(
        "{\"chart\":\"against\",\"of\":\"lash\",\"input\":\"t\",\"from\":\"5 K\",\"to\":\"5 K\"}",
        "/to");
    problem(
        "{\"chart\":\"against\",\"of\":\"lash\",\"input\":\"t\",\"from\":\"5 mm\",\"to\":\"5 K\"}",
        "/from");
    problem(
        "{\"chart\":\"against\",\"of\":\"lash\",\"input\":\"two\",\"from\":\"0\",\"to\":\"5\"}",
        "/input");
    problem("{\"chart\":\"round\",\"of\":\"lash\"}", "/of");
    problem("{\"chart\":\"round\",\"of\":\"dial\",\"axis\":\"turn\"}", "/axis");
    problem("{\"chart\":\"round\",\"of\":\"dial\",\"axis\":\"tooth\",\"count\":20}", "/count");
    problem("{\"chart\":\"spread\",\"of\":\"two\"}", "/of");
    problem("{\"chart\":\"spread\",\"of\":\"\"}", "/of");
  }

  private static void problem(String chart, String field) {
    ChartPicture picture = picture(LINES, chart);
    assertEquals(field, picture.problem().orElseThrow().field(), chart);
    assertEquals("", picture.svg());
  }

  @Test
  void aPictureRestsOnAllThatMayAlterIt() {
    assertEquals(java.util.Set.of("lash", "cold", "t"), against(LINES).restsOn());
  }
}
