package endfloat.working;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The words of the table of terms by what they mean, so that who looks for a thing finds it by any
 * of its names: end float and end play, gudgeon pin, piston pin and wrist pin.
 */
public final class TradeWords {
  private static final Map<String, String> CHIEF = chief();

  private static final Pattern ANY =
      Pattern.compile(
          CHIEF.keySet().stream()
              .sorted(Comparator.comparingInt(String::length).reversed())
              .map(Pattern::quote)
              .collect(Collectors.joining("|", "(?<!\\S)(", ")s?(?!\\S)")));

  private TradeWords() {}

  /** Each word of the table with the one that stands for its meaning, both plain. */
  private static Map<String, String> chief() {
    Map<String, String> chief = new HashMap<>();
    for (String[] pair : pairs()) {
      String first = spaced(pair[0]);
      String other = spaced(pair[1]);
      String known = chief.getOrDefault(first, chief.getOrDefault(other, first));
      String merged = chief.getOrDefault(other, other);
      chief.replaceAll((word, meaning) -> meaning.equals(merged) ? known : meaning);
      chief.put(first, known);
      chief.put(other, known);
    }
    return chief;
  }

  private static List<String[]> pairs() {
    try (InputStream in = TradeWords.class.getResourceAsStream("terms.txt");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return lines
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> line.split("\\s*\\|\\s*|\\s+=\\s+", -1))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the table of terms", e);
    }
  }

  /** The words of a text as they stand, in small letters. */
  static List<String> plain(String text) {
    return words(spaced(text));
  }

  private static List<String> words(String spaced) {
    return spaced.isEmpty() ? List.of() : List.of(spaced.split(" ", -1));
  }

  /** Small letters, blanks for whatever is neither letter nor digit. */
  private static String spaced(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
  }

  /** The words of a text, each by the one that stands for its meaning. */
  public static List<String> of(String text) {
    String meant =
        ANY.matcher(spaced(text)).replaceAll(m -> Matcher.quoteReplacement(CHIEF.get(m.group(1))));
    return words(meant);
  }

  /** The words of a text that go by other names too, with those names. */
  public static Map<String, List<String>> otherwise(String text) {
    Map<String, List<String>> others = new LinkedHashMap<>();
    Matcher found = ANY.matcher(spaced(text));
    while (found.find()) {
      String word = found.group(1);
      List<String> same = new ArrayList<>();
      for (String[] pair : pairs()) {
        for (String other : pair) {
          if (CHIEF.get(word).equals(CHIEF.get(spaced(other)))
              && !spaced(other).equals(word)
              && !same.contains(other)) {
            same.add(other);
          }
        }
      }
      others.put(word, same);
    }
    return others;
  }
}
