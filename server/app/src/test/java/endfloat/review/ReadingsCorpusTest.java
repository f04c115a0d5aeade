package endfloat.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.engine.RecordGraph;
import endfloat.record.InvestigationRecord;
import endfloat.table.DecimalMark;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Files of readings as they come from other programs, each run to the figure that comes out. */
class ReadingsCorpusTest {
  private static final String HEADS =
      "lash[tooth=1] [mm],lash[tooth=4] [mm],lash[tooth=7] [mm],float [mm]\n";

  private static InvestigationRecord example() {
    try (var in = InvestigationRecord.class.getResourceAsStream("end-float.json")) {
      return InvestigationRecord.read(in.readAllBytes());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static Rerun.Done run(String text, Charset charset, DecimalMark decimal) {
    LocalDate day = LocalDate.of(2026, 6, 2);
    byte[] file = text.getBytes(charset);
    return Rerun.run(example(), new Rerun.Readings(file, "b.csv", decimal, "", "", day));
  }

  private static Rerun.Done run(String text) {
    return run(text, StandardCharsets.UTF_8, DecimalMark.POINT);
  }

  /** End float in millimetres, as the engine works it out. */
  private static double endFloat(Rerun.Done done) {
    return 1000 * RecordGraph.of(done.record()).graph().figure("float").orElseThrow().si();
  }

  private static List<String> refused(String text) {
    return assertThrows(RerunRefusedException.class, () -> run(text)).problems();
  }

  @Test
  void quotesAMarkOfOrderAndCarriageReturns() {
    String quoted = "\"" + HEADS.strip().replace("],l", "]\",\"l").replace("],f", "]\",\"f") + "\"";
    String file = "\ufeff" + quoted + "\r\n\"0.142\",0.145,0.150,\"0.11\"\r\n";
    assertEquals(0.11, endFloat(run(file)), 1e-12);
  }

  @Test
  void shortRowsAndBlanksWereNotTaken() {
    Rerun.Done done = run(HEADS + "0.142,,0.150,0.11\n0.143\n,,,0.13\n");
    assertEquals(0.12, endFloat(done), 1e-12, "the mean of two and not of three");
    var lash =
        done.record().cells().stream()
            .flatMap(cell -> cell.readings().stream())
            .filter(reading -> reading.name().equals("lash"))
            .findFirst()
            .orElseThrow();
    assertEquals(List.of("0.142", "0.143"), lash.entries().get(0).taken());
    assertEquals(List.of(), lash.entries().get(1).taken());
  }

  @Test
  void aFieldWithoutAHeadIsRefusedByItsRow() {
    assertEquals(
        List.of("row 2, column 5: '0.9' has no head"),
        refused(HEADS + "0.142,0.145,0.150,0.11,0.9\n"));
  }

  @Test
  void aDecimalCommaIsReadWhereItIsChosenAndOnlyThere() {
    String file = HEADS.replace("],l", "];l").replace("],f", "];f") + "0,142;0,145;0,150;0,11\n";
    assertEquals(0.11, endFloat(run(file, StandardCharsets.UTF_8, DecimalMark.COMMA)), 1e-12);
    List<String> problems = refused(file);
    assertEquals(4, problems.size(), problems.toString());
    assertTrue(problems.get(3).startsWith("column 4, float [mm], row 2: "), problems.get(3));
  }

  @Test
  void latinOneIsReadAndSaidToBe() {
    String file = HEADS.replace("float [mm]", "float [mm],float.at [\u00b0C]");
    Rerun.Done done =
        run(file + "0.142,0.145,0.150,0.11,21\n", StandardCharsets.ISO_8859_1, DecimalMark.POINT);
    assertTrue(done.notices().toString().contains("Latin-1"), done.notices().toString());
  }

  /** 1 in = 25.4 mm exactly: 4.5 thou = 0.1143 mm. */
  @Test
  void anotherUnitOfTheSameKindIsConverted() {
    String file = HEADS.replace("float [mm]", "float [thou]") + "0.142,0.145,0.150,4.5\n";
    assertEquals(0.1143, endFloat(run(file)), 1e-12);
  }

  @Test
  void aUnitOfAnotherKindAndAWordAreRefusedByNameAndRow() {
    assertEquals(
        List.of("column 4, float [N]: N cannot be put into mm, the unit of the reading"),
        refused(HEADS.replace("float [mm]", "float [N]") + "0.142,0.145,0.150,4.5\n"));
    List<String> problems = refused(HEADS + "0.142,0.145,0.150,0.11\n,,,loose\n");
    assertTrue(
        problems.get(0).startsWith("column 4, float [mm], row 3: 'loose' is not a number"),
        problems.toString());
  }
}
