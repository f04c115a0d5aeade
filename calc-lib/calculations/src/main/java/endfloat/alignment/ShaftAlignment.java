package endfloat.alignment;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;

/**
 * Shims under the feet of a machine from dial readings at its coupling.
 *
 * <p>Readings are four round one turn of both shafts together: top, right, bottom, left, seen from
 * the free end of the movable machine towards the coupling; plunger in counts positive. Distances
 * count from the plane of the rim dial, towards the movable machine.
 */
public final class ShaftAlignment {
  private static final String DRAWING =
      "Signs hold for a plunger pressed in counting positive and readings top, right, bottom, left"
          + " seen from the free end of the movable machine: try one shim and read again, a wrong"
          + " sign doubles the error.";

  private ShaftAlignment() {}

  /** The shaft that carries the bracket. */
  public enum Bracket {
    MOVABLE,
    FIXED
  }

  /** Which way the face dial points. */
  public enum FaceDial {
    /** At the face that looks at the bracket. */
    FRONT,
    /** At the back of the flange. */
    BACK
  }

  /**
   * Corrections at the feet and what they correct.
   *
   * @param shimFront at the front feet; positive: add shims (raise)
   * @param shimRear at the rear feet; positive: add shims (raise)
   * @param moveFront sideways at the front feet; positive: to the right
   * @param moveRear sideways at the rear feet; positive: to the right
   * @param offsetUp movable shaft above the fixed one in the plane of the rim dial
   * @param offsetRight movable shaft to the right of the fixed one there
   * @param angleUp bottom face reading over the swing: negative when the movable shaft rises away
   *     from the coupling
   * @param angleRight left face reading over the swing: negative when it runs to the right away
   *     from the coupling
   */
  public record Feet(
      @In("mm") double shimFront,
      @In("mm") double shimRear,
      @In("mm") double moveFront,
      @In("mm") double moveRear,
      @In("mm") double offsetUp,
      @In("mm") double offsetRight,
      @In("mrad") double angleUp,
      @In("mrad") double angleRight) {}

  /**
   * Rim and face method: {@code shim = f L/D − r/2} with r and f the bottom rim and face readings
   * from zero at the top, L from the rim dial's plane to the feet, D the swing of the face dial.
   *
   * <p>For a bracket on the movable shaft: the shaft stands r/2 high, and rises f/D for every
   * length away from the coupling when f is negative. With the bracket on the fixed shaft the rim
   * reading changes sign; a face dial at the back of the flange changes the sign of f.
   *
   * @param rim four rim readings: top, right, bottom, left
   * @param face four face readings likewise
   * @param faceDiameter D, swing diameter of the face dial
   * @param frontDistance L of the front feet
   * @param rearDistance L of the rear feet
   * @param sag rim reading at the bottom from zero at the top on a straight bar; never positive, as
   *     the dial falls away from the bar there
   * @param bracket shaft that carries the bracket: movable or fixed
   * @param faceDial front: the face that looks at the bracket; or back
   * @param agreement how far top + bottom may differ from right + left before the set is refused
   * @return corrections at the feet
   * @throws RefusedException if a set is not four readings or does not agree with itself
   */
  @Calculates(
      source =
          "rim and face method, F = f B/D - r/2, R = f A/D - r/2 (public formula sheet); signs"
              + " derived from the geometry of a bracket on the movable shaft with the dials on the"
              + " fixed half",
      cautions = {
        DRAWING,
        "End float of either shaft reads as a face reading: hold both against a thrust face while they"
            + " are turned.",
        "Take soft foot out first; read at one temperature and add the growth of the feet when hot.",
        "Lock the drive off before turning shafts by hand; never reach under a machine that hangs or"
            + " stands on a jack alone."
      },
      terms = {"rim and face", "coupling alignment", "shims", "soft foot", "cold alignment"})
  public static Feet shaftAlignment(
      @In("mm") double[] rim,
      @In("mm") double[] face,
      @In("mm") @Range("> 0 mm") double faceDiameter,
      @In("mm") @Range(">= 0 mm") double frontDistance,
      @In("mm") @Range("> 0 mm") double rearDistance,
      @In("mm") @Range("<= 0 mm") @Default("0 mm") double sag,
      @Default("\"movable\"") Bracket bracket,
      @Default("\"front\"") FaceDial faceDial,
      @In("mm") @Range(">= 0 mm") @Default("0.03 mm") double agreement) {
    check("rim", rim, agreement);
    check("face", face, agreement);
    double side = bracket == Bracket.MOVABLE ? 1 : -1;
    double facing = faceDial == FaceDial.FRONT ? 1 : -1;
    double up = side * (rim[2] - rim[0] - sag) / 2;
    double right = side * (rim[3] - rim[1]) / 2;
    double angleUp = facing * (face[2] - face[0]) / faceDiameter;
    double angleRight = facing * (face[3] - face[1]) / faceDiameter;
    return feet(up, right, angleUp, angleRight, frontDistance, rearDistance);
  }

