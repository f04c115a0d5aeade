package endfloat.quantities;

import javax.measure.Quantity;

/** Kinds of quantity of the trade that JSR 385 has no interface for. */
public final class Trade {
  private Trade() {}

  /** A step of temperature, unlike a temperature itself. */
  public interface TemperatureDifference extends Quantity<TemperatureDifference> {}

  /** A moment that turns; apart from energy though its unit is the same. */
  public interface Torque extends Quantity<Torque> {}

  public interface AngularSpeed extends Quantity<AngularSpeed> {}

  /** Coefficient of linear expansion. */
  public interface Expansion extends Quantity<Expansion> {}

  public interface Density extends Quantity<Density> {}

  /** Force by deflection, or force by width. */
  public interface Stiffness extends Quantity<Stiffness> {}

  /** Torque by twist. */
  public interface TorsionalStiffness extends Quantity<TorsionalStiffness> {}

  /** Mass times length squared. */
  public interface Inertia extends Quantity<Inertia> {}

  /** Worn volume by load and sliding distance. */
  public interface WearRate extends Quantity<WearRate> {}

  /** One over a length, such as a diametral pitch. */
  public interface PerLength extends Quantity<PerLength> {}

  public interface Viscosity extends Quantity<Viscosity> {}
}
