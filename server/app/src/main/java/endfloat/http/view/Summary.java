package endfloat.http.view;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Figure;
import endfloat.engine.Judgement;
import java.util.Collection;

/** The sheet in a line: how many limits read how, what is in error, what waits. */
final class Summary {
  private Summary() {}

  static ObjectNode of(Collection<Figure> figures, Collection<ClauseHead> heads) {
    int[] verdicts = new int[3];
    int waiting = 0;
    for (Figure figure : figures) {
      for (Judgement limit : figure.judgements()) {
        verdicts[limit.verdict().ordinal()]++;
      }
      waiting += figure.state() == Figure.State.WAITING ? 1 : 0;
    }
    long errors =
        heads.stream()
            .flatMap(head -> head.problems().stream())
            .filter(one -> one.problem().severity() == endfloat.working.LineProblem.Severity.ERROR)
            .count();
    return JsonNodeFactory.instance
        .objectNode()
        .put("outside", verdicts[0])
        .put("not_proven", verdicts[1])
        .put("within", verdicts[2])
        .put("errors", errors)
        .put("waiting", waiting)
        .put("figures", figures.size());
  }
}
