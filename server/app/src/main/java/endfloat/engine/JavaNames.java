package endfloat.engine;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of the record as Java source writes them: {@code lash_cold} is {@code lashCold}. */
public final class JavaNames {
  /**
   * Comments, texts and characters, which hold no names; then words, with what stands before and
   * behind them: those behind a point, those that are called and those of classes are Java's own.
   */
  private static final Pattern WORDS =
      Pattern.compile(
          "//[^\\n]*|/\\*[\\s\\S]*?\\*/|\"\"\"[\\s\\S]*?\"\"\"|\"(?:\\\\.|[^\"\\\\\\n])*\"|'(?:\\\\.|[^'\\\\\\n])*'"
              + "|((?<!\\bthis)\\.\\s*)?(?<![\\p{L}\\p{N}_$])(\\p{L}[\\p{L}\\p{N}_$]*)(\\s*\\(|\\s*\\.\\s*class\\b)?",
          Pattern.UNICODE_CHARACTER_CLASS);

  private static final Pattern STEP = Pattern.compile("[_.]([\\p{L}\\p{N}])");
  private static final Pattern FIELD = Pattern.compile("\\s*\\.\\s*(\\p{L}[\\p{L}\\p{N}_$]*)");

  /** Before a capital behind a small letter or a digit, as in boreOD; before every capital. */
  private static final List<String> PARTINGS =
      List.of("(?<=[\\p{Ll}\\p{N}])(?=\\p{Lu})", "(?<=[\\p{L}\\p{N}])(?=\\p{Lu})");

  private static final int MOST_WORDS = 5;

  private JavaNames() {}

  /** A column of a table, {@code wear.lash}, is {@code wearLash}. */
  public static String camel(String name) {
    return STEP.matcher(name).replaceAll(step -> step.group(1).toUpperCase(Locale.ROOT));
  }

  /** The names that a source may mean, among them many that the record does not have. */
  static Set<String> maybeRead(String source) {
    Set<String> names = new LinkedHashSet<>();
    Matcher word = WORDS.matcher(source);
    while (word.find()) {
      if (isName(word)) {
        names.addAll(candidates(word.group(2)));
      }
    }
    return names;
  }

  /**
   * The fields of a record of results that a source names, as Java writes them; empty where it
   * takes the record as a whole.
   */
  static Set<String> fieldsRead(String source, String java) {
    Set<String> fields = new LinkedHashSet<>();
    Matcher word = WORDS.matcher(source);
    Matcher field = FIELD.matcher(source);
    while (word.find()) {
      if (isName(word) && word.group(2).equals(java)) {
        if (!field.region(word.end(2), source.length()).lookingAt()) {
          return Set.of();
        }
        fields.add(field.group(1));
      }
    }
    return fields;
  }

  /** The source with one name for another; texts and comments stay as they are. */
  public static String renamed(String source, String from, String to) {
    Matcher word = WORDS.matcher(source);
    StringBuilder renamed = new StringBuilder();
    int done = 0;
    while (word.find()) {
      if (isName(word) && word.group(2).equals(from)) {
        renamed.append(source, done, word.start(2)).append(to);
        done = word.end(2);
      }
    }
    return renamed.append(source.substring(done)).toString();
  }

  private static boolean isName(Matcher word) {
    return word.group(2) != null && word.group(1) == null && word.group(3) == null;
  }

  /** Where the words of a name may part, what of it may be small letters, where a point may be. */
  private static Set<String> candidates(String camel) {
    Set<String> names = new LinkedHashSet<>(Set.of(camel));
    for (String parting : PARTINGS) {
      String[] words = camel.split(parting);
      Set<String> snakes = new LinkedHashSet<>(Set.of(String.join("_", words)));
      snakes.addAll(small(words));
      for (String snake : snakes) {
        withPoints(snake, names);
        withPoints(snake.replaceAll("(\\p{Ll})(\\p{N})", "$1_$2"), names);
      }
    }
    return names;
  }

  /** The words in small letters, but for the first; one as short as A1 may be a letter itself. */
  private static List<String> small(String[] words) {
    List<String> snakes = List.of(words[0]);
    for (int i = 1; i < words.length; i++) {
      String word = words[i];
      Set<String> either = new LinkedHashSet<>(Set.of(word.toLowerCase(Locale.ROOT)));
      if (word.length() <= 2 && words.length <= MOST_WORDS) {
        either.add(word);
      }
      snakes =
          snakes.stream()
              .flatMap(before -> either.stream().map(one -> before + "_" + one))
              .toList();
    }
    return snakes;
  }

  private static void withPoints(String snake, Set<String> names) {
    names.add(snake);
    for (int at = snake.indexOf('_'); at >= 0; at = snake.indexOf('_', at + 1)) {
      names.add(snake.substring(0, at) + "." + snake.substring(at + 1));
    }
  }
}
