package endfloat.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.http.live.LiveDesk;
import endfloat.record.InvestigationRecord;
import endfloat.record.RecordId;
import endfloat.record.Shelf;
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

/** A record run again with the readings of another engine, which come as a CSV file. */
final class RerunRoutes {
  private final Shelf shelf;
  private final LiveDesk desk;

  RerunRoutes(Shelf shelf, LiveDesk desk) {
    this.shelf = shelf;
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.post("/api/records/{id}/rerun", this::rerun);
    routes.exception(RerunRefusedException.class, RerunRoutes::refused);
  }

  private void rerun(Context ctx) throws IOException {
    RecordId id = new RecordId(ctx.pathParam("id"));
    UploadedFile file = ctx.uploadedFile("readings");
    if (file == null) {
      throw new RequestRefusedException(
          400, "The request holds no file of readings.", "Choose a CSV file.");
    }
    InvestigationRecord from = desk.with(id, sheet -> sheet.sheet().snapshot().record());
    Rerun.Done done = Rerun.run(from, readings(ctx, file));
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
          LocalDate.now());
    }
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
