package endfloat.processor;

import endfloat.definition.Default;
import endfloat.definition.OwnUncertainty;
import endfloat.units.UnitException;
import java.util.List;
import java.util.Optional;
import javax.lang.model.element.Element;

/** Holds a {@code @Default} to what its parameter takes, so that it can never be refused later. */
final class DefaultText {
  private DefaultText() {}

  /**
   * The default of a parameter, once it is known to be one.
   *
   * @param form of the parameter
   * @param range where it is valid
   * @param choices texts of an enum
   * @return the default as the working language writes it, empty where the argument must be given
   */
  static Optional<String> of(
      Element element, String form, String unit, Optional<RangeText> range, List<String> choices) {
    Default fallback = element.getAnnotation(Default.class);
    if (fallback == null) {
      return Optional.empty();
    }
    String value = fallback.value();
    if (!OwnUncertainty.isLeftOut(value)) {
      try {
        hold(value, form, unit, range, choices);
      } catch (IllegalArgumentException | UnitException e) {
        throw new DefinitionException(element, "@Default(\"" + value + "\"): " + e.getMessage());
      }
    }
    return Optional.of(value);
  }

  private static void hold(
      String value, String form, String unit, Optional<RangeText> range, List<String> choices) {
    switch (form) {
      case "QUANTITY" -> {
        double si = RangeText.si(value, unit);
        if (range.isPresent() && !range.get().holds(si)) {
          throw new IllegalArgumentException("it lies outside " + range.get().text());
        }
      }
      case "TEXT" -> unquoted(value);
      case "CHOICE" -> {
        if (!choices.contains(unquoted(value))) {
          throw new IllegalArgumentException("it is none of " + String.join(", ", choices));
        }
      }
      default -> {
        if (!value.equals("[]")) {
          throw new IllegalArgumentException("a list is [] or " + Default.NOT_GIVEN);
        }
      }
    }
  }

  private static String unquoted(String value) {
    if (!value.matches("\"[^\"]*\"")) {
      throw new IllegalArgumentException("a text stands in quotes");
    }
    return value.substring(1, value.length() - 1);
  }
}
