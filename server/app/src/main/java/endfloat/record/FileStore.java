package endfloat.record;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The few things asked of a file system. Everything kept goes through here, so that tests can let
 * any operation fail.
 */
public interface FileStore {
  /** The bytes of a file; empty where there is none. */
  Optional<byte[]> read(Path file) throws IOException;

  /** Size and time of change of a file; empty where there is none. */
  Optional<Stamp> stamp(Path file) throws IOException;

  /** Names in a folder, sorted; empty where there is none. */
  List<String> list(Path folder) throws IOException;

  /** Makes a folder and those above it; nothing happens where it exists. */
  void createFolder(Path folder) throws IOException;

  /** Writes a whole file and forces it to the disk. Not atomic: see {@link #replace}. */
  void write(Path file, byte[] bytes) throws IOException;

  /** Renames within a folder in one step; a file of the new name is gone then. */
  void rename(Path from, Path to) throws IOException;

  /** Forces the names of a folder to the disk. */
  void syncFolder(Path folder) throws IOException;

  /** Deletes a file; nothing happens where there is none. */
  void delete(Path file) throws IOException;

  /** Opens a file to write at its end, made empty where there is none. */
  Tail openTail(Path file) throws IOException;

  /** What tells quickly that a file may have changed. */
  record Stamp(long size, long changedMillis) {}

  /** A file written at its end. */
  interface Tail extends Closeable {
    void writeAt(long position, byte[] bytes) throws IOException;

    void truncate(long size) throws IOException;

    /** Forces what was written to the disk. */
    void sync() throws IOException;
  }

  /**
   * Replaces a file in one step: a crash leaves the old one or the new one, never half. When this
   * returns, the new one is on the disk.
   */
  default void replace(Path file, byte[] bytes) throws IOException {
    Path draft = file.resolveSibling("." + file.getFileName() + ".draft");
    write(draft, bytes);
    rename(draft, file);
    syncFolder(file.getParent());
  }
}
