package endfloat.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The file system of this machine. */
public final class DiskFiles implements FileStore {
  @Override
  public Optional<byte[]> read(Path file) throws IOException {
    try {
      long size = Files.size(file);
      if (size > RecordJson.MOST_BYTES * 8L) {
        throw new IOException(file.getFileName() + " has " + size + " bytes, too many to read");
      }
      return Optional.of(Files.readAllBytes(file));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  @Override
  public Optional<Stamp> stamp(Path file) throws IOException {
    try {
      return Optional.of(new Stamp(Files.size(file), Files.getLastModifiedTime(file).toMillis()));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  @Override
  public List<String> list(Path folder) throws IOException {
    try (Stream<Path> names = Files.list(folder)) {
      return names.map(name -> name.getFileName().toString()).sorted().toList();
    } catch (NoSuchFileException | NotDirectoryException e) {
      return List.of();
    }
  }

  @Override
  public void createFolder(Path folder) throws IOException {
    Files.createDirectories(folder);
  }

  @Override
  public void write(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            file,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      writeFully(channel, 0, bytes);
      channel.force(true);
    }
  }

  @Override
  public void rename(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  @Override
  public void syncFolder(Path folder) throws IOException {
    // Windows opens no folder, and keeps names without being asked.
    if (System.getProperty("os.name", "").startsWith("Windows")) {
      return;
    }
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    }
  }

  @Override
  public void delete(Path file) throws IOException {
    Files.deleteIfExists(file);
  }

  @Override
  public Tail openTail(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    return new Tail() {
      @Override
      public void writeAt(long position, byte[] bytes) throws IOException {
        writeFully(channel, position, bytes);
      }

      @Override
      public void truncate(long size) throws IOException {
        channel.truncate(size);
      }

      @Override
      public void sync() throws IOException {
        channel.force(false);
      }

      @Override
      public void close() throws IOException {
        channel.close();
      }
    };
  }

  private static void writeFully(FileChannel channel, long position, byte[] bytes)
      throws IOException {
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    long at = position;
    while (buffer.hasRemaining()) {
      at += channel.write(buffer, at);
    }
  }
}
