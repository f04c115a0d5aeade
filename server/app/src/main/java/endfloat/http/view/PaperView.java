package endfloat.http.view;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.HeavyWork;
import endfloat.engine.Stages;
import endfloat.record.AtStage;
import endfloat.record.InvestigationRecord;
import endfloat.record.Photographs;
import endfloat.record.TableOrder;
import endfloat.report.SheetOnPaper;
import endfloat.sheet.Snapshot;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A record with the views that its page would be sent, for the report to draw. */
public final class PaperView {
  /** Lines of a table that a report has. */
  private static final int ROWS = 60;

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
        stages.put(stage, view(AtStage.of(record, stage)).whole().path("figures"));
      }
    }
    ObjectNode whole = view.whole();
    rows(whole.path("cells"), view);
    return new SheetOnPaper(record, whole, stages, photographs);
  }

  /** Puts the first rows of each table beside its heads, in the order of the sheet. */
  private static void rows(JsonNode cells, SheetView view) {
    for (JsonNode cell : cells) {
      rows(cell.path("cells"), view);
      if (cell.path("table") instanceof ObjectNode table) {
        String id = cell.path("id").asText();
        TableOrder order = view.record().cell(id).orElseThrow().table().view();
        table.set("lines", lines(view, id, order).view(0, ROWS));
      }
    }
  }

  private static TableLines lines(SheetView view, String id, TableOrder order) {
    try {
      return TableLines.of(view.questions().rows(id, order.filter()).orElseThrow(), order);
    } catch (RefusedOrderException e) {
      // the sheet says it; on paper they stand as in the record
      TableOrder none = new TableOrder(List.of(), "", List.of());
      return TableLines.of(view.questions().rows(id, "").orElseThrow(), none);
    }
  }

  private static SheetView view(InvestigationRecord record) {
    SheetView view =
        new SheetView(
            new Snapshot(
                record, 0, 0, Map.of(), false, false, List.of(), Optional.empty(), List.of()));
    workOut(view);
    return view;
  }

  /** Paper cannot wait: what a page would be sent later is worked out here and now. */
  private static void workOut(SheetView view) {
    List<HeavyWork> works = view.takeHeavyWork();
    while (!works.isEmpty()) {
      for (HeavyWork work : works) {
        work.run();
        view.finished(work);
      }
      works = view.takeHeavyWork();
    }
    if (view.isBehindWithCharts()) {
      view.drawCharts(() -> {});
    }
  }
}
