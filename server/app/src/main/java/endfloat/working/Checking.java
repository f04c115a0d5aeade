package endfloat.working;

import endfloat.catalogue.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** One line while its kinds are found: what is around it, and the hints gathered so far. */
final class Checking {
  final Catalogue catalogue;
  final Scope scope;
  final List<LineProblem> hints = new ArrayList<>();
  final ExpressionKinds expressions;

  Checking(Catalogue catalogue, Scope scope) {
    this.catalogue = catalogue;
    this.scope = scope;
    this.expressions = new ExpressionKinds(this);
  }

  /** The same catalogue and hints among other names. */
  Checking among(Scope names) {
    Checking inner = new Checking(catalogue, names);
    return inner;
  }

  Operand operand(Expression written) {
    return new Operand(written, expressions.typed(written));
  }

  void hint(Span span, String message, String wayOut) {
    hints.add(new LineProblem(span, message, wayOut, LineProblem.Severity.HINT));
  }

  void warn(Span span, String message, String wayOut) {
    hints.add(new LineProblem(span, message, wayOut, LineProblem.Severity.WARNING));
  }
}
