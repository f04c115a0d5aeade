package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.GraphSettings;
import endfloat.engine.Judgement;
import endfloat.engine.Shown;
import endfloat.engine.Value;
import endfloat.engine.Verdict;
import endfloat.review.Comparison;
import endfloat.review.Comparison.Point;
import endfloat.review.Comparison.Row;
import endfloat.review.ComparisonJson;
import java.util.List;
import java.util.Optional;

/** A comparison as the page shows it: with a strip for each limit, the mark before and after. */
public final class ComparisonView {
  private final GraphSettings settings;
  private final LimitViews limits;

  private ComparisonView(Comparison comparison) {
    this.settings = comparison.right().graph().settings();
    this.limits = new LimitViews(settings);
  }

  /** All of it. */
  public static ObjectNode of(Comparison comparison) {
    return ComparisonJson.of(comparison, new ComparisonView(comparison)::strips);
  }

  private void strips(Row row, ObjectNode entry) {
    if (row.right().isEmpty() || !(row.right().get().value() instanceof Value.Scalar to)) {
      return;
    }
    Point after = row.right().get();
    Optional<Shown> shown = after.shown(settings);
    if (shown.isEmpty() || after.judgements().isEmpty()) {
      return;
    }
    LimitViews.Judged judged =
        new LimitViews.Judged(to.si(), after.expanded(settings), after.unit(settings), shown.get());
    ArrayNode list = entry.putArray("limits");
    List<Judgement> all = after.judgements();
    for (int i = 0; i < all.size(); i++) {
      Judgement limit = all.get(i);
      ObjectNode view = limits.view(limit, judged, false, Optional.empty());
      before(row, i, limit)
          .ifPresentOrElse(
              was -> {
                view.put("was", was.word());
                double from = ((Value.Scalar) row.left().orElseThrow().value()).si();
                view.put("strip", limits.moved(limit, judged, from, was));
              },
              () -> view.setAll(limits.view(limit, judged, true, Optional.empty())));
      list.add(view);
    }
  }

  /** The verdict on the same limit before; none where there was no value, or another limit. */
  private static Optional<Verdict> before(Row row, int at, Judgement limit) {
    if (row.left().isEmpty()
        || row.difference().isEmpty()
        || at >= row.left().get().judgements().size()) {
      return Optional.empty();
    }
    Judgement was = row.left().get().judgements().get(at);
    boolean same =
        Double.compare(was.low(), limit.low()) == 0
            && Double.compare(was.high(), limit.high()) == 0;
    return same ? Optional.of(was.verdict()) : Optional.empty();
  }
}
