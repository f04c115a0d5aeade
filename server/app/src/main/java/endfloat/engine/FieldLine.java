package endfloat.engine;

import java.util.List;

/**
 * A line of a clause that is entered by fields: what each part of it is, and at which place of the
 * clause it was entered. Its name has a point in it, so that no working can clash with it or read
 * it.
 */
public sealed interface FieldLine {
  /** The name that it gives or judges, such as {@code c9.21-1}. */
  String name();

  /**
   * What was entered at a place.
   *
   * @param at JSON Pointer inside the clause
   */
  record Entered(String at, String text) {
    boolean isBlank() {
      return text.isBlank();
    }
  }

  /**
   * A value.
   *
   * @param title what it is, in words
   * @param unit to show it in; a bare number is in it
   */
  record Stated(String name, String title, Entered unit, Entered text) implements FieldLine {}

  /**
   * A limit on a value.
   *
   * @param unit of bare numbers
   * @param decides whether its verdict is one of the record's; else it is only compared with
   */
  record Bounds(
      String name,
      String unit,
      Entered low,
      Entered high,
      String authority,
      String condition,
      String state,
      Entered rule,
      boolean decides)
      implements FieldLine {}

  /** A value with limits that nobody has measured: it has no figure, its limits wait. */
  record Unmeasured(String name, String title) implements FieldLine {}

  /** A value compared with another of the same kind, which it should reach; decides nothing. */
  record Reaches(String name, String other, String at) implements FieldLine {}

  /** What is left of a value when others are taken from it. */
  record Remainder(String name, String title, Entered unit, String of, List<String> less)
      implements FieldLine {}
}
