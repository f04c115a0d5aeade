package endfloat.record;

import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.RecordException.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The folder of records. Every path it hands out lies in it: names are checked, links are refused.
 * What is in the folder and cannot be read is listed with the reason.
 */
public final class Shelf {
  private final Path folder;
  private final FileStore files;

  private Shelf(Path folder, FileStore files) {
    this.folder = folder;
    this.files = files;
  }

  /**
   * A record on the shelf, or a file that is none.
   *
   * @param name of the file without {@code .json}
   * @param record empty where it cannot be read
   * @param problem why, a sentence; else empty
   * @param changedMillis when the file was last changed, since 1970
   */
  public record Listed(
      String name, Optional<InvestigationRecord> record, String problem, long changedMillis) {}

  /**
   * Opens the shelf in a folder, which is made where it is missing.
   *
   * @throws RecordException if the folder cannot be made or read
   */
  public static Shelf open(Path folder) {
    try {
      Files.createDirectories(folder);
      return new Shelf(folder.toRealPath(), new DiskFiles());
    } catch (IOException e) {
      throw new RecordException(
          Reason.DISK, "the folder " + folder + " cannot hold a shelf: " + e.getMessage(), e);
    }
  }

  public Path folder() {
    return folder;
  }

  public FileStore files() {
    return files;
  }

  /**
   * Copies records and what goes with them from a folder, on the first start only: nothing is
   * copied to a shelf that was used before or holds a record. Patterns in a folder of that name
   * come too.
   *
   * @return how many records were copied
   */
  public int seedFrom(Path notebooks) {
    try {
      if (Files.exists(folder.resolve(".endfloat/seeded")) || !names().isEmpty()) {
        return 0;
      }
      int copied = copyFrom(notebooks);
      if (Files.isDirectory(notebooks.resolve("patterns"))) {
        copied += copyFrom(notebooks.resolve("patterns"));
      }
      files.createFolder(folder.resolve(".endfloat"));
      files.replace(folder.resolve(".endfloat/seeded"), new byte[0]);
      return copied;
    } catch (IOException e) {
      throw new RecordException(
          Reason.DISK, "the first records could not be copied: " + e.getMessage(), e);
    }
  }

  private int copyFrom(Path source) throws IOException {
    int copied = 0;
    for (String name : files.list(source)) {
      boolean taken = name.endsWith(".json") || name.endsWith(".csv");
      Path from = source.resolve(name);
      if (!taken || !Files.isRegularFile(from) || Files.exists(folder.resolve(name))) {
        continue;
      }
      if (name.endsWith(".json")) {
        copyPhotographs(source, name.substring(0, name.length() - ".json".length()) + ".files");
        copied++;
      }
      files.replace(folder.resolve(name), files.read(from).orElseThrow());
    }
    return copied;
  }

