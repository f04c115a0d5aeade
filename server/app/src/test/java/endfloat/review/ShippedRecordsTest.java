package endfloat.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.record.InvestigationRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A guard: the figures saved with the shipped records are those that come out now. Where a
 * calculation was changed on purpose, {@code endfloat agree --save notebooks} writes the new ones
 * and prints which they are.
 */
class ShippedRecordsTest {
  private static List<Path> records(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  @Test
  void savedFiguresAreThoseThatComeOutNow() throws IOException {
    List<Path> records = records(Path.of("../../notebooks"));
    assertFalse(records.isEmpty());
    for (Path file : records) {
      Agree.Report report = Agree.of(InvestigationRecord.read(Files.readAllBytes(file)), false);
      assertEquals(List.of(), report.differences(), file.toString());
      assertFalse(report.sourceChanged(), file + " was changed after its figures were saved");
      boolean pattern = file.getParent().endsWith("patterns");
      assertTrue(pattern || report.compared() > 0, file + " is shipped without figures");
    }
  }
}
