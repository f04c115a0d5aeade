package endfloat.child;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.Diagnostic;
import javax.tools.JavaFileObject;

/** What the compiler says, in words for an engineer. */
final class CompilerWords {
  private static final Pattern KINDS =
      Pattern.compile(
          "\\.(Measured|MeasuredSeries)<([\\w.]+)> cannot be converted to"
              + " [\\w.]+\\.(Measured|MeasuredSeries)<([\\w.]+)>");
  private static final Pattern SYMBOL = Pattern.compile("symbol:\\s+(\\w+) (.+)");

  private static final Pattern PACKAGES = Pattern.compile("\\b(?:[a-z]\\w*\\.)+(?=[A-Z])");

  private CompilerWords() {}

  static Problem problem(Diagnostic<? extends JavaFileObject> found, String[] lines) {
    int last = lines.length - 2 - ClauseText.HEAD_LINES;
    int line = (int) found.getLineNumber() - ClauseText.HEAD_LINES;
    int from = Math.max(1, (int) found.getColumnNumber());
    int width = (int) Math.max(1, found.getEndPosition() - found.getPosition());
    String message = found.getMessage(Locale.ROOT);
    if (line < 1) {
      return new Problem(1, 1, 2, first(message), "");
    }
    if (line > Math.max(1, last)) {
      int end = Math.max(1, last);
      return new Problem(
          end,
          1,
          lines[end].length() + 1,
          "The source ends too early.",
          "Close what is open: a brace, a bracket or a comment.");
    }
    int to = Math.max(from + 1, Math.min(from + width, lines[line].length() + 1));
    return new Problem(
        line, from, to, sentence(found.getCode(), message), wayOut(found.getCode(), message));
  }

  private static String sentence(String code, String message) {
    Matcher kinds = KINDS.matcher(message);
    if (kinds.find()) {
      return upper(article(kinds.group(1), kinds.group(2)))
          + " stands where "
          + article(kinds.group(3), kinds.group(4))
          + " is wanted.";
    }
    Matcher symbol = SYMBOL.matcher(message);
    if (code.startsWith("compiler.err.cant.resolve") && symbol.find()) {
      return "There is no " + symbol.group(1) + " " + symbol.group(2).strip() + ".";
    }
    return switch (code) {
      case "compiler.err.not.stmt" -> "This is no statement.";
      case "compiler.err.premature.eof" -> "The source ends too early.";
      case "compiler.err.unclosed.str.lit" -> "This text has no closing quote.";
      case "compiler.err.unreported.exception.need.to.catch.or.throw" ->
          first(message).replace("unreported exception", "Here may be thrown");
      default -> upper(first(message));
    };
  }

  private static String wayOut(String code, String message) {
    if (code.startsWith("compiler.err.cant.resolve")) {
      return "A value of the record is read by its name in camel case: lash_cold is lashCold.";
    }
    return code.equals("compiler.err.prob.found.req") && message.contains("Measured")
        ? "Convert it, or say with as(…) what kind of quantity it is."
        : "";
  }

  private static String article(String form, String kind) {
    String name = kind.substring(kind.lastIndexOf('.') + 1);
    String words = name.replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
    String one = (words.matches("[aeiou].*") ? "an " : "a ") + words;
    return form.equals("MeasuredSeries") ? "a series of " + words : one;
  }

  /** The first line, classes by their short names. */
  private static String first(String message) {
    return PACKAGES.matcher(message.lines().findFirst().orElse(message).strip()).replaceAll("");
  }

  private static String upper(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
