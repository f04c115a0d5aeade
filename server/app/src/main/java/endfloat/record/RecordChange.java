package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Makes a change in a record: what comes out passes the schema, or the change is refused. */
public final class RecordChange {
  /** Fields of a record that SET may change, with the schema definition of their elements. */
  private static final List<String> BLOCKS =
      List.of("title_block", "settings", "parts", "instruments", "materials");

  private static final int MOST_SECTIONS_DEEP = 8;

  private RecordChange() {}

  /**
   * Makes one change.
   *
   * @throws EditRefusedException if it cannot be made; the record is as it was
   */
  public static Applied apply(InvestigationRecord record, Change change) {
    try {
      return switch (change.op()) {
        case PUT -> put(record, change);
        case ADD -> add(record, change);
        case MOVE -> move(record, change);
        case DELETE -> delete(record, change);
        case SET -> set(record, change);
        case ROWS -> rows(record, change);
        case TOGETHER -> together(record, change);
        case UNDO, REDO -> throw new IllegalArgumentException("the sheet knows what was done");
      };
    } catch (RecordException e) {
      throw new EditRefusedException(e.getMessage(), "correct it and try again");
    }
  }

  private static Applied put(InvestigationRecord record, Change change) {
    Cell cell = existing(record, change.cell());
    String first = Pointer.steps(change.at()).get(0);
    if (first.equals("id") || first.equals("cells")) {
      throw new EditRefusedException(
          "the " + first + " of a clause cannot be typed over", "add, move or delete the clause");
    }
    Pointer.Put put = Pointer.put(cell.source(), change.at(), change.value());
    ObjectNode changed = (ObjectNode) put.tree();
    if (cell.isSection() != Texts.text(changed, "kind").equals("section")) {
      throw new EditRefusedException(
          "a section cannot become another kind of clause, nor the other way round",
          "add a new clause and move or copy what it should hold");
    }
    if (cell.kind().equals("table") && first.equals("columns")) {
      Optional<ArrayNode> rows =
          RowsOfColumns.after(
              changed.path("rows"), cell.source().path("columns"), changed.path("columns"));
      if (rows.isPresent()) {
        return columns(record, cell, withRows(changed, rows.get()));
      }
    }
    ObjectNode tree = withCell(record, cell, any -> changed);
    check(record, cell.id(), cell.kind().equals("table") ? touchedRow(changed, put) : changed);
    return new Applied(
        new InvestigationRecord(tree),
        Change.put(cell.id(), put.backAt(), put.backValue()),
        Set.of(cell.id()),
        Set.of(),
        false,
        Set.of(),
        put.touched());
  }

  /** Columns with which the texts of every row move. */
  private static Applied columns(InvestigationRecord record, Cell cell, ObjectNode changed) {
    check(record, cell.id(), changed);
    JsonNode rows = cell.source().path("rows");
    Change back =
        Change.together(
            List.of(
                Change.put(cell.id(), "/columns", cell.source().get("columns")),
                Change.rows(cell.id(), 0, rows.size(), (ArrayNode) rows)));
    return new Applied(
        new InvestigationRecord(withCell(record, cell, any -> changed)),
        back,
        Set.of(cell.id()),
        Set.of(),
        false,
        Set.of(),
        "/columns");
  }

  /**
   * A table as far as a change inside one row has to be checked: of a hundred thousand rows the
   * others stand as they stood.
   */
  private static ObjectNode touchedRow(ObjectNode changed, Pointer.Put put) {
    List<String> steps = Pointer.steps(put.touched());
    if (!steps.get(0).equals("rows") || steps.size() < 2) {
      return changed;
    }
    return withRows(
        changed,
        JsonNodeFactory.instance
            .arrayNode()
            .add(changed.path("rows").get(Integer.parseInt(steps.get(1)))));
  }

  private static ObjectNode withRows(ObjectNode cell, ArrayNode rows) {
    ObjectNode copy = Trees.shallow(cell);
    copy.set("rows", rows);
    return copy;
  }

  private static Applied rows(InvestigationRecord record, Change change) {
    Cell cell = existing(record, change.cell());
    if (!cell.kind().equals("table")) {
      throw new EditRefusedException("this clause is no table", "edit its fields");
    }
    RowSplice splice = RowSplice.of(change.value());
    JsonNode rows = cell.source().path("rows");
    RowSplice back = splice.back(rows);
    check(record, cell.id(), withRows(cell.source(), splice.insert()));
    ObjectNode changed = withRows(cell.source(), splice.applied(rows));
    return new Applied(
        new InvestigationRecord(withCell(record, cell, any -> changed)),
        Change.rows(cell.id(), back.from(), back.remove(), back.insert()),
        Set.of(cell.id()),
        Set.of(),
        false,
        Set.of(),
        "/rows");
  }

