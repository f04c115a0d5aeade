package endfloat.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ParserTest {
  private static Line.Definition definition(String text) {
    Working working = Parser.parse(text);
    assertEquals(List.of(), working.problems());
    return (Line.Definition) working.lines().get(0);
  }

  private static LineProblem problem(String text) {
    List<LineProblem> problems = Parser.parse(text).problems();
    assertEquals(1, problems.size(), problems.toString());
    return problems.get(0);
  }

  private static String read(String expression) {
    return Written.expression(Parser.expression(expression).expression().orElseThrow());
  }

  @Test
  void aLineInErrorHarmsNoOther() {
    Working working = Parser.parse("a = 5 mm\nb = (a + \nc = 2 * a\nd = \"open\ne = a");
    assertEquals(
        List.of("a", "c", "e"),
        working.lines().stream().map(l -> ((Line.Definition) l).name()).toList());
    assertEquals(2, working.problems().size());
    assertEquals(2, working.problems().get(0).span().line());
    assertEquals(4, working.problems().get(1).span().line());
  }

  @Test
  void anErrorStandsAtItsLineAndColumnCountedFromOne() {
    LineProblem problem = problem("-- growth\n\n  a = 20 mm/x");
    assertEquals(new Span(3, 10, 14), problem.span());
  }

  @Test
  void aNewlineInsideBracketsIsABlank() {
    Line.Definition definition = definition("a = max(1 mm, -- first\n  2 mm,\n\n  3 mm) -- last");
    assertEquals("first last", definition.comment());
    assertEquals(3, ((Expression.Call) definition.value().orElseThrow()).arguments().size());
  }

  @Test
  void anArgumentOnALineOfItsOwnDoesNotBeginAStatement() {
    assertEquals(1, Parser.parse("a = 5 mm ± 0.1 mm (k = 2,\n dof = 12)").lines().size());
  }

  @Test
  void theCommentOfAnInputIsWhereItWasGiven() {
    Line.Definition input = definition("h [mm] = 480.0 mm ± 0.1 mm   -- drawing, sheet 3");
    assertEquals("drawing, sheet 3", input.comment());
    assertTrue(input.isInput());
    assertEquals("mm", input.unit().orElseThrow().text());
  }

  @Test
  void aMinusBindsMoreLooselyThanAPower() {
    assertEquals("-2^2", read("-2^2"));
    assertInstanceOf(Expression.Unary.class, Parser.expression("-2^2").expression().orElseThrow());
  }

  @Test
  void powersAreReadFromTheRight() {
    Expression.Binary power =
        (Expression.Binary) Parser.expression("2^3^2").expression().orElseThrow();
    assertEquals("2", Written.expression(power.left()));
    assertEquals("3^2", Written.expression(power.right()));
  }

  @Test
  void differencesAndQuotientsAreReadFromTheLeft() {
    assertEquals("(a - b) - c", bracketed("a - b - c"));
    assertEquals("(a / b) / c", bracketed("a / b / c"));
    assertEquals("(a / b) * c", bracketed("a / b * c"));
  }

  private static String bracketed(String expression) {
    Expression.Binary binary =
        (Expression.Binary) Parser.expression(expression).expression().orElseThrow();
    String sign =
        switch (binary.operator()) {
          case SUBTRACT -> " - ";
          case DIVIDE -> " / ";
          default -> " * ";
        };
    return "("
        + Written.expression(binary.left())
        + ")"
        + sign
        + Written.expression(binary.right());
  }

  @Test
  void aLiteralIsRoundedOnceFromItsDecimals() {
    // 0.1 in is 2.54 mm exactly; 0.1 * 0.0254 in doubles is 0.0025400000000000002
    Expression.Literal literal =
        (Expression.Literal) Parser.expression("0.1 in").expression().orElseThrow();
    assertEquals(0.00254, literal.si());
  }

  @Test
  void aSizeWithAFractionIsOneNumber() {
    Expression.Literal literal =
        (Expression.Literal) Parser.expression("1 15/16 in").expression().orElseThrow();
    // 31/16 of 25.4 mm
    assertEquals(0.0492125, literal.si());
    assertEquals("1 15/16", literal.digits());
  }

  @Test
  void aNoteAfterPlusMinusIsNoCall() {
    Line.Definition definition = definition("a = b ± u (k = 2, dof = 12)");
    assertInstanceOf(Expression.Place.class, definition.spread().orElseThrow().half());
    assertTrue(definition.spread().get().coverage().isPresent());
    assertTrue(definition.spread().get().degrees().isPresent());
  }

  @Test
  void aLimitSaysItsAuthorityItsConditionAndItsState() {
    Line.Limit limit =
        (Line.Limit)
            Parser.parse(
                    "limit fit.least: 0.1 .. 0.3 mm \"drawing \"\"A\"\"\" (condition: \"hot\", state: \"worn\")")
                .lines()
                .get(0);
    assertEquals("drawing \"A\"", limit.authority());
    assertEquals(Map.of("condition", "hot", "state", "worn"), limit.notes());
    assertEquals(List.of("least"), limit.place().fields());
  }

  @Test
  void wordsOfTheLanguageMayNameArgumentsAndResults() {
    assertEquals(List.of(), Parser.parse("a = conform(x, limit: 3 mm, at: y).least").problems());
  }

  @Test
  void tenThousandBracketsAreRefusedInWords() {
    String deep = "a = " + "(".repeat(10_000) + "1" + ")".repeat(10_000);
    assertEquals("This line is nested more than 100 deep.", problem(deep).message());
    assertEquals("Give its inner parts names and lines of their own.", problem(deep).wayOut());
  }

  @Test
  void depthIsCountedForSignsPowersNotAndIf() {
    for (String deep :
        List.of(
            "a = " + "- ".repeat(10_000) + "1",
            "a = 1" + "^1".repeat(10_000),
            "a = " + "not ".repeat(10_000) + "b",
            "a = " + "if b then 1 else ".repeat(10_000) + "1",
            "a = " + "[".repeat(10_000),
            "a = " + "f(".repeat(10_000))) {
      assertEquals("This line is nested more than 100 deep.", problem(deep).message());
    }
  }

  @Test
  void ninetyBracketsAreRead() {
    assertEquals(
        List.of(), Parser.parse("a = " + "(".repeat(90) + "1" + ")".repeat(90)).problems());
    assertEquals(List.of(), Parser.parse("a = 1" + " - -1".repeat(400)).problems());
    assertEquals(List.of(), Parser.parse("a = x^2" + " + x^2".repeat(400)).problems());
  }

  @Test
  void moreThanAThousandTermsAreRefused() {
    assertEquals(List.of(), Parser.parse("a = 1" + " + 1".repeat(999)).problems());
    assertEquals(
        "This line has more than 1000 terms.", problem("a = 1" + " + 1".repeat(1000)).message());
  }

  @Test
  void everyStretchOfALineIsPaintedOnceAndInOrder() {
    String text = "limit a: 0.1 .. 0.3 mm \"sheet 3\" -- hot\nb [mm] = sin(20 deg) * c ? 5";
    Working working = Parser.parse(text);
    Token last = null;
    for (Token token : working.tokens()) {
      if (last != null && last.span().line() == token.span().line()) {
        assertTrue(last.span().to() <= token.span().from(), last + " and " + token);
      }
      last = token;
    }
    List<String> kinds =
        working.tokens().stream()
            .filter(t -> t.span().line() == 2)
            .map(t -> t.kind() + "@" + t.span().from())
            .toList();
    assertEquals(
        List.of(
            "name@1",
            "sign@3",
            "unit@4",
            "sign@6",
            "sign@8",
            "function@10",
            "sign@13",
            "number@14",
            "unit@17",
            "sign@20",
            "sign@22",
            "name@24",
            "wrong@26",
            "number@28"),
        kinds);
  }

  @Test
  void anExpressionStandsAlone() {
    assertTrue(Parser.expression("a + 1 mm").expression().isPresent());
    assertEquals("There is no formula.", Parser.expression(" ").problems().get(0).message());
    assertTrue(Parser.expression("a = 1\nb = 2").expression().isEmpty());
    assertTrue(Parser.expression("a +").expression().isEmpty());
  }

  @Test
  void signsThatLookTheSameAreTheSame() {
    assertEquals(read("a - b * c / d"), read("a − b × c ÷ d"));
    assertEquals(
        definition("a = 1 mm ± 2 µm").spread().orElseThrow().half().getClass(),
        definition("a = 1 mm +/- 2 um").spread().orElseThrow().half().getClass());
    assertEquals("μ", definition("µ = 0.1").name());
  }

  /** As a sum of a negative value, {@code 90 mm +- 0.02 mm} would be 89.98 mm and look right. */
  @Test
  void plusAndMinusWithoutABlankAreTheUncertaintyAndNeverASum() {

    assertTrue(definition("a = 90 mm +- 0.02 mm").spread().isPresent());
    assertTrue(definition("a = 90 mm +− 0.02 mm").spread().isPresent());
    assertTrue(definition("a = b + -c").spread().isEmpty());
  }
}
