package endfloat.gears;

import endfloat.definition.OutOfRangeException;
import endfloat.definition.RefusedException;

/**
 * Geometry, motion and forces of a pair of involute gears on parallel shafts, in SI. Spur where the
 * helix angle is 0. Gear 1 drives.
 */
final class CylindricalMesh {
  final double teeth1;
  final double teeth2;
  final double helix;
  final double normalModule;
  final double transverseModule;
  final double normalAngle;
  final double transverseAngle;
  final double standardCentres;
  final double centres;
  final double workingAngle;
  final double pitch1;
  final double pitch2;
  final double base1;
  final double base2;
  final double tip1;
  final double tip2;
  final double backlash;
  final ContactPath path;

  /** Profile shift, tip height and centre distance as far as given; NaN where not. */
  record Wheel(double teeth, double shift, double addendum) {}

  CylindricalMesh(
      Wheel first,
      Wheel second,
      double normalModule,
      double normalAngle,
      double helix,
      double centresGiven,
      TipHeight tips) {
    this.teeth1 = whole("teeth_1", first.teeth());
    this.teeth2 = whole("teeth_2", second.teeth());
    this.helix = helix;
    this.normalModule = normalModule;
    this.normalAngle = normalAngle;
    transverseModule = normalModule / StrictMath.cos(helix);
    transverseAngle = Involute.transverse(normalAngle, helix);
    pitch1 = transverseModule * teeth1;
    pitch2 = transverseModule * teeth2;
    base1 = pitch1 * StrictMath.cos(transverseAngle);
    base2 = pitch2 * StrictMath.cos(transverseAngle);
    standardCentres = (pitch1 + pitch2) / 2;
    double teeth = teeth1 + teeth2;
    double shifts = first.shift() + second.shift();
    double tight = Involute.inv(transverseAngle) + 2 * shifts * StrictMath.tan(normalAngle) / teeth;
    if (!(tight > 0)) {
      throw new RefusedException("with these profile shifts the teeth cannot mesh");
    }
    if (Double.isNaN(centresGiven)) {
      workingAngle = shifts == 0 ? transverseAngle : Involute.angleOf(tight);
      centres = shifts == 0 ? standardCentres : (base1 + base2) / 2 / StrictMath.cos(workingAngle);
      backlash = 0;
    } else {
      centres = centresGiven;
      if (centres < (base1 + base2) / 2) {
        throw new OutOfRangeException(
            "centre_distance",
            centres,
            (base1 + base2) / 2,
            Double.POSITIVE_INFINITY,
            "mm",
            "closer than that the base circles overlap");
      }
      workingAngle = StrictMath.acos((base1 + base2) / 2 / centres);
      backlash = 2 * centres * (Involute.inv(workingAngle) - tight);
    }
    double off =
        tips == TipHeight.FULL
            ? 0
            : Math.min(0, (centres - standardCentres) / normalModule - shifts);
    tip1 = pitch1 + 2 * normalModule * (first.addendum() + first.shift() + off);
    tip2 = pitch2 + 2 * normalModule * (second.addendum() + second.shift() + off);
    double basePitch = StrictMath.PI * base1 / teeth1;
    path = ContactPath.of(tip1 / 2, base1 / 2, tip2 / 2, base2 / 2, workingAngle, basePitch);
    if (!(path.ratio() > 0)) {
      throw new RefusedException("the tips do not reach each other at this centre distance");
    }
  }

  static double whole(String name, double teeth) {
    if (teeth != Math.rint(teeth)) {
      throw new RefusedException(name + " = " + teeth + " is no whole number of teeth");
    }
    return teeth;
  }

  double ratio() {
    return teeth2 / teeth1;
  }

  double working1() {
    return 2 * centres * teeth1 / (teeth1 + teeth2);
  }

  double working2() {
    return 2 * centres * teeth2 / (teeth1 + teeth2);
  }

  /** Sliding speed at a distance from the pitch point, gear 1 at an angular speed. */
  double sliding(double distance, double speed) {
    return Math.abs(speed) * (1 + 1 / ratio()) * distance;
  }

  /** tan of the helix angle on the working cylinders. */
  double workingHelixTangent() {
    return StrictMath.tan(helix) * working1() / pitch1;
  }

  double tangential(double torque) {
    return 2 * torque / working1();
  }

  double radial(double torque) {
    return tangential(torque) * StrictMath.tan(workingAngle);
  }

  double normal(double torque) {
    return 2 * torque / (base1 * StrictMath.cos(Involute.baseHelix(helix, normalAngle)));
  }

  /**
   * Share of the power that leaves the mesh when sliding at a constant coefficient is the only
   * loss.
   */
  double efficiency(double friction) {
    double lossPerTorque =
        friction
            * (1 + 1 / ratio())
            * path.meanDistance()
            * 2
            / (base1 * StrictMath.cos(Involute.baseHelix(helix, normalAngle)));
    if (!(lossPerTorque < 1)) {
      throw new OutOfRangeException(
          "friction", friction, 0, friction / lossPerTorque, "1", "above it the mesh locks");
    }
    return 1 - lossPerTorque;
  }

  String interference() {
    return path.undercut() ? "tip reaches below the base circle" : "none";
  }
}
