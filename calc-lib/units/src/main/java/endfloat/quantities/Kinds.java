package endfloat.quantities;

import endfloat.units.Dimension;
import endfloat.units.UnitTable;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;

/** Which interface stands for which dimension. */
public final class Kinds {
  private static final Map<Class<?>, Dimension> DIMENSIONS = new LinkedHashMap<>();

  static {
    put(Dimensionless.class, "1");
    put(Angle.class, "rad");
    put(Length.class, "m");
    put(Area.class, "m^2");
    put(Volume.class, "m^3");
    put(Mass.class, "kg");
    put(Time.class, "s");
    put(Frequency.class, "1/s");
    put(Trade.AngularSpeed.class, "rad/s");
    put(Speed.class, "m/s");
    put(Acceleration.class, "m/s^2");
    put(Force.class, "N");
    put(Pressure.class, "Pa");
    put(Trade.Torque.class, "N.m");
    put(Power.class, "W");
    put(Trade.Density.class, "kg/m^3");
    put(Trade.Stiffness.class, "N/m");
    put(Trade.TorsionalStiffness.class, "N.m/rad");
    put(Trade.Inertia.class, "kg.m^2");
    put(Trade.Viscosity.class, "Pa.s");
    put(Trade.WearRate.class, "m^3/(N.m)");
    put(Trade.PerLength.class, "1/m");
    put(Trade.Expansion.class, "1/K");
    put(Trade.TemperatureDifference.class, "K");
    put(ElectricCurrent.class, "A");
    DIMENSIONS.put(Temperature.class, Dimension.TEMPERATURE);
  }

  private Kinds() {}

  private static void put(Class<? extends Quantity<?>> kind, String unit) {
    DIMENSIONS.put(kind, UnitTable.find(unit).dimension());
  }

  /**
   * The dimension of a kind.
   *
   * @throws IllegalArgumentException for an interface that is not one of ours
   */
  public static Dimension dimension(Class<?> kind) {
    Dimension dimension = DIMENSIONS.get(kind);
    if (dimension == null) {
      throw new IllegalArgumentException(
          kind.getSimpleName() + " is no kind of quantity known here");
    }
    return dimension;
  }

  /**
   * The kind of a name as source writes it, such as {@code Length} or {@code Trade.Torque}.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Class<?> named(String name) {
    for (Class<?> kind : DIMENSIONS.keySet()) {
      if (name(kind).equals(name)) {
        return kind;
      }
    }
    throw new IllegalArgumentException(name + " is no kind of quantity known here");
  }

  /** How source writes a kind: {@code Length}, {@code Trade.Torque}. */
  public static String name(Class<?> kind) {
    return kind.getEnclosingClass() == null
        ? kind.getSimpleName()
        : kind.getEnclosingClass().getSimpleName() + "." + kind.getSimpleName();
  }

  /**
   * The kind that stands for a dimension; none where no interface does. A temperature is told from
   * its difference by the caller.
   */
  public static Optional<Class<?>> of(Dimension dimension) {
    for (Map.Entry<Class<?>, Dimension> entry : DIMENSIONS.entrySet()) {
      if (entry.getValue().equals(dimension)) {
        return Optional.of(entry.getKey());
      }
    }
    return Optional.empty();
  }
}