  private static Applied add(InvestigationRecord record, Change change) {
    if (!(change.value() instanceof ObjectNode given)) {
      throw new EditRefusedException("the new clause is missing", "send the whole clause");
    }
    ObjectNode cell = Trees.shallow(given);
    cell.put("id", change.cell());
    Set<String> ids = ids(cell, new LinkedHashSet<>());
    for (String id : ids) {
      if (record.cell(id).isPresent()) {
        throw new EditRefusedException(
            "there is a clause with the id " + id + " already", "give the new clause another id");
      }
    }
    refuseDeep(record, change.parent(), cell);
    RecordSchema.checkNew(cell);
    ObjectNode tree = inserted(record, change.parent(), change.after(), cell);
    return new Applied(
        new InvestigationRecord(tree),
        Change.delete(change.cell()),
        Set.copyOf(ids),
        Set.of(),
        true,
        Set.of(),
        "");
  }

  private static Applied delete(InvestigationRecord record, Change change) {
    Cell cell = existing(record, change.cell());
    Change back = Change.add(cell.id(), cell.source(), cell.parent(), before(record, cell));
    return new Applied(
        new InvestigationRecord(without(record, cell)),
        back,
        Set.of(),
        Set.copyOf(ids(cell.source(), new LinkedHashSet<>())),
        true,
        Set.of(),
        "");
  }

  private static Applied move(InvestigationRecord record, Change change) {
    Cell cell = existing(record, change.cell());
    if (ids(cell.source(), new LinkedHashSet<>()).contains(change.parent())) {
      throw new EditRefusedException(
          "a section cannot be moved into itself", "choose a place outside it");
    }
    if (cell.id().equals(change.after())) {
      throw new EditRefusedException("a clause cannot follow itself", "choose another place");
    }
    refuseDeep(record, change.parent(), cell.source());
    Change back = Change.move(cell.id(), cell.parent(), before(record, cell));
    InvestigationRecord between = new InvestigationRecord(without(record, cell));
    ObjectNode tree = inserted(between, change.parent(), change.after(), cell.source());
    return new Applied(
        new InvestigationRecord(tree), back, Set.of(cell.id()), Set.of(), true, Set.of(), "");
  }

  private static Applied set(InvestigationRecord record, Change change) {
    List<String> steps = Pointer.steps(change.at());
    String block = steps.get(0);
    if (!BLOCKS.contains(block)) {
      throw new EditRefusedException(
          "the record's '" + block + "' cannot be set by an edit",
          "set title_block, settings, parts, instruments or materials");
    }
    ObjectNode from = record.tree();
    if (!from.has(block) && steps.size() > 1) {
      boolean list = !block.equals("title_block") && !block.equals("settings");
      from = Trees.shallow(from);
      from.set(
          block,
          list ? JsonNodeFactory.instance.arrayNode() : JsonNodeFactory.instance.objectNode());
    }
    Pointer.Put put = Pointer.put(from, change.at(), change.value());
    ObjectNode tree = (ObjectNode) put.tree();
    RecordSchema.checkBlocks(tree);
    return new Applied(
        new InvestigationRecord(tree),
        Change.set(put.backAt(), put.backValue()),
        Set.of(),
        Set.of(),
        false,
        Set.of(block),
        put.touched());
  }

  private static Applied together(InvestigationRecord record, Change change) {
    InvestigationRecord now = record;
    List<Change> back = new ArrayList<>();
    Set<String> cells = new LinkedHashSet<>();
    for (Change part : change.parts()) {
      Applied one = part.op() == Change.Op.ROWS ? rows(now, part) : put(now, part);
      now = one.record();
      // a change of columns is taken back by several
      back.addAll(0, one.back().parts());
      cells.addAll(one.cells());
    }
    if (cells.isEmpty()) {
      throw new EditRefusedException("there is nothing to change", "send at least one change");
    }
    return new Applied(
        now, Change.together(back), Set.copyOf(cells), Set.of(), false, Set.of(), "");
  }

