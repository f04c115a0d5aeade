package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.catalogue.LibraryVersion;
import endfloat.engine.CellRunner;
import endfloat.engine.GivesHead;
import endfloat.engine.JavaRun;
import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How a java clause stands: what it reads and gives, what it showed, and why it does not run. */
final class JavaBoard {
  private JavaBoard() {}

  static Optional<ObjectNode> of(Cell cell, ValueGraph graph) {
    Optional<JavaRun> found = graph.javaRun(cell.id());
    if (found.isEmpty()) {
      return Optional.empty();
    }
    JavaRun run = found.get();
    CellRunner runner = graph.cellRunner();
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    boolean approved = cell.text().isBlank() || runner.refusal(cell.text()).isEmpty();
    view.put("run", cell.text().isBlank() ? "empty" : approved ? word(run) : "not approved");
    view.put("hash", runner.hash(cell.text())).put("limits", runner.limits());
    view.put(
        "library", "Endfloat " + LibraryVersion.text() + ", Java " + Runtime.version().feature());
    run.reads().forEach(view.putArray("reads")::add);
    ArrayNode gives = view.putArray("gives");
    GivesHead.of(cell.source().path("gives").asText(""))
        .gives()
        .forEach(
            give ->
                gives
                    .addObject()
                    .put("name", give.name())
                    .put("form", give.form().name().toLowerCase(Locale.ROOT)));
    run.ran()
        .ifPresent(
            ran -> {
              view.put("note", ran.carried());
              view.put("took", took(ran.milliseconds()));
              shown(ran.shown(), view.putArray("shown"));
            });
    return Optional.of(view);
  }

  private static String took(double milliseconds) {
    return milliseconds < 1_000
        ? String.format(Locale.ROOT, "%.0f ms", milliseconds)
        : String.format(Locale.ROOT, "%.1f s", milliseconds / 1_000);
  }

  private static String word(JavaRun run) {
    return switch (run.state()) {
      case FRESH -> "done";
      case WORKING -> "running";
      case WAITING -> "waiting";
      case ERROR -> "failed";
    };
  }

  private static void shown(List<CellRunner.Shown> all, ArrayNode into) {
    for (CellRunner.Shown one : all) {
      ObjectNode entry = into.addObject().put("sort", one.sort());
      if (one.sort().equals("table")) {
        one.heads().forEach(entry.putArray("heads")::add);
        ArrayNode rows = entry.putArray("rows");
        one.rows().forEach(row -> row.forEach(rows.addArray()::add));
      } else {
        entry.put("text", one.text());
      }
    }
  }
}
