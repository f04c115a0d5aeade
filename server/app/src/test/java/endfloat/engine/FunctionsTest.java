package endfloat.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import endfloat.engine.Value.Scalar;
import endfloat.working.BuiltIn;
import endfloat.working.Span;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Every exact slope against differences of the value alone, and what the reductions mean. */
class FunctionsTest {
  private static final Span HERE = new Span(1, 1, 2);
  private static final Root X = root("x");
  private static final Root Y = root("y");

  private static Root root(String id) {
    return new Root(id, Root.Kind.INPUT, id, "", Double.POSITIVE_INFINITY);
  }

  private static Scalar at(double value, Root root) {
    return new Scalar(value, Gradient.of(root, 1));
  }

  private interface Relation {
    Scalar of(Scalar x, Scalar y);
  }

  @Provide
  Arbitrary<BuiltIn> ofOne() {
    return Arbitraries.of(
        BuiltIn.NEGATE,
        BuiltIn.SIN,
        BuiltIn.COS,
        BuiltIn.TAN,
        BuiltIn.ASIN,
        BuiltIn.ACOS,
        BuiltIn.ATAN,
        BuiltIn.SINH,
        BuiltIn.COSH,
        BuiltIn.TANH,
        BuiltIn.SQRT,
        BuiltIn.CBRT,
        BuiltIn.EXP,
        BuiltIn.LN,
        BuiltIn.LOG10,
        BuiltIn.ABS);
  }

  @Property(tries = 1000)
  void aSlopeIsWhatDifferencesFind(
      @ForAll("ofOne") BuiltIn function, @ForAll @DoubleRange(min = 0.05, max = 0.95) double x) {
    hold((a, b) -> Functions.of(function, HERE, a), x, 1);
  }

  @Property(tries = 1000)
  void soAreTheSlopesOfTwo(
      @ForAll @DoubleRange(min = 0.1, max = 4) double x,
      @ForAll @DoubleRange(min = 0.1, max = 4) double y) {
    hold((a, b) -> Functions.add(HERE, a, b), x, y);
    hold((a, b) -> Functions.subtract(HERE, a, b), x, y);
    hold((a, b) -> Functions.multiply(HERE, a, b), x, y);
    hold((a, b) -> Functions.divide(HERE, a, b), x, y);
    hold((a, b) -> Functions.power(HERE, a, b), x, y);
    hold((a, b) -> Functions.atan2(HERE, a, b), x, y);
    hold((a, b) -> Functions.hypot(HERE, new Value[] {a, b}), x, y);
    hold((a, b) -> (Scalar) Reductions.of(BuiltIn.MEAN, HERE, List.of(a, b)), x, y);
  }

  private static void hold(Relation relation, double x, double y) {
    Scalar value = relation.of(at(x, X), at(y, Y));
    double byX = slope(v -> relation.of(Scalar.exact(v), Scalar.exact(y)).si(), x);
    double byY = slope(v -> relation.of(Scalar.exact(x), Scalar.exact(v)).si(), y);
    assertEquals(byX, value.gradient().part(X), 1e-8 * Math.max(1, Math.abs(byX)));
    assertEquals(byY, value.gradient().part(Y), 1e-8 * Math.max(1, Math.abs(byY)));
  }

  private static double slope(java.util.function.DoubleUnaryOperator f, double x) {
    return Slopes.at(
        v -> new double[] {f.applyAsDouble(v)}, new double[] {f.applyAsDouble(x)}, x, 0, -9, 9)[0];
  }

  /** Multiplying out is what a hand would do, and pow must not differ by more than rounding. */
  @Property(tries = 300)
  void wholePowersAreMultipliedOut(
      @ForAll @DoubleRange(min = -3, max = 3) double x,
      @ForAll @net.jqwik.api.constraints.IntRange(min = -9, max = 9) int n) {
    if (x == 0) {
      return;
    }
    double power = Functions.power(HERE, Scalar.exact(x), Scalar.exact(n)).si();
    assertEquals(StrictMath.pow(x, n), power, 1e-14 * Math.abs(power));
    assertEquals(x * x, Functions.power(HERE, Scalar.exact(x), Scalar.exact(2)).si());
  }

  @Test
  void sizeAtZeroKeepsItsUncertainty() {
    assertEquals(1, Functions.of(BuiltIn.ABS, HERE, at(0, X)).gradient().part(X));
  }

  /** Three equal readings have a range of 0, but not one that is known exactly. */
  @Test
  void aRangeOfEqualReadingsKeepsTheirSpread() {
    List<Value> same = List.of(at(5, X), at(5, Y), at(5, root("z")));
    Scalar range = (Scalar) Reductions.of(BuiltIn.RANGE, HERE, same);
    assertEquals(0, range.si());
    assertEquals(Math.sqrt(2), Correlations.NONE.standardUncertainty(range.gradient()), 1e-15);
  }

  @Test
  void greatestAndLeastTakeTheSlopeOfTheOneTheyAre() {
    List<Value> both = List.of(at(5, X), at(6, Y));
    assertEquals(1, ((Scalar) Reductions.of(BuiltIn.MAX, HERE, both)).gradient().part(Y));
    assertEquals(1, ((Scalar) Reductions.of(BuiltIn.MIN, HERE, both)).gradient().part(X));
    assertEquals(5.5, ((Scalar) Reductions.of(BuiltIn.MEDIAN, HERE, both)).si());
  }

  /** s of 1, 2, 4 is √(7/3); each slope (x - m)/(s (n - 1)). */
  @Test
  void aDeviationIsThatOfASample() {
    List<Value> values = List.of(at(1, X), at(2, Y), Scalar.exact(4));
    Scalar s = (Scalar) Reductions.of(BuiltIn.SD, HERE, values);
    assertEquals(Math.sqrt(7.0 / 3), s.si(), 1e-15);
    assertEquals((1 - 7.0 / 3) / (2 * s.si()), s.gradient().part(X), 1e-15);
  }

  @Test
  void stepsAreMetDespiteTheRoundingOfDecimals() {
    // 0.3 in steps of 0.1 is the third step, though 0.1 + 0.2 lies above it
    Scalar up = Functions.toStep(BuiltIn.CEIL, HERE, Scalar.exact(0.1 + 0.2), Scalar.exact(0.1));
    assertEquals(0.3, up.si(), 1e-15);
    Scalar half = Functions.toStep(BuiltIn.ROUND, HERE, Scalar.exact(-2.5), Scalar.exact(1));
    assertEquals(-3, half.si());
  }

  /**
   * On the table the points themselves; between them the straight line, with the slopes of both.
   */
  @Test
  void interpolationGoesStraightFromPointToPoint() {
    SheetOfLines sheet =
        SheetOfLines.of(
            """
            x = 1.25 \u00b1 0.1
            y = interpolate(x, [1, 2, 4], [10, 20, 0])
            back = interpolate(3, [4, 2, 1], [0, 20, 10])
            off = interpolate(5, [1, 2, 4], [10, 20, 0])
            """);
    assertEquals(12.5, (double) sheet.result("y").orElseThrow().value(), 1e-14);
    assertEquals(0.5, (double) sheet.result("y").orElseThrow().u(), 1e-14);
    assertEquals(10, (double) sheet.result("back").orElseThrow().value(), 1e-14);
    assertTrue(sheet.errors().get(0).message().contains("outside the table"));
    assertEquals(4, sheet.errors().get(0).span().line());
  }
}
