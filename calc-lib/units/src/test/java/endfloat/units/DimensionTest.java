package endfloat.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Dimensions are a commutative group with rational powers; angle is soft. */
class DimensionTest {

  @Provide
  Arbitrary<Dimension> dimensions() {
    Arbitrary<Integer> exponent = Arbitraries.integers().between(-6, 6);
    return exponent
        .list()
        .ofSize(6)
        .flatMap(e -> Arbitraries.integers().between(1, 4).map(root -> dimension(e, root)));
  }

  private static Dimension dimension(java.util.List<Integer> e, int root) {
    return Dimension.LENGTH
        .power(e.get(0), root)
        .times(Dimension.MASS.power(e.get(1), root))
        .times(Dimension.TIME.power(e.get(2), 1))
        .times(Dimension.TEMPERATURE.power(e.get(3), 1))
        .times(Dimension.CURRENT.power(e.get(4), root))
        .times(Dimension.ANGLE.power(e.get(5), 1));
  }

  @Property
  void productsFormAGroup(
      @ForAll("dimensions") Dimension a,
      @ForAll("dimensions") Dimension b,
      @ForAll("dimensions") Dimension c) {
    assertEquals(a.times(b), b.times(a));
    assertEquals(a.times(b).times(c), a.times(b.times(c)));
    assertEquals(a, a.times(Dimension.NONE));
    assertEquals(Dimension.NONE, a.over(a));
    assertEquals(a, a.times(b).over(b));
    assertEquals(a.times(b).hashCode(), b.times(a).hashCode());
  }

  @Property
  void powersAddAndMultiply(
      @ForAll("dimensions") Dimension a,
      @ForAll @IntRange(min = -5, max = 5) int n,
      @ForAll @IntRange(min = 1, max = 5) int m) {
    assertEquals(a.power(n + m, 1), a.power(n, 1).times(a.power(m, 1)));
    assertEquals(a, a.power(1, m).power(m, 1));
    assertEquals(a.power(n, m), a.power(2 * n, 2 * m));
    assertEquals(Dimension.NONE, a.power(0, m));
  }

  @Property
  void sameIsSymmetricAndSeesOnlyAngle(
      @ForAll("dimensions") Dimension a, @ForAll("dimensions") Dimension b) {
    assertTrue(a.same(a));
    assertEquals(a.same(b), b.same(a));
    assertTrue(!a.same(b) || a.withoutAngle().equals(b.withoutAngle()));
    assertEquals(b.hasAngle(), a.withAngleOf(b).hasAngle());
    assertEquals(a.withoutAngle(), a.withAngleOf(b).withoutAngle());
  }

  @Property
  void coherentUnitOfADimensionHasThatDimensionAndReadsBack(
      @ForAll("dimensions") Dimension dimension) {
    Unit unit = UnitTable.coherent(dimension);
    assertEquals(dimension, unit.dimension());
    assertEquals(unit, UnitTable.find(unit.symbol()));
    assertEquals(1, unit.toSi("1"));
  }

  private static Dimension of(String unit) {
    return UnitTable.find(unit).dimension();
  }

  /** The rule of the working language, "Kinds": angle is soft, but 60 rpm is not 60 Hz. */
  @Test
  void angleIsSoftButNotInSpeedsOfRotation() {
    assertTrue(of("rad").same(of("1")));
    assertTrue(of("N.m/rad").same(of("N.m")));
    assertTrue(of("rad.mm").same(of("mm")));
    assertTrue(of("rpm").same(of("rad/s")));
    assertFalse(of("rpm").same(of("Hz")));
    assertFalse(of("rev/s").same(of("1/s")));
    assertTrue(of("rad/s^2").same(of("1/s^2")));
    assertFalse(of("mm").same(of("mm^2")));
  }

  @Test
  void hasTheTradesWord() {
    assertEquals("torque or energy", of("lbf.ft").words());
    assertEquals("pressure or stress", of("psi").words());
    assertEquals("angular speed", of("rpm").words());
    assertEquals("frequency", of("Hz").words());
    assertEquals("torsional stiffness", of("N.m/rad").words());
    assertEquals("viscosity", of("cP").words());
    assertEquals("kinematic viscosity", of("cSt").words());
    assertEquals("length^5 per time", of("m^5/s").words());
    assertEquals("length^(1/2)", of("m^(1/2)").words());
    assertEquals("1 per mass and current", of("1/(kg.A)").words());
  }

  @Test
  void tooHighAPowerIsRefused() {
    org.junit.jupiter.api.Assertions.assertThrows(
        UnitException.class,
        () -> Dimension.LENGTH.power(Integer.MAX_VALUE, 1).power(Integer.MAX_VALUE, 1));
  }
}
