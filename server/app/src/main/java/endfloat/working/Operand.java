package endfloat.working;

import endfloat.units.Dimension;
import endfloat.units.Unit;
import endfloat.units.UnitSlip;
import java.util.Optional;

/**
 * An expression together with what it was found to be. Rules look at both: whether {@code 0} fits
 * or {@code 20} lacks its unit is seen only in what was written.
 */
record Operand(Expression written, Typed typed) {

  Kind kind() {
    return typed.kind();
  }

  Kind element() {
    return Kinds.element(typed.kind());
  }

  Span span() {
    return written.span();
  }

  /** The literal 0 without a unit, which fits any kind but a temperature. */
  boolean isZero() {
    return literal(written).filter(l -> l.unit().isEmpty() && l.si() == 0).isPresent();
  }

  /** Reckoned from bare numbers alone: no unit, no pi and no name in it. */
  boolean isBare() {
    return isBare(written);
  }

  /** Bare itself, or a name that is; what is reckoned from such alone is no ratio either. */
  boolean isBareNumber() {
    return isBare() || element() instanceof Kind.Quantity quantity && quantity.bare();
  }

  private static boolean isBare(Expression written) {
    if (written instanceof Expression.Literal literal) {
      return literal.unit().isEmpty();
    }
    if (written instanceof Expression.Unary unary) {
      return isBare(unary.operand());
    }
    if (written instanceof Expression.Binary binary) {
      return isBare(binary.left()) && isBare(binary.right());
    }
    if (written instanceof Expression.Conditional conditional) {
      return isBare(conditional.then()) && isBare(conditional.otherwise());
    }
    if (written instanceof Expression.Listing listing) {
      return listing.elements().stream().allMatch(Operand::isBare);
    }
    return written instanceof Expression.Call call
        && BuiltIn.named(call.function()).isPresent()
        && call.arguments().stream().allMatch(a -> isBare(a.value()));
  }

  /** What was meant where a number has a pound of mass for one of force, and the like. */
  Optional<String> slip(Dimension wanted) {
    return literal(written)
        .flatMap(Expression.Literal::unit)
        .flatMap(unit -> UnitSlip.between(unit, wanted));
  }

  /** The literal itself, or the one after a minus or plus. */
  static Optional<Expression.Literal> literal(Expression written) {
    if (written instanceof Expression.Literal literal) {
      return Optional.of(literal);
    }
    return written instanceof Expression.Unary unary
            && unary.operator() != Expression.UnaryOperator.NOT
        ? literal(unary.operand())
        : Optional.empty();
  }

  /** The unit of a literal; empty for a bare one and for all else. */
  static Optional<Unit> literalUnit(Expression written) {
    return literal(written).flatMap(Expression.Literal::unit);
  }

  /** A literal without a unit, 0 included. */
  static boolean isBareLiteral(Expression written) {
    return literal(written).filter(l -> l.unit().isEmpty()).isPresent();
  }

  /** How a literal reads with its sign, its unit left out. */
  static String digits(Expression written) {
    if (written instanceof Expression.Literal literal) {
      return literal.digits();
    }
    Expression.Unary unary = (Expression.Unary) written;
    String inner = digits(unary.operand());
    if (unary.operator() == Expression.UnaryOperator.PLUS) {
      return inner;
    }
    return inner.startsWith("-") ? inner.substring(1) : "-" + inner;
  }

  /** What a message calls it: its name or number where it is short, else its kind. */
  String said() {
    if (written instanceof Expression.Place place) {
      return place.fields().isEmpty()
          ? place.name()
          : place.name() + "." + String.join(".", place.fields());
    }
    return literal(written)
        .map(l -> digits(written) + l.unit().map(u -> " " + u.symbol()).orElse(""))
        .orElse("");
  }
}
