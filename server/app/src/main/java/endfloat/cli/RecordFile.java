package endfloat.cli;

import endfloat.http.ShelfClaim;
import endfloat.record.DiskFiles;
import endfloat.record.InvestigationRecord;
import endfloat.record.RecordException;
import endfloat.record.RecordJson;
import endfloat.review.Results;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Files that a command is given. */
final class RecordFile {
  private RecordFile() {}

  static InvestigationRecord read(Path file) {
    try {
      return InvestigationRecord.read(bytes(file));
    } catch (RecordException e) {
      throw new BadInputException(file + ": " + e.getMessage(), wayOut(e.reason()));
    }
  }

  private static String wayOut(RecordException.Reason reason) {
    return switch (reason) {
      case NEWER -> "This program only reads what it knows whole.";
      case NOT_FOUND -> "Check its name.";
      case TOO_LARGE -> "Split it, or take photographs out of the record's text.";
      default ->
          "Give a record that Endfloat wrote; earlier states of it lie in .endfloat beside it.";
    };
  }

  /**
   * The records named, and those in folders named, sorted; what lies in folders below is left out.
   */
  static List<Path> all(List<Path> given) {
    List<Path> all = new ArrayList<>();
    for (Path one : given) {
      if (!Files.isDirectory(one)) {
        all.add(one);
        continue;
      }
      try (Stream<Path> files = Files.list(one)) {
        files.filter(RecordFile::isOfRecord).sorted().forEach(all::add);
      } catch (IOException e) {
        throw new BadInputException(
            "The folder " + one + " cannot be read: " + e.getMessage(), "Check its name.");
      }
    }
    if (all.isEmpty()) {
      throw new BadInputException(
          "There are no records in " + given.get(0) + ".", "Name a record, or a folder of them.");
    }
    return all;
  }

  private static boolean isOfRecord(Path file) {
    String name = file.getFileName().toString();
    return name.endsWith(".json") && !name.startsWith(".") && Files.isRegularFile(file);
  }

  /** Writes the figures that come out now into a record, which must not be open anywhere. */
  static void saveResults(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    if (ShelfClaim.isServed(folder)) {
      throw new BadInputException(
          "The folder of " + file + " is being served.",
          "End that endfloat first: it is the one writer of its records, and saves figures itself.");
    }
    InvestigationRecord record = read(file);
    byte[] written = record.withResults(Results.recomputed(record)).write();
    try {
      new DiskFiles().replace(file.toAbsolutePath(), written);
    } catch (IOException e) {
      throw new BadInputException(
          file + " cannot be written: " + e.getMessage(), "Check that you may write it.");
    }
  }

  /** Writes a record that is not there yet. */
  static void writeNew(Path out, byte[] record) {
    try {
      Files.write(out, record, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    } catch (FileAlreadyExistsException e) {
      throw new BadInputException(
          out + " exists already.", "Give another name with --out; nothing was written over.");
    } catch (IOException e) {
      throw new BadInputException(
          out + " cannot be written: " + e.getMessage(), "See that the folder is there.");
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
