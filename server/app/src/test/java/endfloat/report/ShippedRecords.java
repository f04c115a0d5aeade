package endfloat.report;

import endfloat.http.view.PaperView;
import endfloat.record.InvestigationRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The records that ship, for tests of what is made of them on paper. */
public final class ShippedRecords {
  private static final Path NOTEBOOKS = Path.of("../../notebooks");

  private ShippedRecords() {}

  public static List<Path> all() {
    try (Stream<Path> files = Files.list(NOTEBOOKS)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static InvestigationRecord record(Path file) {
    return InvestigationRecord.read(bytes(file));
  }

  public static SheetOnPaper sheet(Path file) {
    return PaperView.of(record(file));
  }
}
