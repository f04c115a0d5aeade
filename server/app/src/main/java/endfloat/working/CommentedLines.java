package endfloat.working;

import java.util.ArrayList;
import java.util.List;

/** Comments that are themselves lines over known names: put out of use, or kept by mistake. */
public final class CommentedLines {
  private CommentedLines() {}

  /** A warning for each, at its place in the working. */
  public static List<LineProblem> in(String text, Working working, Scope scope) {
    SourceText source = new SourceText(text);
    List<LineProblem> warnings = new ArrayList<>();
    for (Token token : working.tokens()) {
      if (token.kind().equals("comment")) {
        int start = source.start(token.span().line());
        String comment =
            text.substring(start + token.span().from() - 1, start + token.span().to() - 1);
        if (isLine(comment.replaceFirst("^-+", ""), scope)) {
          warnings.add(
              new LineProblem(
                  token.span(),
                  "This comment is a line that could be reckoned",
                  "Take the dashes out if it should count",
                  LineProblem.Severity.WARNING));
        }
      }
    }
    return warnings;
  }

  private static boolean isLine(String comment, Scope scope) {
    if (comment.indexOf('=') < 0 && comment.indexOf(':') < 0) {
      return false;
    }
    Working inner = Parser.parse(comment);
    return inner.problems().isEmpty()
        && inner.lines().size() == 1
        && References.of(inner.lines().get(0)).stream().allMatch(n -> scope.kindOf(n).isPresent());
  }
}
