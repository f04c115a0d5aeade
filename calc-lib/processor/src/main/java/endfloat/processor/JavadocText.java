package endfloat.processor;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a Javadoc comment says, as plain text.
 *
 * @param summary first sentence
 * @param rest what follows it
 * @param parameters text of each {@code @param}
 * @param result text of {@code @return}
 */
record JavadocText(String summary, String rest, Map<String, String> parameters, String result) {
  private static final Pattern TAG = Pattern.compile("(?m)^\\s*@(\\w+)\\s+");
  private static final Pattern LINK = Pattern.compile("(?:.*[#.])?(\\w+)(?:\\([^)]*\\))?(\\s.*)?");
  private static final Pattern INLINE = Pattern.compile("\\{@(\\w+)\\s+([^}]*)}");

  static JavadocText of(String comment) {
    String text = comment == null ? "" : comment;
    Matcher tag = TAG.matcher(text);
    int bodyEnd = tag.find() ? tag.start() : text.length();
    String body = plain(text.substring(0, bodyEnd));
    int end = endOfSentence(body);
    Map<String, String> parameters = new LinkedHashMap<>();
    String result = "";
    for (int at = bodyEnd; at < text.length(); ) {
      Matcher here = TAG.matcher(text).region(at, text.length());
      if (!here.find()) {
        break;
      }
      int next = here.find() ? here.start() : text.length();
      here.region(at, text.length()).find();
      String content = plain(text.substring(here.end(), next));
      if (here.group(1).equals("param")) {
        int space = content.indexOf(' ');
        if (space > 0) {
          parameters.put(content.substring(0, space), content.substring(space + 1));
        }
      } else if (here.group(1).equals("return")) {
        result = content;
      }
      at = next;
    }
    return new JavadocText(body.substring(0, end), body.substring(end).strip(), parameters, result);
  }

  private static int endOfSentence(String body) {
    int end = body.indexOf(". ");
    return end < 0 ? body.length() : end + 1;
  }

  private static String plain(String text) {
    Matcher inline = INLINE.matcher(text);
    StringBuilder out = new StringBuilder();
    while (inline.find()) {
      inline.appendReplacement(
          out, Matcher.quoteReplacement(shown(inline.group(1), inline.group(2).strip())));
    }
    inline.appendTail(out);
    return out.toString()
        .replaceAll("</?[a-zA-Z][^>]*>", " ")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&")
        .replaceAll("\\s+", " ")
        .strip();
  }

  /** What a reader sees of an inline tag; a link to a calculation is its name in the language. */
  private static String shown(String tag, String text) {
    Matcher link = LINK.matcher(text);
    if (!tag.startsWith("link") || !link.matches()) {
      return text;
    }
    return link.group(2) == null || link.group(2).isBlank()
        ? Names.snake(link.group(1))
        : link.group(2).strip();
  }
}
