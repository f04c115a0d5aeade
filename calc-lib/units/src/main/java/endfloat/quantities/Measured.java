package endfloat.quantities;

import endfloat.units.Dimension;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;

/**
 * A value with its kind and its uncertainty. The gradient holds for each independent source of
 * uncertainty how far the value moves as that source moves by one standard uncertainty [SI], so a
 * difference of two readings with one instrument loses what they share. Immutable.
 *
 * @param <Q> what kind of quantity it is: {@code Length}, {@code Trade.Torque} ...
 */
public final class Measured<Q extends Quantity<Q>> implements Comparable<Measured<Q>> {
  private static final MathContext TWELVE_DIGITS = new MathContext(12);

  private final Class<?> kind;
  private final Dimension dimension;
  private final double si;
  private final Map<String, Double> gradient;

  private Measured(Class<?> kind, Dimension dimension, double si, Map<String, Double> gradient) {
    this.kind = kind;
    this.dimension = dimension;
    this.si = si;
    this.gradient = gradient;
  }

  /**
   * An exact value.
   *
   * @param unit as the working language writes it, such as {@code "mm"} or {@code "lbf.ft"}
   * @throws endfloat.units.UnitException if the unit is unknown
   * @throws IllegalArgumentException if the unit is of another kind
   */
  public static <Q extends Quantity<Q>> Measured<Q> of(double value, String unit, Class<Q> kind) {
    Unit known = UnitTable.find(unit);
    hold(kind, known.dimension(), unit);
    holdPoint(kind == (Class<?>) Temperature.class, known);
    return new Measured<>(kind, known.dimension(), known.toSi(value), Map.of());
  }

  /** A pure number. */
  public static Measured<Dimensionless> number(double value) {
    return new Measured<>(Dimensionless.class, Dimension.NONE, value, Map.of());
  }

  /**
   * A value in SI with its gradient.
   *
   * @param gradient by source, one standard uncertainty each [SI]
   */
  public static <Q extends Quantity<Q>> Measured<Q> ofSi(
      double si, Class<Q> kind, Map<String, Double> gradient) {
    return new Measured<>(kind, Kinds.dimension(kind), si, Map.copyOf(gradient));
  }

  /** The same for a kind that is known only at run time. */
  public static Measured<?> ofKind(double si, Class<?> kind, Map<String, Double> gradient) {
    return new Measured<Dimensionless>(kind, Kinds.dimension(kind), si, Map.copyOf(gradient));
  }

  /**
   * A value in SI of a dimension that no interface stands for.
   *
   * @param unit any of the dimension
   */
  public static Measured<?> unnamed(double si, String unit, Map<String, Double> gradient) {
    return free(UnitTable.find(unit).dimension(), si, Map.copyOf(gradient));
  }

  /** The same kind with another number and gradient [SI]. */
  public Measured<Q> at(double other, Map<String, Double> parts) {
    return new Measured<>(kind, dimension, other, Map.copyOf(parts));
  }

  /** The same kind and gradient at another number [SI]. */
  public Measured<Q> at(double other) {
    return new Measured<>(kind, dimension, other, gradient);
  }

  /**
   * The number in a unit.
   *
   * @throws IllegalArgumentException if the unit is of another kind
   */
  public double in(String unit) {
    Unit known = UnitTable.find(unit);
    holdDimension(known.dimension(), unit);
    holdPoint(isTemperature(), known);
    return known.fromSi(si);
  }

  /** The number in coherent SI, a temperature in kelvin. */
  public double si() {
    return si;
  }

  /** The standard uncertainty in a unit; a temperature's as a difference. */
  public double uncertainty(String unit) {
    Unit known = UnitTable.find(unit).interval();
    holdDimension(known.dimension(), unit);
    return known.fromSi(uncertaintySi());
  }

  /** The standard uncertainty [SI]: all sources are independent. */
  public double uncertaintySi() {
    double sum = 0;
    for (double part : new TreeMap<>(gradient).values()) {
      sum += part * part;
    }
    return StrictMath.sqrt(sum);
  }

  /** By source, one standard uncertainty each [SI]. */
  public Map<String, Double> gradient() {
    return gradient;
  }

  public Measured<Q> plus(Measured<Q> other) {
    refuseTemperatures("added");
    return new Measured<>(kind, dimension, si + other.si, combined(1, gradient, 1, other.gradient));
  }

  /** For two temperatures see {@link #riseFrom}. */
  public Measured<Q> minus(Measured<Q> other) {
    refuseTemperatures("subtracted here; use riseFrom");
    return new Measured<>(
        kind, dimension, si - other.si, combined(1, gradient, -1, other.gradient));
  }