  private static Cell existing(InvestigationRecord record, String id) {
    return record
        .cell(id)
        .orElseThrow(
            () ->
                new EditRefusedException(
                    "this clause is no longer in the record", "undo brings a deleted clause back"));
  }

  private static void check(InvestigationRecord record, String id, ObjectNode changed) {
    ObjectNode alone = changed;
    if (changed.path("cells").size() > 0) {
      alone = Trees.shallow(changed);
      alone.remove("cells");
    }
    RecordSchema.checkCell(record.tree(), pointerOf(record, id), alone, changed);
  }

  /** JSON Pointer of a clause in the record. */
  private static String pointerOf(InvestigationRecord record, String id) {
    Cell cell = record.cell(id).orElseThrow();
    String above = cell.parent().isEmpty() ? "" : pointerOf(record, cell.parent());
    return above + "/cells/" + index(siblings(record, cell.parent()), id);
  }

  private static JsonNode siblings(InvestigationRecord record, String parent) {
    return parent.isEmpty()
        ? record.tree().path("cells")
        : existing(record, parent).source().path("cells");
  }

  private static int index(JsonNode siblings, String id) {
    int index = 0;
    for (JsonNode one : siblings) {
      if (Texts.text(one, "id").equals(id)) {
        return index;
      }
      index++;
    }
    return -1;
  }

  /** Id of the clause before it under the same section, or empty. */
  private static String before(InvestigationRecord record, Cell cell) {
    JsonNode siblings = siblings(record, cell.parent());
    int index = index(siblings, cell.id());
    return index == 0 ? "" : Texts.text(siblings.get(index - 1), "id");
  }

  private static ObjectNode without(InvestigationRecord record, Cell cell) {
    int index = index(siblings(record, cell.parent()), cell.id());
    return withSiblings(
        record,
        cell.parent(),
        siblings -> {
          siblings.remove(index);
          return siblings;
        });
  }

  private static ObjectNode inserted(
      InvestigationRecord record, String parent, String after, ObjectNode cell) {
    if (!parent.isEmpty() && !existing(record, parent).isSection()) {
      throw new EditRefusedException(
          "a clause can stand in a section only", "choose a section, or the top level");
    }
    JsonNode siblings = siblings(record, parent);
    int before = after == null ? -1 : index(siblings, after);
    // a clause that was deleted meanwhile cannot be followed: the new one then stands last
    int place = "".equals(after) ? 0 : before < 0 ? siblings.size() : before + 1;
    return withSiblings(
        record,
        parent,
        list -> {
          list.insert(place, cell);
          return list;
        });
  }

  private static ObjectNode withSiblings(
      InvestigationRecord record, String parent, UnaryOperator<ArrayNode> change) {
    UnaryOperator<ObjectNode> inHolder =
        holder -> {
          ObjectNode copy = Trees.shallow(holder);
          copy.set("cells", change.apply(Trees.shallowList(holder.path("cells"))));
          return copy;
        };
    return parent.isEmpty()
        ? inHolder.apply(record.tree())
        : withCell(record, existing(record, parent), inHolder);
  }

  private static ObjectNode withCell(
      InvestigationRecord record, Cell cell, UnaryOperator<ObjectNode> change) {
    int index = index(siblings(record, cell.parent()), cell.id());
    return withSiblings(
        record,
        cell.parent(),
        siblings -> {
          siblings.set(index, change.apply(cell.source()));
          return siblings;
        });
  }

  private static Set<String> ids(JsonNode cell, Set<String> into) {
    if (!into.add(Texts.text(cell, "id"))) {
      throw new EditRefusedException(
          "two clauses would have the id " + Texts.text(cell, "id"), "give each its own id");
    }
    cell.path("cells").forEach(child -> ids(child, into));
    return into;
  }

  private static void refuseDeep(InvestigationRecord record, String parent, JsonNode cell) {
    int above = 0;
    for (String at = parent; !at.isEmpty(); at = existing(record, at).parent()) {
      above++;
    }
    if (above + levels(cell) > MOST_SECTIONS_DEEP) {
      throw new EditRefusedException(
          "sections nest at most " + (MOST_SECTIONS_DEEP - 1) + " deep",
          "put the clause one level higher");
    }
  }

  private static int levels(JsonNode cell) {
    int below = 0;
    for (JsonNode child : cell.path("cells")) {
      below = Math.max(below, levels(child));
    }
    return below + 1;
  }
}
