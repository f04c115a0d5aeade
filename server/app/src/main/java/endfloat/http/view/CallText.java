package endfloat.http.view;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Parameter;
import endfloat.units.UnitTable;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A call with the names of its arguments, the values left open. An open value is refused at its
 * place by the language, so nothing that is forgotten passes for a figure.
 */
public final class CallText {
  private CallText() {}

  /** Every argument that must be given: {@code thermal_growth(length: , expansion: )}. */
  public static String call(Calculation calculation) {
    return call(calculation, "");
  }

  /** The same with marks where an editor is to stop for each value: {@code ${}}. */
  static String stops(Calculation calculation) {
    return call(calculation, "${}");
  }

  /** A line that defines a value by it; its name is one that a person will change. */
  public static String line(Calculation calculation) {
    String unit = calculation.givesRecord() ? "" : calculation.results().get(0).unit();
    return "value" + (isUnit(unit) ? " [" + unit + "]" : "") + " = " + call(calculation);
  }

  private static boolean isUnit(String unit) {
    return !unit.isEmpty() && !unit.equals("1") && !unit.startsWith("<") && known(unit);
  }

  private static boolean known(String unit) {
    return UnitTable.entries().stream().anyMatch(entry -> entry.symbol().equals(unit))
        || unit.contains("/");
  }

  /**
   * @param open what stands where a value is to be written
   */
  static String call(Calculation calculation, String open) {
    return calculation.name() + "(" + arguments(calculation.parameters(), open) + ")";
  }

  private static String arguments(List<Parameter> parameters, String open) {
    return parameters.stream()
        .filter(parameter -> parameter.fallback().isEmpty())
        .map(parameter -> parameter.name() + ": " + value(parameter, open))
        .collect(Collectors.joining(", "));
  }

  private static String value(Parameter parameter, String open) {
    return switch (parameter.form()) {
      case PARTS -> {
        var part = parameter.part().orElseThrow();
        yield "[" + part.name() + "(" + arguments(part.components(), open) + ")]";
      }
      case TEXT, CHOICE -> '"' + open + '"';
      case LIST -> "[" + open + "]";
      default -> open;
    };
  }
}
