package endfloat.http;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.http.live.LiveDesk;
import endfloat.http.live.LiveSheet;
import endfloat.record.Cell;
import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.RecordId;
import endfloat.review.TableInto;
import endfloat.review.TableTaken;
import endfloat.sheet.Answer;
import endfloat.table.DecimalMark;
import endfloat.table.FieldKind;
import endfloat.table.Offence;
import endfloat.table.ReadTable;
import endfloat.table.ReadTable.ReadColumn;
import endfloat.table.TableAsked;
import endfloat.table.WorkbookReader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * A file taken into a table: first what is understood of it, and only when that is taken one edit
 * of the sheet.
 */
final class TableInRoutes {
  private static final List<String> ENCODINGS =
      List.of("UTF-8", "UTF-16", "ISO-8859-1", "windows-1252");

  /** Values shown of each column. */
  private static final int FIRST = 5;

  private final LiveDesk desk;

  TableInRoutes(LiveDesk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.post("/api/records/{id}/tables/{cell}/preview", this::preview);
    routes.post("/api/records/{id}/tables/{cell}/take", this::take);
  }

  /** A file as it was read. */
  private record Sent(TableTaken taken, boolean isWorkbook, List<String> sheets, String sheet) {
    ReadTable read() {
      return taken.read();
    }
  }

  private void preview(Context ctx) throws IOException {
    Answers.json(ctx, view(sent(ctx), cell(ctx, sheet(ctx))));
  }

  private void take(Context ctx) throws IOException {
    Sent sent = sent(ctx);
    LiveSheet sheet = sheet(ctx);
    Cell cell = cell(ctx, sheet);
    if (!sent.read().isWhole()) {
      ctx.status(422);
      Answers.json(ctx, view(sent, cell));
      return;
    }
    Change change =
        "append".equals(ctx.formParam("to"))
            ? TableInto.appending(cell, sent.taken())
                .orElseThrow(
                    () ->
                        new RequestRefusedException(
                            422,
                            "The columns of the file are not those of the table.",
                            "Take it in in place of the rows that stand, or correct its heads."))
            : TableInto.replacing(cell, sent.taken());
    Answer answer =
        sheet.edit(new Edit(UUID.randomUUID().toString(), "", "", "", Long.MAX_VALUE, change));
    if (answer instanceof Answer.Refused refused) {
      throw new RequestRefusedException(409, refused.reason(), refused.wayOut());
    }
    Answers.json(ctx, JsonNodeFactory.instance.objectNode().put("rows", sent.read().rows()));
  }

  private LiveSheet sheet(Context ctx) throws IOException {
    return desk.with(new RecordId(ctx.pathParam("id")), open -> open);
  }

  private static Cell cell(Context ctx, LiveSheet sheet) {
    return sheet
        .sheet()
        .snapshot()
        .record()
        .cell(ctx.pathParam("cell"))
        .filter(cell -> cell.kind().equals("table"))
        .orElseThrow(
            () ->
                new RequestRefusedException(
                    404, "There is no such table in this record.", "Go back to the sheet."));
  }

  private static Sent sent(Context ctx) throws IOException {
    UploadedFile file = ctx.uploadedFile("file");
    if (file == null) {
      throw new RequestRefusedException(
          400, "The request holds no file.", "Choose a CSV, TSV or XLSX file.");
    }
    try (InputStream in = file.content()) {
      byte[] bytes = in.readAllBytes();
      String today = LocalDate.now(ZoneId.systemDefault()).toString();
      boolean workbook = WorkbookReader.isWorkbook(bytes);
      TableAsked asked = asked(ctx);
      return new Sent(
          TableTaken.ofFile(bytes, file.filename(), today, asked),
          workbook,
          workbook ? WorkbookReader.sheets(bytes) : List.of(),
          asked.sheet().orElse(""));
    }
  }

  private static TableAsked asked(Context ctx) {
    String encoding = ctx.formParam("encoding");
    Optional<Charset> charset = Optional.empty();
    if (encoding != null && !encoding.isEmpty()) {
      if (!ENCODINGS.contains(encoding)) {
        throw new RequestRefusedException(
            400, "'" + encoding + "' is no encoding read here.", "Save the file as UTF-8.");
      }
      charset = Optional.of(Charset.forName(encoding));
    }
    Map<String, FieldKind> kinds = new HashMap<>();
    for (String said : ctx.formParams("kind")) {
      int split = said.lastIndexOf('=');
      for (FieldKind kind : FieldKind.values()) {
        if (split > 0 && kind.word().equals(said.substring(split + 1).toLowerCase(Locale.ROOT))) {
          kinds.put(said.substring(0, split), kind);
        }
      }
    }
    String sheet = ctx.formParam("sheet");
    return new TableAsked(
            "comma".equals(ctx.formParam("decimal")) ? DecimalMark.COMMA : DecimalMark.POINT,
            Optional.empty(),
            charset,
            Optional.empty(),
            kinds)
        .ofSheet(sheet == null ? "" : sheet);
  }

  /** {@code {rows, columns, problems, more, notices, appends, workbook, sheets, sheet}}. */
  private static ObjectNode view(Sent sent, Cell cell) {
    ReadTable read = sent.read();
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    view.put("rows", read.rows()).put("workbook", sent.isWorkbook());
    sent.sheets().forEach(view.put("sheet", sent.sheet()).putArray("sheets")::add);
    ArrayNode columns = view.putArray("columns");
    for (ReadColumn column : read.columns()) {
      ObjectNode one = columns.addObject();
      one.put("head", column.head()).put("written", column.written()).put("unit", column.unit());
      one.put("kind", column.kind().word()).put("missing", column.missing());
      ArrayNode first = one.putArray("first");
      if (read.isWhole()) {
        column.texts().stream().limit(FIRST).forEach(first::add);
      }
    }
    ArrayNode problems = view.putArray("problems");
    for (Offence offence : read.problems()) {
      problems
          .addObject()
          .put("row", offence.row())
          .put("column", offence.column())
          .put("head", offence.head())
          .put("message", offence.message());
    }
    ArrayNode notices = view.putArray("notices");
    read.notices().forEach(notices::add);
    view.put("more", read.more());
    return view.put("appends", read.isWhole() && TableInto.appends(cell, read));
  }
}