  /** The step from another temperature to this one. */
  public Measured<Trade.TemperatureDifference> riseFrom(Measured<Temperature> other) {
    if (!isTemperature()) {
      throw new IllegalArgumentException("only a temperature rises from another");
    }
    return new Measured<>(
        Trade.TemperatureDifference.class,
        dimension,
        si - other.si,
        combined(1, gradient, -1, other.gradient));
  }

  public Measured<Q> times(double factor) {
    refuseTemperatures("multiplied");
    return new Measured<>(kind, dimension, si * factor, combined(factor, gradient, 0, Map.of()));
  }

  public Measured<Q> over(double divisor) {
    return times(1 / divisor);
  }

  /** A product; say with {@link #as} what kind it is. */
  public Measured<?> times(Measured<?> other) {
    refuseTemperatures("multiplied");
    other.refuseTemperatures("multiplied");
    return free(
        dimension.times(other.dimension),
        si * other.si,
        combined(other.si, gradient, si, other.gradient));
  }

  /** A quotient; say with {@link #as} what kind it is. */
  public Measured<?> over(Measured<?> other) {
    refuseTemperatures("divided");
    other.refuseTemperatures("divided");
    return free(
        dimension.over(other.dimension),
        si / other.si,
        combined(1 / other.si, gradient, -si / (other.si * other.si), other.gradient));
  }

  public Measured<Q> abs() {
    refuseTemperatures("made positive");
    return si < 0 ? times(-1) : this;
  }

  /**
   * The same as a kind that is known only now.
   *
   * @throws IllegalArgumentException if its dimension is another
   */
  public <R extends Quantity<R>> Measured<R> as(Class<R> other) {
    hold(other, dimension, "");
    if (isTemperature() != (other == (Class<?>) Temperature.class)) {
      throw new IllegalArgumentException("a temperature is not a difference of temperatures");
    }
    return new Measured<>(other, Kinds.dimension(other), si, gradient);
  }

  public Dimension dimension() {
    return dimension;
  }

  public boolean isTemperature() {
    return kind == Temperature.class;
  }

  @Override
  public int compareTo(Measured<Q> other) {
    return Double.compare(si, other.si);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Measured<?> m
        && Double.doubleToLongBits(si) == Double.doubleToLongBits(m.si)
        && dimension.equals(m.dimension)
        && isTemperature() == m.isTemperature()
        && gradient.equals(m.gradient);
  }

  @Override
  public int hashCode() {
    return Double.hashCode(si) ^ dimension.hashCode();
  }

  @Override
  public String toString() {
    String unit =
        isTemperature() ? "K" : dimension.isNone() ? "" : UnitTable.coherent(dimension).symbol();
    // the last digits of a double are of its arithmetic, not of the quantity
    double number = Double.isFinite(si) ? new BigDecimal(si, TWELVE_DIGITS).doubleValue() : si;
    return (number + " " + unit).strip();
  }

  private void refuseTemperatures(String how) {
    if (isTemperature()) {
      throw new IllegalArgumentException("temperatures cannot be " + how);
    }
  }

  private static void holdPoint(boolean temperature, Unit unit) {
    if (unit.isTemperaturePoint() && !temperature) {
      throw new IllegalArgumentException(
          unit.print() + " is a point on a scale; a difference of temperatures is in K");
    }
  }

  private void holdDimension(Dimension wanted, String unit) {
    if (!dimension.same(wanted)) {
      throw new IllegalArgumentException(
          "this is a " + dimension.words() + ", which " + unit + " does not measure");
    }
  }

  private static void hold(Class<?> kind, Dimension given, String unit) {
    if (!Kinds.dimension(kind).same(given)) {
      throw new IllegalArgumentException(
          (unit.isEmpty() ? "a " + given.words() : unit)
              + " is no "
              + Kinds.dimension(kind).words());
    }
  }

  private static Measured<?> free(Dimension dimension, double si, Map<String, Double> gradient) {
    return new Measured<Dimensionless>(
        Kinds.of(dimension).orElse(Object.class), dimension, si, gradient);
  }

  private static Map<String, Double> combined(
      double a, Map<String, Double> x, double b, Map<String, Double> y) {
    if (x.isEmpty() && y.isEmpty()) {
      return Map.of();
    }
    Map<String, Double> sum = new TreeMap<>();
    x.forEach((source, part) -> sum.merge(source, a * part, Double::sum));
    y.forEach((source, part) -> sum.merge(source, b * part, Double::sum));
    sum.values().removeIf(part -> part == 0);
    return Map.copyOf(sum);
  }
}