  /** What stands beside a record in its own folder. */
  private void copyPhotographs(Path source, String name) throws IOException {
    if (!Files.isDirectory(source.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    files.createFolder(folder.resolve(name));
    for (String photograph : files.list(source.resolve(name))) {
      Path from = source.resolve(name).resolve(photograph);
      if (Files.isRegularFile(from, LinkOption.NOFOLLOW_LINKS)) {
        files.replace(folder.resolve(name).resolve(photograph), files.read(from).orElseThrow());
      }
    }
  }

  private List<String> names() throws IOException {
    return files.list(folder).stream()
        .filter(name -> name.endsWith(".json") && !name.startsWith("."))
        .map(name -> name.substring(0, name.length() - ".json".length()))
        .toList();
  }

  /** Everything on the shelf by name, broken records with the reason. */
  public List<Listed> list() {
    try {
      List<Listed> all = new ArrayList<>();
      for (String name : names()) {
        all.add(listed(name));
      }
      return all;
    } catch (IOException e) {
      throw new RecordException(
          Reason.DISK, "the shelf " + folder + " cannot be read: " + e.getMessage(), e);
    }
  }

  private Listed listed(String name) {
    long changed = 0;
    try {
      RecordPlace place = place(new RecordId(name));
      changed = files.stamp(place.file()).map(FileStore.Stamp::changedMillis).orElse(0L);
      return new Listed(name, Optional.of(InvestigationRecord.read(bytes(place))), "", changed);
    } catch (RecordException e) {
      return new Listed(name, Optional.empty(), e.getMessage(), changed);
    } catch (IOException e) {
      return new Listed(
          name, Optional.empty(), "the file cannot be read: " + e.getMessage(), changed);
    }
  }

  /**
   * Where a record lies.
   *
   * @throws RecordException if there is none of the name, or it is a link
   */
  public RecordPlace place(RecordId id) {
    RecordPlace place = RecordPlace.on(folder, id);
    if (Files.isSymbolicLink(place.file())) {
      throw new RecordException(
          Reason.OFF_THE_SHELF,
          "the file "
              + id.text()
              + ".json is a link; a record is opened from the shelf only, so copy it there");
    }
    if (Files.isSymbolicLink(place.folder()) || Files.isSymbolicLink(place.folder().getParent())) {
      throw new RecordException(
          Reason.OFF_THE_SHELF, ".endfloat is a link; the log of edits lies on the shelf only");
    }
    if (!Files.isRegularFile(place.file(), LinkOption.NOFOLLOW_LINKS)) {
      throw new RecordException(
          Reason.NOT_FOUND, "there is no record " + id.text() + " on this shelf");
    }
    return place;
  }

  /** The bytes of a record as they are on disk. */
  public byte[] bytes(RecordId id) {
    try {
      return bytes(place(id));
    } catch (IOException e) {
      throw new RecordException(
          Reason.DISK, "the file " + id.text() + ".json cannot be read: " + e.getMessage(), e);
    }
  }

  /**
   * An earlier state of a record.
   *
   * @param state its name, as {@link #states} lists it
   * @throws RecordException if there is none of the name
   */
  public InvestigationRecord state(RecordId id, String state) {
    if (!states(id).contains(state)) {
      throw new RecordException(
          Reason.NOT_FOUND, "there is no earlier state " + state + " of " + id.text());
    }
    try {
      Path file = place(id).states().resolve(state + ".json");
      return InvestigationRecord.read(files.read(file).orElseThrow());
    } catch (IOException e) {
      throw new RecordException(
          Reason.DISK, "the state " + state + " cannot be read: " + e.getMessage(), e);
    }
  }

  /** Names of the earlier states of a record, newest first; each begins with its time in UTC. */
  public List<String> states(RecordId id) {
    try {
      List<String> names = new ArrayList<>();
      for (Path state : place(id).earlierStates(files)) {
        String name = state.getFileName().toString();
        names.add(0, name.substring(0, name.length() - ".json".length()));
      }
      return names;
    } catch (IOException e) {
      throw new RecordException(
          Reason.DISK, "the earlier states cannot be read: " + e.getMessage(), e);
    }
  }

  private byte[] bytes(RecordPlace place) throws IOException {
    long size = files.stamp(place.file()).map(FileStore.Stamp::size).orElse(0L);
    if (size > RecordJson.MOST_BYTES) {
      throw RecordJson.tooLarge(size);
    }
    return files.read(place.file()).orElseThrow();
  }

  /**
   * Makes a new record.
   *
   * @param pattern whose clauses, registers and settings it takes, its readings not taken; empty
   *     for a blank one
   * @param title of the record, from which its name comes
   */
  public RecordId create(Optional<RecordId> pattern, String title) {
    ObjectNode tree =
        pattern
            .map(
                id ->
                    NewRecord.from(
                        InvestigationRecord.read(bytes(id)),
                        title,
                        LocalDate.now(ZoneId.systemDefault())))
            .orElseGet(() -> NewRecord.blank(title, LocalDate.now(ZoneId.systemDefault())));
    return add(RecordId.slug(title), InvestigationRecord.of(tree));
  }

  /**
   * Puts a record on the shelf under a name that is free: the one wished for, or that with a
   * number.
   */
  public synchronized RecordId add(String wished, InvestigationRecord record) {
    try {
      RecordId id = new RecordId(wished);
      for (int i = 2; isTaken(id); i++) {
        id = new RecordId(wished + "-" + i);
      }
      files.replace(RecordPlace.on(folder, id).file(), record.write());
      return id;
    } catch (IOException e) {
      throw new RecordException(
          Reason.DISK, "the new record could not be written: " + e.getMessage(), e);
    }
  }

  /** Also where only a log of a deleted record is left: it must not be replayed into a new one. */
  private boolean isTaken(RecordId id) {
    RecordPlace place = RecordPlace.on(folder, id);
    return Files.exists(place.file(), LinkOption.NOFOLLOW_LINKS)
        || Files.exists(place.log(), LinkOption.NOFOLLOW_LINKS);
  }
}
