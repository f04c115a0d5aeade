package endfloat.working;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What the language itself can do to values. The first group are its signs; the others are called
 * by name. All work on SI doubles, temperatures in kelvin, angles in radians.
 */
public enum BuiltIn {
  ADD,
  SUBTRACT,
  MULTIPLY,
  DIVIDE,
  /** Base and exponent; the exponent is often a {@link Typed.Constant}. */
  POWER,
  NEGATE,
  NOT,
  AND,
  OR,

  SIN("sin"),
  COS("cos"),
  TAN("tan"),
  ASIN("asin"),
  ACOS("acos"),
  ATAN("atan"),
  /** y, x: the angle of the point (x, y). */
  ATAN2("atan2"),
  SINH("sinh"),
  COSH("cosh"),
  TANH("tanh"),
  SQRT("sqrt"),
  CBRT("cbrt"),
  EXP("exp"),
  LN("ln"),
  LOG10("log10"),
  ABS("abs"),
  /** Root of the sum of the squares of two or more arguments. */
  HYPOT("hypot"),
  /** x and step: to the nearest multiple of the step, halves away from zero. */
  ROUND("round"),
  /** x and step: down to a multiple of the step. */
  FLOOR("floor"),
  /** x and step: up to a multiple of the step. */
  CEIL("ceil"),
  /** x, a list of x rising or falling, a list of y: straight between points, refused outside. */
  INTERPOLATE("interpolate"),
  /** A temperature as a quantity in kelvin; the number stays. */
  KELVIN("kelvin"),
  /** A quantity in kelvin as a temperature; the number stays. */
  TEMPERATURE("temperature"),

  /** Of two or more arguments by {@link Typed.Apply}, of one series by {@link Typed.Reduce}. */
  MIN("min"),
  MAX("max"),
  MEAN("mean"),
  MEDIAN("median"),
  /** Greatest less least. */
  RANGE("range"),
  /** Only by {@link Typed.Reduce}, as are those that follow. */
  SUM("sum"),
  COUNT("count"),
  /** Standard deviation of a sample, n - 1. */
  SD("sd"),
  /** The value below which a given share of a sample lies. */
  QUANTILE("quantile"),
  FIRST("first"),
  LAST("last");

  private static final Map<String, BuiltIn> BY_NAME =
      Arrays.stream(values())
          .filter(b -> !b.functionName.isEmpty())
          .collect(Collectors.toUnmodifiableMap(b -> b.functionName, Function.identity()));

  private final String functionName;

  BuiltIn() {
    this("");
  }

  BuiltIn(String functionName) {
    this.functionName = functionName;
  }

  /** Name in the language; empty for a sign. */
  public String functionName() {
    return functionName;
  }

  public static Optional<BuiltIn> named(String name) {
    return Optional.ofNullable(BY_NAME.get(name));
  }
}
