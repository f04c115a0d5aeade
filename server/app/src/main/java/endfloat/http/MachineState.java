package endfloat.http;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Locale;
import java.util.Set;

/**
 * What belongs to this user on this machine and to no record, such as the key of the opening link:
 * a folder that only its owner can read.
 */
public final class MachineState {
  private final Path folder;

  /**
   * @param folder made where it is missing
   */
  public MachineState(Path folder) {
    this.folder = folder;
  }

  /** The folder that the system keeps for the state of programs. */
  public static MachineState ofUser() {
    return new MachineState(folderOfUser());
  }

  private static Path folderOfUser() {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    Path home = Path.of(System.getProperty("user.home"));
    if (system.contains("win")) {
      String local = System.getenv("LOCALAPPDATA");
      return (local == null ? home.resolve("AppData/Local") : Path.of(local)).resolve("Endfloat");
    }
    if (system.contains("mac")) {
      return home.resolve("Library/Application Support/Endfloat");
    }
    String state = System.getenv("XDG_STATE_HOME");
    return (state == null || state.isEmpty() ? home.resolve(".local/state") : Path.of(state))
        .resolve("endfloat");
  }

  /** The folder, which may not be there yet. */
  public Path folder() {
    return folder;
  }

  /** The key of the opening link: 32 random bytes, made once. */
  public String token() {
    Path file = folder.resolve("token");
    try {
      if (!Files.exists(file)) {
        Files.createDirectories(folder, ownerOnly("rwx------"));
        writeNew(file);
      }
      return Files.readString(file, StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot keep the key of the opening link in " + file, e);
    }
  }

  private void writeNew(Path file) throws IOException {
    byte[] bytes = new byte[32];
    new SecureRandom().nextBytes(bytes);
    String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    Path draft = Files.createTempFile(folder, "token", null, ownerOnly("rw-------"));
    Files.writeString(draft, token, StandardCharsets.UTF_8, StandardOpenOption.TRUNCATE_EXISTING);
    try {
      // A link and no rename: of two servers that start at once, the first one's key stays.
      Files.createLink(file, draft);
    } catch (FileAlreadyExistsException e) {
      return;
    } catch (UnsupportedOperationException e) {
      Files.move(draft, file);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  private FileAttribute<?>[] ownerOnly(String permissions) {
    if (!folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      return new FileAttribute<?>[0];
    }
    Set<PosixFilePermission> owner = PosixFilePermissions.fromString(permissions);
    return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(owner)};
  }
}
