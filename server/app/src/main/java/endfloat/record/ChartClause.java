package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * What a chart shows.
 *
 * @param chart {@code against}, {@code round}, {@code spread}, {@code calculation}; of columns
 *     {@code histogram}, {@code scatter}, {@code box}, {@code run}
 * @param of expression: the result shown
 * @param input name that the result is drawn against
 * @param from expression: where that begins
 * @param to expression: where it ends
 * @param points how many are worked out; 0 where none is said
 * @param axis of the stations round a wheel
 * @param count stations in a whole turn; 0 where none is said
 */
public record ChartClause(
    String chart,
    String of,
    String input,
    String from,
    String to,
    int points,
    String axis,
    int count) {

  static ChartClause of(JsonNode clause) {
    return new ChartClause(
        Texts.text(clause, "chart"),
        Texts.text(clause, "of"),
        Texts.text(clause, "input"),
        Texts.text(clause, "from"),
        Texts.text(clause, "to"),
        clause.path("points").asInt(0),
        Texts.text(clause, "axis"),
        clause.path("count").asInt(0));
  }
}
