package endfloat.http;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Who serves a shelf. A shelf has one server, or two would write the same records; a second start
 * finds the first one's port here. The lock goes with the process, however it ends.
 */
public final class ShelfClaim implements AutoCloseable {
  private final Path port;
  private final FileChannel channel;
  private final FileLock lock;

  private ShelfClaim(Path port, FileChannel channel, FileLock lock) {
    this.port = port;
    this.channel = channel;
    this.lock = lock;
  }

  /** Claims a shelf for this process; empty where another server has it. */
  public static Optional<ShelfClaim> claim(Path shelf) {
    Path folder = shelf.resolve(".endfloat");
    try {
      Files.createDirectories(folder);
      FileChannel channel =
          FileChannel.open(
              folder.resolve("serving.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock lock = tryLock(channel);
      if (lock == null) {
        channel.close();
        return Optional.empty();
      }
      Files.deleteIfExists(folder.resolve("serving"));
      return Optional.of(new ShelfClaim(folder.resolve("serving"), channel, lock));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write in the folder " + folder, e);
    }
  }

  private static FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException e) {
      return null;
    }
  }

  /** Whether a server has this shelf now. */
  public static boolean isServed(Path shelf) {
    Path lock = shelf.resolve(".endfloat").resolve("serving.lock");
    if (!Files.exists(lock)) {
      return false;
    }
    try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.WRITE)) {
      FileLock free = tryLock(channel);
      if (free != null) {
        free.release();
      }
      return free == null;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot look who serves " + shelf, e);
    }
  }

  /** Says where the shelf is served, once it is. */
  public void servedAt(int number) {
    try {
      Path draft = port.resolveSibling("serving.draft");
      Files.writeString(draft, number + "\n", StandardCharsets.UTF_8);
      Files.move(draft, port, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + port, e);
    }
  }

  /** Port of the server that has the shelf; empty while it is still starting. */
  public static Optional<Integer> portOf(Path shelf) {
    try {
      String text = Files.readString(shelf.resolve(".endfloat").resolve("serving"));
      return Optional.of(Integer.valueOf(text.strip()));
    } catch (NoSuchFileException | NumberFormatException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read who serves " + shelf, e);
    }
  }

  /** The port, waited for a few seconds while that server starts. */
  public static Optional<Integer> awaitPort(Path shelf) {
    Optional<Integer> found = portOf(shelf);
    for (int tries = 0; found.isEmpty() && tries < 100; tries++) {
      try {
        Thread.sleep(50);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return Optional.empty();
      }
      found = portOf(shelf);
    }
    return found;
  }

  @Override
  public void close() {
    try {
      Files.deleteIfExists(port);
      lock.release();
      channel.close();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot give up the claim in " + port.getParent(), e);
    }
  }
}
