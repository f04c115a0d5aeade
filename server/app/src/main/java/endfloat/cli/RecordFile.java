package endfloat.cli;

import endfloat.record.InvestigationRecord;
import endfloat.record.RecordException;
import endfloat.record.RecordJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Files that a command is given. */
final class RecordFile {
  private RecordFile() {}

  static InvestigationRecord read(Path file) {
    try {
      return InvestigationRecord.read(bytes(file));
    } catch (RecordException e) {
      throw new BadInputException(
          file + ": " + e.getMessage(),
          "Give a record that Endfloat wrote; earlier states of it lie in .endfloat beside it.");
    }
  }

  /** The bytes of a file that a person named; links are followed, as with any command. */
  static byte[] bytes(Path file) {
    try {
      if (Files.isDirectory(file)) {
        throw new BadInputException(file + " is a folder.", "Name a file in it.");
      }
      if (Files.size(file) > RecordJson.MOST_BYTES) {
        throw new BadInputException(
            file + " is larger than " + RecordJson.MOST_BYTES / 1_000_000 + " MB.",
            "Give a smaller file.");
      }
      return Files.readAllBytes(file);
    } catch (NoSuchFileException e) {
      throw new BadInputException("There is no file " + file + ".", "Check the name.");
    } catch (IOException e) {
      throw new BadInputException(
          file + " cannot be read: " + e.getMessage(), "Check that you may read it.");
    }
  }
}
