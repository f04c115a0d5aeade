package endfloat.sheet;

import endfloat.record.InvestigationRecord;
import endfloat.record.RecordId;
import endfloat.record.RecordPlace;
import endfloat.record.Shelf;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

/**
 * Kills a process that edits a record, at random times and without warning (SIGKILL), and looks
 * each time whether all it acknowledged is there: {@code server/app/src/test/scripts/kill-test
 * 200}.
 */
public final class KillAtRandom {
  private final Path folder;
  private final Random random;
  private final Map<String, String> cellOf = new HashMap<>();
  private final Map<String, String> last = new HashMap<>();
  private long acknowledged;

  private KillAtRandom(Path folder, long seed) {
    this.folder = folder;
    this.random = new Random(seed);
  }

  /** Kills as many times as the first argument says; the second may be a seed. */
  public static void main(String[] args) throws IOException, InterruptedException {
    int kills = args.length > 0 ? Integer.parseInt(args[0]) : 200;
    long seed = args.length > 1 ? Long.parseLong(args[1]) : System.nanoTime();
    Path folder = Files.createTempDirectory("endfloat-kill-test");
    System.out.println(run(folder, kills, seed));
  }

  /**
   * @return what was done, in words
   * @throws AssertionError if an acknowledged edit is lost
   */
  static String run(Path folder, int kills, long seed) throws IOException, InterruptedException {
    Files.write(folder.resolve("mesh.json"), TwoClients.FIRST);
    KillAtRandom test = new KillAtRandom(folder, seed);
    for (int i = 0; i < kills; i++) {
      test.liveAndDie(i);
    }
    return kills
        + " kills (seed "
        + seed
        + "), "
        + test.acknowledged
        + " acknowledged edits, none lost";
  }

  private void liveAndDie(int life) throws IOException, InterruptedException {
    Process child =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                EditUntilKilled.class.getName(),
                folder.toString(),
                "life" + life)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    List<String> said = new ArrayList<>();
    BufferedReader out =
        new BufferedReader(
            new InputStreamReader(child.getInputStream(), StandardCharsets.US_ASCII));
    boolean starting = random.nextInt(6) == 0;
    Thread reader =
        new Thread(
            () -> {
              try {
                for (String line = out.readLine(); line != null; line = out.readLine()) {
                  synchronized (said) {
                    said.add(line);
                    said.notifyAll();
                  }
                }
              } catch (IOException e) {
                // the child is dead
              }
            });
    reader.start();
    if (starting) {
      TimeUnit.MILLISECONDS.sleep(random.nextInt(900));
    } else {
      synchronized (said) {
        while (said.isEmpty() && child.isAlive()) {
          said.wait(100);
        }
      }
      TimeUnit.MICROSECONDS.sleep(random.nextInt(400_000));
    }
    if (!child.isAlive()) {
      throw new AssertionError("the child ended by itself with " + child.exitValue());
    }
    // by its handle: Process.destroyForcibly closes the pipe, and the last acknowledgements with it
    child.toHandle().destroyForcibly();
    child.waitFor();
    reader.join();
    check(life, said);
  }

  private void check(int life, List<String> said) throws IOException {
    TreeMap<Long, String> kept = new TreeMap<>();
    List<String> open = new ArrayList<>();
    for (String line : said) {
      String[] words = line.split(" ");
      if (words.length < 3) {
        continue; // cut off by the kill
      }
      if (words[0].equals("sent")) {
        cellOf.put(words[1], words[2]);
        open.add(words[1]);
      } else {
        kept.put(Long.parseLong(words[2]), words[1]);
        open.remove(words[1]);
      }
    }
    Map<String, String> expected = new HashMap<>(last);
    kept.values().forEach(id -> expected.put(cellOf.get(id), id));
    acknowledged += kept.size();

    // the file is never half a record
    InvestigationRecord.read(Files.readAllBytes(folder.resolve("mesh.json")));
    Shelf shelf = Shelf.open(folder);
    RecordPlace place = shelf.place(new RecordId("mesh"));
    OpenSheet sheet =
        OpenSheet.open(shelf.files(), place, Clock.systemUTC(), Runnable::run, Optional.empty());
    Snapshot found = sheet.snapshot();
    boolean lost = found.conflict().isPresent();
    for (String cell : List.of("a", "b")) {
      String text = found.record().cell(cell).orElseThrow().text();
      String wanted = Optional.ofNullable(expected.get(cell)).orElse(text);
      boolean unacknowledged = open.contains(text) && cellOf.get(text).equals(cell);
      lost |= !text.equals(wanted) && !unacknowledged;
      last.put(cell, text);
    }
    long revision = kept.isEmpty() ? 0 : kept.lastKey();
    if (lost || found.revision() < revision) {
      throw new AssertionError(
          "kill "
              + life
              + ": expected "
              + expected
              + " at "
              + revision
              + ", found "
              + last
              + " at "
              + found.revision());
    }
    if (random.nextInt(4) == 0) {
      sheet.close();
    }
  }
}
