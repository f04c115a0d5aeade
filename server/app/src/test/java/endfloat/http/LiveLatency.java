package endfloat.http;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/**
 * How long an edit takes over the live connection, in a record of 500 lines: until it is
 * acknowledged as kept on disk, and until the changed figures are there. Run by {@code
 * src/test/scripts/live-latency}.
 */
public final class LiveLatency {
  private static final int LINES = 500;
  private static final int LINES_A_CLAUSE = 25;
  private static final int WARM = 400;
  private static final int EDITS = 1_000;

  private LiveLatency() {}

  /** Prints a table. */
  public static void main(String[] arguments) throws IOException {
    Path record = Files.createTempDirectory("latency").resolve("long.json");
    Files.writeString(record, record());
    try (RunningServer server = RunningServer.start(record);
        LivePage page = LivePage.open(server, "long")) {
      page.await("sheet");
      double[] kept = new double[EDITS];
      double[] changed = new double[EDITS];
      int bytes = 0;
      for (int i = -WARM; i < EDITS; i++) {
        String value = String.format(Locale.ROOT, "0.%03d", 100 + Math.floorMod(i * 37, 800));
        long start = System.nanoTime();
        page.put("e" + i, "r", "/readings/0/entries/0/taken/0", value, Long.MAX_VALUE);
        page.await("kept");
        long then = System.nanoTime();
        bytes = page.await("changed").toString().length();
        if (i >= 0) {
          kept[i] = (then - start) / 1e6;
          changed[i] = (System.nanoTime() - start) / 1e6;
        }
      }
      System.out.printf(
          Locale.ROOT, "%d lines, %d edits of a reading that ten lines rest on%n", LINES, EDITS);
      print("kept on disk and acknowledged", kept);
      print("changed figures there", changed);
      System.out.printf(Locale.ROOT, "size of the last answer: %d bytes%n", bytes);
    }
  }

  private static void print(String what, double[] times) {
    Arrays.sort(times);
    System.out.printf(
        Locale.ROOT,
        "%-32s p50 %.3f ms, p95 %.3f ms, p99 %.3f ms%n",
        what,
        times[times.length / 2],
        times[times.length * 95 / 100],
        times[times.length * 99 / 100]);
  }

  /** One reading, ten lines that rest on it, and four hundred and ninety that do not. */
  static String record() {
    StringBuilder json = new StringBuilder();
    json.append(
        "{\"format\":\"endfloat-record\",\"version\":1,\"title_block\":{\"title\":\"Long\"},");
    json.append("\"settings\":{\"units\":\"metric\",\"terms\":\"british\",\"coverage\":2,");
    json.append("\"stage\":\"as found\"},\"parts\":[],\"instruments\":[{\"id\":\"DG\",");
    json.append("\"name\":\"Dial gauge\",\"offset\":\"0.002 mm\",\"resolution\":\"0.002 mm\"}],");
    json.append("\"cells\":[{\"id\":\"r\",\"kind\":\"readings\",\"title\":\"Backlash\",");
    json.append("\"readings\":[{\"name\":\"lash\",\"what\":\"Backlash\",\"unit\":\"mm\",");
    json.append("\"instrument\":\"DG\",\"entries\":[{\"taken\":[\"0.134\"]}]}]}");
    for (int first = 0; first < LINES; first += LINES_A_CLAUSE) {
      json.append(",{\"id\":\"w")
          .append(first)
          .append("\",\"kind\":\"working\",\"title\":\"Part\",");
      json.append("\"text\":\"");
      for (int i = first; i < first + LINES_A_CLAUSE; i++) {
        // One line in fifty rests on the reading, each through the one before.
        String from = i % 50 == 0 ? i == 0 ? "lash" : "v" + (i - 50) : "0.2 mm ± 0.01 mm";
        String line = i % 50 == 0 ? " = 0.9 * " + from + " + 0.01 mm" : " = " + from;
        json.append("v").append(i).append(" [mm]").append(line).append("\\n");
        if (i % 50 == 0) {
          json.append("limit v").append(i).append(": 0.05 .. 0.80 mm\\n");
        }
      }
      json.append("\"}");
    }
    return json.append("]}").toString();
  }
}
