package endfloat.record;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/**
 * Where a record lives: {@code NAME.json} on the shelf, and {@code .endfloat/NAME/} with its log,
 * the file the log began with, and earlier states.
 */
public record RecordPlace(RecordId id, Path file, Path folder) {
  /** Earlier states kept; the oldest go first. */
  static final int MOST_STATES = 60;

  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT).withZone(ZoneOffset.UTC);

  /** The place of a record on the shelf in {@code shelf}. */
  public static RecordPlace on(Path shelf, RecordId id) {
    return new RecordPlace(
        id, shelf.resolve(id.text() + ".json"), shelf.resolve(".endfloat").resolve(id.text()));
  }

  Path log() {
    return folder.resolve("edits.jsonl");
  }

  Path base(String hash) {
    return folder.resolve("base-" + hash.substring(0, 16) + ".json");
  }

  Path states() {
    return folder.resolve("states");
  }

  /** Makes the folders and forces their names to the disk. */
  void createFolders(FileStore files) throws IOException {
    files.createFolder(states());
    files.syncFolder(folder);
    files.syncFolder(folder.getParent());
    files.syncFolder(folder.getParent().getParent());
  }

  /**
   * Keeps bytes as an earlier state, unless that very state is kept already, and drops the oldest.
   *
   * @return where it is
   */
  public Path keepState(FileStore files, Clock clock, byte[] bytes) throws IOException {
    String mark = "-" + RecordHash.ofBytes(bytes).substring(0, 12) + ".json";
    createFolders(files);
    List<String> kept =
        files.list(states()).stream().filter(name -> name.endsWith(".json")).toList();
    for (String name : kept) {
      if (name.endsWith(mark)) {
        return states().resolve(name);
      }
    }
    Path state = states().resolve(STAMP.format(clock.instant()) + mark);
    files.replace(state, bytes);
    for (int i = 0; i <= kept.size() - MOST_STATES; i++) {
      files.delete(states().resolve(kept.get(i)));
    }
    return state;
  }

  /** Earlier states, oldest first. */
  public List<Path> earlierStates(FileStore files) throws IOException {
    return files.list(states()).stream()
        .filter(name -> name.endsWith(".json") && !name.startsWith("."))
        .map(states()::resolve)
        .toList();
  }
}
