package endfloat.http.live;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.CellRunner;
import endfloat.engine.HeavyWork;
import endfloat.engine.ProgramRunner;
import endfloat.http.view.SheetView;
import endfloat.record.Cell;
import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.EditRefusedException;
import endfloat.record.InvestigationRecord;
import endfloat.review.Results;
import endfloat.sheet.Answer;
import endfloat.sheet.DiskConflict;
import endfloat.sheet.OpenSheet;
import endfloat.sheet.Presence;
import endfloat.sheet.SheetChange;
import endfloat.sheet.SheetListener;
import endfloat.sheet.Snapshot;
import endfloat.sheet.ValueRename;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;

/**
 * One open record with its figures and the pages that show it.
 *
 * <p>Two locks, never held the wrong way round: that of {@link OpenSheet} may be held while the own
 * one is taken (a save asks for results), so nothing here calls the sheet under the own lock.
 */
public final class LiveSheet implements SheetListener, AutoCloseable {
  private final TurnOfEdit turn;
  private final OpenSheet sheet;
  private final SheetView view;
  private final SlowWork slowWork;
  private final ChartWork chartWork;
  private boolean closing;
  private final Map<String, Page> pages = new LinkedHashMap<>();
  private List<Presence> present = List.of();
  private Optional<DiskConflict> conflict;

  private LiveSheet(TurnOfEdit turn, OpenSheet sheet, Executor slow, Executor charts) {
    this.turn = turn;
    this.sheet = sheet;
    this.slowWork = new SlowWork(slow, this::furtherOn, this::finished);
    this.chartWork = new ChartWork(charts, this::drawCharts);
    synchronized (this) {
      // What is told from here on waits until the view stands.
      Snapshot now = sheet.listen(this);
      this.view = new SheetView(now);
      this.conflict = now.conflict();
      slowWork.begin(view.takeHeavyWork());
    }
    sheet.saveResultsOf(this::results);
  }

  /** How a sheet is opened; the executor must run its listeners. */
  @FunctionalInterface
  public interface Opening {
    OpenSheet open(Executor listening) throws IOException;
  }

  /**
   * Opens a sheet and computes its figures.
   *
   * @param slow runs the heavy calculations
   * @param charts draws the charts, one after another
   */
  public static LiveSheet open(Opening opening, Executor slow, Executor charts) throws IOException {
    TurnOfEdit turn = new TurnOfEdit();
    return new LiveSheet(turn, opening.open(turn), slow, charts);
  }

  /** The sheet itself. */
  public OpenSheet sheet() {
    return sheet;
  }

  /** The whole view, as {@code GET .../sheet} gives it. */
  public synchronized ObjectNode whole() {
    return view.whole();
  }

  /** Shows the sheet to one more page: the whole of it now, every change from now on. */
  void join(Page page) {
    synchronized (this) {
      page.send(view.whole());
      if (!present.isEmpty()) {
        page.send(presentMessage());
      }
      conflict.ifPresent(found -> page.send(conflictMessage(found)));
      pages.put(page.id(), page);
    }
    sheet.here(new Presence(page.id(), "", ""));
  }

  /** A page is closed; a newer one of the same id stays. */
  void leave(Page page) {
    boolean gone;
    synchronized (this) {
      gone = pages.remove(page.id(), page);
    }
    if (gone) {
      sheet.gone(page.id());
    }
  }

  synchronized boolean isWatched() {
    return !pages.isEmpty();
  }

  /** Whether figures are still to come, which would not be saved if it were closed now. */
  synchronized boolean isWorking() {
    return view.isWorking();
  }

  /** Makes an edit, tells its author what became of it, then tells all pages what changed. */
  void edit(Page page, Edit edit) {
    turn.run(() -> sheet.apply(edit), answer -> page.send(answered(answer)));
  }

  /** Makes an edit that did not come over the line of a page, and tells all pages what changed. */
  public Answer edit(Edit edit) {
    Answer[] made = new Answer[1];
    turn.run(() -> sheet.apply(edit), answer -> made[0] = answer);
    return made[0];
  }

  /** Undo and redo have no place of their own: they take back whatever was last. */
  void step(Page page, String id, Change change) {
    edit(page, new Edit(id, "", page.id(), "", Long.MAX_VALUE, change));
  }

  /**
   * Gives a value another name wherever it is named.
   *
   * @throws endfloat.record.EditRefusedException if it cannot have that name
   */
  void rename(Page page, String id, String from, String to) {
    Snapshot now = sheet.snapshot();
    Change change = ValueRename.of(now.record(), from, to);
    edit(page, new Edit(id, "", page.id(), "", now.revision(), change));
  }

  void here(Page page, String author, String cell) {
    turn.run(
        () -> {
          sheet.here(new Presence(page.id(), author, cell));
          return page;
        },
        any -> {});
  }

