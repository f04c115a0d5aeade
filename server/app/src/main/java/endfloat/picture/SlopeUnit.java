package endfloat.picture;

import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;

/** The unit of a slope: one unit over another. */
final class SlopeUnit {
  private SlopeUnit() {}

  /** Of y over x, in the units shown. */
  static Unit of(Unit y, Unit x) {
    String over = y.interval().symbol();
    String under = x.interval().symbol();
    String written = under.equals("1") ? over : over + "/" + under;
    try {
      return UnitTable.find(written);
    } catch (UnitException e) {
      return UnitTable.coherent(y.dimension().over(x.dimension()));
    }
  }
}
