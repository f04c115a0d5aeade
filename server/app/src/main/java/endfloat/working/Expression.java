package endfloat.working;

import endfloat.units.Unit;
import java.util.List;
import java.util.Optional;

/** The syntax tree of an expression. Every node knows where it stands. */
public sealed interface Expression {
  Span span();

  /**
   * A number with its unit.
   *
   * @param digits as typed, such as {@code 1 15/16} or {@code 23.0e-6}
   * @param unit empty for a bare number
   * @param si the value in SI, rounded once from decimal; a temperature in kelvin
   */
  record Literal(Span span, String digits, Optional<Unit> unit, double si) implements Expression {}

  /** A text in quotes. */
  record Text(Span span, String text) implements Expression {}

  /**
   * {@code true} or {@code false} never stand in the language; truths come from comparisons and
   * results.
   */
  record Place(Span span, String name, List<String> fields) implements Expression {}

  /**
   * {@code name(arguments).field}: a calculation, a built-in function or the constructor of a part.
   *
   * @param nameSpan the name alone
   */
  record Call(
      Span span, Span nameSpan, String function, List<Argument> arguments, List<String> fields)
      implements Expression {}

  /** One argument of a call; the name is empty for one given by position. */
  record Argument(Span span, Optional<String> name, Expression value) {}

  /** {@code - x} or {@code + x} or {@code not x}. */
  record Unary(Span span, UnaryOperator operator, Expression operand) implements Expression {}

  /** Two operands and what stands between. */
  record Binary(Span span, BinaryOperator operator, Expression left, Expression right)
      implements Expression {}

  /** {@code a < b <= c}: operators.size() == operands.size() - 1. */
  record Comparison(Span span, List<Expression> operands, List<Comparator> operators)
      implements Expression {}

  /** {@code if c then a or b}. */
  record Conditional(Span span, Expression condition, Expression then, Expression otherwise)
      implements Expression {}

  /** {@code [a, b, c]}. */
  record Listing(Span span, List<Expression> elements) implements Expression {}

  /** Operators before one operand. */
  enum UnaryOperator {
    MINUS,
    PLUS,
    NOT
  }

  /** Operators between two operands. */
  enum BinaryOperator {
    ADD,
    SUBTRACT,
    MULTIPLY,
    DIVIDE,
    POWER,
    AND,
    OR
  }

  /** Signs of comparison. */
  enum Comparator {
    LESS,
    AT_MOST,
    GREATER,
    AT_LEAST,
    EQUAL,
    UNEQUAL
  }
}
