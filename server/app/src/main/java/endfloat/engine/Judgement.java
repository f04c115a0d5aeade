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
 * @param unit in which the limit was typed, if in any
 * @param authority document and place; empty for the engineer's own
 * @param condition such as hot or cold
 * @param state new or worn
 * @param probability that the true value lies inside, both limits included
 * @param comment behind the line
 */
public record Judgement(
    String clause,
    int line,
    String field,
    Map<String, String> station,
    double low,
    double high,
    Optional<Unit> unit,
    String authority,
    String condition,
    String state,
    DecisionRule rule,
    Verdict verdict,
    double probability,
    String comment) {

  Judgement movedBy(int lines) {
    return new Judgement(
        clause,
        line + lines,
        field,
        station,
        low,
        high,
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
