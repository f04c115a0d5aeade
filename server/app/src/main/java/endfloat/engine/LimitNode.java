package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.engine.Value.Series;
import endfloat.units.Unit;
import endfloat.working.Checked;
import endfloat.working.Line;
import endfloat.working.Span;
import endfloat.working.Typed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A limit line: judges a value, or each element of a series. */
final class LimitNode extends LineNode {
  private Term place;
  private Optional<Term> low = Optional.empty();
  private Optional<Term> high = Optional.empty();
  private Optional<Unit> unitTyped = Optional.empty();
  private List<Judgement> judgements = List.of();
  private List<Judgement> judging = List.of();

  private String judged = "";

  private final boolean decides;

  LimitNode(String clause, Piece piece, Line.Limit line) {
    this(clause, piece, line, true);
  }

  /**
   * @param decides whether its verdict counts as one of the value's; else the value is only
   *     compared with it
   */
  LimitNode(String clause, Piece piece, Line.Limit line, boolean decides) {
    super(clause, piece, line);
    this.decides = decides;
  }

  boolean decides() {
    return decides;
  }

  Line.Limit limit() {
    return (Line.Limit) line();
  }

  /** Name of the value that it is a limit on, or on a field of which. */
  String judged() {
    return judged.isEmpty() ? limit().place().name() : judged;
  }

  @Override
  String name() {
    return "";
  }

  @Override
  String owner() {
    return "limit " + limit().place().name();
  }

  /** One for each element of a series, else one; none while it cannot be judged. */
  List<Judgement> judgements() {
    if (judgements.isEmpty()) {
      return judgements;
    }
    String typedLow = LimitDigits.of(limit().low(), this);
    String typedHigh = LimitDigits.of(limit().high(), this);
    return judgements.stream().map(j -> j.standing(offset(), typedLow, typedHigh)).toList();
  }

  /** The same without the texts. */
  List<Verdict> verdicts() {
    return judgements.stream().map(Judgement::verdict).toList();
  }

  @Override
  void made(Checked checked, Planner planner) {
    Checked.Limited limited = (Checked.Limited) checked;
    place = planner.plan(limited.place());
    judged = root(limited.place());
    low = limited.low().map(planner::plan);
    high = limited.high().map(planner::plan);
    unitTyped = limited.unit();
    found(null, null, limited.problems());
  }

  /** The name whose value it is, or whose field. */
  private String root(Typed typed) {
    Typed of = typed;
    while (of instanceof Typed.Field field) {
      of = field.of();
    }
    return of instanceof Typed.Name name ? name.name() : limit().place().name();
  }

  /** The field that is judged, below the name. */
  private String field() {
    List<String> fields = limit().place().fields();
    boolean column = !judged.equals(limit().place().name());
    return String.join(".", column ? fields.subList(1, fields.size()) : fields);
  }

  @Override
  Value evaluate(Frame frame) {
    Value value = place.evaluate(frame);
    Value least = low.isPresent() ? low.get().evaluate(frame) : null;
    Value most = high.isPresent() ? high.get().evaluate(frame) : null;
    List<Judgement> all = new ArrayList<>();
    if (value instanceof Series series) {
      Value[] operands = {series, least == null ? series : least, most == null ? series : most};
      Span span = limit().span();
      Elementwise.map(
          operands,
          new Span[] {span, low.map(Term::span).orElse(span), high.map(Term::span).orElse(span)},
          (v, at) -> {
            Scalar lowest = least == null ? null : (Scalar) v[1];
            Scalar highest = most == null ? null : (Scalar) v[2];
            all.add(judge((Scalar) v[0], lowest, highest, series.labelsAt(at), frame));
            return v[0];
          });
    } else {
      all.add(judge((Scalar) value, (Scalar) least, (Scalar) most, Map.of(), frame));
    }
    judging = all;
    return null;
  }

  private Judgement judge(
      Scalar value, Scalar least, Scalar most, Map<String, String> station, Frame frame) {
    if (least != null && most != null && least.si() > most.si()) {
      throw new LineFailure(
          limit().span(),
          "The lower limit lies above the upper one.",
          "Write the lower limit first.");
    }
    double coverage = frame.settings().coverage();
    Conformity conformity = new Conformity();
    if (least != null) {
      side(conformity, value, least, 1, coverage, frame);
    }
    if (most != null) {
      side(conformity, value, most, -1, coverage, frame);
    }
    DecisionRule rule = rule(frame);
    boolean whole = uncarried().isEmpty();
    // the value as read is judged by itself; every other rule needs the whole uncertainty
    boolean judged = whole || rule == DecisionRule.SIMPLE;
    return new Judgement(
        clause(),
        limit().span().line(),
        field(),
        station,
        least == null ? Double.NaN : least.si(),
        most == null ? Double.NaN : most.si(),
        "",
        "",
        unitTyped,
        limit().authority(),
        limit().notes().getOrDefault("condition", ""),
        limit().notes().getOrDefault("state", ""),
        rule,
        judged ? conformity.verdict(rule) : Verdict.NOT_PROVEN,
        whole ? conformity.probability() : Double.NaN,
        limit().comment());
  }

  private static void side(
      Conformity conformity, Scalar value, Scalar limit, int sign, double coverage, Frame frame) {
    Gradient margin = Gradient.combine(sign, value.gradient(), -sign, limit.gradient());
    double u = frame.correlations().standardUncertainty(margin);
    conformity.side(
        sign * (value.si() - limit.si()),
        u,
        Math.max(Math.abs(value.si()), Math.abs(limit.si())),
        coverage,
        frame.correlations().degreesOfFreedom(margin, u));
  }

  /**
   * The rule of the line, else that of the record. Where neither says, a limit with an authority is
   * from a maker's table, which means the value as read: simple; any other is guarded.
   */
  private DecisionRule rule(Frame frame) {
    String noted = limit().notes().get("rule");
    if (noted != null) {
      return DecisionRule.of(noted)
          .orElseThrow(
              () ->
                  new LineFailure(
                      limit().span(),
                      "The rule \"" + noted + "\" is not known.",
                      "Write simple, guarded or probability."));
    }
    return frame
        .settings()
        .rule()
        .orElse(limit().authority().isEmpty() ? DecisionRule.GUARDED : DecisionRule.SIMPLE);
  }

  @Override
  boolean settled() {
    List<Judgement> before = judgements;
    judgements = state() == Figure.State.FRESH ? judging : List.of();
    return !before.equals(judgements);
  }

  @Override
  void stopped() {
    judging = List.of();
    judgements = List.of();
  }
}
