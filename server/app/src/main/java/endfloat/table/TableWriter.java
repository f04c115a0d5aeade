package endfloat.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.IntFunction;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A table as CSV (RFC 4180): heads with units, texts as they stand, lines ended by CR LF. */
public final class TableWriter {
  private TableWriter() {}

  /**
   * @param heads {@code lash [thou]}
   * @param row the texts of a row, counted from 0
   */
  public static String csv(List<String> heads, int rows, IntFunction<List<String>> row) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
      printer.printRecord(heads);
      for (int i = 0; i < rows; i++) {
        printer.printRecord(row.apply(i));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }
}
