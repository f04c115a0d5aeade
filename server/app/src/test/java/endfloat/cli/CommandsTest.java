package endfloat.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The other commands: what they print, how they end, and what they do with bad input. */
class CommandsTest {
  private static final Path NOTEBOOKS = Path.of("../../notebooks");
  private static final String READINGS =
      "lash[tooth=1] [mm],lash[tooth=2] [mm]\n0.152,0.161\n0.153,\n";

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"serve", "work", "agree", "rerun", "table", "compare", "catalogue"})
  void everyCommandExplainsItself(String command) {
    Run run = Run.of("", command, "--help");
    assertEquals(Exit.DONE, run.code());
    assertTrue(run.out().contains("Usage: endfloat " + command), run.out());
  }

  @Test
  void theProgramNamesItsCommandsAndExitCodes() {
    Run run = Run.of("", "--help");
    assertEquals(Exit.DONE, run.code());
    for (String word :
        new String[] {
          "serve", "work", "agree", "rerun", "table", "compare", "catalogue", "Exit code"
        }) {
      assertTrue(run.out().contains(word), run.out());
    }
    assertFalse(run.out().contains("prepare"), run.out());
  }

  /** Of a description in several lines only the first stands in the list. */
  @Test
  void everyCommandIsListedWithAWholeSentence() {
    String list = Run.of("", "--help").out().split("Commands:\\R")[1].split("\\R\\s*\\R")[0];
    for (String command : list.split("\\R(?=  \\w)")) {
      assertTrue(command.strip().endsWith("."), command);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"dance", "work --loud", "agree", "rerun a.json", "serve --port x"})
  void whatIsNotUnderstoodIsSaidAndEndsWithTwo(String line) {
    Run run = Run.of("", line.split(" "));
    assertEquals(Exit.BAD_INPUT, run.code());
    assertTrue(run.err().startsWith("endfloat: "), run.err());
    assertTrue(run.err().contains("--help"), run.err());
    assertEquals("", run.out());
  }

  @Test
  void aPlainCommandDoesWhatTheLibraryWouldDo() {
    String lines = "a [mm] = 12 thou\nlimit a: 0.1 .. 0.3 mm\nb = a + 1 s";
    for (String[] command : new String[][] {{"work"}, {"work", "--json"}}) {
      assertEquals(Run.parsed(lines, command), Run.of(lines, command));
    }
    assertEquals(
        Run.parsed(new byte[] {-1}, "work", "--json"), Run.of(new byte[] {-1}, "work", "--json"));
  }

  @Test
  void theCatalogueListsEveryCalculationAndShowsOneWithItsSource() {
    JsonNode list = Run.of("", "catalogue", "--json").json().path("calculations");
    assertTrue(list.size() > 20, list::toString);
    JsonNode one = Run.of("", "catalogue", "thermal_growth", "--json").json();
    assertEquals("thermal_growth", one.path("name").asText());
    assertEquals("mm", one.at("/parameters/0/unit").asText());
    assertFalse(one.path("source").asText().isEmpty());
    assertFalse(one.at("/checks/0/source").asText().isEmpty());
    assertTrue(Run.of("", "catalogue", "thermal_growth").out().contains("Worked example"));
  }

  @Test
  void aMisspeltCalculationIsAnsweredWithItsNeighbours() {
    Run run = Run.of("", "catalogue", "thermal_grwth");
    assertEquals(Exit.BAD_INPUT, run.code());
    assertTrue(run.err().contains("thermal_growth"), run.err());
  }

  @Test
  void aRecordRunAgainHasTheOtherReadingsAndAgreesWithItself() throws IOException {
    Path out = folder.resolve("next.json");
    Run run = rerun(READINGS, out);
    assertEquals(Exit.DONE, run.code(), run.err());
    JsonNode printed = run.json();
    assertEquals("within", figure(printed, "tight").path("verdict").asText());
    assertEquals(0.1525, figure(printed, "tight").path("value").asDouble(), 1e-12);
    assertTrue(Files.readString(out).contains("0.161"));
    assertEquals(Exit.DONE, Run.of("", "agree", out.toString()).code());
    assertEquals(Exit.DONE, Run.of("", "agree", out.toString(), "--exact").code());
  }

  /**
   * The day is that of the readings; an instrument whose calibration had run out by then is named.
   */
  @Test
  void aRerunIsOfTheDayThatItsReadingsWereTaken() throws IOException {
    Path out = folder.resolve("next.json");
    Run run = rerun(READINGS, out, "--date", "2026-06-02");
    assertEquals(Exit.DONE, run.code(), run.err());
    assertEquals("", run.err());
    String made = Files.readString(out);
    assertTrue(made.contains("\"date\": \"2026-06-02\""), made);
    Run later = rerun(READINGS, folder.resolve("later.json"), "--date", "2027-03-03");
    assertTrue(later.json().at("/notices/0").asText().contains("due for calibration"), later.out());
    Run none = rerun(READINGS, folder.resolve("none.json"), "--date", "2 June");
    assertEquals(Exit.BAD_INPUT, none.code());
    assertTrue(none.err().contains("Write it as 2026-05-12"), none.err());
  }

  @Test
  void aVerdictOutsideEndsARerunWithOne() throws IOException {
    Run run =
        rerun(READINGS.replace("0.152", "0.052").replace("0.153", ""), folder.resolve("n.json"));
    assertEquals(Exit.OUTSIDE, run.code(), run.err());
  }

  @Test
  void aRerunWritesOverNothing() throws IOException {
    Path out = folder.resolve("next.json");
    Files.writeString(out, "mine");
    Run run = rerun(READINGS, out);
    assertEquals(Exit.BAD_INPUT, run.code());
    assertTrue(run.err().contains("exists already"), run.err());
    assertEquals("mine", Files.readString(out));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "lash[tooth=1] [mm],lash[tooth=2] [mm]\n0.1x2,0.161\n",
        "lash[tooth=1] [mm],lash[tooth=2] [s]\n0.152,0.161\n",
        "lash[tooth=1] [mm],lash[tooth=3] [mm]\n0.152,0.161\n",
        "lash[tooth=1] [mm]\n0.152\n",
        "lash[tooth=1] [mm],lash[tooth=2] [mm],other [mm]\n0.152,0.161,1\n",
        "lash[tooth=1] [mm],lash[tooth=2] [mm]\n\"0,152\",0.161\n"
      })
  void readingsThatDoNotFitAreRefusedInWordsAndNothingIsWritten(String csv) throws IOException {
    Path out = folder.resolve("next.json");
    Run run = rerun(csv, out);
    assertEquals(Exit.BAD_INPUT, run.code());
    assertTrue(run.err().contains("do not fit the record"), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
    assertFalse(Files.exists(out));
    assertFalse(run.json().at("/errors/0/message").asText().isEmpty());
  }

  @Test
  void aChangedFigureIsNamedAndEndsWithOne() throws IOException {
    Path out = folder.resolve("next.json");
    rerun(READINGS, out);
    String text = Files.readString(out);
    assertTrue(text.contains("0.1525"), text);
    Files.writeString(out, text.replace("0.1525", "0.1526"));
    Run run = Run.of("", "agree", out.toString(), "--json");
    assertEquals(Exit.OUTSIDE, run.code());
    assertFalse(run.json().path("agrees").asBoolean());
    assertEquals("value", run.json().at("/differences/0/what").asText());
    assertTrue(Run.of("", "agree", out.toString()).out().contains("differences"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{",
        "[]",
        "{\"format\":\"endfloat-record\",\"version\":99}",
        "",
        "{\"a\":1,\"a\":2}"
      })
  void whatIsNoRecordIsRefusedInWords(String text) throws IOException {
    Path file = folder.resolve("bad.json");
    Files.writeString(file, text);
    Run run = Run.of("", "agree", file.toString());
    assertEquals(Exit.BAD_INPUT, run.code());
    assertTrue(run.err().contains("bad.json"), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
  }

  @Test
  void aFileThatIsNotThereOrAFolderIsSaidToBe() {
    assertTrue(Run.of("", "agree", folder.resolve("no.json").toString()).err().contains("no file"));
    assertTrue(Run.of("", "agree", folder.toString()).err().contains("no records in"));
    assertTrue(
        Run.of("", "rerun", folder.toString(), "--readings", "a", "--out", "b")
            .err()
            .contains("is a folder"));
  }

  @Test
  void recordsOfAFolderAreComparedTogetherAndSavedWithTheirFigures() throws IOException {
    Path one = folder.resolve("one.json");
    Files.copy(Path.of("../../notebooks/w6-bevel-mesh.json"), one);
    ObjectNode tree = (ObjectNode) new ObjectMapper().readTree(one.toFile());
    ((ObjectNode) tree.at("/results/figures/0")).put("value", 77.5);
    Files.writeString(folder.resolve("other.json"), tree.toString());
    Run run = Run.of("", "agree", folder.toString(), "--json");
    assertEquals(Exit.OUTSIDE, run.code(), run.out());
    JsonNode records = run.json().path("records");
    assertTrue(records.at("/0/agrees").asBoolean(), run.out());
    assertEquals("77.5", records.at("/1/differences/0/saved").asText(), run.out());
    assertEquals(Exit.DONE, Run.of("", "agree", folder.toString(), "--save").code());
    Run after = Run.of("", "agree", folder.toString());
    assertEquals(Exit.DONE, after.code(), after.out());
    assertTrue(after.err().contains("compared 2 of 2 records"), after.err());
    Files.writeString(folder.resolve("bad.json"), "{");
    assertEquals(Exit.BAD_INPUT, Run.of("", "agree", folder.toString()).code());
  }

  @Test
  void twoRecordsAreWrittenSideBySideAndNeitherIsWrittenOver() throws IOException {
    Path record = folder.resolve("w6.json");
    Files.copy(Path.of("../../notebooks/w6-end-float.json"), record);
    String name = record.toString();
    Path out = folder.resolve("sides.html");
    Run run = Run.of("", "compare", name, name, "--report", "--out", out.toString());
    assertEquals(Exit.OUTSIDE, run.code(), "a verdict of the second is outside: " + run.err());
    assertTrue(Files.readString(out).contains("How differences are judged"));
    assertEquals(Exit.BAD_INPUT, Run.of("", "compare", name, name, "--report").code());
    Path pdf = folder.resolve("sides.pdf");
    Run.of("", "compare", name, name, "--report", "--pdf", "--out", pdf.toString());
    assertEquals("%PDF-", new String(Files.readAllBytes(pdf), 0, 5, StandardCharsets.US_ASCII));
    assertEquals(Exit.BAD_INPUT, Run.of("", "compare", name, name, "--pdf").code());
    Run stage = Run.of("", "compare", name, name, "--stage-b", "as left");
    assertEquals(Exit.BAD_INPUT, stage.code());
    assertTrue(stage.err().contains("read at these: as found"), stage.err());
    byte[] before = Files.readAllBytes(record);
    Run over = Run.of("", "compare", name, name, "--report", "--out", name);
    assertEquals(Exit.BAD_INPUT, over.code());
    assertTrue(over.err().contains("is the record itself"), over.err());
    assertArrayEquals(before, Files.readAllBytes(record));
  }

  @Test
  void theDemonstrationRunsAgainOnItsSecondEngine() {
    Run run =
        Run.of(
            "",
            "rerun",
            NOTEBOOKS.resolve("w6-bevel-mesh.json").toString(),
            "--readings",
            NOTEBOOKS.resolve("w6-bevel-mesh.second-engine.csv").toString(),
            "--out",
            folder.resolve("second.json").toString());
    assertTrue(run.out().contains("hot_loosest"), run.out() + run.err());
    assertTrue(Files.exists(folder.resolve("second.json")), run.err());
  }

  private Run rerun(String csv, Path out, String... more) throws IOException {
    Path record = folder.resolve("first.json");
    Files.writeString(record, RECORD);
    Path readings = folder.resolve("readings.csv");
    Files.write(readings, csv.getBytes(StandardCharsets.UTF_8));
    List<String> words =
        new ArrayList<>(List.of("rerun", record.toString(), "--readings", readings.toString()));
    words.addAll(List.of("--out", out.toString(), "--json"));
    words.addAll(List.of(more));
    return Run.of("", words.toArray(String[]::new));
  }

  private static JsonNode figure(JsonNode printed, String name) {
    for (JsonNode one : printed.path("results")) {
      if (one.path("name").asText().equals(name)) {
        return one;
      }
    }
    throw new AssertionError(name + " is not in " + printed);
  }

  private static final String RECORD =
      """
      {
        "format": "endfloat-record",
        "version": 1,
        "title_block": {"title": "Upper mesh", "state": "draft"},
        "settings": {"units": "metric", "terms": "british", "coverage": 2, "stage": "as found"},
        "parts": [],
        "instruments": [
          {"id": "DG", "name": "Dial gauge", "offset": "0.002 mm", "resolution": "0.002 mm",
           "due": "2027-03-02"}
        ],
        "cells": [
          {"id": "r", "kind": "readings", "title": "Backlash", "readings": [
            {"name": "lash", "what": "Backlash", "unit": "mm", "instrument": "DG", "axes": ["tooth"],
             "entries": [
               {"at": {"tooth": "1"}, "taken": ["0.134"]},
               {"at": {"tooth": "2"}, "taken": ["0.141"]}
             ]}
          ]},
          {"id": "w", "kind": "working", "title": "Verdict",
           "text": "tight [mm] = min(lash)\\nlimit tight: 0.10 .. 0.30 mm"}
        ]
      }
      """;
}
