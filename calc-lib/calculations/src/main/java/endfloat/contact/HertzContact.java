package endfloat.contact;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import java.util.Locale;

/** Hertz contact of two smooth elastic bodies, dry and at rest. */
public final class HertzContact {
  private static final double SMALL = 0.5;
  private static final String HOLDS =
      "Elastic, smooth, dry: a film, roughness, yielding and sliding change it.";

  private HertzContact() {}

  /**
   * Contact along a line.
   *
   * @param halfWidth b
   * @param pressure p₀, greatest
   * @param meanPressure over the width
   * @param shear greatest shear stress, below the surface
   * @param shearDepth where it lies
   */
  public record Line(
      @In("mm") double halfWidth,
      @In("MPa") double pressure,
      @In("MPa") double meanPressure,
      @In("MPa") double shear,
      @In("mm") double shearDepth) {}

  /**
   * Hertz pressure of two parallel cylinders: {@code b = √(4 F R/(π l E*))}, {@code p₀ = 2 F/(π b
   * l)}.
   *
   * @param radius1 R₁
   * @param radius2 R₂; negative for a groove; not given: a flat
   * @param force F
   * @param length l, of contact
   * @param modulus1 E₁
   * @param modulus2 E₂
   * @param poisson1 ν₁
   * @param poisson2 ν₂
   * @throws RefusedException if the contact reaches past half of a body's radius
   */
  @Calculates(
      source =
          "K. L. Johnson, Contact Mechanics, 1985, chapter 4; Shigley's Mechanical Engineering Design,"
              + " 9th ed., Eqs. (3-73), (3-74); greatest shear 0.300 p₀ at 0.786 b",
      cautions = {HOLDS, "Ends of a roller without crowning press harder than this."},
      terms = {"Hertz", "roller", "cam", "tappet", "line contact"})
  public static Line hertzLine(
      @In("mm") @Range("> 0 mm") double radius1,
      @In("mm") @Default(Default.NOT_GIVEN) double radius2,
      @In("N") @Range("> 0 N") double force,
      @In("mm") @Range("> 0 mm") double length,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus1,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus2,
      @In("1") @Range("0 .. 0.5") @Default("0.292") double poisson1,
      @In("1") @Range("0 .. 0.5") @Default("0.292") double poisson2) {
    double curvature = open(1 / radius1 + curvature(radius2));
    double half =
        Math.sqrt(
            4
                * force
                / (StrictMath.PI
                    * length
                    * contactModulus(modulus1, modulus2, poisson1, poisson2)
                    * curvature));
    holdSmall(half, 1 / radius1, curvature(radius2));
    double pressure = 2 * force / (StrictMath.PI * half * length);
    return new Line(
        half, pressure, pressure * StrictMath.PI / 4, 0.30028 * pressure, 0.78615 * half);
  }

  /**
   * Contact at a point.
   *
   * @param radius a, of the area of contact
   * @param pressure p₀, greatest
   * @param approach δ, of distant points
   */
  public record Point(
      @In("mm") double radius, @In("MPa") double pressure, @In("mm") double approach) {}

  /**
   * Hertz pressure of two balls: {@code a = (3 F R/(4 E*))^(1/3)}, {@code p₀ = 3 F/(2 π a²)},
   * {@code δ = a²/R}.
   *
   * @param radius1 R₁
   * @param radius2 R₂; negative for a socket; not given: a flat
   * @param force F
   * @param modulus1 E₁
   * @param modulus2 E₂
   * @param poisson1 ν₁
   * @param poisson2 ν₂
   * @throws RefusedException if the contact reaches past half of a body's radius
   */
  @Calculates(
      source =
          "K. L. Johnson, Contact Mechanics, 1985, chapter 4; Shigley's Mechanical Engineering Design,"
              + " 9th ed., Eqs. (3-68), (3-69)",
      cautions = HOLDS,
      terms = {"Hertz", "ball", "point contact", "stylus"})
  public static Point hertzPoint(
      @In("mm") @Range("> 0 mm") double radius1,
      @In("mm") @Default(Default.NOT_GIVEN) double radius2,
      @In("N") @Range("> 0 N") double force,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus1,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus2,
      @In("1") @Range("0 .. 0.5") @Default("0.292") double poisson1,
      @In("1") @Range("0 .. 0.5") @Default("0.292") double poisson2) {
    double curvature = open(1 / radius1 + curvature(radius2));
    double radius =
        StrictMath.cbrt(
            3 * force / (4 * contactModulus(modulus1, modulus2, poisson1, poisson2) * curvature));
    holdSmall(radius, 1 / radius1, curvature(radius2));
    return new Point(
        radius, 3 * force / (2 * StrictMath.PI * radius * radius), radius * radius * curvature);
  }

