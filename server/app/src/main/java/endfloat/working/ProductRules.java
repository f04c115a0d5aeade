package endfloat.working;

import endfloat.units.Dimension;
import endfloat.units.UnitException;
import java.util.List;
import java.util.Optional;

/** Products, quotients and powers. */
final class ProductRules {
  private final Checking checking;

  ProductRules(Checking checking) {
    this.checking = checking;
  }

  Typed product(Expression.Binary binary) {
    Operand left = quantity(binary.left());
    Operand right = quantity(binary.right());
    boolean times = binary.operator() == Expression.BinaryOperator.MULTIPLY;
    Dimension dimension =
        within(binary.span(), () -> times ? of(left).times(of(right)) : of(left).over(of(right)));
    hintAtRadians(binary, left, right);
    boolean bare = left.isBareNumber() && right.isBareNumber();
    Kind kind = SeriesRules.spread(new Kind.Quantity(dimension, bare), List.of(left, right));
    return ExpressionKinds.apply(
        binary.span(), kind, times ? BuiltIn.MULTIPLY : BuiltIn.DIVIDE, left, right);
  }

  private static Dimension of(Operand operand) {
    return ((Kind.Quantity) operand.element()).dimension();
  }

  static Dimension within(Span span, java.util.function.Supplier<Dimension> product) {
    try {
      return product.get();
    } catch (UnitException e) {
      throw new KindException(span, UnitReader.sentence(e), UnitReader.wayOut(e));
    }
  }

  private Operand quantity(Expression written) {
    Operand operand = checking.operand(written);
    SumRules.numeric(operand);
    if (Kinds.isTemperature(operand.kind())) {
      throw new KindException(
          written.span(),
          "A temperature is a point on a scale and cannot be a factor",
          "Take a difference of temperatures; for one measured from absolute zero write kelvin("
              + (operand.said().isEmpty() ? "t" : operand.said())
              + ")");
    }
    return operand;
  }

  /** {@code pi * d * n} and {@code 1 / n} with n in rpm count radians, not turns. */
  private void hintAtRadians(Expression.Binary binary, Operand left, Operand right) {
    boolean times = binary.operator() == Expression.BinaryOperator.MULTIPLY;
    if (times) {
      hintAtPi(left, right);
      hintAtPi(right, left);
    } else if (isAngularSpeed(right) && of(left).isNone()) {
      checking.hint(
          right.span(),
          said(right) + " counts radians, so this is the time of one radian",
          "Write " + said(right) + " / (1 rev) where turns are meant");
    }
  }

  private void hintAtPi(Operand rate, Operand other) {
    if (isAngularSpeed(rate) && hasFactorPi(other.written())) {
      checking.hint(
          rate.span(),
          said(rate) + " counts radians, and pi is there to count turns",
          "Write " + said(rate) + " / (1 rev) where turns are meant");
    }
  }

  private static String said(Operand operand) {
    return operand.said().isEmpty() ? "This" : operand.said();
  }

  private static boolean isAngularSpeed(Operand operand) {
    return of(operand).equals(Kinds.ANGULAR_SPEED);
  }

  private static boolean hasFactorPi(Expression written) {
    if (written instanceof Expression.Place place) {
      return place.name().equals("pi");
    }
    return written instanceof Expression.Binary binary
        && (hasFactorOf(binary) || hasDividendOf(binary));
  }

  private static boolean hasFactorOf(Expression.Binary binary) {
    return binary.operator() == Expression.BinaryOperator.MULTIPLY
        && (hasFactorPi(binary.left()) || hasFactorPi(binary.right()));
  }

  private static boolean hasDividendOf(Expression.Binary binary) {
    return binary.operator() == Expression.BinaryOperator.DIVIDE && hasFactorPi(binary.left());
  }

  Typed power(Expression.Binary binary) {
    Operand base = quantity(binary.left());
    Operand exponent = quantity(binary.right());
    if (!exponent.isZero()
        && (!of(exponent).isNone() || Operand.literalUnit(binary.right()).isPresent())) {
      throw new KindException(
          exponent.span(), "An exponent is a pure number", "Put the base and its unit in brackets");
    }
    Optional<Ratio> ratio =
        Kinds.isSeries(exponent.kind()) ? Optional.empty() : Ratio.of(binary.right());
    Dimension dimension = of(base);
    if (ratio.isPresent()) {
      Ratio power = ratio.get();
      dimension =
          within(binary.span(), () -> raised(of(base), power.numerator(), power.denominator()));
    } else if (!dimension.isNone()) {
      throw new KindException(
          exponent.span(),
          "The exponent varies, so the base must be a pure number, and it is "
              + KindWords.a(base.element()),
          "Divide the base by a fixed value of its kind first");
    }
    Kind kind = SeriesRules.spread(new Kind.Quantity(dimension), List.of(base, exponent));
    Typed raised =
        ratio
            .<Typed>map(r -> new Typed.Constant(exponent.span(), Kinds.NUMBER, r.value()))
            .orElse(exponent.typed());
    return new Typed.Apply(binary.span(), kind, BuiltIn.POWER, List.of(base.typed(), raised));
  }

  /**
   * A power of a dimension. A root that gives 1/time to the n counts radians to the n: the natural
   * frequency of a mass on a spring is an angular speed.
   */
  static Dimension raised(Dimension base, int numerator, int denominator) {
    Dimension result = base.power(numerator, denominator);
    return denominator == 1 ? result : rootRate(result);
  }

  private static Dimension rootRate(Dimension result) {
    Dimension rest = result.withoutAngle();
    for (int numerator = 1; numerator <= 4; numerator++) {
      for (int denominator = 1; denominator <= 4; denominator++) {
        if (rest.equals(Kinds.PER_TIME.power(numerator, denominator))) {
          return rest.times(Dimension.ANGLE.power(numerator, denominator));
        }
      }
    }
    return result;
  }

  /** Whether the rate that an expression gives comes out of a root in it. */
  static boolean isRootRate(Typed typed) {
    if (!(typed instanceof Typed.Apply apply)) {
      return false;
    }
    return switch (apply.function()) {
      case SQRT, CBRT -> true;
      case POWER ->
          apply.arguments().get(1) instanceof Typed.Constant c && c.si() != Math.rint(c.si());
      case MULTIPLY, DIVIDE, ADD, SUBTRACT, NEGATE, MIN, MAX, ABS ->
          apply.arguments().stream().anyMatch(ProductRules::isRootRate);
      default -> false;
    };
  }
}
