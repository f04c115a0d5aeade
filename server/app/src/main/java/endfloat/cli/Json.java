package endfloat.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.PrintStream;

/** Pretty JSON out, each number the shortest that reads back as the same double on every JDK. */
final class Json {
  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build())
          .build();

  private Json() {}

  static void print(PrintStream out, JsonNode json) {
    try {
      out.println(MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(json));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree can always be written", e);
    }
  }
}
