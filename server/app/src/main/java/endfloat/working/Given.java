package endfloat.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The arguments of a call put in the places of its parameters: by position first, then by name.
 *
 * @param byName what was given for each parameter, in the order written
 */
record Given(Map<String, Expression.Argument> byName) {

  /**
   * @param parameters all names in order
   * @throws KindException if there are too many, one has no such name or is given twice, or one by
   *     position follows one by name
   */
  static Given of(Expression.Call call, List<String> parameters) {
    Map<String, Expression.Argument> given = new LinkedHashMap<>();
    boolean named = false;
    int position = 0;
    for (Expression.Argument argument : call.arguments()) {
      if (argument.name().isPresent()) {
        named = true;
        String name = argument.name().get();
        refuseUnknown(call, argument, name, parameters);
        put(given, name, argument, call);
      } else {
        if (named) {
          throw new KindException(
              argument.span(),
              "An argument without a name follows one with a name",
              "Put it first, or give it its name");
        }
        if (position == parameters.size()) {
          throw tooMany(call, argument, parameters);
        }
        put(given, parameters.get(position++), argument, call);
      }
    }
    return new Given(given);
  }

  private static void refuseUnknown(
      Expression.Call call, Expression.Argument argument, String name, List<String> parameters) {
    if (!parameters.contains(name)) {
      throw new KindException(
          nameSpan(argument, name),
          call.function() + " has no argument \"" + name + "\"",
          Nearest.wayOut(
              name,
              parameters,
              parameters.isEmpty()
                  ? "It takes none"
                  : "It takes " + String.join(", ", parameters)));
    }
  }

  private static Span nameSpan(Expression.Argument argument, String name) {
    Span span = argument.span();
    return new Span(span.line(), span.from(), span.from() + name.length());
  }

  private static KindException tooMany(
      Expression.Call call, Expression.Argument argument, List<String> parameters) {
    return new KindException(
        argument.span(),
        call.function() + " takes " + counted(parameters.size()) + ", and this is one more",
        parameters.isEmpty() ? "Take it out" : "It takes " + String.join(", ", parameters));
  }

  private static String counted(int count) {
    return switch (count) {
      case 0 -> "no argument";
      case 1 -> "one argument";
      default -> count + " arguments";
    };
  }

  private static void put(
      Map<String, Expression.Argument> given,
      String name,
      Expression.Argument argument,
      Expression.Call call) {
    if (given.put(name, argument) != null) {
      throw new KindException(
          argument.span(),
          "\"" + name + "\" of " + call.function() + " is given twice",
          "Give it once");
    }
  }

  /** Refuses a call in which any of the parameters that must be given is missing. */
  void require(Expression.Call call, List<String> needed) {
    List<String> missing = new ArrayList<>(needed);
    missing.removeAll(byName.keySet());
    if (!missing.isEmpty()) {
      throw new KindException(
          call.nameSpan(),
          call.function() + " lacks " + String.join(", ", missing),
          "Give "
              + (missing.size() == 1 ? "it" : "them")
              + " in order, or by name after \""
              + missing.get(0)
              + ":\"");
    }
  }
}
