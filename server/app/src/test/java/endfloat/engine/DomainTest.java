package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.working.LineProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a function has no value there is an error at its place, never NaN and never infinity. */
class DomainTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "y = sqrt(1 - 2)       | 5 | square root of a number below zero",
        "y = 2 / (1 - 1)       | 5 | divides by zero",
        "y = asin(1.2)         | 5 | The asin takes −1 to 1",
        "y = acos(-1.2)        | 5 | The acos takes −1 to 1",
        "y = ln(1 - 1)         | 5 | logarithm takes a number above zero",
        "y = log10(-3)         | 5 | logarithm takes a number above zero",
        "y = (1 - 3)^0.5       | 5 | cannot be raised",
        "y = (2 - 2)^-1        | 5 | divides by zero",
        "y = exp(1000)         | 5 | too large",
        "y = 1e300 * 1e300     | 5 | too large",
        "y = tan(90 deg)       | 5 | has no value",
      })
  void isRefusedInWords(String line, int column, String words) {
    SheetOfLines sheet = SheetOfLines.of(line.strip());
    assertEquals(0, sheet.results().size());
    LineProblem problem = sheet.errors().get(0);
    assertTrue(problem.message().contains(words.strip()), problem.message());
    assertEquals(column, problem.span().from(), problem.toString());
    assertTrue(!problem.wayOut().isEmpty());
  }

  @Test
  void atAnInfiniteSlopeAnUncertainValueIsRefused() {
    SheetOfLines sheet = SheetOfLines.of("x = 0 \u00b1 0.1\ny = sqrt(x)\nz = x ^ 3");
    assertTrue(sheet.errors().get(0).message().contains("uncertainty cannot be stated"));
    assertEquals(0.0, (double) sheet.result("z").orElseThrow().u());
  }

  @Test
  void whatDependsOnItWaitsAndTheRestGoesOn() {
    ValueGraph graph =
        ValueGraph.of(GraphSource.ofWorkings("a = 1 / 0\nb = a + 1\nc = b + 1\nd = 7"));
    Figure c = graph.figure("c").orElseThrow();
    assertEquals(Figure.State.WAITING, c.state());
    assertEquals(1, c.waitingOn().size());
    assertEquals("a", c.waitingOn().get(0).name());
    assertEquals(1, c.waitingOn().get(0).line());
    assertEquals(7, graph.figure("d").orElseThrow().si());
  }
}
