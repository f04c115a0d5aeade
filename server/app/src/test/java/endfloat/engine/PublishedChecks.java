package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a test's own file of published values; the format stands at the top of that file. */
final class PublishedChecks {
  private static final Pattern EXPECT =
      Pattern.compile("expect (u of )?(\\S+) = (\\S+)\\s*(\\S*) within (\\S+) (relative|absolute)");

  /** One published value with the lines that lead to it. */
  record Published(String id, String source, String lines, List<String> expectations) {
    @Override
    public String toString() {
      return id;
    }

    /** Works the lines out and compares. */
    void hold() {
      SheetOfLines sheet = SheetOfLines.of(lines);
      assertEquals(List.of(), sheet.errors(), id + ", " + source);
      for (String line : expectations) {
        Matcher expected = EXPECT.matcher(line);
        assertTrue(expected.matches(), line);
        SheetOfLines.Result result = sheet.result(expected.group(2)).orElseThrow();
        String unit = expected.group(4).isEmpty() ? "1" : expected.group(4);
        assertEquals(unit, result.unit(), line);
        double wanted = Double.parseDouble(expected.group(3));
        double tolerance = Double.parseDouble(expected.group(5));
        double given = (double) (expected.group(1) == null ? result.value() : result.u());
        assertEquals(
            wanted,
            given,
            expected.group(6).equals("relative") ? tolerance * Math.abs(wanted) : tolerance,
            id + ", " + line + ", " + source);
      }
    }
  }

  private PublishedChecks() {}

  static List<Published> read(String resource) {
    try (InputStream in = PublishedChecks.class.getResourceAsStream(resource)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<Published> all = new ArrayList<>();
      for (String block : text.strip().split("\\R\\s*\\R")) {
        if (block.startsWith("id:")) {
          all.add(block(block));
        }
      }
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Published block(String block) {
    String id = "";
    String source = "";
    List<String> lines = new ArrayList<>();
    List<String> expectations = new ArrayList<>();
    for (String line : block.split("\\R")) {
      if (line.startsWith("id: ")) {
        id = line.substring(4);
      } else if (line.startsWith("source: ")) {
        source = line.substring(8);
      } else if (line.startsWith("expect ")) {
        expectations.add(line);
      } else if (!line.matches("(what|knowledge|note): .*")) {
        lines.add(line);
      }
    }
    return new Published(id, source, String.join("\n", lines), expectations);
  }
}
