package endfloat.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes what is made of a record; the record itself is never written over. */
final class PaperFile {
  private PaperFile() {}

  static void write(Path out, Path record, byte[] content) {
    refuse(out, record);
    try {
      Files.write(out, content);
    } catch (IOException e) {
      throw new BadInputException(
          out + " cannot be written: " + e.getMessage(), "See that the folder is there.");
    }
  }

  /** Refuses to write over a record. */
  static void refuse(Path out, Path record) {
    try {
      if (Files.exists(out) && Files.isSameFile(out, record)) {
        throw new BadInputException(
            out + " is the record itself.", "Give another name with --out; nothing was written.");
      }
    } catch (IOException e) {
      throw new BadInputException(
          out + " cannot be written: " + e.getMessage(), "See that the folder is there.");
    }
  }

  static void tell(Path out, Streams streams, boolean json) {
    if (json) {
      Json.print(streams.out(), JsonNodeFactory.instance.objectNode().put("out", out.toString()));
    } else {
      streams.out().println("Written: " + out);
    }
  }
}
