package endfloat.http.view;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.ClauseProblem;
import endfloat.working.LineProblem;

/** What is wrong, where, and what to do. */
final class ProblemViews {
  private ProblemViews() {}

  static ObjectNode view(LineProblem problem) {
    return JsonNodeFactory.instance
        .objectNode()
        .put("line", problem.span().line())
        .put("from", problem.span().from())
        .put("to", problem.span().to())
        .put("message", problem.message())
        .put("wayOut", problem.wayOut())
        .put("severity", problem.severity().name());
  }

  static ObjectNode view(ClauseProblem problem) {
    ObjectNode view = view(problem.problem());
    if (!problem.at().isEmpty()) {
      view.put("at", problem.at());
    }
    return view;
  }
}
