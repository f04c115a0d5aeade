package endfloat.engine;

import endfloat.units.Unit;
import endfloat.working.LineProblem;
import java.util.Map;
import java.util.Optional;

/**
 * One limit on one value.
 *
 * @param clause of the limit line
 * @param line of it there, counted from 1
 * @param field of a record of results that is judged; empty for the value itself
 * @param station labels of the element that is judged; empty where the value has none
 * @param low lower limit [SI]; NaN for none
 * @param high upper limit [SI]; NaN for none
 * @param lowTyped digits of the lower limit as typed, in whatever unit; empty where it was worked
 *     out
 * @param highTyped digits of the upper limit as typed
 * @param unit in which the limit was typed, if in any
 * @param authority document and place; empty for the engineer's own
 * @param condition such as hot or cold
 * @param state new or worn
 * @param probability that the true value lies inside, both limits included; NaN where the
 *     uncertainty is not whole
 * @param comment behind the line
 */
public record Judgement(
    String clause,
    int line,
    String field,
    Map<String, String> station,
    double low,
    double high,
    String lowTyped,
    String highTyped,
    Optional<Unit> unit,
    String authority,
    String condition,
    String state,
    DecisionRule rule,
    Verdict verdict,
    double probability,
    String comment) {

  /** The same, lines further down, its digits as they are typed now. */
  Judgement standing(int lines, String typedLow, String typedHigh) {
    return new Judgement(
        clause,
        line + lines,
        field,
        station,
        low,
        high,
        typedLow,
        typedHigh,
        unit,
        authority,
        condition,
        state,
        rule,
        verdict,
        probability,
        comment);
  }

  /** A limit line that could not be judged, with what is wrong with it. */
  public record Unjudged(String clause, int line, LineProblem problem) {}
}
