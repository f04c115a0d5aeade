package endfloat.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.record.Photographs;
import endfloat.record.RegisteredPart;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is put on paper: a record, and the sheet as its page shows it.
 *
 * @param record the record
 * @param view the whole view of the sheet that a page is sent: clauses and figures, as texts
 * @param stages figures of the other stages at which something was read, by name, for each stage
 * @param photographs that are kept beside the record
 */
public record SheetOnPaper(
    InvestigationRecord record,
    JsonNode view,
    Map<String, JsonNode> stages,
    Optional<Photographs> photographs) {

  /** A figure as the page shows it; a missing node where there is none. */
  JsonNode figure(String name) {
    return view.path("figures").path(name);
  }

  /** Every clause as the page shows it, by id. */
  Map<String, JsonNode> clauses() {
    Map<String, JsonNode> all = new HashMap<>();
    gather(view.path("cells"), all);
    return all;
  }

  private static void gather(JsonNode cells, Map<String, JsonNode> into) {
    for (JsonNode cell : cells) {
      into.put(cell.path("id").asText(), cell);
      gather(cell.path("cells"), into);
    }
  }

  /** Number of a clause, or empty. */
  String number(String clause) {
    return record.cell(clause).map(Cell::number).orElse("");
  }

  /** A part by its name in the register, else by its number or mark. */
  String part(String id) {
    return record.parts().stream()
        .filter(part -> part.id().equals(id))
        .findFirst()
        .map(SheetOnPaper::name)
        .orElse(id);
  }

  private static String name(RegisteredPart part) {
    return !part.name().isBlank()
        ? part.name()
        : !part.number().isBlank() ? part.number() : part.id();
  }

  /** Marks of instruments whose calibration was due before the day of the record. */
  Set<String> overdue() {
    Set<String> marks = new TreeSet<>();
    String day = record.titleBlock().date();
    record.instruments().stream()
        .filter(one -> !one.due().isEmpty() && !day.isEmpty() && one.due().compareTo(day) < 0)
        .forEach(one -> marks.add(one.id()));
    return marks;
  }

  /** A value that a figure or one of its stations has; missing where it has none. */
  static JsonNode worst(JsonNode figure) {
    JsonNode elements = figure.path("elements");
    return elements.isEmpty()
        ? MissingNode.getInstance()
        : elements.path(figure.path("worstElement").asInt(-1));
  }
}
