package endfloat.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Which calculation library this is: saved figures say which one they came from. */
public final class LibraryVersion {
  private LibraryVersion() {}

  /** As the build has it, such as {@code 0.1.0}. */
  public static String text() {
    try (InputStream in = LibraryVersion.class.getResourceAsStream("version.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException("the version comes with the library", e);
    }
  }
}
