package endfloat.working;

import endfloat.units.Unit;
import endfloat.units.UnitException;
import java.util.Optional;

/** {@code 0.10 .. 0.30 mm}: a bare number takes the unit of its partner. */
final class Partners {
  private Partners() {}

  /** A literal read in a unit that it does not write itself. */
  static Operand in(Unit unit, Expression written) {
    try {
      double si = unit.toSi(Operand.digits(written));
      Kind kind = Kinds.of(unit);
      Expression.Literal literal = Operand.literal(written).orElseThrow();
      Expression read =
          new Expression.Literal(
              written.span(), Operand.digits(written), Optional.of(unit), literal.si());
      return new Operand(read, new Typed.Constant(written.span(), kind, si));
    } catch (UnitException e) {
      throw new KindException(written.span(), UnitReader.sentence(e), UnitReader.wayOut(e));
    }
  }

  /** The expression, in its partner's unit where it is a bare number and the partner has one. */
  static Operand of(Checking checking, Expression written, Expression partner) {
    Optional<Unit> unit = Operand.literalUnit(partner);
    return unit.isPresent() && Operand.isBareLiteral(written)
        ? in(unit.get(), written)
        : checking.operand(written);
  }
}
