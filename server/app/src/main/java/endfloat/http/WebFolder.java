package endfloat.http;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The files of the page, from the class path, kept once read. While working on the page, the system
 * property {@code endfloat.web} names a folder that is read anew on every request instead.
 */
final class WebFolder {
  private final String root;
  private final Optional<Path> live;
  private final Map<String, Optional<WebFile>> kept = new ConcurrentHashMap<>();

  private WebFolder(String root, Optional<Path> live) {
    this.root = root;
    this.live = live;
  }

  static WebFolder ofPage() {
    String folder = System.getProperty("endfloat.web", "");
    return new WebFolder(
        "web/", folder.isEmpty() ? Optional.empty() : Optional.of(Path.of(folder)));
  }

  /** The modules of others, out of the jars that Maven fetched. */
  static WebFolder ofModules() {
    return new WebFolder("META-INF/resources/_static/", Optional.empty());
  }

  /**
   * The file of a path below the root; empty where there is none, or where the path is anything but
   * plain names.
   */
  Optional<WebFile> find(String path) {
    if (!isPlain(path)) {
      return Optional.empty();
    }
    if (live.isPresent()) {
      return read(live.get().resolve(path)).map(bytes -> WebFile.of(path, bytes));
    }
    Optional<WebFile> file = kept.get(path);
    if (file == null) {
      file = readResource(root + path).map(bytes -> WebFile.of(path, bytes));
      // Only what exists is kept, or foreign paths would fill the memory.
      file.ifPresent(found -> kept.put(path, Optional.of(found)));
    }
    return file;
  }

  /** Whether files may be other ones at the next request. */
  boolean isReadAnew() {
    return live.isPresent();
  }

  private static boolean isPlain(String path) {
    for (String name : List.of(path.split("/", -1))) {
      if (name.isEmpty() || name.startsWith(".") || !name.matches("[A-Za-z0-9_.@-]+")) {
        return false;
      }
    }
    return true;
  }

  private static Optional<byte[]> readResource(String path) {
    try (InputStream in = WebFolder.class.getClassLoader().getResourceAsStream(path)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + path + " from the program", e);
    }
  }

  private static Optional<byte[]> read(Path file) {
    try {
      return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }
}
