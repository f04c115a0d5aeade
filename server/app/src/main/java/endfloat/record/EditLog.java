package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32C;

/**
 * JSON lines that are only ever appended, each with a checksum: {@code
 * {"sum":"1a2b3c4d","line":{...}}}. A line is acknowledged when it is on the disk; a torn last line
 * was never acknowledged, and is dropped.
 */
final class EditLog implements Closeable {
  private static final String HEAD = "{\"sum\":\"";
  private static final String MIDDLE = "\",\"line\":";
  private static final int PAYLOAD = HEAD.length() + 8 + MIDDLE.length();

  private final FileStore files;
  private final Path file;
  private FileStore.Tail tail;

  /** End of what is known to be on the disk. */
  private long size;

  /** Lines written since the disk was last forced, to be written again with the next. */
  private byte[] noted = new byte[0];

  /** Whether something may stand behind the good end. */
  private boolean dirty;

  /**
   * The good bytes as they were read, until they are known to be on the disk: those before us may
   * have written some of them without forcing them. Null once they are.
   */
  private byte[] unsure;

  /** Whether forcing them has failed, after which only writing them again helps. */
  private boolean suspect;

  private EditLog(FileStore files, Path file, long size, boolean dirty, byte[] unsure) {
    this.files = files;
    this.file = file;
    this.size = size;
    this.dirty = dirty;
    this.unsure = unsure;
  }

  /**
   * What a log held.
   *
   * @param lines good lines in order
   * @param dropped what was left out and why, for the reader; empty where nothing was
   * @param damaged whether good lines followed a bad one: the disk lost something, not a crash
   */
  record Opened(EditLog log, List<JsonNode> lines, Optional<String> dropped, boolean damaged) {}

  /** An empty log, written over what was there, with its first line on the disk. */
  static EditLog begin(FileStore files, Path file, ObjectNode first) throws IOException {
    byte[] line = line(first);
    files.replace(file, line);
    return new EditLog(files, file, line.length, false, null);
  }

  /**
   * Reads a log; empty where there is none. The first line appended takes the place of a torn one.
   */
  static Optional<Opened> open(FileStore files, Path file) throws IOException {
    Optional<byte[]> bytes = files.read(file);
    if (bytes.isEmpty()) {
      return Optional.empty();
    }
    List<JsonNode> lines = new ArrayList<>();
    long good = 0;
    boolean damaged = false;
    byte[] all = bytes.get();
    int start = 0;
    boolean broken = false;
    while (start < all.length) {
      int end = start;
      while (end < all.length && all[end] != '\n') {
        end++;
      }
      Optional<JsonNode> line = end < all.length ? parse(all, start, end) : Optional.empty();
      if (line.isEmpty()) {
        broken = true;
      } else if (broken) {
        damaged = true;
      } else {
        lines.add(line.get());
        good = end + 1L;
      }
      start = end + 1;
    }
    Optional<String> dropped =
        good == all.length
            ? Optional.empty()
            : Optional.of(
                damaged
                    ? "the log of edits is damaged after line " + lines.size()
                    : "the last edit was only half written when the program stopped; it was never"
                        + " acknowledged, and is left out");
    return Optional.of(
        new Opened(
            new EditLog(files, file, good, good != all.length, Arrays.copyOf(all, (int) good)),
            lines,
            dropped,
            damaged));
  }

  private static Optional<JsonNode> parse(byte[] all, int start, int end) {
    if (end - start <= PAYLOAD || all[end - 1] != '}') {
      return Optional.empty();
    }
    String sum = new String(all, start + HEAD.length(), 8, StandardCharsets.US_ASCII);
    int from = start + PAYLOAD;
    int length = end - 1 - from;
    if (!sum.equals(sum(all, from, length))) {
      return Optional.empty();
    }
    try {
      byte[] payload = Arrays.copyOfRange(all, from, from + length);
      return Optional.of(RecordJson.read(payload));
    } catch (RecordException e) {
      return Optional.empty();
    }
  }

  /**
   * Appends a line and forces it to the disk. When this throws, the line may be there or not, but
   * never half: the next append writes over it.
   */
  void append(ObjectNode line) throws IOException {
    byte[] bytes = join(noted, line(line));
    write(bytes);
    tail.sync();
    size += bytes.length;
    noted = new byte[0];
    dirty = false;
  }

  /** Appends a line that a crash may lose; the next {@link #append} takes it to the disk. */
  void note(ObjectNode line) throws IOException {
    noted = join(noted, line(line));
    write(noted);
  }

  private void write(byte[] bytes) throws IOException {
    if (suspect) {
      close();
      files.replace(file, unsure);
      dirty = false;
      suspect = false;
      unsure = null;
    }
    if (tail == null) {
      tail = files.openTail(file);
    }
    if (unsure != null) {
      suspect = true;
      tail.sync();
      suspect = false;
      unsure = null;
    }
    if (dirty) {
      tail.truncate(size);
    }
    dirty = true;
    tail.writeAt(size, bytes);
  }

  private static byte[] join(byte[] one, byte[] other) {
    byte[] both = Arrays.copyOf(one, one.length + other.length);
    System.arraycopy(other, 0, both, one.length, other.length);
    return both;
  }

  long size() {
    return size;
  }

  private static byte[] line(ObjectNode line) {
    byte[] payload = PrettyJson.compact(line).getBytes(StandardCharsets.UTF_8);
    byte[] head =
        (HEAD + sum(payload, 0, payload.length) + MIDDLE).getBytes(StandardCharsets.US_ASCII);
    return join(join(head, payload), new byte[] {'}', '\n'});
  }

  private static String sum(byte[] bytes, int from, int length) {
    CRC32C crc = new CRC32C();
    crc.update(bytes, from, length);
    return HexFormat.of().toHexDigits((int) crc.getValue());
  }

  @Override
  public void close() throws IOException {
    if (tail != null) {
      tail.close();
      tail = null;
    }
  }
}
