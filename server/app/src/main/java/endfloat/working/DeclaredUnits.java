package endfloat.working;

import endfloat.units.Dimension;
import endfloat.units.Unit;
import endfloat.units.UnitSlip;

/** Whether a value may be shown in the unit that its line declares. */
final class DeclaredUnits {
  private final Checking checking;
  private final String name;
  private final Line.DeclaredUnit declared;
  private final Unit unit;

  DeclaredUnits(Checking checking, String name, Line.DeclaredUnit declared) {
    this.checking = checking;
    this.name = name;
    this.declared = declared;
    this.unit = declared.unit();
  }

  /** Kind of the value once it is declared, its angle that of the unit. */
  Kind kind(Operand value) {
    Kind element = value.element();
    Kind kind = element;
    if (element instanceof Kind.Temperature) {
      refuseOtherThanScale();
    } else if (element instanceof Kind.Quantity quantity) {
      kind = new Kind.Quantity(quantity(value, quantity.dimension()));
    } else {
      throw new KindException(
          declared.span(),
          "The right side is " + KindWords.a(element) + ", which has no unit",
          element instanceof Kind.Fields
              ? "Take the unit mark out, or " + lower(SumRules.instead(value, element))
              : "Take the unit mark out");
    }
    return value.kind() instanceof Kind.Series series
        ? new Kind.Series(kind, series.axes(), series.labels())
        : kind;
  }

  private static String lower(String text) {
    return Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }

  /** degC and degF show a temperature, and K shows it from absolute zero. */
  private void refuseOtherThanScale() {
    if (!unit.isTemperaturePoint() && !unit.symbol().equals("K")) {
      throw new KindException(
          declared.span(),
          name + " is declared " + mark() + ", and its right side is a temperature",
          "Declare it [degC] or [degF], or [K] from absolute zero");
    }
  }

  private String mark() {
    return "[" + declared.text() + "]";
  }

  private Dimension quantity(Operand value, Dimension given) {
    Dimension wanted = unit.dimension();
    if (unit.isTemperaturePoint()) {
      throw notTemperature(value, given);
    }
    if (value.isZero()) {
      return wanted;
    }
    if (!given.same(wanted)) {
      if (isRate(given) && isRate(wanted)) {
        return rate(value, given);
      }
      throw mismatch(value, given);
    }
    SumRules.refuseBareAngle(value, wanted);
    if (wanted.isNone() && value.isBare() && !unit.symbol().equals("1")) {
      checking.warn(
          value.span(),
          shortly(value) + " without a unit is " + times(value) + " " + unit.print(),
          "Write " + shortly(value) + " " + unit.symbol() + " if that was meant");
    }
    return wanted;
  }

  private static String shortly(Operand value) {
    return value.said().isEmpty() ? "A number" : value.said();
  }

  private String times(Operand value) {
    return value.typed() instanceof Typed.Constant constant
        ? plain(unit.fromSi(constant.si()))
        : "so many times 1 in";
  }

  private static String plain(double number) {
    return java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  private KindException notTemperature(Operand value, Dimension given) {
    String message =
        name
            + " is declared "
            + mark()
            + ", a temperature, and its right side is "
            + KindWords.a(given);
    if (value.isBare() && !value.said().isEmpty()) {
      return new KindException(
          value.span(), message, "Write " + value.said() + " " + unit.symbol());
    }
    return new KindException(
        value.span(),
        message,
        given.withoutAngle().equals(Dimension.TEMPERATURE)
            ? "Declare a difference [K]"
            : value.slip(Dimension.TEMPERATURE).orElse("Declare it in a unit of its kind"));
  }

  private KindException mismatch(Operand value, Dimension given) {
    String message =
        name
            + " is declared "
            + mark()
            + ", "
            + KindWords.a(unit.dimension())
            + ", and its right side is "
            + KindWords.a(given);
    if (value.isBare() && !value.said().isEmpty()) {
      return new KindException(
          value.span(), message, "Write " + value.said() + " " + unit.symbol());
    }
    return new KindException(
        value.span(),
        message,
        value
            .slip(unit.dimension())
            .or(() -> UnitSlip.between(unit, given))
            .orElseGet(() -> otherUnit(given)));
  }

  private static String otherUnit(Dimension given) {
    return UnitsShown.plain(given)
        .map(u -> "Declare it [" + u.symbol() + "], or mend the right side")
        .orElse("Declare it [1], or mend the right side");
  }

  private static boolean isRate(Dimension dimension) {
    return dimension.withoutAngle().equals(Kinds.PER_TIME);
  }

  /** Turns a second, radians a second and plain 1/s are told apart, with the ways between them. */
  private Dimension rate(Operand value, Dimension given) {
    boolean hertz = !declared.text().replace(" ", "").matches("1/(s|min|h|sec|hr|ms)|s\\^?-1");
    if (given.hasAngle() && !hertz && ProductRules.isRootRate(value.typed())) {
      checking.hint(
          value.span(),
          name + " counts radians, as a natural frequency from a root does",
          "Declare it [rad/s] to say so; for turns divide by 1 rev and declare it [Hz]");
      return given;
    }
    String message =
        name
            + " is declared "
            + mark()
            + ", "
            + KindWords.a(unit.dimension())
            + ", and its right side is "
            + KindWords.a(given);
    throw new KindException(
        value.span(),
        message,
        given.hasAngle()
            ? "Divide by 1 rev to count turns, or by 1 rad to keep the number of radians; or declare it"
                + " [rpm] or [rad/s]"
            : "Multiply by 1 rev if it counts turns, or by 1 rad if it counts radians; or declare it"
                + " [Hz] or [1/s]");
  }
}
