package endfloat.http.view;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Stages;
import endfloat.record.InvestigationRecord;
import endfloat.record.Photographs;
import endfloat.report.SheetOnPaper;
import endfloat.sheet.Snapshot;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A record with the views that its page would be sent, for the report to draw. */
public final class PaperView {
  private PaperView() {}

  /** The sheet of a record as it stands, its hashes taken anew, without photographs. */
  public static SheetOnPaper of(InvestigationRecord given) {
    return of(given, Optional.empty());
  }

  /** The sheet of a record with the photographs that are kept beside it. */
  public static SheetOnPaper of(InvestigationRecord given, Photographs photographs) {
    return of(given, Optional.of(photographs));
  }

  private static SheetOnPaper of(InvestigationRecord given, Optional<Photographs> photographs) {
    InvestigationRecord record = InvestigationRecord.read(given.write());
    SheetView view = view(record);
    Map<String, JsonNode> stages = new LinkedHashMap<>();
    for (String stage : Stages.of(view.graph())) {
      if (!stage.equals(record.settings().stage())) {
        stages.put(stage, view(atStage(record, stage)).whole().path("figures"));
      }
    }
    return new SheetOnPaper(record, view.whole(), stages, photographs);
  }

  private static SheetView view(InvestigationRecord record) {
    return new SheetView(
        new Snapshot(record, 0, 0, Map.of(), false, false, List.of(), Optional.empty(), List.of()));
  }

  private static InvestigationRecord atStage(InvestigationRecord record, String stage) {
    ObjectNode tree = record.tree().deepCopy();
    tree.withObject("/settings").put("stage", stage);
    return InvestigationRecord.of(tree);
  }
}
