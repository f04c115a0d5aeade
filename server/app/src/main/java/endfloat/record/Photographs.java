package endfloat.record;

import endfloat.record.RecordException.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The photographs of a record, in {@code NAME.files} beside it. Each is kept as it came, under the
 * hash of its bytes, and never altered or written over; what leaves the shelf goes through {@link
 * PhotoMetadata}.
 */
public final class Photographs {
  /** A photograph larger than this is refused. */
  public static final int MOST_BYTES = 20_000_000;

  private static final Pattern NAME = Pattern.compile("[0-9a-f]{64}\\.(?:jpg|png)");
  private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};
  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

  private final FileStore files;
  private final Path folder;

  private Photographs(FileStore files, Path folder) {
    this.files = files;
    this.folder = folder;
  }

  /** Of a record on its shelf. */
  public static Photographs of(FileStore files, RecordPlace place) {
    return new Photographs(files, place.file().resolveSibling(place.id().text() + ".files"));
  }

  /** Of a record in a file by itself, wherever it lies. */
  public static Photographs beside(FileStore files, Path record) {
    String name = record.getFileName().toString().replaceFirst("\\.json$", "");
    return new Photographs(files, record.toAbsolutePath().resolveSibling(name + ".files"));
  }

  /** A photograph as it is kept. */
  public record Photograph(String name, String type, byte[] bytes) {}

  /**
   * Keeps a photograph.
   *
   * @return its name: hash and kind
   * @throws RecordException if it is too large, or neither JPEG nor PNG
   */
  public String keep(byte[] bytes) {
    if (bytes.length > MOST_BYTES) {
      throw new RecordException(
          Reason.TOO_LARGE, "the photograph is larger than " + MOST_BYTES / 1_000_000 + " MB");
    }
    String kind =
        kind(bytes)
            .orElseThrow(
                () ->
                    new RecordException(
                        Reason.NOT_A_RECORD, "the file is neither a JPEG nor a PNG photograph"));
    String name = RecordHash.ofBytes(bytes) + "." + kind;
    try {
      refuseLink();
      files.createFolder(folder);
      if (files.stamp(folder.resolve(name)).isEmpty()) {
        files.replace(folder.resolve(name), bytes);
      }
      return name;
    } catch (IOException e) {
      throw new RecordException(
          Reason.DISK, "the photograph could not be kept: " + e.getMessage(), e);
    }
  }

  /**
   * A photograph that is kept.
   *
   * @throws RecordException if there is none of the name, or its bytes are not those it was kept as
   */
  public Photograph read(String name) {
    if (!NAME.matcher(name).matches()) {
      throw new RecordException(Reason.NOT_FOUND, "there is no photograph of that name");
    }
    try {
      refuseLink();
      Path file = folder.resolve(name);
      if (Files.isSymbolicLink(file)) {
        throw new RecordException(Reason.OFF_THE_SHELF, name + " is a link");
      }
      byte[] bytes =
          files
              .read(file)
              .orElseThrow(
                  () ->
                      new RecordException(Reason.NOT_FOUND, "there is no photograph of that name"));
      if (!name.startsWith(RecordHash.ofBytes(bytes))) {
        throw new RecordException(
            Reason.NOT_A_RECORD, "the photograph " + name + " was altered since it was kept");
      }
      return new Photograph(name, name.endsWith("png") ? "image/png" : "image/jpeg", bytes);
    } catch (IOException e) {
      throw new RecordException(Reason.DISK, "the photograph cannot be read: " + e.getMessage(), e);
    }
  }

  private void refuseLink() {
    if (Files.isSymbolicLink(folder)) {
      throw new RecordException(
          Reason.OFF_THE_SHELF, folder.getFileName() + " is a link; photographs lie on the shelf");
    }
  }

  /** By its first bytes: what a file is called says nothing. */
  static Optional<String> kind(byte[] bytes) {
    if (startsWith(bytes, JPEG)) {
      return Optional.of("jpg");
    }
    return startsWith(bytes, PNG) ? Optional.of("png") : Optional.empty();
  }

  private static boolean startsWith(byte[] bytes, byte[] mark) {
    if (bytes.length < mark.length) {
      return false;
    }
    for (int i = 0; i < mark.length; i++) {
      if (bytes[i] != mark[i]) {
        return false;
      }
    }
    return true;
  }
}
