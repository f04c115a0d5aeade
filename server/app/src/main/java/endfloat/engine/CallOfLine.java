package endfloat.engine;

import endfloat.working.Expression;
import endfloat.working.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The one call that a line of a record is, taken apart as it was typed, so that it can be asked
 * again with another argument.
 *
 * @param function name of the calculation
 * @param arguments as typed, each with its name where it has one
 */
public record CallOfLine(String function, List<String> arguments) {

  /** The call behind a name; empty where its line is anything else. */
  public static Optional<CallOfLine> of(ValueGraph graph, String name) {
    for (Clause clause : graph.source().clauses()) {
      if (clause instanceof Clause.Working working) {
        for (Piece piece : Piece.of(working.text())) {
          for (Line line : piece.parse().lines()) {
            if (line instanceof Line.Definition definition && definition.name().equals(name)) {
              return definition
                  .value()
                  .filter(Expression.Call.class::isInstance)
                  .map(Expression.Call.class::cast)
                  .filter(call -> call.fields().isEmpty())
                  .map(call -> taken(piece.text(), call));
            }
          }
        }
      }
    }
    return Optional.empty();
  }

  private static CallOfLine taken(String text, Expression.Call call) {
    String[] lines = text.split("\n", -1);
    int start = call.nameSpan().to() - 1;
    for (int i = 0; i < call.nameSpan().line() - 1; i++) {
      start += lines[i].length() + 1;
    }
    List<String> arguments = new ArrayList<>();
    StringBuilder one = new StringBuilder();
    int depth = 0;
    boolean quoted = false;
    for (int i = start; i < text.length(); i++) {
      char c = text.charAt(i);
      quoted ^= c == '"';
      boolean opens = !quoted && (c == '(' || c == '[');
      boolean closes = !quoted && (c == ')' || c == ']');
      depth += opens ? 1 : closes ? -1 : 0;
      if (depth == 0 && closes || depth == 1 && !quoted && c == ',') {
        arguments.add(one.toString().strip());
        one.setLength(0);
        if (depth == 0) {
          break;
        }
      } else if (!(depth == 1 && opens)) {
        one.append(c == '\n' ? ' ' : c);
      }
    }
    return new CallOfLine(call.function(), List.copyOf(arguments));
  }

  /** The call without the argument of a name. */
  public CallOfLine without(String name) {
    return new CallOfLine(
        function, arguments.stream().filter(a -> !a.matches(name + "\\s*:.*")).toList());
  }

  /** An argument as typed, by its name or by its place from 0; empty where it is not given. */
  public Optional<String> argument(String name, int place) {
    for (String argument : arguments) {
      if (argument.matches("(?s)" + name + "\\s*:.*")) {
        return Optional.of(argument.substring(argument.indexOf(':') + 1).strip());
      }
    }
    boolean positional =
        place < arguments.size() && !arguments.get(place).matches("(?s)[A-Za-z_]\\w*\\s*:.*");
    return positional ? Optional.of(arguments.get(place)) : Optional.empty();
  }

  /** The call as a line of the language writes it, with a further argument. */
  public String with(String further) {
    return function + "(" + String.join(", ", arguments) + ", " + further + ")";
  }

  @Override
  public String toString() {
    return function + "(" + String.join(", ", arguments) + ")";
  }
}
