package endfloat.http.view;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.DecisionRule;
import endfloat.engine.GraphSettings;
import endfloat.engine.Judgement;
import endfloat.engine.LimitShown;
import endfloat.engine.Shown;
import endfloat.engine.Verdict;
import endfloat.picture.LimitStrip;
import endfloat.units.Unit;
import java.util.Locale;
import java.util.Optional;

/** A limit with its verdict, and the strip that shows the value between its limits. */
final class LimitViews {
  private final GraphSettings settings;

  LimitViews(GraphSettings settings) {
    this.settings = settings;
  }

  /**
   * What is judged.
   *
   * @param si the value [SI]
   * @param u its standard uncertainty [SI]
   * @param unit it is shown in
   * @param shown as printed
   */
  record Judged(double si, double expanded, Unit unit, Shown shown) {}

  /**
   * @param drawn whether the strip comes too: of a long series only the worst station's does
   * @param asNew the limits of a new part, which the strip shows beside those that judge
   */
  ObjectNode view(Judgement limit, Judged judged, boolean drawn, Optional<Judgement> asNew) {
    ObjectNode view = JsonNodeFactory.instance.objectNode();
    LimitShown ends = LimitShown.of(limit, judged.unit());
    view.put("low", ends.low()).put("high", ends.high()).put("unit", ends.unit());
    view.put("authority", limit.authority()).put("condition", limit.condition());
    view.put("state", limit.state()).put("rule", limit.rule().word());
    view.put("verdict", limit.verdict().word());
    view.put("probability", probability(limit.probability(), judged.expanded() == 0));
    view.put("cell", limit.clause()).put("line", limit.line());
    if (!limit.field().isEmpty()) {
      view.put("field", limit.field());
    }
    if (drawn) {
      view.put("strip", strip(limit, judged, ends, asNew).svg());
    }
    return view;
  }

  /**
   * A strip that shows where a value was before, and how it moved.
   *
   * @param before the value then [SI], in the unit of this one
   * @param verdictBefore on the same limit
   */
  String moved(Judgement limit, Judged judged, double before, Verdict verdictBefore) {
    LimitShown ends = LimitShown.of(limit, judged.unit());
    return strip(limit, judged, ends, Optional.empty())
        .svgFrom(judged.unit().fromSi(before), mark(verdictBefore));
  }

  private LimitStrip strip(
      Judgement limit, Judged judged, LimitShown ends, Optional<Judgement> asNew) {
    double expanded = Math.abs(judged.unit().interval().fromSi(judged.expanded()));
    return new LimitStrip(
        judged.unit().fromSi(judged.si()),
        expanded,
        end(limit.low(), judged.unit(), ends.low()),
        end(limit.high(), judged.unit(), ends.high()),
        limit.rule() == DecisionRule.GUARDED ? expanded : 0,
        mark(limit.verdict()),
        judged.shown().text(),
        judged.shown().unit(),
        asNew
            .map(
                one ->
                    new LimitStrip.Fresh(
                        judged.unit().fromSi(one.low()), judged.unit().fromSi(one.high())))
            .orElse(null));
  }

  private static LimitStrip.Limit end(double si, Unit unit, String text) {
    return Double.isNaN(si) ? null : new LimitStrip.Limit(unit.fromSi(si), text);
  }

  private static LimitStrip.Mark mark(Verdict verdict) {
    return switch (verdict) {
      case WITHIN -> LimitStrip.Mark.WITHIN;
      case NOT_PROVEN -> LimitStrip.Mark.NOT_PROVEN;
      case OUTSIDE -> LimitStrip.Mark.OUTSIDE;
    };
  }

  /**
   * Whole per cent; finer near the ends, where it matters. Only an exact value is certain. Empty
   * where it is not known.
   */
  static String probability(double p, boolean exact) {
    if (Double.isNaN(p)) {
      return "";
    }
    double percent = 100 * p;
    if (percent > 99.9) {
      return exact ? "100 %" : "> 99.9 %";
    }
    if (percent < 0.1) {
      return exact ? "0 %" : "< 0.1 %";
    }
    boolean nearAnEnd = percent < 5 || percent > 95;
    return String.format(Locale.ROOT, nearAnEnd ? "%.1f %%" : "%.0f %%", percent);
  }
}
