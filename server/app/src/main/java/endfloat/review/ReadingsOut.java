package endfloat.review;

import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.record.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The readings of a record as CSV, in the form that {@link Rerun} takes: one column a station and
 * stage, repeats down. Without what was taken it is the blank form for the next engine.
 */
public final class ReadingsOut {
  private ReadingsOut() {}

  private record Column(String head, List<String> texts) {}

  /**
   * The readings of a record.
   *
   * @param taken whether to fill in what was taken, at each stage; what was struck through is left
   *     out
   */
  public static String csv(InvestigationRecord record, boolean taken) {
    List<Column> columns = new ArrayList<>();
    for (Cell cell : record.cells()) {
      for (Reading reading : cell.readings()) {
        if (!reading.name().isEmpty()) {
          add(columns, reading, taken, record.settings().stage());
        }
      }
    }
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
      printer.printRecord(columns.stream().map(Column::head).toList());
      int rows = columns.stream().mapToInt(column -> column.texts().size()).max().orElse(0);
      for (int row = 0; row < rows; row++) {
        int at = row;
        // null and not "": an empty text in the first column would be put in quotes
        printer.printRecord(
            columns.stream()
                .map(column -> at < column.texts().size() ? column.texts().get(at) : null)
                .toArray());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory takes all that is written", e);
    }
    return out.toString();
  }

  private static void add(List<Column> columns, Reading reading, boolean taken, String stage) {
    List<Station> stations = Station.all(reading, stage);
    boolean several = Station.atSeveralStages(stations);
    for (Station station : stations) {
      List<String> texts = new ArrayList<>();
      String unit = reading.unit().strip();
      for (Reading.Entry entry : reading.entries()) {
        boolean here = Station.of(entry, reading, stage).equals(station);
        if (taken && here && entry.struck().isEmpty()) {
          texts.addAll(entry.taken());
        }
      }
      // one column has one unit: where repeats were taken in another, and all in the same, the head
      // says it
      String own = ownUnit(texts);
      if (!own.isEmpty()) {
        unit = own;
        String suffix = own;
        texts.replaceAll(text -> text.substring(0, text.length() - suffix.length()).strip());
      }
      String head = reading.name() + station.label(several);
      columns.add(new Column(head + (unit.isEmpty() ? "" : " [" + unit + "]"), texts));
    }
  }

  private static String ownUnit(List<String> texts) {
    List<String> units =
        texts.stream()
            .map(text -> text.contains(" ") ? text.substring(text.lastIndexOf(' ') + 1) : "")
            .distinct()
            .toList();
    return units.size() == 1 ? units.get(0) : "";
  }
}
