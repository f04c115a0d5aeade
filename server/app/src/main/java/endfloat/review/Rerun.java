package endfloat.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.InvestigationRecord;
import endfloat.record.NewRecord;
import endfloat.record.RecordException;
import endfloat.record.RecordHash;
import endfloat.record.TitleBlock;
import endfloat.table.DecimalMark;
import endfloat.table.ReadingsCsv;
import endfloat.table.ReadingsTable;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

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
    ReadingsTable table = ReadingsCsv.read(readings.file(), readings.decimal());
    List<String> problems = new ArrayList<>(table.problems());
    List<String> notices = new ArrayList<>(table.notices());
    ObjectNode tree =
        NewRecord.from(
            from,
            readings.title().isEmpty() ? from.titleBlock().title() : readings.title(),
            readings.date());
    if (!readings.engineSerial().isEmpty()) {
      tree.withObject("/title_block").put("engine_serial", readings.engineSerial());
    }
    new ReadingsInto(from, tree, problems, notices).put(table.columns());
    if (!problems.isEmpty()) {
      throw new RerunRefusedException(problems);
    }
    tree.set("provenance", provenance(from, readings));
    return new Done(InvestigationRecord.of(tree), List.copyOf(notices));
  }

  private static JsonNode provenance(InvestigationRecord from, Readings readings) {
    TitleBlock block = from.titleBlock();
    return JsonNodeFactory.instance
        .objectNode()
        .put("record", block.title())
        .put("record_number", block.recordNumber())
        .put("revision", block.revision())
        .put("source_hash", from.sourceHash())
        .put("readings_file", readings.fileName())
        .put("readings_hash", RecordHash.ofBytes(readings.file()));
  }
}
