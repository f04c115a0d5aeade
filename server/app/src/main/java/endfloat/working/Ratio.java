package endfloat.working;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;

/** A constant exponent as a ratio of whole numbers, the denominator above 0. */
record Ratio(int numerator, int denominator) {
  private static final BigInteger LARGEST = BigInteger.valueOf(1_000_000);

  /** Empty where the expression is not reckoned from bare numbers by signs and strokes alone. */
  static Optional<Ratio> of(Expression written) {
    return exact(written).flatMap(Exact::small);
  }

  double value() {
    return (double) numerator / denominator;
  }

  private record Exact(BigInteger above, BigInteger below) {
    Optional<Ratio> small() {
      BigInteger common = above.gcd(below).max(BigInteger.ONE);
      BigInteger numerator = above.divide(common);
      BigInteger denominator = below.divide(common);
      if (denominator.signum() < 0) {
        numerator = numerator.negate();
        denominator = denominator.negate();
      }
      return numerator.abs().compareTo(LARGEST) > 0 || denominator.compareTo(LARGEST) > 0
          ? Optional.empty()
          : Optional.of(new Ratio(numerator.intValue(), denominator.intValue()));
    }
  }

  private static Optional<Exact> exact(Expression written) {
    if (written instanceof Expression.Literal literal && literal.unit().isEmpty()) {
      BigDecimal value = new BigDecimal(literal.digits());
      if (Math.abs(value.scale()) > 20) {
        return Optional.empty();
      }
      return Optional.of(
          value.scale() > 0
              ? new Exact(value.unscaledValue(), BigInteger.TEN.pow(value.scale()))
              : new Exact(value.toBigIntegerExact(), BigInteger.ONE));
    }
    if (written instanceof Expression.Unary unary
        && unary.operator() != Expression.UnaryOperator.NOT) {
      boolean minus = unary.operator() == Expression.UnaryOperator.MINUS;
      return exact(unary.operand()).map(e -> minus ? new Exact(e.above().negate(), e.below()) : e);
    }
    if (written instanceof Expression.Binary binary
        && binary.operator() == Expression.BinaryOperator.DIVIDE) {
      Optional<Exact> left = exact(binary.left());
      Optional<Exact> right = exact(binary.right());
      if (left.isPresent() && right.isPresent() && right.get().above().signum() != 0) {
        return Optional.of(
            new Exact(
                left.get().above().multiply(right.get().below()),
                left.get().below().multiply(right.get().above())));
      }
    }
    return Optional.empty();
  }
}
