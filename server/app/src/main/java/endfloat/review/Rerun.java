package endfloat.review;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.record.NewRecord;
import endfloat.record.Reading;
import endfloat.record.RecordException;
import endfloat.record.RecordHash;
import endfloat.record.TitleBlock;
import endfloat.table.DecimalMark;
import endfloat.table.ReadingsCsv;
import endfloat.table.ReadingsTable;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Runs a record again with the readings of another engine: same clauses, workings, limits and
 * instruments, other readings, and where both came from.
 *
 * <p>Every reading and station of the record must have its column, and every column its reading;
 * what was not taken is left empty. Nothing is half done: all problems are listed, or there is a
 * record.
 */
public final class Rerun {
  private Rerun() {}

  /**
   * What is given beside the record.
   *
   * @param file bytes of the CSV
   * @param fileName as it is written down in the new record
   * @param decimal mark of the file
   * @param title of the new record; empty keeps the old one's
   * @param engineSerial of the other engine; empty leaves it open
   * @param date of the new record
   */
  public record Readings(
      byte[] file,
      String fileName,
      DecimalMark decimal,
      String title,
      String engineSerial,
      LocalDate date) {
    /** A file with decimal points, of today. */
    public static Readings of(byte[] file, String fileName) {
      return new Readings(
          file, fileName, DecimalMark.POINT, "", "", LocalDate.now(ZoneId.systemDefault()));
    }
  }

  /**
   * A record run again; its figures are yet to be computed.
   *
   * @param notices what the reader should know
   */
  public record Done(InvestigationRecord record, List<String> notices) {}

  /**
   * Runs a record again.
   *
   * @throws RerunRefusedException with all that is wrong with the readings
   * @throws RecordException if what comes out is no record
   */
  public static Done run(InvestigationRecord from, Readings readings) {
    return run(from, readings, Map.of());
  }

  /**
   * Runs a record again.
   *
   * @param block further fields of the title block, by their names in the file; empty ones are left
   *     out
   * @throws RerunRefusedException with all that is wrong with the readings
   * @throws RecordException if what comes out is no record
   */
  public static Done run(InvestigationRecord from, Readings readings, Map<String, String> block) {
    ReadingsTable table = ReadingsCsv.read(readings.file(), readings.decimal());
    List<String> problems = new ArrayList<>(table.problems());
    if (table.columns().isEmpty() && !problems.isEmpty()) {
      throw new RerunRefusedException(problems);
    }
    List<String> notices = new ArrayList<>(table.notices());
    if (table.columns().stream().allMatch(column -> column.fields().isEmpty())) {
      notices.add("the file has heads and no readings: every reading is left empty");
    }
    ObjectNode tree = begun(from, readings.title(), readings.date(), block);
    if (!readings.engineSerial().isEmpty()) {
      tree.withObject("/title_block").put("engine_serial", readings.engineSerial());
    }
    new ReadingsInto(from, tree, problems, notices).put(table.columns());
    if (!problems.isEmpty()) {
      throw new RerunRefusedException(problems);
    }
    ObjectNode provenance = provenance(from);
    provenance.put("readings_file", readings.fileName());
    provenance.put("readings_hash", RecordHash.ofBytes(readings.file()));
    tree.set("provenance", provenance);
    InvestigationRecord made = InvestigationRecord.of(tree);
    notices.addAll(overdue(made));
    return new Done(made, List.copyOf(notices));
  }

  /**
   * Instruments that were read although their calibration had run out by the day of the readings.
   */
  private static List<String> overdue(InvestigationRecord made) {
    String day = made.titleBlock().date();
    Set<String> read = new HashSet<>();
    for (Cell cell : made.cells()) {
      for (Reading reading : cell.readings()) {
        for (Reading.Entry entry : reading.entries()) {
          if (!entry.taken().isEmpty()) {
            read.add(entry.instrument().isEmpty() ? reading.instrument() : entry.instrument());
          }
        }
      }
    }
    return made.instruments().stream()
        .filter(one -> read.contains(one.id()) && !one.due().isBlank())
        .filter(one -> one.due().compareTo(day) < 0)
        .map(
            one ->
                "instrument "
                    + one.id()
                    + " was due for calibration on "
                    + one.due()
                    + ", before the readings of "
                    + day
                    + "; have it calibrated, or say why its readings may stand")
        .toList();
  }

  /**
   * Begins the same record on another engine, no reading taken yet.
   *
   * @param title of the new record; empty keeps the old one's
   * @param block as in {@link #run(InvestigationRecord, Readings, Map)}
   */
  public static InvestigationRecord emptied(
      InvestigationRecord from, String title, LocalDate date, Map<String, String> block) {
    ObjectNode tree = begun(from, title, date, block);
    tree.set("provenance", provenance(from));
    return InvestigationRecord.of(tree);
  }

  private static ObjectNode begun(
      InvestigationRecord from, String title, LocalDate date, Map<String, String> block) {
    ObjectNode tree =
        NewRecord.from(from, title.isEmpty() ? from.titleBlock().title() : title, date);
    block.forEach(
        (field, text) -> {
          if (!text.isBlank()) {
            tree.withObject("/title_block").put(field, text.strip());
          }
        });
    return tree;
  }

  private static ObjectNode provenance(InvestigationRecord from) {
    TitleBlock block = from.titleBlock();
    return JsonNodeFactory.instance
        .objectNode()
        .put("record", block.title())
        .put("record_number", block.recordNumber())
        .put("revision", block.revision())
        .put("source_hash", from.sourceHash());
  }
}
