package endfloat.cli;

import static endfloat.table.Workbooks.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import endfloat.table.Workbooks;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file read into a table of a record by the command. */
class TableCommandTest {
  @TempDir private Path folder;
  private Path record;
  private Path out;

  @BeforeEach
  void write() throws IOException {
    record = folder.resolve("wear.json");
    out = folder.resolve("new.json");
    Files.writeString(
        record,
        """
        {"format":"endfloat-record","version":1,"title_block":{"title":"Wear"},
         "cells":[{"id":"c1","kind":"table","name":"wear","columns":[
            {"head":"lash","kind":"number","unit":"mm","note":"cold"}],
           "limits":["limit wear.lash: at most 0.30 mm"],"rows":[["0.15"]]}]}
        """);
  }

  private Run table(Path from, String... more) {
    String[] arguments = {"table", record.toString(), "--from", from.toString(), "--out", "" + out};
    String[] all = new String[arguments.length + more.length];
    System.arraycopy(arguments, 0, all, 0, arguments.length);
    System.arraycopy(more, 0, all, arguments.length, more.length);
    return Run.of("", all);
  }

  private Path workbook() throws IOException {
    String wear =
        "<row r='1'>"
            + text("A1", "lash [mm]")
            + "</row><row r='2'><c r='A2'><v>0.31</v></c></row>";
    String hours =
        "<row r='1'>" + text("A1", "hours [h]") + "</row><row r='2'><c r='A2'><v>412</v></c></row>";
    Path file = folder.resolve("fleet.xlsx");
    Files.write(
        file,
        Workbooks.workbook(List.of(Map.entry("Hours", hours), Map.entry("Lash, cold", wear))));
    return file;
  }

  private JsonNode cell() throws IOException {
    return new ObjectMapper().readTree(out.toFile()).at("/cells/0");
  }

  @Test
  void ofAWorkbookWithSeveralSheetsNothingIsTakenWithoutASheet() throws IOException {
    Run run = table(workbook());
    assertEquals(Exit.BAD_INPUT, run.code());
    assertTrue(run.err().contains("say which one: Hours, Lash, cold"), run.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void theSheetNamedIsTakenAndNamedInTheRecord() throws IOException {
    Run run = table(workbook(), "--sheet", "Lash, cold");
    assertEquals(Exit.OUTSIDE, run.code(), run.err());
    assertEquals("[[\"0.31\"]]", cell().path("rows").toString());
    assertEquals("Lash, cold", cell().at("/from/sheet").asText());
    assertEquals("fleet.xlsx", cell().at("/from/file").asText());
    assertEquals("cold", cell().at("/columns/0/note").asText());
  }

  @Test
  void rowsAreAddedBeneathWhereTheColumnsAreTheSame() throws IOException {
    Path csv = Files.writeString(folder.resolve("more.csv"), "lash [mm]\n0.18\n0.19\n");
    assertEquals(Exit.DONE, table(csv, "--append").code());
    assertEquals("[[\"0.15\"],[\"0.18\"],[\"0.19\"]]", cell().path("rows").toString());
    Path other = Files.writeString(folder.resolve("other.csv"), "lash [thou]\n6\n");
    Run refused = table(other, "--append");
    assertEquals(Exit.BAD_INPUT, refused.code());
    assertTrue(refused.err().contains("are not those of the table"), refused.err());
  }

  @Test
  void whatDoesNotFitIsListedAndNothingIsWritten() throws IOException {
    Path csv = Files.writeString(folder.resolve("wrong.csv"), "lash [mm]\n0.18x\n0.19\n0.20\n");
    Run run = table(csv);
    assertEquals(Exit.BAD_INPUT, run.code());
    assertTrue(run.err().contains("row 2, column 1, lash [mm]"), run.err());
    assertFalse(Files.exists(out));
    assertEquals(Exit.BAD_INPUT, table(csv, "--table", "hours").code());
  }
}
