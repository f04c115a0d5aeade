package endfloat.http;

import endfloat.http.live.LiveDesk;
import endfloat.http.live.LiveSheet;
import endfloat.http.view.SheetView;
import endfloat.http.view.TableLines;
import endfloat.http.view.TableRows;
import endfloat.record.Cell;
import endfloat.record.RecordId;
import endfloat.record.TableClause;
import endfloat.record.TableColumn;
import endfloat.record.TableOrder;
import endfloat.review.GroupedTable;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rows of the tables of a record, as they come into view. */
final class TableRoutes {
  /** Lines told at once. */
  private static final int MOST_LINES = 1_000;

  /** Orders kept, so that a table scrolled through is put in order once. */
  private static final int KEPT = 6;

  private final LiveDesk desk;

  private final Map<Asked, TableLines> lately =
      Collections.synchronizedMap(
          new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Asked, TableLines> eldest) {
              return size() > KEPT;
            }
          });

  /**
   * What was asked for.
   *
   * @param state of the sheet: with another one the rows may be others
   */
  private record Asked(RecordId id, String cell, TableOrder order, Object state) {
    boolean isBefore(Asked other) {
      return id.equals(other.id) && cell.equals(other.cell) && state != other.state;
    }
  }

  TableRoutes(LiveDesk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/api/records/{id}/tables/{cell}.csv", this::csv);
    routes.get("/api/records/{id}/tables/{cell}/groups", this::groups);
    routes.get("/api/records/{id}/tables/{cell}", this::rows);
  }

  private void rows(Context ctx) throws IOException {
    int from = number(ctx, "from", 0, Integer.MAX_VALUE);
    int count = number(ctx, "count", 200, MOST_LINES);
    Answers.json(ctx, lines(ctx).view(from, count));
  }

  private void csv(Context ctx) throws IOException {
    String file = lines(ctx).csv();
    ctx.header("Content-Disposition", "attachment; filename=\"" + ctx.pathParam("cell") + ".csv\"");
    ctx.contentType("text/csv; charset=utf-8").result(file);
  }

  /** The fields of a clause that sets out the groups of this one; nothing is changed. */
  private void groups(Context ctx) throws IOException {
    TableClause table =
        desk.with(
            new RecordId(ctx.pathParam("id")),
            sheet ->
                sheet
                    .sheet()
                    .snapshot()
                    .record()
                    .cell(ctx.pathParam("cell"))
                    .filter(cell -> cell.kind().equals("table"))
                    .map(Cell::table)
                    .orElseThrow(TableRoutes::none));
    List<String> heads = table.columns().stream().map(TableColumn::head).toList();
    List<String> groups = ctx.queryParams("group");
    if (groups.isEmpty() || !heads.containsAll(groups) || table.name().isBlank()) {
      throw new RequestRefusedException(
          422, "These are no groups of this table.", "Name the table, and group it by a column.");
    }
    List<String> numbers =
        table.columns().stream()
            .filter(column -> column.isNumber() && !groups.contains(column.head()))
            .map(TableColumn::head)
            .toList();
    String filter = ctx.queryParam("filter") == null ? "" : ctx.queryParam("filter");
    Answers.json(ctx, GroupedTable.clause(table, groups, numbers, filter));
  }

  private static RequestRefusedException none() {
    return new RequestRefusedException(
        404, "There is no such table in this record.", "Go back to the sheet.");
  }

  /** The rows in the order asked for; they are put in order and told without holding the sheet. */
  private TableLines lines(Context ctx) throws IOException {
    RecordId id = new RecordId(ctx.pathParam("id"));
    String cell = ctx.pathParam("cell");
    String filter = ctx.queryParam("filter") == null ? "" : ctx.queryParam("filter").strip();
    TableOrder order = new TableOrder(ctx.queryParams("sort"), filter, ctx.queryParams("group"));
    LiveSheet sheet = desk.with(id, open -> open);
    Asked asked = new Asked(id, cell, order, sheet.ask(SheetView::state));
    TableLines known = lately.get(asked);
    if (known != null) {
      return known;
    }
    TableRows rows =
        sheet
            .<Optional<TableRows>>ask(view -> view.questions().rows(cell, filter))
            .orElseThrow(TableRoutes::none);
    TableLines made = TableLines.of(rows, order);
    lately.keySet().removeIf(old -> old.isBefore(asked));
    lately.put(asked, made);
    return made;
  }

  private static int number(Context ctx, String name, int otherwise, int most) {
    String given = ctx.queryParam(name);
    if (given == null || given.isEmpty()) {
      return otherwise;
    }
    if (!given.matches("\\d{1,9}")) {
      throw new RequestRefusedException(
          400, "'" + given + "' is no number of lines.", "Send a whole number.");
    }
    return Math.min(Integer.parseInt(given), most);
  }
}
