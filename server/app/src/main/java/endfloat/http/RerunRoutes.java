package endfloat.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.http.live.LiveDesk;
import endfloat.record.InvestigationRecord;
import endfloat.record.RecordId;
import endfloat.record.Shelf;
import endfloat.review.ReadingsOut;
import endfloat.review.Rerun;
import endfloat.review.RerunRefusedException;
import endfloat.review.Results;
import endfloat.table.DecimalMark;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A record run again with the readings of another engine, which come as a CSV file. */
final class RerunRoutes {
  /** Fields of the title block that are asked for the other engine. */
  private static final List<String> BLOCK =
      List.of("record_number", "engine_serial", "hours_since_overhaul", "prepared");

  private final Shelf shelf;
  private final LiveDesk desk;

  RerunRoutes(Shelf shelf, LiveDesk desk) {
    this.shelf = shelf;
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.post("/api/records/{id}/rerun", this::rerun);
    routes.get("/api/records/{id}/readings.csv", this::form);
    routes.exception(RerunRefusedException.class, RerunRoutes::refused);
  }

  private void rerun(Context ctx) throws IOException {
    RecordId id = new RecordId(ctx.pathParam("id"));
    UploadedFile file = ctx.uploadedFile("readings");
    boolean empty = "none".equals(ctx.formParam("with"));
    if (file == null && !empty) {
      throw new RequestRefusedException(
          400, "The request holds no file of readings.", "Choose a CSV file.");
    }
    InvestigationRecord from = desk.with(id, sheet -> sheet.sheet().snapshot().record());
    Map<String, String> block = block(ctx);
    Rerun.Done done =
        empty
            ? new Rerun.Done(
                Rerun.emptied(from, orEmpty(ctx.formParam("title")), date(ctx), block), List.of())
            : Rerun.run(from, readings(ctx, file), block);
    InvestigationRecord made = done.record().withResults(Results.recomputed(done.record()));
    RecordId next = shelf.add(id.text(), made);
    ObjectNode answer = JsonNodeFactory.instance.objectNode().put("id", next.text());
    ArrayNode notices = answer.putArray("notices");
    done.notices().forEach(notices::add);
    ctx.status(201).header("Location", "/sheet/" + next.text());
    Answers.json(ctx, answer);
  }

  private static Rerun.Readings readings(Context ctx, UploadedFile file) throws IOException {
    try (InputStream in = file.content()) {
      return new Rerun.Readings(
          in.readAllBytes(),
          file.filename(),
          "comma".equals(ctx.formParam("decimal")) ? DecimalMark.COMMA : DecimalMark.POINT,
          orEmpty(ctx.formParam("title")),
          orEmpty(ctx.formParam("serial")),
          date(ctx));
    }
  }

  private static Map<String, String> block(Context ctx) {
    Map<String, String> block = new HashMap<>();
    for (String field : BLOCK) {
      block.put(field, orEmpty(ctx.formParam(field)));
    }
    return block;
  }

  private static LocalDate date(Context ctx) {
    String given = orEmpty(ctx.formParam("date"));
    try {
      return given.isEmpty() ? LocalDate.now(ZoneId.systemDefault()) : LocalDate.parse(given);
    } catch (DateTimeParseException e) {
      throw new RequestRefusedException(
          400, "'" + given + "' is no date.", "Write it as 2026-05-12.");
    }
  }

  /** The form to fill in for the next engine: heads of all readings, nothing taken. */
  private void form(Context ctx) throws IOException {
    RecordId id = new RecordId(ctx.pathParam("id"));
    InvestigationRecord record = desk.with(id, sheet -> sheet.sheet().snapshot().record());
    ctx.header("Content-Disposition", "attachment; filename=\"" + id.text() + ".readings.csv\"");
    ctx.contentType("text/csv; charset=utf-8").result(ReadingsOut.csv(record, false));
  }

  private static String orEmpty(String text) {
    return text == null ? "" : text;
  }

  private static void refused(RerunRefusedException e, Context ctx) {
    ObjectNode answer =
        Failures.json("The readings do not fit the record.", "Correct the file; nothing was made.");
    ArrayNode problems = answer.putArray("problems");
    e.problems().forEach(problems::add);
    ctx.status(422);
    Answers.json(ctx, answer);
  }
}
