package endfloat.working;

import endfloat.units.Dimension;
import endfloat.units.Unit;
import endfloat.units.UnitTable;
import java.util.List;
import java.util.Optional;

/** What may be added, compared, or stand in the place of something else. */
final class SumRules {
  private SumRules() {}

  /** What a line does with two values, for its message. */
  enum Act {
    ADD("This adds %2$s to %1$s"),
    SUBTRACT("This takes %2$s from %1$s"),
    COMPARE("This compares %1$s with %2$s"),
    BRANCH("One branch gives %1$s, the other %2$s"),
    LIST("This list holds %1$s and %2$s"),
    TOGETHER("This takes %1$s together with %2$s"),
    EQUATE("One side is %1$s, the other %2$s"),
    LIMIT("This limits %1$s by %2$s"),
    SPREAD("The value is %1$s, its uncertainty %2$s"),
    BRACKET("One end is %1$s, the other %2$s");

    private final String words;

    Act(String words) {
      this.words = words;
    }

    String said(Kind left, Kind right) {
      return String.format(java.util.Locale.ROOT, words, KindWords.a(left), KindWords.a(right));
    }
  }

  /** Kind of left + right or left - right, element by element. */
  static Kind sum(Operand left, Operand right, boolean plus) {
    if (DateRules.isDate(left) || DateRules.isDate(right)) {
      return SeriesRules.spread(DateRules.sum(left, right, plus), List.of(left, right));
    }
    Act act = plus ? Act.ADD : Act.SUBTRACT;
    numeric(left);
    numeric(right);
    Kind element;
    boolean leftPoint = Kinds.isTemperature(left.kind());
    boolean rightPoint = Kinds.isTemperature(right.kind());
    if (leftPoint && rightPoint) {
      if (plus) {
        throw new KindException(
            right.span(),
            "This adds a temperature to a temperature; both are points on a scale",
            difference(right.written(), "Add a difference in K"));
      }
      element = Kinds.KELVIN;
    } else if (leftPoint || rightPoint) {
      element = withDifference(left, right, plus);
    } else {
      element = common(left, right, act);
    }
    return SeriesRules.spread(element, List.of(left, right));
  }

  /** {@code Write 30 K for a difference}, where the literal says degC. */
  private static String difference(Expression written, String otherwise) {
    Optional<Unit> unit = Operand.literalUnit(written);
    if (unit.isEmpty()) {
      return otherwise;
    }
    String symbol = unit.get().symbol().equals("degF") ? "delta_degF" : "K";
    return "Write " + Operand.digits(written) + " " + symbol + " for a difference";
  }

  private static Kind withDifference(Operand left, Operand right, boolean plus) {
    boolean leftPoint = Kinds.isTemperature(left.kind());
    Operand other = leftPoint ? right : left;
    if (other.isZero()) {
      throw new KindException(
          other.span(), "0 beside a temperature may be a point or a difference", "Write 0 K");
    }
    if (!Kinds.isKelvin(other.kind())) {
      Act act = plus ? Act.ADD : Act.SUBTRACT;
      throw new KindException(
          other.span(),
          act.said(left.element(), right.element()),
          other.isBare() ? unitFor(other, UnitTable.find("K")) : "Add a difference in K");
    }
    if (!leftPoint && !plus) {
      throw new KindException(
          right.span(),
          "This takes a temperature from a temperature difference",
          "Take a difference from a temperature, or a temperature from a temperature");
    }
    return Kinds.TEMPERATURE;
  }

  /** One kind for two values that stand for the same thing: sums, branches, limits, lists. */
  static Kind common(Operand left, Operand right, Act act) {
    Kind a = left.element();
    Kind b = right.element();
    if (a instanceof Kind.Quantity one && b instanceof Kind.Quantity other) {
      return quantities(left, one.dimension(), right, other.dimension(), act);
    }
    if (a.equals(b) && !(a instanceof Kind.Fields)) {
      return a;
    }
    if (DateRules.areDates(left, right)) {
      return new Kind.Date();
    }
    if ((Kinds.isTemperature(a) && right.isZero()) || (Kinds.isTemperature(b) && left.isZero())) {
      throw new KindException(
          (left.isZero() ? left : right).span(),
          "0 has no unit, and a temperature has no natural zero",
          "Write 0 degC, 0 degF or 0 K as meant");
    }
    throw clash(left, right, act);
  }

  private static Kind quantities(Operand left, Dimension a, Operand right, Dimension b, Act act) {
    if (a.equals(b) && !a.hasAngle()) {
      return Kinds.both(left.element(), right.element());
    }
    if (left.isZero()) {
      return right.element();
    }
    if (right.isZero()) {
      return left.element();
    }
    if (!a.same(b)) {
      throw clash(left, right, act);
    }
    refuseBareAngle(left, b);
    refuseBareAngle(right, a);
    return a.equals(b)
        ? Kinds.both(left.element(), right.element())
        : new Kind.Quantity(a.withoutAngle());
  }