  /** Answers a question about the sheet as it is now. */
  public <T> T ask(Function<SheetView, T> question) {
    chartWork.giveWay();
    synchronized (this) {
      chartWork.hasGivenWay();
      return question.apply(view);
    }
  }

  /** The same for what is no message yet. */
  synchronized <T> T asked(Function<SheetView, T> question) {
    return question.apply(view);
  }

  private static ObjectNode answered(Answer answer) {
    if (answer instanceof Answer.Refused refused) {
      ObjectNode message = Page.message("refused").put("edit", refused.edit());
      message.put("reason", refused.reason()).put("wayOut", refused.wayOut());
      refused.mine().ifPresent(text -> message.put("mine", text));
      refused.theirs().ifPresent(text -> message.put("theirs", text));
      return message.put("revision", refused.revision());
    }
    Answer.Kept kept = (Answer.Kept) answer;
    return Page.message("kept").put("edit", kept.edit()).put("revision", kept.revision());
  }

  /**
   * While figures are being worked out there are none to save. The last save waits for them, but
   * for those of another process: the program is ending, and the next opening works them out.
   */
  private Optional<ObjectNode> results(InvestigationRecord record, long revision) {
    synchronized (this) {
      boolean working = view.isWorking();
      if (!working || !closing) {
        return revision == view.revision() && !working
            ? Optional.of(view.results())
            : Optional.empty();
      }
      boolean elsewhere = view.figures().graph().isWorkingElsewhere();
      view.figures().graph().cancelHeavyWork();
      if (elsewhere) {
        return Optional.empty();
      }
    }
    return Optional.of(Results.recomputed(record));
  }

  /**
   * Runs a java clause: its source is approved by that, if it is the one that was read.
   *
   * @param hash of the source that the page has shown
   * @throws EditRefusedException if the clause has another source by now
   */
  void runJava(String clause, String hash) {
    CellRunner runner = ProgramRunner.get();
    synchronized (this) {
      String source =
          view.record()
              .cell(clause)
              .filter(cell -> cell.kind().equals("java"))
              .map(Cell::text)
              .orElse("");
      if (source.isEmpty() || !runner.hash(source).equals(hash)) {
        throw new EditRefusedException(
            "this is no longer the source that was shown", "read it again, then press Run");
      }
      runner.approve(source);
      tell(view.again(clause));
      slowWork.begin(view.takeHeavyWork());
    }
  }

  /** Ends the run of a java clause. */
  void stopJava(String clause) {
    slowWork.stop(clause + ".run");
  }

  private synchronized void furtherOn(HeavyWork work) {
    tell(view.progress(work));
  }

  private void finished(HeavyWork work) {
    synchronized (this) {
      if (closing) {
        return;
      }
      tell(view.finished(work));
      follow();
      if (view.isWorking()) {
        return;
      }
    }
    sheet.resultsReady();
  }

  @Override
  public void changed(SheetChange change) {
    chartWork.giveWay();
    synchronized (this) {
      chartWork.hasGivenWay();
      tell(view.changed(change));
      follow();
    }
  }

  /** What has been told is not all: the rest takes its time. */
  private void follow() {
    slowWork.begin(view.takeHeavyWork());
    if (view.isBehindWithCharts()) {
      chartWork.ask();
    }
  }

  private synchronized void drawCharts(Runnable between) {
    if (!closing && view.isBehindWithCharts()) {
      tell(view.drawCharts(between));
    }
  }

  @Override
  public synchronized void replaced(Snapshot now) {
    conflict = now.conflict();
    view.replace(now);
    tell(view.whole());
    slowWork.begin(view.takeHeavyWork());
  }

  @Override
  public synchronized void present(List<Presence> all) {
    present = all;
    tell(presentMessage());
  }

  @Override
  public synchronized void conflict(DiskConflict found) {
    conflict = Optional.of(found);
    tell(conflictMessage(found));
  }

  @Override
  public synchronized void notice(String text) {
    tell(Page.message("notice").put("text", text));
  }

  private ObjectNode presentMessage() {
    ObjectNode message = Page.message("present");
    ArrayNode people = message.putArray("people");
    for (Presence one : present) {
      people
          .addObject()
          .put("client", one.client())
          .put("author", one.author())
          .put("cell", one.cell());
    }
    return message;
  }

  private static ObjectNode conflictMessage(DiskConflict found) {
    return Page.message("conflict")
        .put("reason", found.reason())
        .put("canTakeTheirs", found.theirs().isPresent());
  }

  private void tell(ObjectNode message) {
    String text = message.toString();
    for (Page page : List.copyOf(pages.values())) {
      page.out().accept(text);
    }
  }

  @Override
  public void close() throws IOException {
    synchronized (this) {
      closing = true;
    }
    sheet.close();
    synchronized (this) {
      view.figures().graph().cancelHeavyWork();
    }
  }
}
