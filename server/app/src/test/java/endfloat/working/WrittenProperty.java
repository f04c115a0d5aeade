package endfloat.working;

import static org.junit.jupiter.api.Assertions.assertEquals;

import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A tree that is printed and read again is the same tree. */
class WrittenProperty {
  private static final Span NOWHERE = new Span(1, 1, 1);
  private static final List<String> UNITS =
      List.of(
          "mm", "in", "ft", "N.m", "1/K", "g/(kW.h)", "mm^2/s", "degC", "%", "deg", "rpm", "s^-1");
  private static final List<String> NAMES =
      List.of(
          "a", "lash_hot", "t2", "μ", "pi", "m", "mm", "α_block", "in", "k", "dof", "condition");

  @Property(tries = 3000)
  void anExpressionIsReadAsItWasPrinted(@ForAll("expressions") Expression expression) {
    String text = Written.expression(expression);
    Parser.Formula read = Parser.expression(text);
    assertEquals(List.of(), read.problems(), text);
    assertEquals(text, Written.expression(read.expression().orElseThrow()));
    assertEquals(bare(expression), bare(read.expression().orElseThrow()), text);
  }

  @Property(tries = 1000)
  void aLineIsReadAsItWasPrinted(
      @ForAll("expressions") Expression value,
      @ForAll("expressions") Expression half,
      @ForAll boolean note) {
    Line.Spread spread =
        new Line.Spread(
            NOWHERE, half, note ? Optional.of(half) : Optional.empty(), Optional.empty());
    Line line =
        new Line.Definition(
            NOWHERE,
            "x_1",
            NOWHERE,
            Optional.of(new Line.DeclaredUnit(NOWHERE, "lbf*ft", UnitTable.find("lbf.ft"))),
            Optional.of(value),
            Optional.empty(),
            Optional.of(spread),
            "where it is from");
    readsAgain(line);
    readsAgain(
        new Line.Limit(
            NOWHERE,
            new Expression.Place(NOWHERE, "fit", List.of("least")),
            Optional.of(value),
            note ? Optional.of(half) : Optional.empty(),
            Optional.empty(),
            "sheet \"3\"",
            note ? java.util.Map.of("condition", "hot") : java.util.Map.of(),
            ""));
    readsAgain(new Line.Correlate(NOWHERE, "a", NOWHERE, "b", NOWHERE, value, ""));
    readsAgain(
        new Line.Definition(
            NOWHERE,
            "x",
            NOWHERE,
            Optional.empty(),
            Optional.empty(),
            Optional.of(
                new Line.Solve(
                    NOWHERE,
                    List.of(new Line.Equation(value, half)),
                    List.of(new Line.Unknown("x", NOWHERE, half, value)))),
            Optional.empty(),
            ""));
  }

  private static void readsAgain(Line line) {
    String text = Written.line(line);
    Working working = Parser.parse(text);
    assertEquals(List.of(), working.problems(), text);
    assertEquals(1, working.lines().size(), text);
    assertEquals(bare(line), bare(working.lines().get(0)), text);
  }

  /** Without places, and with units by their symbols. */
  private static String bare(Object tree) {
    return tree.toString()
        .replaceAll("Span\\[[^\\]]*]", "")
        .replaceAll("endfloat\\.units\\.\\w+@\\w+", "unit");
  }

  @Provide
  Arbitrary<Expression> expressions() {
    return expressions(3);
  }

  private Arbitrary<Expression> expressions(int depth) {
    if (depth == 0) {
      return Arbitraries.oneOf(literals(), places(), texts());
    }
    Arbitrary<Expression> inner = expressions(depth - 1);
    return Arbitraries.oneOf(
        literals(),
        places(),
        unaries(inner),
        binaries(inner),
        binaries(inner),
        comparisons(inner),
        conditionals(inner),
        listings(inner),
        calls(inner));
  }

  private Arbitrary<Expression> literals() {
    Arbitrary<String> digits =
        Arbitraries.of("0", "1", "2", "480.0", "0.005", "23e-6", "1.5e3", "3/8", "1 15/16");
    Arbitrary<Optional<Unit>> units = Arbitraries.of(UNITS).map(UnitTable::find).optional(0.6);
    return Combinators.combine(digits, units)
        .as(
            (d, u) -> {
              Optional<Unit> unit = d.indexOf('/') >= 0 ? Optional.of(UnitTable.find("in")) : u;
              double si = unit.orElse(UnitTable.find("1")).toSi(d);
              return new Expression.Literal(NOWHERE, d, unit, si);
            });
  }

  private Arbitrary<Expression> places() {
    return Arbitraries.of(NAMES).map(n -> new Expression.Place(NOWHERE, n, fields(n)));
  }

  private static List<String> fields(String name) {
    return name.equals("a") ? List.of("least", "pressure") : List.of();
  }

  private Arbitrary<Expression> texts() {
    return Arbitraries.of("", "H7/g6", "say \"no\"", "a -- b", "25°")
        .map(t -> new Expression.Text(NOWHERE, t));
  }

  private static Arbitrary<Expression> unaries(Arbitrary<Expression> inner) {
    return Combinators.combine(Arbitraries.of(Expression.UnaryOperator.class), inner)
        .as((o, e) -> new Expression.Unary(NOWHERE, o, e));
  }

  private static Arbitrary<Expression> binaries(Arbitrary<Expression> inner) {
    return Combinators.combine(Arbitraries.of(Expression.BinaryOperator.class), inner, inner)
        .as((o, l, r) -> new Expression.Binary(NOWHERE, o, l, r));
  }

  private static Arbitrary<Expression> comparisons(Arbitrary<Expression> inner) {
    return Combinators.combine(Arbitraries.of(Expression.Comparator.class), inner.list().ofSize(3))
        .as((o, e) -> new Expression.Comparison(NOWHERE, e, List.of(o, o)));
  }

  private static Arbitrary<Expression> conditionals(Arbitrary<Expression> inner) {
    return Combinators.combine(inner, inner, inner)
        .as((c, t, e) -> new Expression.Conditional(NOWHERE, c, t, e));
  }

  private static Arbitrary<Expression> listings(Arbitrary<Expression> inner) {
    return inner.list().ofMinSize(1).ofMaxSize(3).map(e -> new Expression.Listing(NOWHERE, e));
  }

  private static Arbitrary<Expression> calls(Arbitrary<Expression> inner) {
    Arbitrary<List<Expression>> values = inner.list().ofMaxSize(3);
    return Combinators.combine(values, Arbitraries.of(true, false))
        .as(
            (v, named) ->
                new Expression.Call(
                    NOWHERE,
                    NOWHERE,
                    named ? "press_fit" : "max",
                    v.stream()
                        .map(
                            e ->
                                new Expression.Argument(
                                    NOWHERE, named ? Optional.of("limit") : Optional.empty(), e))
                        .toList(),
                    named ? List.of("most") : List.of()));
  }
}