  /**
   * Double rim (reverse) method: one rim dial on the fixed half, read from the movable shaft, and
   * one on the movable half, read from the fixed shaft.
   *
   * @param rimOnFixed top, right, bottom, left, bracket on the movable shaft
   * @param rimOnMovable top, right, bottom, left, bracket on the fixed shaft
   * @param span between the planes of the two dials, the movable one nearer to the feet
   * @param frontDistance from the plane of the dial on the fixed half to the front feet
   * @param rearDistance from that plane to the rear feet
   * @param sagOnFixed sag of the first bracket, as for shaft_alignment
   * @param sagOnMovable sag of the second bracket
   * @param agreement how far top + bottom may differ from right + left before the set is refused
   * @return corrections at the feet, offsets in the plane of the dial on the fixed half
   * @throws RefusedException if a set is not four readings or does not agree with itself
   */
  @Calculates(
      source = "derived: each rim reading, bottom less top, is twice the offset in its plane",
      cautions = DRAWING,
      terms = {"reverse indicator", "double rim", "coupling alignment", "shims"})
  public static Feet shaftAlignmentDoubleRim(
      @In("mm") double[] rimOnFixed,
      @In("mm") double[] rimOnMovable,
      @In("mm") @Range("> 0 mm") double span,
      @In("mm") @Range(">= 0 mm") double frontDistance,
      @In("mm") @Range("> 0 mm") double rearDistance,
      @In("mm") @Range("<= 0 mm") @Default("0 mm") double sagOnFixed,
      @In("mm") @Range("<= 0 mm") @Default("0 mm") double sagOnMovable,
      @In("mm") @Range(">= 0 mm") @Default("0.03 mm") double agreement) {
    check("rim_on_fixed", rimOnFixed, agreement);
    check("rim_on_movable", rimOnMovable, agreement);
    double up = (rimOnFixed[2] - rimOnFixed[0] - sagOnFixed) / 2;
    double right = (rimOnFixed[3] - rimOnFixed[1]) / 2;
    double upThere = -(rimOnMovable[2] - rimOnMovable[0] - sagOnMovable) / 2;
    double rightThere = -(rimOnMovable[3] - rimOnMovable[1]) / 2;
    return feet(
        up, right, (up - upThere) / span, (right - rightThere) / span, frontDistance, rearDistance);
  }

  private static Feet feet(
      double up, double right, double angleUp, double angleRight, double front, double rear) {
    return new Feet(
        angleUp * front - up,
        angleUp * rear - up,
        angleRight * front - right,
        angleRight * rear - right,
        up,
        right,
        angleUp,
        angleRight);
  }

  private static void check(String name, double[] readings, double agreement) {
    if (readings.length != 4) {
      throw new RefusedException(
          name + " must be four readings: top, right, bottom, left; " + readings.length + " given");
    }
    double difference = readings[0] + readings[2] - readings[1] - readings[3];
    if (Math.abs(difference) > agreement * (1 + 1e-9)) {
      throw new RefusedException(
          name
              + ": top + bottom and right + left differ by more than the agreement; read the set"
              + " again (loose bracket, moved zero or wrong sag)");
    }
  }
}
