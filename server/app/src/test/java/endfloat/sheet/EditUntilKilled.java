package endfloat.sheet;

import com.fasterxml.jackson.databind.node.TextNode;
import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.RecordId;
import endfloat.record.Shelf;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Executors;

/**
 * Edits the record {@code mesh} of a shelf from two threads until the process is killed. Says
 * {@code sent ID CELL} before an edit and {@code kept ID REVISION} once it is acknowledged; the
 * text put is the id. Started by {@link KillAtRandom}.
 */
final class EditUntilKilled {
  private EditUntilKilled() {}

  public static void main(String[] args) throws InterruptedException, IOException {
    Shelf shelf = Shelf.open(Path.of(args[0]));
    String life = args[1];
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.US_ASCII);
    OpenSheet sheet =
        OpenSheet.open(
            shelf.files(),
            shelf.place(new RecordId("mesh")),
            Clock.systemUTC(),
            Runnable::run,
            Optional.of(Executors.newSingleThreadScheduledExecutor()));
    Thread[] pages = new Thread[2];
    for (int p = 0; p < pages.length; p++) {
      String page = life + (char) ('x' + p);
      String cell = p == 0 ? "a" : "b";
      pages[p] = new Thread(() -> edit(sheet, out, page, cell));
      pages[p].start();
    }
    for (Thread page : pages) {
      page.join();
    }
  }

  private static void edit(OpenSheet sheet, PrintStream out, String page, String own) {
    Random random = new Random(page.hashCode());
    for (int i = 0; i < 1_000_000; i++) {
      String id = page + "-" + i;
      String cell = random.nextInt(5) == 0 ? "a" : own;
      out.println("sent " + id + " " + cell);
      Change change = Change.put(cell, "/text", new TextNode(id));
      Answer answer = sheet.apply(new Edit(id, page, page, "", Long.MAX_VALUE, change));
      if (answer instanceof Answer.Kept kept) {
        out.println("kept " + id + " " + kept.revision());
      }
      if (random.nextInt(25) == 0) {
        try {
          sheet.save();
        } catch (IOException e) {
          throw new IllegalStateException(e);
        }
      }
    }
  }
}
