package endfloat.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.http.live.LiveDesk;
import endfloat.http.live.LiveSheet;
import endfloat.record.Cell;
import endfloat.record.Edit;
import endfloat.record.InvestigationRecord;
import endfloat.record.RecordException;
import endfloat.record.RecordId;
import endfloat.record.RecordJson;
import endfloat.record.Shelf;
import endfloat.record.TableSource;
import endfloat.review.Fleet;
import endfloat.review.TableInto;
import endfloat.sheet.Answer;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/** A table filled from the other records of the shelf, and read from them again when asked. */
final class FleetRoutes {
  private final Shelf shelf;
  private final LiveDesk desk;

  FleetRoutes(Shelf shelf, LiveDesk desk) {
    this.shelf = shelf;
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/api/records/{id}/fleet", this::offered);
    routes.post("/api/records/{id}/tables/{cell}/fleet", this::fill);
  }

  /** {@code {records: [{id, title, number, engine}], figures: [{name, records}]}}. */
  private void offered(Context ctx) {
    ObjectNode offered = JsonNodeFactory.instance.objectNode();
    ArrayNode records = offered.putArray("records");
    Map<String, Integer> names = new TreeMap<>();
    for (Shelf.Listed entry : shelf.list()) {
      if (entry.record().isEmpty() || entry.name().equals(ctx.pathParam("id"))) {
        continue;
      }
      InvestigationRecord record = entry.record().get();
      records
          .addObject()
          .put("id", entry.name())
          .put("title", record.titleBlock().title())
          .put("number", record.titleBlock().recordNumber())
          .put("engine", record.titleBlock().engineSerial());
      record.savedFigures().stream()
          .map(figure -> figure.path("name").asText())
          .filter(name -> name.indexOf('.') < 0)
          .distinct()
          .forEach(name -> names.merge(name, 1, Integer::sum));
    }
    ArrayNode figures = offered.putArray("figures");
    names.forEach((name, count) -> figures.addObject().put("name", name).put("records", count));
    Answers.json(ctx, offered);
  }

  /** Of {@code {records: [...], of: [...]}}; without them those that the table was read from. */
  private void fill(Context ctx) throws IOException {
    JsonNode wish = RecordJson.read(ctx.bodyAsBytes());
    LiveSheet sheet = desk.with(new RecordId(ctx.pathParam("id")), open -> open);
    Cell cell =
        sheet
            .sheet()
            .snapshot()
            .record()
            .cell(ctx.pathParam("cell"))
            .filter(found -> found.kind().equals("table"))
            .orElseThrow(
                () ->
                    new RequestRefusedException(
                        404, "There is no such table in this record.", "Go back to the sheet."));
    TableSource before = cell.table().from();
    List<String> ids =
        wish.has("records")
            ? texts(wish.path("records"))
            : before.shelf().stream().map(TableSource.OnShelf::record).toList();
    List<String> of = wish.has("of") ? texts(wish.path("of")) : before.of();
    if (ids.isEmpty() || of.isEmpty()) {
      throw new RequestRefusedException(
          422, "No record or no figure is named.", "Choose at least one of each.");
    }
    List<String> notices = new ArrayList<>();
    List<Fleet.Member> members = members(ids, notices);
    String now = Instant.now().truncatedTo(ChronoUnit.SECONDS).toString();
    Fleet.Read read = Fleet.of(members, of, now);
    Answer answer =
        sheet.edit(
            new Edit(
                UUID.randomUUID().toString(),
                "",
                "",
                "",
                Long.MAX_VALUE,
                TableInto.replacing(cell, read)));
    if (answer instanceof Answer.Refused refused) {
      throw new RequestRefusedException(409, refused.reason(), refused.wayOut());
    }
    ObjectNode made = JsonNodeFactory.instance.objectNode().put("rows", members.size());
    ArrayNode said = made.putArray("notices");
    notices.forEach(said::add);
    read.notices().forEach(said::add);
    Answers.json(ctx, made);
  }

  /** The records as they are saved; one that is gone or cannot be read is said and left out. */
  private List<Fleet.Member> members(List<String> ids, List<String> notices) {
    List<Fleet.Member> members = new ArrayList<>();
    for (String id : ids) {
      try {
        byte[] file = shelf.bytes(new RecordId(id));
        members.add(new Fleet.Member(id, InvestigationRecord.read(file)));
      } catch (RecordException e) {
        notices.add(id + ": " + e.getMessage());
      }
    }
    return members;
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(one -> texts.add(one.asText()));
    return texts;
  }
}
