package endfloat.catalogue;

import endfloat.definition.OutOfRangeException;
import endfloat.definition.OwnUncertainty;
import endfloat.definition.RefusedException;
import endfloat.units.Indexed;
import java.util.List;

/** Refuses arguments outside the range where a calculation holds, before it runs. */
final class ArgumentRange {
  private ArgumentRange() {}

  static void hold(List<Parameter> parameters, Object[] arguments) {
    for (int i = 0; i < arguments.length; i++) {
      hold(parameters.get(i), arguments[i]);
    }
  }

  private static void hold(Parameter parameter, Object argument) {
    switch (parameter.form()) {
      case QUANTITY -> hold(parameter, (double) argument);
      case LIST -> hold(parameter, (double[]) argument);
      case INDEXED -> hold(parameter, ((Indexed) argument).values());
      case PARTS -> hold(parameter, (List<?>) argument);
      case CHOICE -> {
        if (argument != null && !parameter.choices().contains((String) argument)) {
          throw new RefusedException(
              parameter.name()
                  + " is one of: "
                  + String.join(", ", parameter.choices())
                  + "; not \""
                  + argument
                  + "\".");
        }
      }
      case TEXT -> {
        // any text; the calculation itself knows what it can read
      }
    }
  }

  private static void hold(Parameter parameter, List<?> parts) {
    List<Parameter> components = parameter.part().orElseThrow().components();
    for (Object part : parts) {
      hold(components, (Object[]) part);
    }
  }

  private static void hold(Parameter parameter, double[] values) {
    for (double value : values) {
      hold(parameter, value);
    }
  }

  private static void hold(Parameter parameter, double value) {
    if (Double.isNaN(value) && parameter.fallback().filter(OwnUncertainty::isLeftOut).isPresent()) {
      return;
    }
    if (!Double.isFinite(value)) {
      throw new RefusedException(parameter.name() + " has no finite value.");
    }
    parameter
        .range()
        .filter(range -> !range.holds(value))
        .ifPresent(
            range -> {
              throw new OutOfRangeException(
                  parameter.name(),
                  value,
                  range.least(),
                  range.greatest(),
                  parameter.unit(),
                  "it holds for " + range.text());
            });
  }
}
