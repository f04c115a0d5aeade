package endfloat.working;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The words of the trade, British or American, from one table. The program is written in the
 * British ones. Only texts of the program may be said otherwise, never what a person wrote.
 */
public enum Terms {
  BRITISH,
  AMERICAN;

  private static final String OTHERWISE = " = ";

  private static final Map<String, String> TABLE = table();

  private static final Pattern ANY =
      Pattern.compile(
          TABLE.keySet().stream()
              .sorted(Comparator.comparingInt(String::length).reversed())
              .map(Pattern::quote)
              .collect(Collectors.joining("|", "(?<![\\p{L}\\d_])(?:", ")(?![\\p{L}\\d_])")),
          Pattern.CASE_INSENSITIVE);

  private static final Pattern QUOTED_OR_TERM =
      Pattern.compile("\"[^\"]*\"|" + ANY.pattern(), Pattern.CASE_INSENSITIVE);

  private static Map<String, String> table() {
    try (InputStream in = Terms.class.getResourceAsStream("terms.txt");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      Map<String, String> table = new LinkedHashMap<>();
      lines
          .lines()
          .filter(l -> !l.isBlank() && !l.startsWith("#") && !l.contains(OTHERWISE))
          .map(l -> l.split("\\s*\\|\\s*", -1))
          .forEach(pair -> table.put(pair[0].toLowerCase(Locale.ROOT), pair[1]));
      return table;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the table of terms", e);
    }
  }

  /** By the setting of a record: {@code american}, all else is British. */
  public static Terms of(String setting) {
    return "american".equals(setting) ? AMERICAN : BRITISH;
  }

  /** A text of the program in the words of this side, its capitals kept. */
  public String say(String british) {
    if (this == BRITISH) {
      return british;
    }
    return ANY.matcher(british).replaceAll(m -> Matcher.quoteReplacement(american(m.group())));
  }

  /**
   * A text of the program that speaks of what a person wrote. What stands in quotes is left as it
   * is, and so is a word that somebody has for a name.
   *
   * @param names in small letters
   */
  public String say(String british, Set<String> names) {
    if (this == BRITISH) {
      return british;
    }
    StringBuilder said = new StringBuilder();
    Matcher part = QUOTED_OR_TERM.matcher(british);
    while (part.find()) {
      String found = part.group();
      boolean own = found.startsWith("\"") || names.contains(found.toLowerCase(Locale.ROOT));
      part.appendReplacement(said, Matcher.quoteReplacement(own ? found : american(found)));
    }
    return part.appendTail(said).toString();
  }

  private static String american(String british) {
    String said = TABLE.get(british.toLowerCase(Locale.ROOT));
    return Character.isUpperCase(british.charAt(0))
        ? Character.toUpperCase(said.charAt(0)) + said.substring(1)
        : said;
  }

  /** British and American words side by side, in the order of the table. */
  public static List<Map.Entry<String, String>> pairs() {
    return List.copyOf(TABLE.entrySet());
  }
}
