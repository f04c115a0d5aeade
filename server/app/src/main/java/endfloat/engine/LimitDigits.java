package endfloat.engine;

import endfloat.working.Expression;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * The digits of one end of a limit as somebody typed them: in the limit itself, or where the name
 * stands that it gives instead of a number. They go with the unit they were typed in, so whoever
 * prints them must see that they say the same in his.
 */
final class LimitDigits {
  private final Set<Node> seen = new HashSet<>();

  private LimitDigits() {}

  /**
   * @param end of the limit, or of the line of a name
   * @param reader the line that it stands in
   * @return empty where it was worked out
   */
  static String of(Optional<Expression> end, Node reader) {
    return end.map(expression -> new LimitDigits().digits(expression, reader)).orElse("");
  }

  private String digits(Expression end, Node reader) {
    if (end instanceof Expression.Literal number) {
      return number.digits().replace('-', '\u2212');
    }
    if (end instanceof Expression.Unary sign
        && sign.operator() == Expression.UnaryOperator.MINUS
        && sign.operand() instanceof Expression.Literal number) {
      return "\u2212" + number.digits();
    }
    return end instanceof Expression.Place place && place.fields().isEmpty()
        ? named(place.name(), reader)
        : "";
  }

  private String named(String name, Node reader) {
    for (Slot read : reader.reads()) {
      if (read.name().equals(name) && read.giver() != null && seen.add(read.giver())) {
        if (read.giver() instanceof ReadingNode reading) {
          return reading.typed(java.util.List.of());
        }
        return read.giver() instanceof DefinitionNode definition
            ? definition.definition().value().map(v -> digits(v, definition)).orElse("")
            : "";
      }
    }
    return "";
  }
}
