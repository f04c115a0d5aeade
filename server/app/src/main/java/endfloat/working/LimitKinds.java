package endfloat.working;

import endfloat.units.Unit;
import java.util.List;
import java.util.Optional;

/** A limit: its ends in the kind of what it limits. */
final class LimitKinds {

  private final Checking checking;

  LimitKinds(Checking checking) {
    this.checking = checking;
  }

  Checked checked(Line.Limit line) {
    Operand place = checking.operand(line.place());
    if (!(place.element() instanceof Kind.Quantity)
        && !(place.element() instanceof Kind.Temperature)) {
      throw new KindException(
          line.place().span(),
          place.said() + " is " + KindWords.a(place.kind()) + ", and a limit is on a number",
          place.element() instanceof Kind.Fields fields
              ? SumRules.instead(place, fields)
              : "Limit a value that it is made from");
    }
    line.notes().forEach((note, said) -> word(line, note, said));
    return line.tolerance().isPresent() ? around(line, place) : between(line, place);
  }

  /** Of a limit entered by fields; one that is written is refused where the word stands. */
  private static void word(Line.Limit line, String note, String said) {
    LimitWords.wayOut(note, said)
        .ifPresent(
            wayOut -> {
              throw new KindException(line.span(), LimitWords.refused(note, said), wayOut);
            });
  }

  private Checked between(Line.Limit line, Operand place) {
    Optional<Expression> low = line.low();
    Optional<Expression> high = line.high();
    Optional<Operand> least = low.map(e -> end(place, e, high.orElse(e)));
    Optional<Operand> most = high.map(e -> end(place, e, low.orElse(e)));
    refuseCrossed(least.map(Operand::typed), most.map(Operand::typed), line);
    Optional<Unit> unit =
        least.or(() -> most).flatMap(o -> unit(o)).or(() -> most.flatMap(this::unit));
    return new Checked.Limited(
        line,
        place.typed(),
        least.map(Operand::typed),
        most.map(Operand::typed),
        unit,
        List.copyOf(checking.hints));
  }

  private Optional<Unit> unit(Operand end) {
    return UnitsShown.of(end.written(), end.typed(), checking.scope);
  }

  private Operand end(Operand place, Expression written, Expression partner) {
    Operand end = Partners.of(checking, written, partner);
    if (Kinds.isSeries(end.kind())) {
      throw new KindException(
          written.span(), "A limit is one value, and this is a series", "Reduce it first");
    }
    SumRules.common(place, end, SumRules.Act.LIMIT);
    return end;
  }

  private static void refuseCrossed(Optional<Typed> low, Optional<Typed> high, Line.Limit line) {
    if (low.isPresent()
        && high.isPresent()
        && low.get() instanceof Typed.Constant a
        && high.get() instanceof Typed.Constant b
        && a.si() > b.si()) {
      throw new KindException(
          line.high().orElseThrow().span(),
          "The upper limit lies below the lower",
          "Write the lower one first");
    }
  }

  private Checked around(Line.Limit line, Operand place) {
    Line.Tolerance tolerance = line.tolerance().orElseThrow();
    Operand nominal = nominal(place, tolerance);
    Typed half = half(nominal, tolerance.half());
    if (half instanceof Typed.Constant c && c.si() < 0) {
      throw new KindException(
          tolerance.half().span(), "A tolerance is not negative", "Take the minus out");
    }
    Span span = tolerance.nominal().span();
    List<Typed> both = List.of(nominal.typed(), half);
    Typed low = new Typed.Apply(span, nominal.kind(), BuiltIn.SUBTRACT, both);
    Typed high = new Typed.Apply(span, nominal.kind(), BuiltIn.ADD, both);
    return new Checked.Limited(
        line,
        place.typed(),
        Optional.of(low),
        Optional.of(high),
        unit(nominal),
        List.copyOf(checking.hints));
  }

  private Operand nominal(Operand place, Line.Tolerance tolerance) {
    Optional<Unit> unit =
        Operand.literalUnit(tolerance.half())
            .filter(u -> Operand.isBareLiteral(tolerance.nominal()) && !u.dimension().isNone());
    Operand nominal =
        unit.map(u -> Partners.in(u, tolerance.nominal()))
            .orElseGet(() -> checking.operand(tolerance.nominal()));
    if (Kinds.isSeries(nominal.kind())) {
      throw new KindException(
          nominal.span(), "A limit is one value, and this is a series", "Reduce it first");
    }
    SumRules.common(place, nominal, SumRules.Act.LIMIT);
    return nominal;
  }

  private Typed half(Operand nominal, Expression half) {
    Optional<Unit> unit = Operand.literalUnit(half);
    boolean share = unit.filter(u -> u.dimension().isNone() && !u.symbol().equals("1")).isPresent();
    if (share && !Kinds.isTemperature(nominal.kind())) {
      Typed size =
          new Typed.Apply(half.span(), nominal.kind(), BuiltIn.ABS, List.of(nominal.typed()));
      return new Typed.Apply(
          half.span(),
          nominal.kind(),
          BuiltIn.MULTIPLY,
          List.of(size, checking.operand(half).typed()));
    }
    Optional<Unit> known = Operand.literalUnit(nominal.written());
    if (known.isPresent() && !known.get().dimension().isNone() && Operand.isBareLiteral(half)) {
      return Partners.in(known.get().interval(), half).typed();
    }
    return SpreadKinds.difference(checking, nominal, half);
  }
}
