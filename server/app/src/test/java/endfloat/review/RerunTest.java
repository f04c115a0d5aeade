package endfloat.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.RecordGraph;
import endfloat.record.InvestigationRecord;
import endfloat.record.Reading;
import endfloat.record.RecordHash;
import endfloat.review.Rerun.Readings;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RerunTest {
  private static final String HEADS =
      "lash[tooth=1] [mm],lash[tooth=4] [mm],lash[tooth=7] [mm],float [mm]\n";

  private static InvestigationRecord example() {
    try (var in = InvestigationRecord.class.getResourceAsStream("end-float.json")) {
      return InvestigationRecord.read(in.readAllBytes());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static Rerun.Done run(String csv) {
    return Rerun.run(example(), Readings.of(csv.getBytes(StandardCharsets.UTF_8), "second.csv"));
  }

  private static List<String> problems(String csv) {
    return assertThrows(RerunRefusedException.class, () -> run(csv)).problems();
  }

  private static Reading reading(InvestigationRecord record, String name) {
    return record.cells().stream()
        .flatMap(cell -> cell.readings().stream())
        .filter(reading -> reading.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void putsTheOtherEnginesReadingsInTheirPlaces() {
    InvestigationRecord done = run(HEADS + "0.142,0.145,,0.11\n,,,0.12\n").record();
    Reading lash = reading(done, "lash");
    assertEquals(Map.of("tooth", "4"), lash.entries().get(1).at());
    assertEquals(List.of("0.145"), lash.entries().get(1).taken());
    assertEquals(List.of(), lash.entries().get(2).taken(), "left empty: not taken");
    assertTrue(lash.entries().get(2).struck().isEmpty(), "the rejection was of the other reading");
    assertEquals(List.of("0.11", "0.12"), reading(done, "float").entries().get(0).taken());
    assertEquals(example().cell("c4").orElseThrow().text(), done.cell("c4").orElseThrow().text());
    assertEquals("", done.titleBlock().engineSerial(), "not the other engine's");
  }

  @Test
  void saysWhereRecordAndReadingsCameFrom() {
    String csv = HEADS + "0.142,0.145,0.150,0.11\n";
    InvestigationRecord done = run(csv).record();
    var provenance = done.tree().path("provenance");
    assertEquals("W6-0030", provenance.path("record_number").asText());
    assertEquals("A", provenance.path("revision").asText());
    assertEquals(example().sourceHash(), provenance.path("source_hash").asText());
    assertEquals("second.csv", provenance.path("readings_file").asText());
    assertEquals(
        RecordHash.ofBytes(csv.getBytes(StandardCharsets.UTF_8)),
        provenance.path("readings_hash").asText());
    assertFalse(done.tree().has("results"));
  }

  @Test
  void keepsAnotherUnitOfTheSameKindAsItWasTaken() {
    InvestigationRecord done =
        run(HEADS.replace("float [mm]", "float [thou]") + "0.142,0.145,0.150,4.5\n").record();
    assertEquals(List.of("4.5 thou"), reading(done, "float").entries().get(0).taken());
  }

  @Test
  void aFractionOfAnInchIsKeptAsItWasTakenAndWorthWhatItSays() {
    InvestigationRecord done =
        run(HEADS.replace("float [mm]", "float [in]") + "0.142,0.145,0.150,3/64\n").record();
    assertEquals(List.of("3/64 in"), reading(done, "float").entries().get(0).taken());
    assertEquals(
        3 * 25.4e-3 / 64,
        RecordGraph.of(done).graph().figure("float").orElseThrow().si(),
        1e-15,
        "by the definition of the inch");
  }

  @Test
  void takesTemperatureAndInstrumentOfStationOrReading() {
    InvestigationRecord done =
        run(HEADS.replace("\n", ",lash.instrument,lash[tooth=4].at [degC],float.at [degF]\n")
                + "0.142,0.145,0.150,0.11,DG-07,21.5,68\n,,,0.12,DG-07,,68\n")
            .record();
    assertEquals("DG-07", reading(done, "lash").instrument());
    assertEquals("21.5 degC", reading(done, "lash").entries().get(1).temperature());
    assertEquals("68 degF", reading(done, "float").temperature());
  }

  @Test
  void saysWhichTemperatureStaysAsItWas() {
    assertEquals(
        List.of("lash: no column for the part's temperature; 20 degC stays, as in the record"),
        run(HEADS + "0.142,0.145,0.150,0.11\n").notices());
  }

  @Test
  void listsAllThatDoesNotFitAndDoesNothing() {
    assertEquals(
        List.of(
            "column 1, lash[tooth=1] [mm], row 2: 'worn' is not a number; leave the field empty"
                + " where nothing was taken",
            "column 4, flaot [mm]: the record has no reading flaot; nearest: float",
            "the reading lash of clause 2.1 has no column 'lash[tooth=7] [mm]'; give it one, empty"
                + " where nothing was taken",
            "column 2, lash[tooth=4] [N]: N cannot be put into mm, the unit of the reading",
            "column 3, lash[tooth=8] [mm]: the reading lash of clause 2.1 has no such station; write a head"
                + " such as 'lash[tooth=1] [mm]'",
            "the reading float of clause 2.1 has no column 'float [mm]'; give it one, empty where"
                + " nothing was taken"),
        problems(
            "lash[tooth=1] [mm],lash[tooth=4] [N],lash[tooth=8] [mm],flaot [mm]\nworn,0.1,0.1,0.1\n"));
  }

  @Test
  void refusesUnitsAndLabelsThatAreLeftOutOrTooMany() {
    assertEquals(
        List.of(
            "the reading lash of clause 2.1 has no column 'lash[tooth=1] [mm]'; give it one, empty"
                + " where nothing was taken",
            "the reading lash of clause 2.1 has no column 'lash[tooth=4] [mm]'; give it one, empty"
                + " where nothing was taken",
            "the reading lash of clause 2.1 has no column 'lash[tooth=7] [mm]'; give it one, empty"
                + " where nothing was taken",
            "column 1, lash [mm]: the reading lash of clause 2.1 has stations; write one column"
                + " each, such as 'lash[tooth=1] [mm]'",
            "column 2, float: the head says no unit; write float [mm]"),
        problems("lash [mm],float\n0.1,0.1\n"));
  }

  @Test
  void refusesInstrumentsAndTemperaturesThatCannotBe() {
    assertEquals(
        List.of(
            "column 5, lash.instrument, row 2: the record has no instrument DG-99; enter it in the"
                + " register first",
            "column 6, lash.at [degC], row 3: another temperature than in row 2; repeats at one"
                + " station share it",
            "column 7, float.at [mm]: a temperature is in degC or degF"),
        problems(
            HEADS.replace("\n", ",lash.instrument,lash.at [degC],float.at [mm]\n")
                + "0.142,0.145,0.150,0.11,DG-99,20,20\n,,,,,21,\n"));
  }

  @Test
  void runsTheSecondEngineOfTheDemonstration() throws IOException {
    Path notebooks = Path.of("../../notebooks");
    InvestigationRecord from =
        InvestigationRecord.read(Files.readAllBytes(notebooks.resolve("w6-bevel-mesh.json")));
    byte[] csv = Files.readAllBytes(notebooks.resolve("w6-bevel-mesh.second-engine.csv"));
    InvestigationRecord done = Rerun.run(from, Readings.of(csv, "second-engine.csv")).record();
    assertEquals(
        List.of("4.5 thou", "4.5 thou", "4.0 thou"),
        reading(done, "float_shaft").entries().get(0).taken());
    assertEquals(List.of("0.34", "0.34", "0.35"), reading(done, "slip").entries().get(0).taken());
  }

  @Test
  void takesBackTheReadingsThatWereGivenOut() throws IOException {
    assertEquals(
        "lash[tooth=1] [mm],lash[tooth=4] [mm],lash[tooth=7] [mm],float [mm]\r\n"
            + "0.134,0.141,,0.11\r\n,,,0.11\r\n,,,0.12\r\n",
        ReadingsOut.csv(example(), true));
    assertEquals(HEADS.strip() + "\r\n", ReadingsOut.csv(example(), false), "the blank form");
    String given = ReadingsOut.csv(example(), true);
    assertEquals(given, ReadingsOut.csv(run(given).record(), true));
    String inThou = HEADS.replace("float [mm]", "float [thou]") + "0.142,0.145,,4.5\n,,,4.0\n";
    assertEquals(
        inThou.replace("\n", "\r\n"), ReadingsOut.csv(run(inThou).record(), true), "unit as taken");
  }

  /** As found and as left of one place are two values: the mean of both would be of neither. */
  @Test
  void keepsStagesApartInTheRecordAndInTheFile() {
    InvestigationRecord from = atTwoStages();
    String csv =
        "lash[tooth=1] [mm],lash[tooth=4] [mm],lash[tooth=7] [mm],"
            + "float[stage=as found] [mm],float[stage=as left] [mm]\n"
            + "0.142,0.145,,0.15,0.09\n,,,0.16,0.10\n";
    InvestigationRecord done = run(from, csv);
    Reading taken = reading(done, "float");
    assertEquals(List.of("0.15", "0.16"), taken.entries().get(0).taken());
    assertEquals("", taken.entries().get(0).stage(), "the reading's own: as found");
    assertEquals(List.of("0.09", "0.10"), taken.entries().get(1).taken());
    assertEquals("as left", taken.entries().get(1).stage());
    String given = ReadingsOut.csv(done, true);
    assertEquals(csv.replace("\n", "\r\n"), given, "both stages are given out");
    assertEquals(given, ReadingsOut.csv(run(from, given), true), "and taken back");
  }

  @Test
  void aColumnThatLeavesTheStageOpenIsRefusedWhereThereAreTwo() {
    String csv = HEADS + "0.142,0.145,,0.15\n";
    RerunRefusedException refused =
        assertThrows(RerunRefusedException.class, () -> run(atTwoStages(), csv));
    assertEquals(
        List.of(
            "the reading float of clause 2.1 has no column 'float[stage=as found] [mm]'; give it"
                + " one, empty where nothing was taken",
            "the reading float of clause 2.1 has no column 'float[stage=as left] [mm]'; give it"
                + " one, empty where nothing was taken",
            "column 4, float [mm]: the reading float of clause 2.1 is taken at several stages;"
                + " write one column each, such as 'float[stage=as found] [mm]'"),
        refused.problems());
  }

  @Test
  void theSecondEngineMayBeReadAtAStageThatTheFirstWasNot() {
    InvestigationRecord done =
        run(HEADS.replace("\n", ",float[stage=as left] [mm]\n") + "0.142,0.145,,0.15,0.09\n")
            .record();
    List<Reading.Entry> entries = reading(done, "float").entries();
    assertEquals(List.of("0.15"), entries.get(0).taken());
    assertEquals("as left", entries.get(1).stage());
    assertEquals(List.of("0.09"), entries.get(1).taken());
    assertEquals(
        List.of(
            "column 5, float[stage=as found] [mm]: the same station and stage as column 4, float"
                + " [mm]"),
        problems(HEADS.replace("\n", ",float[stage=as found] [mm]\n") + "0.1,0.1,,0.1,0.1\n"));
  }

  private static InvestigationRecord run(InvestigationRecord from, String csv) {
    return Rerun.run(from, Readings.of(csv.getBytes(StandardCharsets.UTF_8), "b.csv")).record();
  }

  private static InvestigationRecord atTwoStages() {
    ObjectNode tree = example().tree().deepCopy();
    for (JsonNode reading : tree.at("/cells/1/cells/0/readings")) {
      if (reading.path("name").asText().equals("float")) {
        ObjectNode left = ((ObjectNode) reading).withArray("entries").addObject();
        left.putArray("taken").add("0.08");
        left.put("stage", "as left");
      }
    }
    return InvestigationRecord.of(tree);
  }
}
