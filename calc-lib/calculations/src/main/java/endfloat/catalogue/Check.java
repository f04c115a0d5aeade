package endfloat.catalogue;

import java.util.List;
import java.util.Map;

/**
 * A value from outside the project that a calculation must reach.
 *
 * @param calculation whose check it is
 * @param id stable name
 * @param what is calculated, one line
 * @param source standard and clause, handbook and table
 * @param knowledge verified, memory, derived or common-practice
 * @param readings with stations that the lines use; most checks have none
 * @param lines of the working language
 * @param expectations what the lines must give
 */
public record Check(
    String calculation,
    String id,
    String what,
    String source,
    String knowledge,
    List<Station> readings,
    List<String> lines,
    List<Expectation> expectations) {

  /**
   * One value of a reading with stations, written {@code reading: d [mm] plane=top direction=thrust
   * = 80.012}.
   *
   * @param at label by axis, in the order written
   * @param taken decimal text in the unit
   */
  public record Station(String name, String unit, Map<String, String> at, String taken) {}

  /** One demand of a check. */
  public sealed interface Expectation {}

  /**
   * Numbers in a unit within a tolerance.
   *
   * @param place a name, or name.field
   * @param values as printed by the source; several for a list
   * @param unit empty for a pure number
   * @param tolerance 0 for exactly
   * @param relative or in the unit of the values
   */
  public record Numbers(
      String place, List<String> values, String unit, double tolerance, boolean relative)
      implements Expectation {}

  /** A text, or a truth as yes or no. */
  public record Words(String place, String text) implements Expectation {}

  /** One of the lines is refused with these words in its message. */
  public record Refusal(String words) implements Expectation {}

  /** The source of the lines. */
  public String text() {
    return String.join("\n", lines);
  }
}
