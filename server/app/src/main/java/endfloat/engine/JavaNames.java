package endfloat.engine;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of the record as Java source writes them: {@code lash_cold} is {@code lashCold}. */
final class JavaNames {
  private static final Pattern WORDS =
      Pattern.compile(
          "//[^\\n]*|/\\*[\\s\\S]*?\\*/|\"\"\"[\\s\\S]*?\"\"\"|\"(?:\\\\.|[^\"\\\\\\n])*\"|'(?:\\\\.|[^'\\\\\\n])*'"
              + "|(\\.\\s*)?\\b([a-z][A-Za-z0-9]*)\\b(\\s*\\()?");
  private static final Pattern STEP = Pattern.compile("_([A-Za-z0-9])|\\.([A-Za-z0-9])");

  private JavaNames() {}

  /** A column of a table, {@code wear.lash}, is {@code wearLash}. */
  static String camel(String name) {
    Matcher step = STEP.matcher(name);
    StringBuilder camel = new StringBuilder();
    while (step.find()) {
      String letter = step.group(1) == null ? step.group(2) : step.group(1);
      step.appendReplacement(camel, letter.toUpperCase(Locale.ROOT));
    }
    return step.appendTail(camel).toString();
  }

  /** The names that a source may mean, among them many that the record does not have. */
  static Set<String> maybeRead(String source) {
    Set<String> names = new LinkedHashSet<>();
    Matcher word = WORDS.matcher(source);
    while (word.find()) {
      if (word.group(2) != null && word.group(1) == null && word.group(3) == null) {
        names.addAll(candidates(word.group(2)));
      }
    }
    return names;
  }

  private static Set<String> candidates(String camel) {
    Set<String> names = new LinkedHashSet<>();
    names.add(camel);
    String kept = camel.replaceAll("([a-z0-9])([A-Z])", "$1_$2");
    for (String snake : List.of(kept, kept.toLowerCase(Locale.ROOT))) {
      names.add(snake);
      names.add(snake.replaceAll("([a-z])([0-9])", "$1_$2"));
      for (int at = snake.indexOf('_'); at >= 0; at = snake.indexOf('_', at + 1)) {
        names.add(snake.substring(0, at) + "." + snake.substring(at + 1));
      }
    }
    return names;
  }
}
