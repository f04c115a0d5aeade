package endfloat.engine;

import endfloat.engine.Value.Scalar;
import endfloat.working.Checked;
import endfloat.working.Expression;
import endfloat.working.Kind;
import endfloat.working.Line;
import endfloat.working.References;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A line that gives a name its value, or solves for it. */
final class DefinitionNode extends LineNode {
  private RowAxis rows;
  private String first = "";
  private Formula formula;
  private Solver solver;
  private java.util.Map<String, endfloat.units.Unit> fieldUnits = java.util.Map.of();

  DefinitionNode(String clause, Piece piece, Line.Definition line) {
    super(clause, piece, line);
  }

  Line.Definition definition() {
    return (Line.Definition) line();
  }

  @Override
  String name() {
    return definition().name();
  }

  @Override
  String owner() {
    return name();
  }

  @Override
  void made(Checked checked, Planner planner) {
    formula = null;
    solver = null;
    fieldUnits = java.util.Map.of();
    if (checked instanceof Checked.Solved solved) {
      solver = new Solver(this, solved, planner);
      found(solved.kind(), solved.unit().orElse(null), solved.problems());
    } else {
      Checked.Value value = (Checked.Value) checked;
      formula = new Formula(name(), Root.Kind.INPUT, spreadWords(value), value, planner);
      fieldUnits = FieldUnits.of(value.value(), name -> planner.slot(name).unit());
      found(value.kind(), value.unit().orElse(null), value.problems());
    }
  }

  private String spreadWords(Checked.Value value) {
    if (definition().spread().isPresent()) {
      Line.Spread spread = definition().spread().get();
      return "\u00b1 " + piece().at(spread.half().span());
    }
    return value.distribution().isPresent() ? piece().at(value.value().span()) : "";
  }

  /** Of a column of a table that is worked out: the rows to which its values are laid. */
  void rows(RowAxis of) {
    rows = of;
  }

  /**
   * Of a column of a table of which all are worked out: the head of the first, to whose rows its
   * values are laid; empty for none.
   */
  void rowsOf(String head) {
    first = head;
  }

  private String table() {
    return name().substring(0, name().indexOf('.'));
  }

  @Override
  Set<String> namesRead() {
    if (first.isEmpty()) {
      return super.namesRead();
    }
    Set<String> names = new LinkedHashSet<>(super.namesRead());
    names.add(table());
    return names;
  }

  @Override
  Set<String> fieldsRead(String name) {
    if (first.isEmpty() || !name.equals(table())) {
      return super.fieldsRead(name);
    }
    Set<String> fields =
        new LinkedHashSet<>(super.namesRead().contains(name) ? super.fieldsRead(name) : Set.of());
    fields.add(first);
    return fields;
  }

  @Override
  Value evaluate(Frame frame) {
    Value value = solver != null ? solver.solve(frame) : formula.evaluate(frame);
    if (!(value instanceof Value.Series series)) {
      return value;
    }
    if (!first.isEmpty()) {
      return ofFirst(frame) instanceof Value.Series rowsOfFirst
          ? RowAxis.laidTo(rowsOfFirst, series, frame)
          : value;
    }
    return rows != null ? rows.laid(series, frame) : value;
  }

  private Value ofFirst(Frame frame) {
    for (Slot read : reads()) {
      if (read.name().equals(table() + "." + first)) {
        return frame.of(read);
      }
    }
    return null;
  }

  boolean isSolved() {
    return definition().solve().isPresent();
  }

  /** Names that a solve is for; none for any other line. */
  List<String> unknowns() {
    return definition()
        .solve()
        .map(s -> s.unknowns().stream().map(Line.Unknown::name).toList())
        .orElse(List.of());
  }

  /** Slots of the names that a solve is for. */
  Set<Slot> unknownSlots() {
    Set<Slot> slots = new LinkedHashSet<>(List.of(seeks()));
    List<String> unknowns = unknowns();
    if (unknowns.contains(name())) {
      slots.add(giving());
    }
    for (Slot read : reads()) {
      if (unknowns.contains(read.name())) {
        slots.add(read);
      }
    }
    return slots;
  }

  /** What the brackets of a solve read. */
  List<Slot> bracketReads() {
    Set<String> names = new HashSet<>();
    for (Line.Unknown unknown : definition().solve().map(Line.Solve::unknowns).orElse(List.of())) {
      names.addAll(References.of(unknown.low()));
      names.addAll(References.of(unknown.high()));
    }
    return Arrays.stream(reads()).filter(read -> names.contains(read.name())).toList();
  }

  @Override
  boolean ready(ValueGraph graph) {
    Optional<Kind> kind = circle() == null ? Optional.empty() : graph.bracket(definition());
    if (kind.isEmpty()) {
      return true;
    }
    found(kind.get(), endfloat.working.KindChecker.unit(definition()).orElse(null), List.of());
    return circle().prepare(this, graph);
  }

  /** Units of the fields of a record of results, where the calculation names them. */
  java.util.Map<String, endfloat.units.Unit> fieldUnits() {
    return fieldUnits;
  }

  /** The root that its own spread is; empty where it has none or is no single number. */
  Optional<Root> root() {
    if (formula == null || !formula.hasOwnSpread() || !(value() instanceof Scalar scalar)) {
      return Optional.empty();
    }
    for (int i = 0; i < scalar.gradient().size(); i++) {
      if (scalar.gradient().root(i).id().equals(formula.rootId())) {
        return Optional.of(scalar.gradient().root(i));
      }
    }
    return Optional.empty();
  }

  /** Whether its own spread is stated in parts of the value. */
  boolean spreadIsRelative() {
    return formula != null && formula.hasRelativeSpread();
  }

  /** The digits of a plain number, as typed; empty for anything else. */
  Optional<String> typed() {
    Optional<Expression> value = definition().value();
    if (value.isPresent()
        && value.get() instanceof Expression.Unary sign
        && sign.operator() == Expression.UnaryOperator.MINUS
        && sign.operand() instanceof Expression.Literal number) {
      return sameUnit(number) ? Optional.of("\u2212" + number.digits()) : Optional.empty();
    }
    if (value.isPresent() && value.get() instanceof Expression.Literal number && sameUnit(number)) {
      return Optional.of(number.digits().replace('-', '\u2212'));
    }
    return Optional.empty();
  }

  /** The digits after ±, where they are in the unit of the value; empty for anything else. */
  Optional<String> typedSpread() {
    return definition()
        .spread()
        .map(Line.Spread::half)
        .filter(Expression.Literal.class::isInstance)
        .map(Expression.Literal.class::cast)
        .filter(h -> h.unit().isEmpty() || h.unit().get().equals(unit()))
        .map(Expression.Literal::digits);
  }

  private boolean sameUnit(Expression.Literal number) {
    return unit() == null
        ? number.unit().isEmpty()
        : number.unit().filter(unit()::equals).isPresent();
  }
}
