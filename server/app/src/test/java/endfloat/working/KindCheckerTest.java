package endfloat.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.units.Dimension;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the checker hands to the engine. That lines are accepted or refused is in CorpusTest. */
class KindCheckerTest {
  private final KnownNames names =
      KnownNames.of(
          "d = 80 mm\nl = 480 mm\nt = 20 degC\nalpha = 23e-6 1/K\nfit = iso_fit(25 mm, \"H7/g6\")");

  private final KindChecker checker = new KindChecker(KnownNames.LIBRARY);

  private Checked check(String text) {
    Working working = Parser.parse(text);
    assertEquals(List.of(), working.problems());
    return checker.check(working.lines().get(0), names);
  }

  private Checked.Value value(String text) {
    return assertInstanceOf(
        Checked.Value.class, check(text), () -> check(text).problems().toString());
  }

  private static double si(Typed typed) {
    return ((Typed.Constant) typed).si();
  }

  @Test
  void aBareUncertaintyTakesTheUnitOfItsValue() {
    Checked.Spread spread = value("a [in] = 25.4 mm ± 0.1").spread().orElseThrow();
    assertEquals(0.0001, si(spread.half()));
    assertEquals(2.0, si(spread.coverage()));
    assertTrue(spread.degrees().isEmpty());
    assertFalse(spread.relative());
  }

  @Test
  void aBareValueTakesTheUnitOfItsUncertainty() {
    Checked.Value value = value("a = 480.0 ± 0.1 mm");
    assertEquals(0.48, si(value.value()));
    assertEquals("mm", value.unit().orElseThrow().symbol());
  }

  @Test
  void anUncertaintyInDegCIsAnInterval() {
    assertEquals(2.0, si(value("a = 85 degC ± 2 degC").spread().orElseThrow().half()));
    assertEquals(2.0, si(value("a = 85 degC ± 2").spread().orElseThrow().half()));
    assertEquals(5.0, si(value("a = 185 degF ± 9 degF").spread().orElseThrow().half()), 1e-12);
    Checked.Value bare = value("a = 85 ± 2 degC");
    assertEquals(358.15, si(bare.value()));
    assertEquals(2.0, si(bare.spread().orElseThrow().half()));
  }

  @Test
  void aShareOfTheValueIsToldApart() {
    Checked.Spread spread = value("a = 5 mm ± 2 %").spread().orElseThrow();
    assertTrue(spread.relative());
    assertEquals(0.02, si(spread.half()));
  }

  @Test
  void aMinusBelongsToTheTemperatureAfterIt() {
    // absolute zero, by the definition of the Fahrenheit scale
    assertEquals(0.0, si(value("a = -459.67 degF").value()));
    assertEquals(233.15, si(value("a = -40 degC").value()));
  }

  @Test
  void bareEndsOfALimitTakeTheUnitOfTheirPartner() {
    Checked.Limited limit = (Checked.Limited) check("limit d: 0 .. 0.30 mm");
    assertEquals(0.0, si(limit.low().orElseThrow()));
    assertEquals(0.0003, si(limit.high().orElseThrow()));
    Checked.Limited warm = (Checked.Limited) check("limit t: 0 .. 90 degC");
    assertEquals(273.15, si(warm.low().orElseThrow()));
    assertEquals("degC", warm.unit().orElseThrow().symbol());
  }

  @Test
  void aToleranceGivesBothEnds() {
    Checked.Limited limit = (Checked.Limited) check("limit d: 80 ± 0.02 mm");
    Typed.Apply low = (Typed.Apply) limit.low().orElseThrow();
    assertEquals(BuiltIn.SUBTRACT, low.function());
    assertEquals(0.08, si(low.arguments().get(0)));
    assertEquals(0.00002, si(low.arguments().get(1)));
  }

  @Test
  void argumentsStandInTheOrderOfTheParametersWithTheirDefaults() {
    Typed.Calculate call =
        (Typed.Calculate)
            value(
                    "a = backlash_from_axial_shift(1 mm, pitch_angle: 45 deg, pressure_angle: 20 deg)")
                .value();
    assertEquals(
        call.calculation().parameters().size(),
        call.arguments().size(),
        "every default is written out");
    assertEquals(Math.toRadians(20), si(call.arguments().get(1)), 1e-15);
    assertEquals(Math.toRadians(45), si(call.arguments().get(2)), 1e-15);
    assertEquals(0.0, si(call.arguments().get(3)));
    assertInstanceOf(Typed.NotGiven.class, call.arguments().get(4));
  }

