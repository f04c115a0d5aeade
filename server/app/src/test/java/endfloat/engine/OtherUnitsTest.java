package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.Check;
import endfloat.units.UnitTable;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every published check of the library with its metric sizes written in inches and its inches in
 * millimetres: the same answer.
 */
class OtherUnitsTest {
  private static final Map<String, String> OTHER =
      Map.ofEntries(
          Map.entry("mm", "in"),
          Map.entry("in", "mm"),
          Map.entry("um", "thou"),
          Map.entry("N", "lbf"),
          Map.entry("lbf", "N"),
          Map.entry("N.m", "lbf.in"),
          Map.entry("lbf.in", "N.m"),
          Map.entry("MPa", "psi"),
          Map.entry("GPa", "psi"),
          Map.entry("psi", "MPa"),
          Map.entry("N/mm", "lbf/in"),
          Map.entry("m/s", "ft/min"),
          Map.entry("ft/min", "m/s"),
          Map.entry("degC", "degF"),
          Map.entry("degF", "degC"));

  private static final Pattern LITERAL =
      Pattern.compile(
          "(?<![\\w./ ])\\s?(-?\\d+(?:\\.\\d+)?(?:e-?\\d+)?) (mm|in|um|N\\.m|N/mm|N|lbf\\.in|lbf|MPa|GPa|psi|m/s|ft/min|degC|degF)(?![\\w./(^·])");

  @Test
  void writesSizesInTheOtherUnit() {
    assertEquals(
        "a = press(1 in, -40 degF, [2 in, 3 1/in]) / (1 in)^2",
        inOtherUnits("a = press(25.4 mm, -40 degC, [50.8 mm, 3 1/in]) / (25.4 mm)^2"));
  }

  static Stream<Named<Check>> checks() {
    return Catalogue.library().all().stream()
        .map(Calculation::name)
        .flatMap(name -> Catalogue.library().checks(name).stream())
        .filter(c -> c.readings().isEmpty())
        .filter(c -> c.expectations().stream().noneMatch(e -> e instanceof Check.Refusal))
        .map(c -> Named.of(c.calculation() + " " + c.id(), c));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("checks")
  void givesTheSameAnswer(Check check) {
    SheetOfLines asWritten = worked(check.text());
    SheetOfLines other = worked(inOtherUnits(check.text()));
    assertEquals(List.of(), other.errors(), inOtherUnits(check.text()));
    for (SheetOfLines.Result result : asWritten.results()) {
      SheetOfLines.Result there = other.result(result.name()).orElseThrow();
      same(result.name(), si(result), si(there), nought(result));
    }
  }

  private static Object si(SheetOfLines.Result result) {
    Value value = result.figure().value().orElseThrow();
    if (value instanceof Value.Fields fields && result.name().contains(".")) {
      return fields.get(result.name().substring(result.name().indexOf('.') + 1));
    }
    return value;
  }

  /** What is nought but for the rounding of its neighbours, in SI; a list says no unit. */
  private static double nought(SheetOfLines.Result result) {
    if (result.unit() != null) {
      return UnitTable.find(result.unit()).interval().toSi(1e-9);
    }
    return result.name().contains("stress") ? 1e-3 : result.name().contains("shear") ? 1e-9 : 1e-12;
  }

  private static void same(String name, Object a, Object b, double nought) {
    if (a instanceof Value.Scalar one && b instanceof Value.Scalar two) {
      assertEquals(one.si(), two.si(), 1e-9 * Math.abs(one.si()) + nought, name);
    } else if (a instanceof Value.Series one && b instanceof Value.Series two) {
      assertEquals(one.size(), two.size(), name);
      for (int i = 0; i < one.size(); i++) {
        same(name, one.elements().get(i), two.elements().get(i), nought);
      }
    } else if (!(a instanceof Value.Fields)) {
      assertTrue(a.getClass() == b.getClass(), name);
    }
  }

  private static SheetOfLines worked(String text) {
    return SheetOfLines.of(
        new GraphSource(
            List.of(new Clause.Working("work", "1", text)), List.of(), GraphSettings.STANDARD));
  }

  static String inOtherUnits(String text) {
    Matcher literal = LITERAL.matcher(text);
    StringBuilder other = new StringBuilder();
    while (literal.find()) {
      String unit = literal.group(2);
      double si = UnitTable.find(unit).toSi(Double.parseDouble(literal.group(1)));
      String there = OTHER.get(unit);
      String written =
          String.format(
              Locale.ROOT,
              "%s %s",
              new java.math.BigDecimal(UnitTable.find(there).fromSi(si)).toPlainString(),
              there);
      String lead = literal.group().substring(0, literal.start(1) - literal.start());
      literal.appendReplacement(other, Matcher.quoteReplacement(lead + written));
    }
    literal.appendTail(other);
    return other.toString();
  }
}
