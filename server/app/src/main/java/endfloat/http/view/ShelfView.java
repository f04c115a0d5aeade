package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.LimitCount;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.record.Reading;
import endfloat.record.Shelf;
import endfloat.record.TitleBlock;
import endfloat.review.Results;
import java.time.Instant;
import java.util.List;

/**
 * The list of records. The verdicts are those saved with each record: none is computed for a list.
 */
public final class ShelfView {
  private static final String DEMONSTRATION = "w6-bevel-mesh";

  private ShelfView() {}

  /** {@code {records: [...], demonstration: id}}. */
  public static ObjectNode of(List<Shelf.Listed> listed) {
    ObjectNode shelf = JsonNodeFactory.instance.objectNode();
    ArrayNode records = shelf.putArray("records");
    String demonstration = "";
    for (Shelf.Listed one : listed) {
      ObjectNode record = records.addObject().put("id", one.name());
      record.put("changed", Instant.ofEpochMilli(one.changedMillis()).toString());
      if (one.record().isPresent()) {
        describe(record, one.record().get());
        demonstration = one.name().equals(DEMONSTRATION) ? one.name() : demonstration;
      } else {
        record.put("title", one.name()).put("problem", one.problem());
      }
    }
    return shelf.put("demonstration", demonstration);
  }

  /** How many readings stand, struck ones left out, and how many of them are taken. */
  private static void readings(ObjectNode into, InvestigationRecord record) {
    int taken = 0;
    int total = 0;
    for (Cell cell : record.cells()) {
      for (Reading reading : cell.readings()) {
        for (Reading.Entry entry : reading.entries()) {
          if (entry.struck().isEmpty()) {
            total++;
            taken += entry.taken().isEmpty() ? 0 : 1;
          }
        }
        total += reading.entries().isEmpty() ? 1 : 0;
      }
    }
    into.put("taken", taken).put("total", total);
  }

  private static void describe(ObjectNode into, InvestigationRecord record) {
    TitleBlock block = record.titleBlock();
    into.put("title", block.title()).put("record_number", block.recordNumber());
    into.put("subtitle", block.subtitle());
    into.put("engine_type", block.engineType()).put("engine_serial", block.engineSerial());
    into.put("state", block.state()).put("date", block.date());
    into.put("figures", record.savedFigures().size());
    LimitCount limits = Results.limits(record);
    ObjectNode verdicts = into.putObject("verdicts");
    readings(into.putObject("readings"), record);
    into.put("part", block.part()).put("revision", block.revision());
    verdicts.put("within", limits.within()).put("not_proven", limits.notProven());
    verdicts.put("outside", limits.outside());
    verdicts.put("waiting", limits.waiting()).put("in_error", limits.inError());
  }
}
