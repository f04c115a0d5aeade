package endfloat.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.BiFunction;

/** A command run in this process, with what it printed. */
record Run(int code, String out, String err) {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  static Run of(String input, String... arguments) {
    return of(input.getBytes(StandardCharsets.UTF_8), arguments);
  }

  static Run of(byte[] input, String... arguments) {
    return by(Endfloat::run, input, arguments);
  }

  /** By way of the command line library alone. */
  static Run parsed(String input, String... arguments) {
    return parsed(input.getBytes(StandardCharsets.UTF_8), arguments);
  }

  static Run parsed(byte[] input, String... arguments) {
    return by(Endfloat::parsed, input, arguments);
  }

  private static Run by(
      BiFunction<Streams, String[], Integer> way, byte[] input, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Streams streams =
        new Streams(
            new ByteArrayInputStream(input),
            new PrintStream(out, false, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    int code = way.apply(streams, arguments);
    return new Run(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  JsonNode json() {
    try {
      return MAPPER.readTree(out);
    } catch (IOException e) {
      throw new UncheckedIOException(out, e);
    }
  }

  /** The result of this name. */
  JsonNode result(String name) {
    for (JsonNode one : json().path("results")) {
      if (one.path("name").asText().equals(name)) {
        return one;
      }
    }
    throw new AssertionError("no result " + name + " in " + out + err);
  }
}
