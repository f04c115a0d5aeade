package endfloat.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintStream;

/** Pretty JSON out. */
final class Json {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private Json() {}

  static void print(PrintStream out, JsonNode json) {
    try {
      out.println(MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(json));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree can always be written", e);
    }
  }
}
