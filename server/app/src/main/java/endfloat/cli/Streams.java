package endfloat.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Where a command reads and writes; UTF-8 whatever the terminal is set to. */
record Streams(InputStream in, PrintStream out, PrintStream err) {

  static Streams ofProcess() {
    return new Streams(
        System.in,
        new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8),
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8));
  }
}
