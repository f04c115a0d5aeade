package endfloat.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The sources that ship as approved are those of the records that ship, and no others. */
class ShippedJavaTest {
  private static final Path NOTEBOOKS = Path.of("../../notebooks");

  @Test
  void theListHoldsTheSourcesOfTheNotebooksAndNothingElse() throws IOException {
    Set<String> found = new TreeSet<>();
    for (Path folder : List.of(NOTEBOOKS, NOTEBOOKS.resolve("patterns"))) {
      try (var files = Files.list(folder)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".json")).toList()) {
          for (Cell cell : InvestigationRecord.read(Files.readAllBytes(file)).cells()) {
            if (cell.kind().equals("java")) {
              found.add(Approvals.hash(cell.text()));
            }
          }
        }
      }
    }
    assertEquals(found, new TreeSet<>(Approvals.shipped()));
  }
}
