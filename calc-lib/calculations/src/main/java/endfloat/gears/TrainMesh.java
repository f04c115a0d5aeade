package endfloat.gears;

import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Part;
import endfloat.definition.Range;

/**
 * One mesh of a train, in order from the first shaft to the last.
 *
 * @param backlash circumferential, at the pitch circles of this mesh
 * @param driverRadius pitch radius of the gear on the shaft nearer the first; for a bevel gear that
 *     of the heel
 * @param drivenRadius pitch radius of its mate
 * @param fromFloat further circumferential backlash from free end float: 2 e tan a sin d of a bevel
 *     gear, e tan b of a helical one; 0 where the shafts are held
 * @param meanTorque carried by this mesh, at the driver's shaft; for the order in which meshes open
 * @param alternatingTorque amplitude about the mean, at the same shaft
 */
@Part
public record TrainMesh(
    @In("mm") @Range(">= 0 mm") double backlash,
    @In("mm") @Range("> 0 mm") double driverRadius,
    @In("mm") @Range("> 0 mm") double drivenRadius,
    @In("mm") @Range(">= 0 mm") @Default("0 mm") double fromFloat,
    @In("N.m") @Default(Default.NOT_GIVEN) double meanTorque,
    @In("N.m") @Range(">= 0 N.m") @Default(Default.NOT_GIVEN) double alternatingTorque) {

  /** Free turn at the driver's shaft. */
  double angle() {
    return (backlash + fromFloat) / driverRadius;
  }

  /** Alternating torque over mean torque: above 1 the flanks part; NaN where not given. */
  double reversal() {
    return alternatingTorque / Math.abs(meanTorque);
  }

  /** Turns of the driver for one of the driven. */
  double ratio() {
    return drivenRadius / driverRadius;
  }
}
