package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Catalogue;
import endfloat.catalogue.Check;
import endfloat.units.UnitTable;
import endfloat.working.LineProblem;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every published check of the library through the language: the lines as a person would write
 * them, the values as the source prints them. Id and source stand in each check file.
 */
class CatalogueChecksTest {
  static Stream<Check> checks() {
    return Catalogue.library().all().stream()
        .map(Calculation::name)
        .flatMap(name -> Catalogue.library().checks(name).stream());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("checks")
  void comesOutAsPublished(Check check) {
    SheetOfLines sheet = worked(check);
    String about = check.calculation() + " " + check.id() + ", " + check.source();
    boolean refusal = check.expectations().stream().anyMatch(e -> e instanceof Check.Refusal);
    if (!refusal) {
      assertEquals(List.of(), sheet.errors(), about);
    }
    for (Check.Expectation expectation : check.expectations()) {
      if (expectation instanceof Check.Refusal refused) {
        assertTrue(
            sheet.errors().stream().anyMatch(e -> says(e, refused.words())),
            about + ": " + sheet.errors());
      } else if (expectation instanceof Check.Words words) {
        Object value = sheet.result(words.place()).orElseThrow().value();
        String said =
            value instanceof Boolean truth ? (truth ? "yes" : "no") : String.valueOf(value);
        assertEquals(words.text(), said, about);
      } else if (expectation instanceof Check.Numbers numbers) {
        hold(numbers, sheet, about);
      }
    }
  }

  private static SheetOfLines worked(Check check) {
    return SheetOfLines.of(CheckSource.of(check, GraphSettings.STANDARD));
  }

  private static boolean says(LineProblem problem, String words) {
    String said = problem.message() + " " + problem.wayOut();
    return said.toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT));
  }

  private static void hold(Check.Numbers numbers, SheetOfLines sheet, String about) {
    SheetOfLines.Result result =
        sheet
            .result(numbers.place())
            .orElseThrow(() -> new AssertionError(about + numbers.place()));
    var unit = UnitTable.find(numbers.unit().isEmpty() ? "1" : numbers.unit());
    Value value = result.figure().value().orElseThrow();
    if (value instanceof Value.Fields fields) {
      value = fields.get(numbers.place().substring(numbers.place().indexOf('.') + 1));
    }
    List<Value> values = value instanceof Value.Series series ? series.elements() : List.of(value);
    assertEquals(numbers.values().size(), values.size(), about + " " + numbers.place());
    for (int i = 0; i < values.size(); i++) {
      double wanted = Double.parseDouble(numbers.values().get(i));
      double given = unit.fromSi(((Value.Scalar) values.get(i)).si());
      double tolerance =
          numbers.relative() ? numbers.tolerance() * Math.abs(wanted) : numbers.tolerance();
      assertEquals(wanted, given, Math.max(tolerance, Math.ulp(wanted)), about + " " + numbers);
    }
  }

  @Test
  void everyCalculationHasOne() {
    for (Calculation calculation : Catalogue.library().all()) {
      assertTrue(!Catalogue.library().checks(calculation.name()).isEmpty(), calculation.name());
    }
  }
}
