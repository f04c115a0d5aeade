package endfloat.kernel;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which sources may run on this machine: by the hash of the exact text, in a file that belongs to
 * this user and to no record. A source with one character changed is another source. What ships
 * with the program is listed in it by hash. Safe for threads.
 */
public final class Approvals {
  private static final String SHIPPED = "shipped-java.txt";
  private static final int HASH_LENGTH = 64;

  private final Path file;
  private final Set<String> allowed = new HashSet<>();

  /**
   * @param folder of this user's state on this machine; made where it is missing
   */
  public Approvals(Path folder) {
    this.file = folder.resolve("approved-java.txt");
    allowed.addAll(shipped());
  }

  /** SHA-256 of a source, as hex. */
  public static String hash(String source) {
    try {
      return HexFormat.of()
          .formatHex(
              MessageDigest.getInstance("SHA-256").digest(source.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** Allows a hash for as long as this program runs. */
  public synchronized void allow(String hash) {
    allowed.add(hash);
  }

  public synchronized boolean isApproved(String source) {
    String hash = hash(source);
    return allowed.contains(hash) || kept().contains(hash);
  }

  /** Approves a source on this machine from now on. */
  public synchronized void approve(String source) {
    if (isApproved(source)) {
      return;
    }
    try {
      if (!Files.exists(file)) {
        Files.createDirectories(file.getParent());
        Files.createFile(file);
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
          Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        }
      }
      Files.writeString(
          file, hash(source) + "\n", StandardCharsets.UTF_8, StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException("the approval cannot be kept in " + file, e);
    }
  }

  private Set<String> kept() {
    if (!Files.exists(file)) {
      return Set.of();
    }
    try (Stream<String> lines = Files.lines(file, StandardCharsets.UTF_8)) {
      return hashes(lines);
    } catch (IOException e) {
      return Set.of();
    }
  }

  private static Set<String> hashes(Stream<String> lines) {
    Set<String> hashes = new HashSet<>();
    lines
        .map(String::strip)
        .filter(line -> line.length() >= HASH_LENGTH && !line.startsWith("#"))
        .forEach(line -> hashes.add(line.substring(0, HASH_LENGTH)));
    return hashes;
  }

  /** The sources of the records that come with the program. */
  static Set<String> shipped() {
    try (InputStream in = Approvals.class.getResourceAsStream(SHIPPED);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return hashes(reader.lines());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
