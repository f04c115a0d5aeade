package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A record as it is at another stage, as found or as left. */
public final class AtStage {
  private AtStage() {}

  /**
   * The same record at a stage. What was read without a stage said was read at the one that the
   * record is at, and stays there.
   */
  public static InvestigationRecord of(InvestigationRecord record, String stage) {
    ObjectNode tree = record.tree().deepCopy();
    said(tree.path("cells"), record.settings().stage());
    tree.withObject("/settings").put("stage", stage);
    return InvestigationRecord.of(tree);
  }

  private static void said(JsonNode cells, String present) {
    for (JsonNode cell : cells) {
      for (JsonNode reading : cell.path("readings")) {
        if (Texts.text(reading, "stage").isBlank()) {
          ((ObjectNode) reading).put("stage", present);
        }
      }
      said(cell.path("cells"), present);
    }
  }
}