  /** A bare constant where an angle is wanted may be degrees or radians. */
  static void refuseBareAngle(Operand operand, Dimension wanted) {
    if (wanted.hasAngle()
        && wanted.withoutAngle().isNone()
        && operand.element() instanceof Kind.Quantity given
        && given.dimension().isNone()
        && operand.isBareNumber()
        && !operand.isZero()) {
      String said = operand.said();
      if (!operand.isBare()) {
        String what = said.isEmpty() ? "this" : said;
        throw new KindException(
            operand.span(),
            "An angle is wanted, and " + what + " is a number without a unit",
            "Give it its unit where it is defined, deg or rad; for a ratio in radians write * 1 rad");
      }
      throw new KindException(
          operand.span(),
          "An angle is wanted, and " + (said.isEmpty() ? "this" : said) + " has no unit",
          said.isEmpty()
              ? "Give it its unit, deg or rad"
              : "Write " + said + " deg or " + said + " rad");
    }
  }

  static void numeric(Operand operand) {
    Kind kind = operand.element();
    if (kind instanceof Kind.Quantity || kind instanceof Kind.Temperature) {
      return;
    }
    throw new KindException(
        operand.span(), "This reckons with " + KindWords.a(kind), instead(operand, kind));
  }

  static String instead(Operand operand, Kind kind) {
    if (kind instanceof Kind.Fields fields) {
      String name = operand.said().isEmpty() ? "" : operand.said();
      return "Take one of its results: "
          + fields.fields().keySet().stream()
              .limit(6)
              .map(f -> name + "." + f)
              .collect(java.util.stream.Collectors.joining(", "));
    }
    return "A number with its unit is wanted here";
  }

  private static KindException clash(Operand left, Operand right, Act act) {
    Kind a = left.element();
    Kind b = right.element();
    Span at = left.isBare() && !right.isBare() ? left.span() : right.span();
    return new KindException(at, act.said(a, b), wayOut(left, right));
  }

  private static String wayOut(Operand left, Operand right) {
    for (Operand operand : List.of(left, right)) {
      if (operand.element() instanceof Kind.Fields fields) {
        return instead(operand, fields);
      }
    }
    if (DateRules.isDate(left) || DateRules.isDate(right)) {
      return "Beside a date stands a date: a column of dates, or \"2026-03-02\" in quotes";
    }
    if (Operand.literalUnit(right.written()).filter(u -> u.symbol().equals("%")).isPresent()) {
      return "For a share of the value write * (1 + " + right.said() + ")";
    }
    for (Operand bare : List.of(left, right)) {
      boolean beside = Kinds.isTemperature(left.kind()) || Kinds.isTemperature(right.kind());
      if (beside && bare.isBare() && !bare.said().isEmpty()) {
        return "Write " + bare.said() + " degC or " + bare.said() + " degF";
      }
    }
    if (right.isBare() && !right.said().isEmpty()) {
      return unitOf(left).map(u -> unitFor(right, u)).orElse("Give it its unit");
    }
    if (left.isBare() && !left.said().isEmpty()) {
      return unitOf(right).map(u -> unitFor(left, u)).orElse("Give it its unit");
    }
    if (isRate(left.element()) && isRate(right.element())) {
      return "Divide the angular speed by 1 rev to count turns, or the other times 1 rev";
    }
    if (Kinds.isTemperature(left.kind()) != Kinds.isTemperature(right.kind())
        && (Kinds.isKelvin(left.kind()) || Kinds.isKelvin(right.kind()))) {
      return "K is a difference; write a temperature in degC or degF, or temperature(293.15 K)";
    }
    return names(left, right);
  }

  private static String names(Operand left, Operand right) {
    StringBuilder said = new StringBuilder();
    for (Operand operand : List.of(left, right)) {
      if (!operand.said().isEmpty()) {
        said.append(said.length() == 0 ? "" : ", ")
            .append(operand.said())
            .append(" is ")
            .append(KindWords.a(operand.element()));
      }
    }
    return said.length() == 0 ? "Both must be of one kind" : said + "; both must be of one kind";
  }

  private static boolean isRate(Kind kind) {
    return kind instanceof Kind.Quantity quantity
        && quantity.dimension().withoutAngle().equals(Kinds.PER_TIME);
  }

  private static Optional<Unit> unitOf(Operand operand) {
    Optional<Unit> unit = Operand.literalUnit(operand.written());
    if (unit.isPresent()) {
      return unit;
    }
    return operand.element() instanceof Kind.Quantity quantity
        ? UnitsShown.plain(quantity.dimension())
        : Optional.empty();
  }

  private static String unitFor(Operand operand, Unit unit) {
    return operand.said().isEmpty()
        ? "Give it its unit, such as " + unit.symbol()
        : "Write " + operand.said() + " " + unit.symbol();
  }
}
