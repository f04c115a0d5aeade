package endfloat.working;

import endfloat.units.Unit;
import java.util.Optional;

/** What stands after ±: an expanded uncertainty, in the kind of the value or a share of it. */
final class SpreadKinds {
  private final Checking checking;
  private final Line.Definition line;

  SpreadKinds(Checking checking, Line.Definition line) {
    this.checking = checking;
    this.line = line;
  }

  /** The value; a bare number before ± takes the unit that stands after it. */
  Operand value(Expression written) {
    Optional<Unit> unit =
        line.spread()
            .filter(s -> Operand.isBareLiteral(written))
            .flatMap(s -> Operand.literalUnit(s.half()))
            .filter(u -> !u.dimension().isNone());
    return unit.map(u -> Partners.in(u, written)).orElseGet(() -> checking.operand(written));
  }

  Checked.Spread spread(Operand value, Line.Spread spread) {
    Kind kind = value.kind();
    if (!(kind instanceof Kind.Quantity) && !(kind instanceof Kind.Temperature)) {
      throw new KindException(
          spread.span(),
          "± belongs to a single value, and this is " + KindWords.a(kind),
          kind instanceof Kind.Series
              ? "Give each value a name, or enter them as a reading"
              : "Take the ± out");
    }
    boolean relative = isShare(spread.half());
    Typed half = relative ? share(value, spread.half()) : half(value, spread.half());
    if (half instanceof Typed.Constant c && c.si() < 0) {
      throw new KindException(
          spread.half().span(), "An uncertainty is not negative", "Take the minus out");
    }
    Typed coverage =
        spread
            .coverage()
            .map(e -> positive(e, "k"))
            .orElse(new Typed.Constant(spread.span(), Kinds.NUMBER, 2));
    return new Checked.Spread(
        half, relative, coverage, spread.degrees().map(e -> positive(e, "dof")));
  }

  private static boolean isShare(Expression half) {
    return Operand.literalUnit(half)
        .filter(u -> u.dimension().isNone() && !u.symbol().equals("1"))
        .isPresent();
  }

  private Typed share(Operand value, Expression half) {
    if (Kinds.isTemperature(value.kind())) {
      throw new KindException(
          half.span(), "A share of a temperature hangs on the scale", "Give it in K");
    }
    Optional<String> typed = Operand.literalUnit(value.written()).map(Unit::symbol);
    refuseBareShares(value, half);
    boolean inShares = typed.filter(s -> s.equals("%") || s.equals("ppm")).isPresent();
    if (inShares) {
      checking.warn(
          half.span(),
          "This is a share of the value, not points of " + typed.get(),
          "For points write the uncertainty without a unit, such as ± 0.01");
    }
    return checking.operand(half).typed();
  }

  /** {@code slip [%] = 5 ± 1 %}: 5 or 5 %, and 1 % of it or one point. */
  private void refuseBareShares(Operand value, Expression half) {
    boolean declared =
        line.unit().filter(u -> u.unit().dimension().isNone() && !u.text().equals("1")).isPresent();
    if (declared && Operand.isBareLiteral(value.written()) && !value.isZero()) {
      String mark = line.unit().get().text();
      throw new KindException(
          half.span(),
          value.said() + " has no unit, so this can be read two ways",
          "Write the value as "
              + value.said()
              + " "
              + mark
              + ", and its uncertainty as a share of it");
    }
  }

  private Typed half(Operand value, Expression half) {
    if (Operand.isBareLiteral(half)) {
      return bare(value, half);
    }
    return difference(checking, value, half);
  }

  private Typed bare(Operand value, Expression half) {
    if (Kinds.isPure(value.kind())) {
      return checking.operand(half).typed();
    }
    Optional<Unit> unit = Operand.literalUnit(value.written());
    if (unit.isEmpty()) {
      unit = line.unit().map(Line.DeclaredUnit::unit);
    }
    Unit known =
        unit.orElseThrow(
            () ->
                new KindException(
                    half.span(),
                    "The uncertainty has no unit, and the value does not say one",
                    "Write its unit, such as ± " + Operand.digits(half) + " mm"));
    return Partners.in(known.interval(), half).typed();
  }

  /** A half-width in the kind of the value; of a temperature, an interval. */
  static Typed difference(Checking checking, Operand value, Expression half) {
    Optional<Unit> unit = Operand.literalUnit(half);
    Operand operand =
        unit.filter(Unit::isTemperaturePoint).isPresent()
            ? Partners.in(unit.get().interval(), half)
            : checking.operand(half);
    if (operand.kind() instanceof Kind.Series) {
      throw new KindException(
          half.span(), "± takes one value, and this is a series", "Reduce it first");
    }
    if (Kinds.isTemperature(value.kind())) {
      if (Kinds.isTemperature(operand.kind()) || !Kinds.isKelvin(operand.kind())) {
        throw new KindException(
            half.span(),
            "± after a temperature is a difference, and this is " + KindWords.a(operand.kind()),
            "Give it in K");
      }
      return operand.typed();
    }
    SumRules.common(value, operand, SumRules.Act.SPREAD);
    return operand.typed();
  }

  private Typed positive(Expression written, String name) {
    Operand operand = checking.operand(written);
    if (!Kinds.isPure(operand.kind())) {
      throw new KindException(
          written.span(),
          name + " is a pure number, and this is " + KindWords.a(operand.kind()),
          "Write it without a unit");
    }
    if (operand.typed() instanceof Typed.Constant c && !(c.si() > 0)) {
      throw new KindException(
          written.span(),
          name + " is above 0",
          name.equals("k") ? "Write (k = 2) for 95 %" : "Leave dof out for infinitely many");
    }
    return operand.typed();
  }
}
