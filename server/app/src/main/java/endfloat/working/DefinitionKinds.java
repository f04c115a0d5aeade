package endfloat.working;

import endfloat.units.Unit;
import java.util.List;
import java.util.Optional;

/** A line that gives a value: its right side, its declared unit and its spread. */
final class DefinitionKinds {
  private final Checking checking;

  DefinitionKinds(Checking checking) {
    this.checking = checking;
  }

  Checked checked(Line.Definition line) {
    Expression written = line.value().orElseThrow();
    if (written instanceof Expression.Call call
        && FunctionKinds.isDistribution(call.function())
        && call.fields().isEmpty()) {
      return distributed(line, call);
    }
    SpreadKinds spreads = new SpreadKinds(checking, line);
    Operand value = spreads.value(written);
    if (value.typed() instanceof Typed.Name table && KindWords.isTable(value.kind())) {
      String first = ((Kind.Fields) value.kind()).fields().keySet().iterator().next();
      throw new KindException(
          value.span(),
          table.name() + " is a table, not a value",
          "Name a column, such as " + table.name() + "." + first);
    }
    Kind kind = declared(line, value);
    Optional<Checked.Spread> spread = line.spread().map(s -> spreads.spread(value, s));
    return new Checked.Value(
        line,
        kind,
        shown(line, value),
        value.typed(),
        spread,
        Optional.empty(),
        List.copyOf(checking.hints));
  }

  private Checked distributed(Line.Definition line, Expression.Call call) {
    if (line.spread().isPresent()) {
      throw new KindException(
          line.spread().get().span(),
          call.function() + "(...) says how the value is spread; ± says it again",
          "Leave one of the two out");
    }
    DistributionKinds.Drawn drawn = new DistributionKinds(checking).drawn(call);
    Operand value = new Operand(drawn.first(), drawn.mean());
    return new Checked.Value(
        line,
        declared(line, value),
        shown(line, value),
        drawn.mean(),
        Optional.empty(),
        Optional.of(drawn.distribution()),
        List.copyOf(checking.hints));
  }

  private Optional<Unit> shown(Line.Definition line, Operand value) {
    return line.unit().isPresent()
        ? line.unit().map(Line.DeclaredUnit::unit)
        : UnitsShown.of(value.written(), value.typed(), checking.scope);
  }

  private Kind declared(Line.Definition line, Operand value) {
    return line.unit().isEmpty()
        ? value.isBare() && !value.isZero() ? Kinds.bare(value.kind()) : value.kind()
        : new DeclaredUnits(checking, line.name(), line.unit().get()).kind(value);
  }
}
