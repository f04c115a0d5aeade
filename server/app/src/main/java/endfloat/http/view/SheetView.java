package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.sheet.SheetChange;
import endfloat.sheet.Snapshot;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** One sheet as its pages see it, and what they are told when it changes. Not safe for threads. */
public final class SheetView {
  /** The blocks of a record that stand beside its clauses. */
  private static final List<String> BLOCKS =
      List.of("title_block", "settings", "parts", "instruments");

  private InvestigationRecord record;
  private long revision;
  private long base;
  private Map<String, Long> revisions;
  private boolean canUndo;
  private boolean canRedo;
  private List<String> notices;

  /**
   * @param now the sheet as it was opened
   */
  public SheetView(Snapshot now) {
    replace(now);
  }

  /** Takes another record in place of this one. */
  public void replace(Snapshot now) {
    record = now.record();
    revision = now.revision();
    base = now.base();
    revisions = new HashMap<>(now.revisions());
    canUndo = now.canUndo();
    canRedo = now.canRedo();
    notices = now.notices();
  }

  /** The revision that the view shows. */
  public long revision() {
    return revision;
  }

  /** All of it. */
  public ObjectNode whole() {
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "sheet");
    message.put("revision", revision);
    blocks(message.putObject("record"), Set.copyOf(BLOCKS));
    message.set(
        "cells",
        ClauseOrder.filled(ClauseOrder.of(record), id -> cell(record.cell(id).orElseThrow())));
    message.putObject("figures");
    message.putObject("summary");
    ArrayNode found = message.putArray("notices");
    notices.forEach(found::add);
    return message.put("canUndo", canUndo).put("canRedo", canRedo);
  }

  /** What one kept edit changed. */
  public ObjectNode changed(SheetChange change) {
    record = change.record();
    revision = change.revision();
    canUndo = change.canUndo();
    canRedo = change.canRedo();
    change.cells().forEach(id -> revisions.put(id, revision));
    change.removed().forEach(revisions::remove);
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "changed");
    message.put("revision", revision);
    message.put("author", change.edit().author()).put("page", change.edit().client());
    message.put("edit", change.edit().id());
    ArrayNode cells = message.putArray("cells");
    for (String id : change.cells()) {
      record.cell(id).ifPresent(cell -> cells.add(cell(cell)));
    }
    ArrayNode removed = message.putArray("removed");
    change.removed().forEach(removed::add);
    if (change.order()) {
      message.set("order", ClauseOrder.of(record));
    }
    if (!change.blocks().isEmpty()) {
      blocks(message.putObject("record"), change.blocks());
    }
    message.putObject("figures");
    message.putObject("summary");
    return message.put("canUndo", canUndo).put("canRedo", canRedo);
  }

  private void blocks(ObjectNode into, Set<String> wanted) {
    for (String block : BLOCKS) {
      if (wanted.contains(block) && record.tree().has(block)) {
        into.set(block, record.tree().get(block));
      }
    }
  }

  private ObjectNode cell(Cell cell) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    view.put("id", cell.id()).put("number", cell.number()).put("kind", cell.kind());
    view.put("title", cell.title()).put("revision", revisions.getOrDefault(cell.id(), base));
    view.set("source", source(cell));
    return view;
  }

  /**
   * The clause as the file has it; a section without the clauses in it, which have views of their
   * own.
   */
  private static ObjectNode source(Cell cell) {
    if (!cell.isSection()) {
      return cell.source();
    }
    ObjectNode alone = JsonNodeFactory.instance.objectNode();
    cell.source()
        .properties()
        .forEach(
            field -> {
              if (!field.getKey().equals("cells")) {
                alone.set(field.getKey(), field.getValue());
              }
            });
    return alone;
  }

  /** What would be computed if a working read so; nothing is kept. */
  public ObjectNode preview(String cell, String text) {
    return JsonNodeFactory.instance.objectNode().put("type", "preview").put("cell", cell);
  }

  /** What may be typed at a place. */
  public ObjectNode completions(String cell, String text, int offset) {
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "completions");
    message.put("from", offset).putArray("options");
    return message;
  }

  /** What a name is. */
  public ObjectNode hover(String cell, String name) {
    return JsonNodeFactory.instance.objectNode().put("type", "hover").put("name", name);
  }

  /** Where a figure comes from, and what needs it. */
  public ObjectNode trace(String name) {
    return JsonNodeFactory.instance.objectNode().put("type", "trace").put("name", name);
  }

  /** The results that are saved with the record. */
  public ObjectNode results() {
    return JsonNodeFactory.instance.objectNode();
  }
}
