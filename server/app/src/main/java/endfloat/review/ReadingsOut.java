package endfloat.review;

import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.record.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The readings of a record as CSV, in the form that {@link Rerun} takes: one column a station,
 * repeats down. Without what was taken it is the blank form for the next engine.
 */
public final class ReadingsOut {
  private ReadingsOut() {}

  private record Column(String head, List<String> texts) {}

  /**
   * The readings of a record.
   *
   * @param taken whether to fill in what was taken at the record's current stage; what was struck
   *     through is left out
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
    for (Map<String, String> station :
        reading.entries().stream().map(Reading.Entry::at).distinct().toList()) {
      List<String> texts = new ArrayList<>();
      String unit = reading.unit().strip();
      for (Reading.Entry entry : reading.entries()) {
        boolean counts =
            taken
                && entry.at().equals(station)
                && entry.struck().isEmpty()
                && stageOf(entry, reading, stage).equals(stage);
        if (counts) {
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
      String labels =
          station.isEmpty()
              ? ""
              : station.entrySet().stream()
                  .map(label -> label.getKey() + "=" + label.getValue())
                  .collect(Collectors.joining(",", "[", "]"));
      String head = reading.name() + labels + (unit.isEmpty() ? "" : " [" + unit + "]");
      columns.add(new Column(head, texts));
    }
  }

  private static String stageOf(Reading.Entry entry, Reading reading, String stage) {
    return !entry.stage().isEmpty()
        ? entry.stage()
        : reading.stage().isEmpty() ? stage : reading.stage();
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
