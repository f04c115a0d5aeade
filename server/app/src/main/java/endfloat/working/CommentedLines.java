package endfloat.working;

import java.util.ArrayList;
import java.util.List;

/** Comments that are themselves lines over known names: put out of use, or kept by mistake. */
public final class CommentedLines {
  private CommentedLines() {}

  /** A warning for each, at its place in the working. */
  public static List<LineProblem> in(String text, Scope scope) {
    List<LineProblem> warnings = new ArrayList<>();
    if (text.indexOf("--") < 0) {
      return warnings;
    }
    for (Piece piece : Piece.of(text)) {
      String lines = text.substring(piece.from(), piece.to());
      int dashes = lines.indexOf("--");
      if (dashes >= 0 && (lines.indexOf('=', dashes) > 0 || lines.indexOf(':', dashes) > 0)) {
        in(lines, piece.firstLine(), scope, warnings);
      }
    }
    return warnings;
  }

  private static void in(String lines, int firstLine, Scope scope, List<LineProblem> warnings) {
    SourceText source = new SourceText(lines);
    for (Token token : Parser.parse(lines).tokens()) {
      if (token.kind().equals("comment")) {
        Span span = token.span();
        int start = source.start(span.line()) - 1;
        String comment = lines.substring(start + span.from(), start + span.to());
        if (isLine(comment.replaceFirst("^-+", ""), scope)) {
          warnings.add(
              new LineProblem(
                  new Span(span.line() + firstLine, span.from(), span.to()),
                  "This comment is a line that could be reckoned",
                  "Take the dashes out if it should count",
                  LineProblem.Severity.WARNING));
        }
      }
    }
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
