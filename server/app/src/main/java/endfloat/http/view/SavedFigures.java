package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.record.InvestigationRecord;
import endfloat.review.Agree;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The figures saved with a record against those that came out when it was opened. Opening rewrites
 * nothing: a figure that differs is out of date in the file, and said to be, until an edit gives it
 * another value or the sheet is opened anew.
 *
 * <p>Figures in notes are the live ones and cannot be out of date.
 */
final class SavedFigures {
  private final Agree.Report report;
  private final Map<String, List<Agree.Difference>> byFigure = new LinkedHashMap<>();

  private SavedFigures(Agree.Report report, Set<String> names) {
    this.report = report;
    for (Agree.Difference one : report.differences()) {
      byFigure.computeIfAbsent(figureOf(one.name(), names), any -> new ArrayList<>()).add(one);
    }
  }

  /**
   * @param results computed of the record
   * @param names of the figures of the sheet
   */
  static SavedFigures of(InvestigationRecord record, ObjectNode results, Set<String> names) {
    return new SavedFigures(Agree.with(record, results), names);
  }

  /** A record of results is saved a field each, as {@code fit.pressure}. */
  private static String figureOf(String saved, Set<String> names) {
    int point = saved.lastIndexOf('.');
    return names.contains(saved) || point < 0 ? saved : saved.substring(0, point);
  }

  /** Figures whose saved value is another. */
  Set<String> outOfDate() {
    return Set.copyOf(byFigure.keySet());
  }

  /** An edit gave these figures other values. */
  void forget(Set<String> names) {
    byFigure.keySet().removeAll(names);
  }

  /** {@code agrees} of the summary; nothing where no figures were saved. */
  ObjectNode into(ObjectNode summary) {
    if (report.compared() == 0) {
      return summary;
    }
    ObjectNode agrees = summary.putObject("agrees");
    agrees.put("agrees", report.agrees()).put("compared", report.compared());
    agrees.put("saved_library", report.savedLibrary()).put("library", report.library());
    if (!report.agrees()) {
      agrees.put("why", why());
    }
    ArrayNode list = agrees.putArray("differences");
    for (Agree.Difference one : report.differences()) {
      ObjectNode entry = list.addObject().put("name", one.name()).put("clause", one.clause());
      entry.put("what", one.what()).put("saved", one.saved()).put("now", one.now());
    }
    return summary;
  }

  /** {@code outOfDate} of a figure whose saved value is another. */
  void into(Figure figure, ObjectNode view) {
    List<Agree.Difference> differences = byFigure.get(figure.name());
    if (differences == null || figure.state() == Figure.State.WORKING) {
      return;
    }
    ObjectNode outOfDate = view.putObject("outOfDate").put("why", why());
    ArrayNode list = outOfDate.putArray("differences");
    for (Agree.Difference one : differences) {
      list.addObject()
          .put("name", one.name())
          .put("what", one.what())
          .put("saved", one.saved())
          .put("now", one.now());
    }
  }

  private String why() {
    String saved = report.savedLibrary().isEmpty() ? "not said" : report.savedLibrary();
    if (!saved.equals(report.library())) {
      return "Saved with version "
          + saved
          + " of the calculation library, computed now with "
          + report.library()
          + ".";
    }
    return report.sourceChanged()
        ? "The record was changed since its figures were saved."
        : "Saved with the same version of the calculation library; the file was altered by"
            + " something else, or a calculation was.";
  }
}
