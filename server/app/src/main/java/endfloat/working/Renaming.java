package endfloat.working;

import java.util.List;

/** Gives a value another name in lines and formulas as they were typed; all else stays as it is. */
public final class Renaming {
  private Renaming() {}

  /** The lines of a working, with the name exchanged. */
  public static String inLines(String text, String from, String to) {
    return exchanged(text, Parser.parse(text).tokens(), from, to);
  }

  /** One formula, such as what a row of a schedule measures, with the name exchanged. */
  public static String inFormula(String text, String from, String to) {
    return exchanged(text, Parser.expression(text).tokens(), from, to);
  }

  /** Whether the language takes this for the name of a value. */
  public static boolean isName(String text) {
    List<Line> lines = Parser.parse(text + " = 1").lines();
    return lines.size() == 1
        && lines.get(0) instanceof Line.Definition line
        && line.name().equals(text);
  }

  private static String exchanged(String text, List<Token> tokens, String from, String to) {
    SourceText source = new SourceText(text);
    StringBuilder into = new StringBuilder();
    int done = 0;
    for (Token token : tokens) {
      int start = source.start(token.span().line()) + token.span().from() - 1;
      int end = source.start(token.span().line()) + token.span().to() - 1;
      if (token.kind().equals("name") && Letters.name(text.substring(start, end)).equals(from)) {
        into.append(text, done, start).append(to);
        done = end;
      }
    }
    return into.append(text, done, text.length()).toString();
  }
}