  /**
   * Contact in an ellipse.
   *
   * @param semiMajor a, half the long axis
   * @param semiMinor b, half the short axis
   * @param pressure p₀, greatest
   * @param approach δ, of distant points
   * @param curvatureA A, the smaller of the two of the gap
   * @param curvatureB B, the larger
   */
  public record Ellipse(
      @In("mm") double semiMajor,
      @In("mm") double semiMinor,
      @In("MPa") double pressure,
      @In("mm") double approach,
      @In("1/mm") double curvatureA,
      @In("1/mm") double curvatureB) {}

  /**
   * Hertz pressure of two bodies of any curvature: crossed cylinders, a ball in a race, crowned
   * gears, skew gears. Complete elliptic integrals, no chart.
   *
   * @param radius1 R₁, a principal radius of body 1
   * @param radius1Across R₁', its other one, a right angle on; not given: straight
   * @param radius2 R₂, a principal radius of body 2
   * @param radius2Across R₂', its other one; not given: straight. Hollows are negative
   * @param angle between the planes of R₁ and R₂
   * @param force F
   * @param modulus1 E₁
   * @param modulus2 E₂
   * @param poisson1 ν₁
   * @param poisson2 ν₂
   * @throws RefusedException where the bodies touch along a line, or the ellipse reaches past half
   *     of a body's radius
   */
  @Calculates(
      source = "K. L. Johnson, Contact Mechanics, 1985, Eqs. (4.24) to (4.31)",
      cautions = HOLDS,
      terms = {"Hertz", "ellipse", "crossed cylinders", "race", "point contact"})
  public static Ellipse hertzElliptic(
      @In("mm") @Default(Default.NOT_GIVEN) double radius1,
      @In("mm") @Default(Default.NOT_GIVEN) double radius1Across,
      @In("mm") @Default(Default.NOT_GIVEN) double radius2,
      @In("mm") @Default(Default.NOT_GIVEN) double radius2Across,
      @In("deg") @Range("-180 deg .. 180 deg") @Default("0 deg") double angle,
      @In("N") @Range("> 0 N") double force,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus1,
      @In("GPa") @Range("> 0 GPa") @Default("207 GPa") double modulus2,
      @In("1") @Range("0 .. 0.5") @Default("0.292") double poisson1,
      @In("1") @Range("0 .. 0.5") @Default("0.292") double poisson2) {
    double sum =
        (curvature(radius1)
                + curvature(radius1Across)
                + curvature(radius2)
                + curvature(radius2Across))
            / 2;
    double first = curvature(radius1) - curvature(radius1Across);
    double second = curvature(radius2) - curvature(radius2Across);
    double squares =
        first * first + second * second + 2 * first * second * StrictMath.cos(2 * angle);
    double difference = Math.sqrt(Math.max(0, squares)) / 2;
    ContactEllipse ellipse =
        ContactEllipse.of(
            open(sum), difference, force, contactModulus(modulus1, modulus2, poisson1, poisson2));
    // the plane of the short axis, from that of R1
    double turn =
        StrictMath.atan2(
                second * StrictMath.sin(2 * angle), first + second * StrictMath.cos(2 * angle))
            / 2;
    double mean1 = (curvature(radius1) + curvature(radius1Across)) / 2;
    double mean2 = (curvature(radius2) + curvature(radius2Across)) / 2;
    double differs1 = first / 2 * StrictMath.cos(2 * turn);
    double differs2 = second / 2 * StrictMath.cos(2 * (angle - turn));
    holdSmall(ellipse.minor(), mean1 + differs1, mean2 + differs2);
    holdSmall(ellipse.major(), mean1 - differs1, mean2 - differs2);
    return new Ellipse(
        ellipse.major(),
        ellipse.minor(),
        ellipse.pressure(),
        ellipse.approach(),
        (sum - difference) / 2,
        (sum + difference) / 2);
  }

  /** Half-space theory: a contact half as wide as a body's radius is some 3 % out in pressure. */
  private static void holdSmall(double half, double... curvatures) {
    for (double curvature : curvatures) {
      if (half * Math.abs(curvature) > SMALL) {
        throw new RefusedException(
            String.format(
                Locale.ROOT,
                "the contact would reach %.3g mm from its middle on a radius of %.3g mm: Hertz holds"
                    + " where it is less than half the radius",
                half * 1e3,
                1e3 / Math.abs(curvature)));
      }
    }
  }

  /** E* [Pa]. */
  public static double contactModulus(
      double modulus1, double modulus2, double poisson1, double poisson2) {
    return 1 / ((1 - poisson1 * poisson1) / modulus1 + (1 - poisson2 * poisson2) / modulus2);
  }

  private static double curvature(double radius) {
    if (radius == 0) {
      throw new RefusedException("a radius of nought is an edge: Hertz has no pressure for it");
    }
    return Double.isNaN(radius) ? 0 : 1 / radius;
  }

  private static double open(double curvature) {
    if (!(curvature > 0)) {
      throw new RefusedException(
          "the hollow is no larger than what lies in it: the bodies fit and touch all over");
    }
    return curvature;
  }
}
