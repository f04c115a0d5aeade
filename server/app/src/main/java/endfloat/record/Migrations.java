package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.RecordException.Reason;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Brings older records to the version of today, one version at a time. A step gets the tree of its
 * version and answers that of the next. The file on disk stays as it was until the first save, and
 * then among the earlier states.
 */
final class Migrations {
  /** The step from version i + 1 to i + 2 at index i. */
  private static final List<UnaryOperator<ObjectNode>> STEPS = List.of();

  private Migrations() {}

  static JsonNode toCurrent(JsonNode tree) {
    return toVersion(tree, InvestigationRecord.VERSION, STEPS);
  }

  static JsonNode toVersion(JsonNode tree, int current, List<UnaryOperator<ObjectNode>> steps) {
    if (!(tree instanceof ObjectNode record)
        || !"endfloat-record".equals(record.path("format").textValue())) {
      throw new RecordException(
          Reason.NOT_A_RECORD,
          "the file is JSON but no Endfloat record: its field 'format' is not 'endfloat-record'");
    }
    JsonNode version = record.path("version");
    if (!version.isIntegralNumber() || version.longValue() < 1) {
      throw new RecordException(
          Reason.NOT_A_RECORD, "the field 'version' must be a whole number, 1 or more");
    }
    if (!version.canConvertToInt() || version.intValue() > current) {
      throw new RecordException(
          Reason.NEWER,
          "the record has version "
              + version.asText()
              + " of the format, and this program knows versions up to "
              + current
              + "; it was left as it is. Open it with a newer Endfloat");
    }
    for (int from = version.intValue(); from < current; from++) {
      record = steps.get(from - 1).apply(record.deepCopy());
      record.put("version", from + 1);
    }
    return record;
  }
}
