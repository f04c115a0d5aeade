package endfloat.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.record.Reading;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The blank form of every record that ships: every reading once, nothing that was measured. */
class FormPageTest {
  static List<Path> records() {
    return ShippedRecords.all();
  }

  private static Document form(Path file, boolean limits) throws Exception {
    String html = FormPage.html(ShippedRecords.sheet(file), PaperSize.A4, limits);
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
  }

  private static List<Element> ofClass(Document page, String name) {
    NodeList nodes = page.getElementsByTagNameNS("*", "*");
    List<Element> some = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      Element one = (Element) nodes.item(i);
      if (List.of(one.getAttribute("class").split(" ")).contains(name)) {
        some.add(one);
      }
    }
    return some;
  }

  private static List<Reading> readings(InvestigationRecord record) {
    List<Reading> all = new ArrayList<>();
    for (Cell cell : record.cells()) {
      all.addAll(cell.readings());
    }
    return all;
  }

  private static String words(Document page) {
    return page.getElementsByTagNameNS("*", "body").item(0).getTextContent();
  }

  @ParameterizedTest
  @MethodSource("records")
  void everyReadingStandsOnceUnderTheNumberOfItsTurn(Path file) throws Exception {
    Document page = form(file, false);
    List<Reading> readings = readings(ShippedRecords.record(file));
    Set<String> turns = new TreeSet<>();
    for (Element asked : ofClass(page, "asked")) {
      String turn = asked.getAttribute("id").replace("turn-", "");
      assertTrue(turns.add(turn), "twice: " + turn);
      Reading reading = readings.get(Integer.parseInt(turn) - 1);
      String said = asked.getTextContent();
      assertTrue(said.contains(reading.what()), reading.name() + ": " + said);
      assertTrue(said.startsWith(turn), said);
    }
    assertEquals(readings.size(), turns.size());
  }

  /** One instrument after the other, with each one part after the other; none comes twice. */
  @ParameterizedTest
  @MethodSource("records")
  void readingsStandByInstrumentAndPart(Path file) throws Exception {
    List<Reading> readings = readings(ShippedRecords.record(file));
    List<String> groups = new ArrayList<>();
    int before = 0;
    for (Element asked : ofClass(form(file, false), "asked")) {
      int turn = Integer.parseInt(asked.getAttribute("id").replace("turn-", ""));
      Reading reading = readings.get(turn - 1);
      String group = reading.instrument() + " | " + reading.part();
      if (groups.isEmpty() || !groups.get(groups.size() - 1).equals(group)) {
        groups.add(group);
      } else {
        assertTrue(turn > before, "within a part in the order of the page");
      }
      before = turn;
    }
    assertEquals(groups.size(), new HashSet<>(groups).size(), groups.toString());
    List<String> marks = groups.stream().map(group -> group.split(" \\|")[0]).toList();
    int changes = 1;
    for (int i = 1; i < marks.size(); i++) {
      changes += marks.get(i).equals(marks.get(i - 1)) ? 0 : 1;
    }
    assertEquals(new HashSet<>(marks).size(), changes, marks.toString());
  }

  @ParameterizedTest
  @MethodSource("records")
  void hasABoxForEveryReadingThatCountsAndNoneMore(Path file) throws Exception {
    int counted = 0;
    for (Reading reading : readings(ShippedRecords.record(file))) {
      Set<Object> places = new LinkedHashSet<>();
      int taken = 0;
      for (Reading.Entry entry : reading.entries()) {
        places.add(List.of(entry.at(), entry.stage()));
        taken += entry.struck().isPresent() ? 0 : Math.max(1, entry.taken().size());
      }
      counted += Math.max(Math.max(places.size(), 1), taken);
    }
    assertEquals(counted, ofClass(form(file, false), "box").size());
  }

  @ParameterizedTest
  @MethodSource("records")
  void nothingThatWasMeasuredStandsOnIt(Path file) throws Exception {
    InvestigationRecord record = ShippedRecords.record(file);
    String words = words(form(file, false));
    int looked = 0;
    for (Reading reading : readings(record)) {
      for (Reading.Entry entry : reading.entries()) {
        for (String taken : entry.taken()) {
          // a number of a few figures may stand in a description by chance
          if (taken.matches("-?[0-9]*\\.[0-9]{2,}.*")) {
            String alone = "(?<![0-9.])" + Pattern.quote(taken) + "(?![0-9])";
            assertFalse(Pattern.compile(alone).matcher(words).find(), reading.name() + " " + taken);
            looked++;
          }
        }
      }
    }
    assertTrue(looked > 0, "nothing to look for in " + file);
    assertFalse(words.contains(record.titleBlock().engineSerial()), "the engine of another");
    for (Element box : ofClass(form(file, false), "box")) {
      assertTrue(box.getTextContent().matches("|[0-9]"), box.getTextContent());
    }
  }

  @Test
  void limitsStandOnItWhereTheyAreAskedForOnly() throws Exception {
    Path file = Path.of("../../notebooks/w6-bevel-mesh.json");
    assertEquals(0, ofClass(form(file, false), "asked-limit").size());
    List<Element> limits = ofClass(form(file, true), "asked-limit");
    assertFalse(limits.isEmpty());
    String all = String.join("\n", limits.stream().map(Element::getTextContent).toList());
    // the bush of item 21-7 of the demonstration's schedule
    assertTrue(all.contains("new 22.030 to 22.045"), all);
    assertTrue(all.contains("W6 schedule of fits, sheet 21, item 21-7"), all);
  }

  /** WCAG wants targets, a bench wants room: at least 8 mm to write in. */
  @Test
  void boxesAreHighEnoughForAPencil() throws Exception {
    String css =
        form(records().get(0), false).getElementsByTagNameNS("*", "style").item(0).getTextContent();
    var box = Pattern.compile("\\.box \\{[^}]*height: (\\d+)mm").matcher(css);
    assertTrue(box.find());
    assertTrue(Integer.parseInt(box.group(1)) >= 8);
    var line = Pattern.compile("\\.ruled td \\{[^}]*height: (\\d+)mm").matcher(css);
    assertTrue(line.find());
    assertTrue(Integer.parseInt(line.group(1)) >= 8);
  }

  @ParameterizedTest
  @MethodSource("records")
  void bringsAllItNeedsAndRunsNothing(Path file) throws Exception {
    Document page = form(file, true);
    NodeList all = page.getElementsByTagNameNS("*", "*");
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < all.getLength(); i++) {
      Element one = (Element) all.item(i);
      assertFalse(one.getLocalName().matches("script|link|iframe|object|form|input"));
      assertFalse(one.hasAttribute("style"));
      assertTrue(!one.hasAttribute("id") || ids.add(one.getAttribute("id")));
    }
  }
}
