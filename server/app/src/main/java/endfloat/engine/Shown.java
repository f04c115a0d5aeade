package endfloat.engine;

import endfloat.units.ShortestDecimal;
import endfloat.units.Unit;
import endfloat.working.Kind;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * A number as a sheet prints it: inputs with the digits typed; a computed expanded uncertainty to
 * two figures and the value to its place (JCGM 100, 7.2.6); a value without uncertainty to five
 * figures, or whole where it ends within eight: the limit 400.057 mm is not 400.06 mm.
 *
 * @param value with U+2212 for minus
 * @param unit as printed; empty for a pure number
 * @param uncertainty expanded, U = k u, in the unit (of a temperature in its interval); empty for
 *     none
 */
public record Shown(String value, String unit, String uncertainty) {
  private static final double ROUNDING = 1e-13;
  private static final int FIGURES_OF_UNCERTAINTY = 2;
  private static final int FIGURES_OF_EXACT = 5;
  private static final int FIGURES_OF_SIZES = 8;
  private static final String MINUS = "\u2212";
  private static final String SUPERSCRIPTS =
      "\u2070\u00b9\u00b2\u00b3\u2074\u2075\u2076\u2077\u2078\u2079";

  /** Numbers from here up, and those below the other, are written with a power of ten. */
  private static final double LARGE = 1e7;

  private static final double SMALL = 1e-4;

  private static final double SAME = 1e-9;

  /** A figure that is a single number; empty for any other. */
  public static Optional<Shown> of(Figure figure, GraphSettings settings) {
    if (figure.value().isPresent() && figure.value().get() instanceof Value.Scalar scalar) {
      return Optional.of(
          number(
              scalar.si(),
              settings.expanded(figure.standardUncertainty(), figure.degreesOfFreedom()),
              figure.unit(),
              FigureUnit.of(figure, settings),
              figure.typed(),
              figure.typedUncertainty()));
    }
    return Optional.empty();
  }

  /** An element of a figure that is a single number; empty for any other. */
  public static Optional<Shown> of(Figure figure, Figure.Element element, GraphSettings settings) {
    if (!(element.value() instanceof Value.Scalar scalar)) {
      return Optional.empty();
    }
    return Optional.of(
        number(
            scalar.si(),
            settings.expanded(element.standardUncertainty(), element.degreesOfFreedom()),
            element.unit(),
            FigureUnit.of(figure, element, settings),
            element.typed(),
            Optional.empty()));
  }

  /**
   * A number that was worked out, its uncertainty not resting on a few readings.
   *
   * @param si [SI]
   * @param standardUncertainty [SI]
   * @param unit to show it in
   */
  public static Shown of(double si, double standardUncertainty, Unit unit, GraphSettings settings) {
    return number(si, settings.coverage() * standardUncertainty, unit, Optional.empty());
  }

  static Optional<Kind> kind(Figure figure, Figure.Element element) {
    return figure
        .kind()
        .map(
            k ->
                k instanceof Kind.Series series
                    ? series.element()
                    : k instanceof Kind.Fields fields ? fields.fields().get(element.field()) : k);
  }

  private static Shown number(
      double si,
      double expanded,
      Optional<Unit> declared,
      Unit unit,
      Optional<String> typed,
      Optional<String> typedUncertainty) {
    if (!declared.filter(unit::equals).isPresent()) {
      return number(si, expanded, unit, Optional.empty());
    }
    Shown shown = number(si, expanded, unit, typed);
    return typed.isPresent() && typedUncertainty.filter(t -> says(t, expanded, unit)).isPresent()
        ? new Shown(shown.value(), shown.unit(), power(typedUncertainty.get()))
        : shown;
  }

  /** Whether the digits typed after ± are this expanded uncertainty. */
  private static boolean says(String typed, double expanded, Unit unit) {
    return typed.matches("[0-9.]+(?:[eE][-+]?[0-9]+)?")
        && Math.abs(unit.interval().toSi(typed) - expanded) <= SAME * expanded;
  }

  /**
   * A number of a table.
   *
   * @param expanded U [SI]
   */
  public static Shown expanded(double si, double expanded, Unit unit) {
    return number(si, expanded, unit, Optional.empty());
  }

  /**
   * A difference of two values shown in a unit; of temperatures in the interval of the scale.
   *
   * @param si the difference [SI]
   * @param expanded its U [SI]
   */
  public static Shown difference(double si, double expanded, Unit unit) {
    return number(si, expanded, unit.interval(), Optional.empty());
  }

