package endfloat.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalInt;

/**
 * The commands that are started most often, in their plainest form, without the command line
 * library: its classes cannot go into the class-data archive and cost as much as the rest of a
 * start. Whatever is not plain, a mistake too, is left to the library.
 */
final class PlainCommand {
  private PlainCommand() {}

  /** Runs the command and gives its exit code; empty where it is not plain. */
  static OptionalInt run(Streams streams, String... arguments) {
    if (arguments.length > 0 && arguments[0].equals("work")) {
      return work(streams, arguments);
    }
    ServeOptions options = serving(arguments);
    if (options == null) {
      return OptionalInt.empty();
    }
    return ended(streams, false, () -> Serve.serve(options, streams));
  }

  private static OptionalInt work(Streams streams, String... arguments) {
    boolean json = arguments.length == 2 && arguments[1].equals("--json");
    if (arguments.length > 1 && !json) {
      return OptionalInt.empty();
    }
    return ended(streams, json, () -> new Work(streams, json).call());
  }

  /** What is to be done, and may fail. */
  private interface Command {
    int run() throws IOException;
  }

  private static OptionalInt ended(Streams streams, boolean json, Command command) {
    int code;
    try {
      code = command.run();
    } catch (IOException | RuntimeException e) {
      code = Failure.tell(e, json ? "work" : "", json, streams);
    }
    streams.out().flush();
    return OptionalInt.of(code);
  }

  private static ServeOptions serving(String... arguments) {
    ServeOptions options = new ServeOptions();
    int at = arguments.length > 0 && arguments[0].equals("serve") ? 1 : 0;
    while (at < arguments.length) {
      if (arguments[at].equals("--no-browser")) {
        options.noBrowser = true;
        at++;
      } else if (at + 1 < arguments.length && take(options, arguments[at], arguments[at + 1])) {
        at += 2;
      } else {
        return null;
      }
    }
    return options;
  }

  private static boolean take(ServeOptions options, String name, String value) {
    if (value.startsWith("-")) {
      return false;
    }
    switch (name) {
      case "--port" -> {
        if (!value.matches("[0-9]{1,5}")) {
          return false;
        }
        options.port = Integer.parseInt(value);
      }
      case "--host" -> options.host = value;
      case "--shelf" -> options.shelf = Path.of(value);
      default -> {
        return false;
      }
    }
    return true;
  }
}
