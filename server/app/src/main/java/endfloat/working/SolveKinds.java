package endfloat.working;

import endfloat.units.Unit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A line that solves: the unknowns have the kinds of their brackets, both sides must agree. */
final class SolveKinds {
  private final Checking checking;

  SolveKinds(Checking checking) {
    this.checking = checking;
  }

  Checked checked(Line.Definition line) {
    Line.Solve solve = line.solve().orElseThrow();
    if (solve.equations().size() != solve.unknowns().size()) {
      throw new KindException(
          solve.span(),
          solve.equations().size()
              + (solve.equations().size() == 1 ? " equation" : " equations")
              + " for "
              + solve.unknowns().size()
              + (solve.unknowns().size() == 1 ? " unknown" : " unknowns"),
          "Give as many equations as unknowns");
    }
    Map<String, Checked.Unknown> unknowns = new LinkedHashMap<>();
    for (Line.Unknown unknown : solve.unknowns()) {
      refuseOthers(line, unknown);
      Checked.Unknown found = unknown(line, unknown);
      agree(line, unknown, found.kind());
      if (unknowns.put(unknown.name(), found) != null) {
        throw new KindException(
            unknown.nameSpan(), unknown.name() + " is sought twice", "Seek it once");
      }
    }
    Checking inner = checking.among(new WithUnknowns(checking.scope, unknowns));
    List<Checked.Equation> equations =
        solve.equations().stream().map(e -> equation(inner, e)).toList();
    checking.hints.addAll(inner.hints);
    return new Checked.Solved(
        line,
        kind(unknowns),
        unit(line, solve),
        equations,
        List.copyOf(unknowns.values()),
        List.copyOf(checking.hints));
  }

  static Optional<Unit> unit(Line.Definition line, Line.Solve solve) {
    if (line.unit().isPresent() || solve.unknowns().size() > 1) {
      return line.unit().map(Line.DeclaredUnit::unit);
    }
    Expression low = solve.unknowns().get(0).low();
    Expression high = solve.unknowns().get(0).high();
    return Operand.literalUnit(low).or(() -> Operand.literalUnit(high));
  }

  private static Kind kind(Map<String, Checked.Unknown> unknowns) {
    if (unknowns.size() == 1) {
      return unknowns.values().iterator().next().kind();
    }
    Map<String, Kind> fields = new LinkedHashMap<>();
    unknowns.forEach((name, unknown) -> fields.put(name, unknown.kind()));
    return new Kind.Fields(Collections.unmodifiableMap(fields));
  }

  /** An unknown is the name on the left, or one that the record already has. */
  private void refuseOthers(Line.Definition line, Line.Unknown unknown) {
    boolean several = line.solve().orElseThrow().unknowns().size() > 1;
    boolean left = unknown.name().equals(line.name());
    if (several && left) {
      throw new KindException(
          unknown.nameSpan(),
          "With several unknowns the name on the left holds them all",
          "Give the line a name of its own, then " + line.name() + " is one of its results");
    }
    if (!left && !several && checking.scope.kindOf(unknown.name()).isEmpty()) {
      throw new KindException(
          unknown.nameSpan(),
          "\"" + unknown.name() + "\" is neither the name on the left nor an input of this record",
          Nearest.wayOut(
              unknown.name(),
              checking.scope.names(),
              "Solve for " + line.name() + ", or define it first"));
    }
    if (several && line.unit().isPresent()) {
      throw new KindException(
          line.unit().get().span(),
          "With several unknowns the line has no one unit",
          "Take the unit mark out");
    }
  }

  /** Kind and bracket of one unknown. */
  Checked.Unknown unknown(Line.Definition line, Line.Unknown unknown) {
    Operand low = single(Partners.of(checking, unknown.low(), unknown.high()));
    Operand high = single(Partners.of(checking, unknown.high(), unknown.low()));
    Kind kind = SumRules.common(low, high, SumRules.Act.BRACKET);
    if (low.typed() instanceof Typed.Constant a
        && high.typed() instanceof Typed.Constant b
        && !(a.si() < b.si())) {
      throw new KindException(
          unknown.high().span(), "The bracket is empty", "Write the lower end first");
    }
    boolean declared = line.unit().isPresent() && line.solve().orElseThrow().unknowns().size() == 1;
    if (declared) {
      Operand sought = new Operand(low.isZero() ? high.written() : low.written(), typed(low, kind));
      kind = new DeclaredUnits(checking, line.name(), line.unit().get()).kind(sought);
    }
    return new Checked.Unknown(unknown.name(), kind, low.typed(), high.typed());
  }

  /** The kind of the answer, from the brackets alone. */
  Kind bracket(Line.Definition line) {
    Map<String, Checked.Unknown> unknowns = new LinkedHashMap<>();
    line.solve().orElseThrow().unknowns().forEach(u -> unknowns.put(u.name(), unknown(line, u)));
    return kind(unknowns);
  }

  private static Typed typed(Operand end, Kind kind) {
    return new Typed.Name(end.span(), kind, "");
  }

  /** The bracket of an input is of the kind of that input. */
  private void agree(Line.Definition line, Line.Unknown unknown, Kind kind) {
    Optional<Kind> known = checking.scope.kindOf(unknown.name());
    if (known.isPresent() && !unknown.name().equals(line.name())) {
      Operand low = Partners.of(checking, unknown.low(), unknown.high());
      Expression name = new Expression.Place(unknown.nameSpan(), unknown.name(), List.of());
      Operand input = new Operand(name, new Typed.Name(name.span(), known.get(), unknown.name()));
      SumRules.common(input, new Operand(low.written(), typed(low, kind)), SumRules.Act.BRACKET);
    }
  }

  private static Operand single(Operand operand) {
    if (operand.kind() instanceof Kind.Quantity || operand.kind() instanceof Kind.Temperature) {
      return operand;
    }
    throw new KindException(
        operand.span(),
        "A bracket has single values for ends, and this is " + KindWords.a(operand.kind()),
        "Write it as between 1 mm and 2 mm");
  }

  private static Checked.Equation equation(Checking inner, Line.Equation written) {
    Operand left = Partners.of(inner, written.left(), written.right());
    Operand right = Partners.of(inner, written.right(), written.left());
    Kind kind = SumRules.common(left, right, SumRules.Act.EQUATE);
    if (Kinds.isSeries(left.kind())
        || Kinds.isSeries(right.kind())
        || !(kind instanceof Kind.Quantity || kind instanceof Kind.Temperature)) {
      throw new KindException(
          written.left().span(),
          "An equation has single numbers on both sides",
          "Reduce a series first, such as max(x)");
    }
    return new Checked.Equation(left.typed(), right.typed());
  }

  /** The names of the record with the unknowns among them. */
  private record WithUnknowns(Scope outer, Map<String, Checked.Unknown> unknowns) implements Scope {
    @Override
    public Optional<Kind> kindOf(String name) {
      Checked.Unknown unknown = unknowns.get(name);
      return unknown != null ? Optional.of(unknown.kind()) : outer.kindOf(name);
    }

    @Override
    public Collection<String> names() {
      Set<String> names = new LinkedHashSet<>(new ArrayList<>(outer.names()));
      names.addAll(unknowns.keySet());
      return names;
    }

    @Override
    public Optional<Unit> unitOf(String name) {
      return outer.unitOf(name);
    }
  }
}
