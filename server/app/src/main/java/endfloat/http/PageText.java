package endfloat.http;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What one page has of its own: the words at the head of its file, as {@code key: value} lines in a
 * comment, and the content of its frame.
 */
record PageText(Map<String, String> words, String content) {
  private static final String END = "-->\n";

  static PageText of(WebFile file) {
    String text = new String(file.plain(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    int end = text.indexOf(END);
    Map<String, String> words = new HashMap<>();
    text.substring(0, end)
        .lines()
        .filter(line -> line.contains(": "))
        .forEach(
            line ->
                words.put(
                    line.substring(0, line.indexOf(": ")), line.substring(line.indexOf(": ") + 2)));
    return new PageText(Map.copyOf(words), text.substring(end + END.length()).stripTrailing());
  }

  /** Empty where the page says nothing of it. */
  String word(String key) {
    return words.getOrDefault(key, "");
  }

  /** Its style sheets in the order in which they apply, between those of every page. */
  List<String> styles() {
    return List.of(
        ("tokens ground frame " + word("styles") + " print")
            .trim()
            .replaceAll(" +", " ")
            .split(" "));
  }
}