  @Test
  void aCalculationOfOneValueWorksElementByElementOnASeries() {
    names.series("bore", "mm", "cylinder=1,2,3");
    Typed.Calculate call = (Typed.Calculate) value("a = thermal_growth(bore, alpha, 60 K)").value();
    assertTrue(call.elementByElement());
    assertEquals(List.of("cylinder"), ((Kind.Series) call.kind()).axes());
  }

  @Test
  void aResultIsTakenOutOfARecord() {
    Typed.Field field = (Typed.Field) value("a = fit.least_clearance").value();
    assertEquals("least_clearance", field.field());
    assertEquals(new Kind.Quantity(Dimension.LENGTH), field.kind());
  }

  @Test
  void aWholeExponentIsAConstant() {
    Typed.Apply power = (Typed.Apply) value("a = d^(4/2)").value();
    assertEquals(2.0, si(power.arguments().get(1)));
    assertEquals(-0.5, si(((Typed.Apply) value("a = d^-0.5").value()).arguments().get(1)));
  }

  @Test
  void aDeclaredUnitSaysWhetherAngleIsCounted() {
    assertEquals(new Kind.Quantity(Dimension.NONE), value("a [1] = 20 deg").kind());
    assertEquals(new Kind.Quantity(Dimension.LENGTH), value("a [mm] = d * (20 deg)").kind());
  }

  @Test
  void aLineWithoutAUnitMarkIsShownAsItWasWritten() {
    assertEquals("mm", value("a = d + 1 in").unit().orElseThrow().symbol());
    assertEquals("K", value("a = t - 10 degC").unit().orElseThrow().symbol());
    assertEquals("degC", value("a = t + 10 K").unit().orElseThrow().symbol());
    assertEquals("mm", value("a = 2 * d").unit().orElseThrow().symbol());
    assertEquals("mm", value("a = max(d, l)").unit().orElseThrow().symbol());
    assertEquals(Optional.empty(), value("a = d * l").unit());
    assertEquals(Optional.empty(), value("a = sin(20 deg)").unit());
    assertEquals(Optional.empty(), value("a = (3000 rpm) / (1 rev)").unit());
  }

  @Test
  void aDistributionHasItsMeanForItsValue() {
    Checked.Value value = value("a = rectangular(1, 2 mm)");
    assertEquals(Checked.Shape.RECTANGULAR, value.distribution().orElseThrow().shape());
    assertEquals(0.001, si(value.distribution().get().parameters().get(0)));
    assertEquals(BuiltIn.MEAN, ((Typed.Apply) value.value()).function());
    assertEquals(
        358.15,
        si(value("a = normal(85 degC, 1.4 K)").value()),
        "the mean of a normal is its value");
  }

  @Test
  void theKindOfAnUnknownIsKnownFromItsBracketAlone() {
    Line.Definition line =
        (Line.Definition)
            Parser.parse("shim [mm] = solve lash = 0.15 mm for shim between 0.5 and 2.5 mm")
                .lines()
                .get(0);
    assertEquals(
        Optional.of(new Kind.Quantity(Dimension.LENGTH)), checker.unknown(line, "shim", names));
    assertEquals(Optional.empty(), checker.unknown(line, "other", names));
    names.give("lash = 0.1 mm");
    Checked.Solved solved = (Checked.Solved) checker.check(line, names);
    assertEquals(0.0005, si(solved.unknowns().get(0).low()));
    assertEquals(0.0025, si(solved.unknowns().get(0).high()));
  }

  @Test
  void aPartIsBuiltByItsConstructor() {
    Optional<String> part = KnownNames.LIBRARY.parts().stream().findFirst();
    assertTrue(part.isPresent(), "the library has parts");
    Checked refused = check("a = " + part.get() + "(wrong: 1)");
    assertTrue(
        refused.problems().get(0).message().contains(part.get() + " has no argument \"wrong\""));
  }

  @Test
  void everyCheckOfTheLibraryIsAcceptedUnlessItExpectsARefusal() {
    List<String> refused =
        KnownNames.LIBRARY.all().stream()
            .flatMap(c -> CheckLines.refused(c.name()).stream())
            .toList();
    assertEquals(List.of(), refused);
  }
}
