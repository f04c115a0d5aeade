package endfloat.catalogue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a check file: blocks parted by a blank line, {@code key: text}, lines of the working
 * language, {@code expect ...}.
 */
final class CheckFile {
  private static final Pattern KEY = Pattern.compile("(id|what|source|knowledge|note):\\s*(.*)");
  private static final Pattern STATION =
      Pattern.compile("reading: (\\w+) \\[(.+?)]((?: \\w+=\\S+)+) = (\\S+)");
  private static final Pattern REFUSAL = Pattern.compile("expect error containing \"(.*)\"");
  private static final Pattern WORDS = Pattern.compile("expect ([\\w.]+) = \"(.*)\"(?: exactly)?");
  private static final Pattern NUMBERS =
      Pattern.compile(
          "expect ([\\w.]+) = (-?[0-9][-0-9.e+]*(?:\\s*,\\s*-?[0-9][-0-9.e+]*)*)\\s*(.*?)"
              + "\\s+(?:within ([-0-9.e+]+) (relative|absolute)|exactly)");

  private CheckFile() {}

  /**
   * @throws IllegalArgumentException if a line cannot be read; names it
   */
  static List<Check> read(String calculation, String text) {
    List<Check> checks = new ArrayList<>();
    for (String block : text.strip().split("\\R\\s*\\R", -1)) {
      checks.add(block(calculation, block));
    }
    return checks;
  }

  private static Check block(String calculation, String block) {
    Map<String, String> about = new HashMap<>();
    List<Check.Station> readings = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    List<Check.Expectation> expectations = new ArrayList<>();
    for (String line : block.split("\\R", -1)) {
      Matcher key = KEY.matcher(line);
      if (key.matches()) {
        about.merge(key.group(1), key.group(2), (a, b) -> a + " " + b);
      } else if (line.startsWith("reading: ")) {
        readings.add(station(calculation, line));
      } else if (line.startsWith("expect ")) {
        expectations.add(expectation(calculation, line));
      } else if (!line.isBlank()) {
        lines.add(line);
      }
    }
    if (expectations.isEmpty()
        || !about.keySet().containsAll(List.of("id", "source", "knowledge"))) {
      throw new IllegalArgumentException(
          calculation
              + ": a check has id, source, knowledge and at least one expect line: "
              + block);
    }
    return new Check(
        calculation,
        about.get("id"),
        about.getOrDefault("what", ""),
        about.get("source"),
        about.get("knowledge"),
        List.copyOf(readings),
        List.copyOf(lines),
        List.copyOf(expectations));
  }

  private static Check.Station station(String calculation, String line) {
    Matcher station = STATION.matcher(line.strip());
    if (!station.matches()) {
      throw new IllegalArgumentException(
          calculation + ": this reading line cannot be read: " + line);
    }
    Map<String, String> at = new LinkedHashMap<>();
    for (String label : station.group(3).strip().split(" ", -1)) {
      String[] axisAndLabel = label.split("=", 2);
      at.put(axisAndLabel[0], axisAndLabel[1]);
    }
    return new Check.Station(
        station.group(1), station.group(2), Collections.unmodifiableMap(at), station.group(4));
  }

  private static Check.Expectation expectation(String calculation, String line) {
    Matcher refusal = REFUSAL.matcher(line.strip());
    if (refusal.matches()) {
      return new Check.Refusal(refusal.group(1));
    }
    Matcher words = WORDS.matcher(line.strip());
    if (words.matches()) {
      return new Check.Words(words.group(1), words.group(2));
    }
    Matcher numbers = NUMBERS.matcher(line.strip());
    if (numbers.matches()) {
      double tolerance = numbers.group(4) == null ? 0 : Double.parseDouble(numbers.group(4));
      return new Check.Numbers(
          numbers.group(1),
          List.of(numbers.group(2).split("\\s*,\\s*")),
          numbers.group(3),
          tolerance,
          "relative".equals(numbers.group(5)));
    }
    throw new IllegalArgumentException(calculation + ": this expect line cannot be read: " + line);
  }
}
