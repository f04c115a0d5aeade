package endfloat.working;

import endfloat.catalogue.Parameter;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;

/** The defaults of parameters, each read once. */
final class Defaults {
  private final Map<Parameter, Expression> read =
      Collections.synchronizedMap(new IdentityHashMap<>());

  /** The default of a parameter that has one, as an expression. */
  Expression of(Parameter parameter) {
    return read.computeIfAbsent(parameter, Defaults::expression);
  }

  private static Expression expression(Parameter parameter) {
    String text = parameter.fallback().orElseThrow();
    return Parser.expression(text)
        .expression()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "the default of " + parameter.name() + " cannot be read: " + text));
  }
}
