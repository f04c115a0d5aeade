package endfloat.sheet;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import endfloat.record.Change;
import endfloat.record.Edit;
import endfloat.record.InvestigationRecord;
import endfloat.record.RecordId;
import endfloat.record.Shelf;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * How long a durable acknowledgement takes, beside what the disk alone takes for a line of the same
 * length; and how long a record of 2 MB takes to open and to save. Run it by hand: {@code java -cp
 * ... endfloat.sheet.AcknowledgeTiming [FOLDER]}.
 */
final class AcknowledgeTiming {
  private static final int EDITS = 3000;

  private AcknowledgeTiming() {}

  public static void main(String[] args) throws IOException {
    Path folder = args.length > 0 ? Path.of(args[0]) : Files.createTempDirectory("endfloat-timing");
    for (int clauses : new int[] {20, 500}) {
      acknowledge(folder, clauses);
    }
    disk(folder);
    large(folder);
  }

  private static InvestigationRecord record(int clauses, int length) {
    ObjectNode tree = JsonNodeFactory.instance.objectNode();
    tree.put("format", "endfloat-record").put("version", 1);
    tree.putObject("title_block").put("title", "Timing");
    ArrayNode cells = tree.putArray("cells");
    for (int i = 0; i < clauses; i++) {
      cells
          .addObject()
          .put("id", "c" + i)
          .put("kind", "working")
          .put("text", ("x" + i + " [mm] = 1 mm\n").repeat(length));
    }
    return InvestigationRecord.of(tree);
  }

  private static void acknowledge(Path folder, int clauses) throws IOException {
    Shelf shelf = Shelf.open(folder);
    RecordId id = shelf.add("timing", record(clauses, 3));
    OpenSheet sheet =
        OpenSheet.open(
            shelf.files(), shelf.place(id), Clock.systemUTC(), Runnable::run, Optional.empty());
    double[] millis = new double[EDITS];
    for (int i = 0; i < EDITS; i++) {
      Change change =
          Change.put("c" + i % clauses, "/text", new TextNode("growth [mm] = " + i + " mm"));
      Edit edit = new Edit("e" + i, "R.", "page", "", Long.MAX_VALUE, change);
      long start = System.nanoTime();
      sheet.apply(edit);
      millis[i] = (System.nanoTime() - start) / 1e6;
    }
    sheet.close();
    say("acknowledge an edit, " + clauses + " clauses", millis);
  }

  private static void disk(Path folder) throws IOException {
    byte[] line = new byte[330];
    double[] millis = new double[EDITS];
    try (FileChannel file =
        FileChannel.open(
            folder.resolve("plain"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      for (int i = 0; i < EDITS; i++) {
        long start = System.nanoTime();
        file.write(ByteBuffer.wrap(line));
        file.force(false);
        millis[i] = (System.nanoTime() - start) / 1e6;
      }
    }
    say("append 330 bytes and force, nothing else", millis);
  }

  private static void large(Path folder) throws IOException {
    Shelf shelf = Shelf.open(folder);
    InvestigationRecord record = record(500, 200);
    RecordId id = shelf.add("large", record);
    double[] open = new double[12];
    double[] save = new double[12];
    for (int i = 0; i < open.length; i++) {
      long start = System.nanoTime();
      OpenSheet sheet =
          OpenSheet.open(
              shelf.files(), shelf.place(id), Clock.systemUTC(), Runnable::run, Optional.empty());
      open[i] = (System.nanoTime() - start) / 1e6;
      Change change = Change.put("c1", "/text", new TextNode("z = " + i));
      sheet.apply(new Edit("l" + i, "R.", "page", "", Long.MAX_VALUE, change));
      start = System.nanoTime();
      sheet.close();
      save[i] = (System.nanoTime() - start) / 1e6;
    }
    String size = String.format(Locale.ROOT, "%.1f MB", record.write().length / 1e6);
    say("open a record of " + size, open);
    say("save it", save);
  }

  private static void say(String what, double[] millis) {
    double[] later = Arrays.copyOfRange(millis, millis.length / 3, millis.length);
    Arrays.sort(later);
    System.out.printf(
        Locale.ROOT,
        "%-45s p50 %.3f ms, p95 %.3f ms, greatest %.3f ms%n",
        what,
        later[later.length / 2],
        later[(int) (later.length * 0.95)],
        later[later.length - 1]);
  }
}
