package endfloat.working;

import endfloat.catalogue.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** One line while its kinds are found: what is around it, and the hints gathered so far. */
final class Checking {
  final Catalogue catalogue;
  final Defaults defaults;
  final Scope scope;
  final List<LineProblem> hints = new ArrayList<>();
  final ExpressionKinds expressions;

  Checking(Catalogue catalogue, Defaults defaults, Scope scope) {
    this.catalogue = catalogue;
    this.defaults = defaults;
    this.scope = scope;
    this.expressions = new ExpressionKinds(this);
  }

  /** The same line among other names. */
  Checking among(Scope names) {
    return new Checking(catalogue, defaults, names);
  }

  Operand operand(Expression written) {
    return new Operand(written, expressions.typed(written));
  }

  void hint(Span span, String message, String wayOut) {
    add(new LineProblem(span, message, wayOut, LineProblem.Severity.HINT));
  }

  void warn(Span span, String message, String wayOut) {
    add(new LineProblem(span, message, wayOut, LineProblem.Severity.WARNING));
  }

  /** Once, though a part of a line may be looked at twice. */
  private void add(LineProblem problem) {
    if (!hints.contains(problem)) {
      hints.add(problem);
    }
  }
}