  /**
   * @param expanded U [SI]
   * @param typed digits to print where the value is an input
   */
  static Shown number(double si, double expanded, Unit unit, Optional<String> typed) {
    String printed = unit.print().equals("1") ? "" : unit.print();
    double value = unit.fromSi(si);
    double spread = Math.abs(unit.interval().fromSi(expanded));
    if (!Double.isFinite(value) || !Double.isFinite(spread)) {
      return new Shown(typed.map(Shown::power).orElse("too large to be shown"), printed, "");
    }
    // What is left of uncertainties that cancel is the rounding of the doubles, not an uncertainty.
    if (spread <= ROUNDING * Math.abs(value)) {
      return new Shown(typed.map(Shown::power).orElseGet(() -> exact(value)), printed, "");
    }
    BigDecimal rounded =
        ShortestDecimal.of(spread)
            .round(new MathContext(FIGURES_OF_UNCERTAINTY, RoundingMode.HALF_EVEN));
    int place = rounded.precision() - rounded.scale() - FIGURES_OF_UNCERTAINTY;
    BigDecimal width = rounded.setScale(-place, RoundingMode.HALF_EVEN);
    if (typed.isPresent()) {
      return new Shown(power(typed.get()), printed, plain(width, exponent(width)));
    }
    BigDecimal shown = ShortestDecimal.of(value).setScale(-place, RoundingMode.HALF_EVEN);
    int exponent = exponent(shown.abs().compareTo(width) >= 0 ? shown : width);
    return new Shown(plain(shown, exponent), printed, plain(width, exponent));
  }

  /** Power of ten, in steps of three, that a number is written with; 0 for most. */
  private static int exponent(BigDecimal number) {
    double size = Math.abs(number.doubleValue());
    if (size == 0 || (size >= SMALL && size < LARGE)) {
      return 0;
    }
    return Math.floorDiv(number.precision() - number.scale() - 1, 3) * 3;
  }

  private static String plain(BigDecimal number, int exponent) {
    String digits = number.scaleByPowerOfTen(-exponent).abs().toPlainString();
    String sign = number.signum() < 0 ? MINUS : "";
    return sign + digits + (exponent == 0 ? "" : "\u00d710" + superscript(exponent));
  }

  private static String superscript(int exponent) {
    StringBuilder raised = new StringBuilder(exponent < 0 ? "\u207b" : "");
    for (char digit : Integer.toString(Math.abs(exponent)).toCharArray()) {
      raised.append(SUPERSCRIPTS.charAt(digit - '0'));
    }
    return raised.toString();
  }

  /** {@code 23.0e-6} as typed, with its power of ten as print has it. */
  static String power(String typed) {
    int e = Math.max(typed.indexOf('e'), typed.indexOf('E'));
    String digits = (e < 0 ? typed : typed.substring(0, e)).replace("-", MINUS);
    if (e < 0) {
      return digits;
    }
    return digits
        + "\u00d710"
        + superscript(
            Integer.parseInt(typed.substring(e + 1).replace(MINUS, "-").replace("+", "")));
  }

  /** Without uncertainty: as it is where it ends early, else to five figures. */
  private static String exact(double value) {
    double size =
        ShortestDecimal.of(value)
            .round(new MathContext(FIGURES_OF_SIZES, RoundingMode.HALF_EVEN))
            .doubleValue();
    boolean ends = Math.abs(size - value) <= ROUNDING * Math.abs(value);
    return digits(value, ends ? FIGURES_OF_SIZES : FIGURES_OF_EXACT);
  }

  /** A number to so many figures, without the zeros that say nothing. */
  static String digits(double value, int figures) {
    BigDecimal rounded =
        ShortestDecimal.of(value)
            .round(new MathContext(figures, RoundingMode.HALF_EVEN))
            .stripTrailingZeros();
    return plain(rounded, exponent(rounded));
  }

  /** A number [SI] in a unit, for a message. */
  public static String withUnit(double si, Unit unit) {
    String number = digits(unit.fromSi(si), FIGURES_OF_EXACT + 1);
    return unit.print().equals("1") ? number : number + joint(unit.print()) + unit.print();
  }

  private static String joint(String unit) {
    return unit.equals("\u00b0") ? "" : " ";
  }

  /** Value, uncertainty and unit in one text: {@code 0.335 ± 0.016 mm}. */
  public String text() {
    String number = uncertainty.isEmpty() ? value : value + " \u00b1 " + uncertainty;
    return unit.isEmpty() ? number : number + joint(unit) + unit;
  }
}
