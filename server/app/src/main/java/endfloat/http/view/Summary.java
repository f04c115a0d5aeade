package endfloat.http.view;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.LimitCount;
import endfloat.working.LineProblem;
import java.util.Collection;

/** The sheet in a line: how many limits read how, which lines are in error, which values wait. */
final class Summary {
  private Summary() {}

  static ObjectNode of(
      LimitCount limits, Collection<Figure> figures, Collection<ClauseHead> heads) {
    long waiting = figures.stream().filter(f -> f.state() == Figure.State.WAITING).count();
    long errors =
        heads.stream()
            .flatMap(head -> head.problems().stream())
            .filter(one -> one.problem().severity() == LineProblem.Severity.ERROR)
            .count();
    return JsonNodeFactory.instance
        .objectNode()
        .put("outside", limits.outside())
        .put("not_proven", limits.notProven())
        .put("within", limits.within())
        .put("limits_waiting", limits.waiting())
        .put("limits_in_error", limits.inError())
        .put("errors", errors)
        .put("waiting", waiting)
        .put("figures", figures.size());
  }
}
