package endfloat.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.engine.Figure;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.record.NewRecord;
import endfloat.record.Reading;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import endfloat.working.LineProblem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The records and patterns that ship: figures, second engines, words. */
class ShippedRecordsTest {
  private static final Path NOTEBOOKS = Path.of("../../notebooks");
  private static final Path PATTERNS = NOTEBOOKS.resolve("patterns");

  /** A digit, and what might be its unit; not inside the backticks of a designation. */
  private static final Pattern NUMBER_AND_WORD =
      Pattern.compile("[0-9]\\s?([^\\s0-9.,;:()*{}`_-][^\\s.,;:()*{}`]*)");

  private static final Pattern DESIGNATION = Pattern.compile("`[^`]*`");
  private static final Pattern LIVE = Pattern.compile("\\{(#?)([^}]+)}");

  static Stream<String> records() throws IOException {
    return names(NOTEBOOKS);
  }

  static Stream<String> patterns() throws IOException {
    return names(PATTERNS);
  }

  private static Stream<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json"))
          .map(name -> name.substring(0, name.length() - ".json".length()))
          .sorted()
          .toList()
          .stream();
    }
  }

  private static InvestigationRecord read(Path folder, String name) {
    try {
      return InvestigationRecord.read(Files.readAllBytes(folder.resolve(name + ".json")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
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

  @ParameterizedTest
  @MethodSource("records")
  void everyFigureStandsAndAgreesWithTheOneSaved(String name) {
    InvestigationRecord record = read(NOTEBOOKS, name);
    assertEquals(List.of(), errors(record));
    for (Figure figure : RecordGraph.of(record).graph().figures().values()) {
      assertEquals(Figure.State.FRESH, figure.state(), figure.name());
    }
    Agree.Report report = Agree.of(record, false);
    assertEquals(List.of(), report.differences(), "endfloat agree --save writes them anew");
    assertTrue(report.compared() > 10, report.compared() + " figures saved");
    assertTrue(report.limitsCounted(), "the shelf would count other limits than the sheet");
    assertFalse(report.sourceChanged(), "saved with another source");
    assertTrue(record.cells().size() <= 60, "a reader's evening: " + record.cells().size());
  }

  @ParameterizedTest
  @MethodSource("records")
  void aSecondEngineIsRunByItsReadings(String name) throws IOException {
    byte[] csv = Files.readAllBytes(NOTEBOOKS.resolve(name + ".second-engine.csv"));
    InvestigationRecord second =
        Rerun.run(read(NOTEBOOKS, name), Rerun.Readings.of(csv, "second-engine.csv")).record();
    assertEquals(List.of(), errors(second));
    Comparison comparison = Comparison.of(read(NOTEBOOKS, name), second);
    assertTrue(comparison.judgedOtherwise() > 0, "the second engine shows nothing new");
  }

  @ParameterizedTest
  @MethodSource("records")
  void wordsGiveFiguresLiveAndNameOnlyWhatIsThere(String name) {
    InvestigationRecord record = read(NOTEBOOKS, name);
    ValueGraph graph = RecordGraph.of(record).graph();
    for (String text : prose(record)) {
      Matcher live = LIVE.matcher(text);
      while (live.find()) {
        boolean clause = !live.group(1).isEmpty();
        assertTrue(
            clause
                ? record.cell(live.group(2)).isPresent()
                : graph.figure(live.group(2).split("\\.")[0]).isPresent(),
            live.group() + " in: " + text);
      }
      Matcher typed = NUMBER_AND_WORD.matcher(DESIGNATION.matcher(text).replaceAll(""));
      while (typed.find()) {
        assertFalse(
            isUnit(typed.group(1)),
            "a figure typed where a live one belongs, '" + typed.group() + "' in: " + text);
      }
    }
  }

  private static boolean isUnit(String word) {
    try {
      return UnitTable.find(word) != null;
    } catch (UnitException e) {
      return false;
    }
  }

  /** What a reader reads: notes, cautions, causes with their evidence, remarks. */
  private static List<String> prose(InvestigationRecord record) {
    List<String> texts = new ArrayList<>();
    for (Cell cell : record.cells()) {
      JsonNode source = cell.source();
      if (cell.kind().equals("note") || cell.kind().equals("caution")) {
        texts.add(source.path("text").asText());
      }
      source.path("causes").forEach(c -> texts.add(c.path("mechanism").asText()));
      source.path("causes").forEach(c -> texts.add(c.path("fact").asText()));
      for (JsonNode evidence : source.path("evidence")) {
        texts.add(evidence.path("text").asText());
        evidence.path("marks").forEach(mark -> texts.add(mark.path("reason").asText()));
      }
      for (JsonNode remark : source.path("remarks")) {
        texts.add(remark.path("text").asText());
        texts.add(remark.path("answered").asText());
      }
    }
    return texts;
  }

  @ParameterizedTest
  @MethodSource("patterns")
  void aPatternSaysWhatItIsForAndHasNothingTakenAndNothingWrong(String name) {
    InvestigationRecord pattern = read(PATTERNS, name);
    assertEquals("pattern", pattern.titleBlock().state());
    assertFalse(pattern.titleBlock().subtitle().isBlank(), "what it is for");
    assertEquals(List.of(), errors(pattern));
    for (Cell cell : pattern.cells()) {
      for (Reading reading : cell.readings()) {
        reading.entries().forEach(entry -> assertEquals(List.of(), entry.taken(), reading.name()));
      }
    }
  }

  /** One fact in one place: a pattern is its record with nothing taken. */
  @ParameterizedTest
  @MethodSource("records")
  void thePatternOfARecordIsThatRecordWithNothingTaken(String name) {
    InvestigationRecord pattern = read(PATTERNS, name.substring("w6-".length()));
    JsonNode begun = NewRecord.from(read(NOTEBOOKS, name), "any", LocalDate.EPOCH);
    assertEquals(begun.path("cells"), pattern.tree().path("cells"));
    assertEquals(begun.path("parts"), pattern.tree().path("parts"));
  }
}
